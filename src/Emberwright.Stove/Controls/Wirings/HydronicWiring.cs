using static Emberwright.Stove.Controls.ComponentIds;

namespace Emberwright.Stove.Controls.Wirings;

/// <summary>
/// The hydronic stove, 230 V 50 Hz: safety thermostat, high-limit disc, vacuum and door switch in series with the feed; a
/// circulating pump; exhaust, room and water probes; a speed sensor. All values are common practice, no source.
/// </summary>
public static class HydronicWiring
{
    /// <summary>Builds the wiring.</summary>
    public static Wiring Create() => new WiringPlan("hydronic", 230, 50)
        .Feed(OutputKind.Triac, [Parts.WaterLimit, Parts.HighLimit(ResetKind.Manual), Parts.Vacuum, Parts.Door],
            Parts.Motor(FeedMotor, "Feed motor", 230, 280, 0.25, 0.42))
        .Load("igniter", "igniter", BoardCalls.Igniter, OutputKind.Relay, Parts.Wire(230, 350))
        .Load("combustion", "combustion blower", BoardCalls.CombustionBlower, OutputKind.PhaseControlled,
            Parts.Motor(CombustionBlower, "Combustion blower", 230, 70, 0.35, 0.70))
        .CombustionAuxiliaryWinding(
            new RunCapacitor(ComponentIds.RunCapacitor, "Run capacitor", "", "", 2e-6),
            Parts.Motor(CombustionAuxiliary, "Combustion blower's auxiliary winding", 230, 130, 0.22, 0.45))
        .Load("pump", "circulating pump", BoardCalls.Pump, OutputKind.Relay,
            Parts.Motor(CirculatingPump, "Circulating pump", 230, 180, 0.25, 0.41))
        .ThermostatLoop(5, 4700)
        .Probe(Parts.Pt1000(ExhaustProbe, "Exhaust probe"), 2200)
        .Probe(Parts.Ntc(RoomProbe, "Room probe"), 10e3)
        .Probe(Parts.Ntc(WaterProbe, "Water probe"), 10e3)
        .SpeedPulses()
        .Build(4, 0.5);
}
