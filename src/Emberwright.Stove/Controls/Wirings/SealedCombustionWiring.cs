using static Emberwright.Stove.Controls.ComponentIds;

namespace Emberwright.Stove.Controls.Wirings;

/// <summary>
/// The sealed-combustion stove with modulating blower, 230 V 50 Hz: high-limit disc, lid and door switch in series with the
/// feed; no vacuum switch but a pressure sensor; exhaust probe, room probe, speed sensor; a combustion blower with run capacitor.
/// All values are common practice, no source.
/// </summary>
public static class SealedCombustionWiring
{
    /// <summary>Builds the wiring.</summary>
    public static Wiring Create() => new WiringPlan("sealed-combustion", 230, 50)
        .Feed(OutputKind.Triac, [Parts.HighLimit(ResetKind.Manual), Parts.Lid, Parts.Door],
            Parts.Motor(FeedMotor, "Feed motor", 230, 300, 0.22, 0.38))
        .Load("igniter", "igniter", BoardCalls.Igniter, OutputKind.Relay, Parts.Ceramic(230, 300))
        .Load("combustion", "combustion blower", BoardCalls.CombustionBlower, OutputKind.PhaseControlled,
            Parts.Motor(CombustionBlower, "Combustion blower", 230, 80, 0.30, 0.60))
        .CombustionAuxiliaryWinding(
            new RunCapacitor(ComponentIds.RunCapacitor, "Run capacitor", "", "", 1.5e-6),
            Parts.Motor(CombustionAuxiliary, "Combustion blower's auxiliary winding", 230, 140, 0.20, 0.40))
        .Load("room-air", "room-air blower", BoardCalls.RoomAirBlower, OutputKind.PhaseControlled,
            Parts.Motor(RoomAirBlower, "Room-air blower", 230, 90, 0.30, 0.60))
        .ThermostatLoop(5, 4700)
        .Probe(Parts.Pt1000(ExhaustProbe, "Exhaust probe"), 2200)
        .Probe(Parts.Ntc(RoomProbe, "Room probe"), 10e3)
        .SpeedPulses()
        .Pressure(new PressureSensor(ComponentIds.PressureSensor, "Pressure sensor", "", "", 2.5, 0.008, 100))
        .Build(4, 0.5);
}
