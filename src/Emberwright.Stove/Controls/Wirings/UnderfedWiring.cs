using static Emberwright.Stove.Controls.ComponentIds;

namespace Emberwright.Stove.Controls.Wirings;

/// <summary>
/// The underfed stove, 120 V 60 Hz: vacuum switch, high-limit disc and lid switch in series with the feed; a Pt1000 probe in
/// the exhaust proves the fire, a speed sensor watches the combustion blower. All values are common practice, no source.
/// </summary>
public static class UnderfedWiring
{
    /// <summary>Builds the wiring.</summary>
    public static Wiring Create() => new WiringPlan("underfed", 120, 60)
        .Feed(OutputKind.Relay, [Parts.HighLimit(ResetKind.Manual), Parts.Vacuum, Parts.Lid],
            Parts.Motor(FeedMotor, "Feed motor", 120, 60, 0.45, 0.75))
        .Load("igniter", "igniter", BoardCalls.Igniter, OutputKind.Relay, Parts.Wire(120, 350))
        .Load("combustion", "combustion blower", BoardCalls.CombustionBlower, OutputKind.PhaseControlled,
            Parts.Motor(CombustionBlower, "Combustion blower", 120, 10, 1.3, 2.4))
        .Load("room-air", "room-air blower", BoardCalls.RoomAirBlower, OutputKind.PhaseControlled,
            Parts.Motor(RoomAirBlower, "Room-air blower", 120, 12, 1.2, 2.2))
        .ThermostatLoop(12, 1000)
        .Probe(Parts.Pt1000(ExhaustProbe, "Exhaust probe"), 2200)
        .SpeedPulses()
        .Build(7.5, 0.4);
}
