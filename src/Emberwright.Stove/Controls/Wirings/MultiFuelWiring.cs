using static Emberwright.Stove.Controls.ComponentIds;

namespace Emberwright.Stove.Controls.Wirings;

/// <summary>
/// The multi-fuel stove with agitator, 120 V 60 Hz: high-limit disc, door switch, vacuum switch and the bridged proof-of-fire
/// disc in series with the feed; an agitator motor stirs the burn pot. All values are common practice, no source.
/// </summary>
public static class MultiFuelWiring
{
    /// <summary>Time the board bridges the proof-of-fire disc, s.</summary>
    public const double ProofTimeS = 20 * 60;

    /// <summary>Builds the wiring.</summary>
    public static Wiring Create() => new WiringPlan("multi-fuel-agitator", 120, 60)
        .Feed(OutputKind.Relay, [Parts.HighLimit(ResetKind.Manual), Parts.Door, Parts.Vacuum, Parts.Proof],
            Parts.Motor(FeedMotor, "Feed motor", 120, 45, 0.50, 0.85), ProofTimeS)
        .Load("igniter", "igniter", BoardCalls.Igniter, OutputKind.Relay, Parts.Wire(120, 400))
        .Load("combustion", "combustion blower", BoardCalls.CombustionBlower, OutputKind.PhaseControlled,
            Parts.Motor(CombustionBlower, "Combustion blower", 120, 12, 1.1, 2.1))
        .Load("room-air", "room-air blower", BoardCalls.RoomAirBlower, OutputKind.PhaseControlled,
            Parts.Motor(RoomAirBlower, "Room-air blower", 120, 16, 0.9, 1.7), Parts.FanDisc)
        .Load("agitator", "agitator motor", BoardCalls.Agitator, OutputKind.Relay,
            Parts.Motor(AgitatorMotor, "Agitator motor", 120, 55, 0.35, 0.85))
        .ThermostatLoop(24, 2200)
        .Build(7.5, 0.4);
}
