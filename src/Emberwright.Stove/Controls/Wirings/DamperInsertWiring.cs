using static Emberwright.Stove.Controls.ComponentIds;

namespace Emberwright.Stove.Controls.Wirings;

/// <summary>
/// The damper-regulated top-feed insert, 120 V 60 Hz: four switches in series with the feed (high-limit disc, lid,
/// vacuum, and the proof-of-fire disc, which the board bridges for the first 22 minutes).
/// All values are common practice, no source.
/// </summary>
public static class DamperInsertWiring
{
    /// <summary>Time the board bridges the proof-of-fire disc, s.</summary>
    public const double ProofTimeS = 22 * 60;

    /// <summary>Builds the wiring.</summary>
    public static Wiring Create() => new WiringPlan("damper-insert", 120, 60)
        .Feed(OutputKind.Triac, [Parts.HighLimit(ResetKind.Manual), Parts.Lid, Parts.Vacuum, Parts.Proof],
            Parts.Motor(FeedMotor, "Feed motor", 120, 92, 0.30, 0.50), ProofTimeS)
        .Load("igniter", "igniter", BoardCalls.Igniter, OutputKind.Relay, Parts.Wire(120, 300))
        .Load("combustion", "combustion blower", BoardCalls.CombustionBlower, OutputKind.PhaseControlled,
            Parts.Motor(CombustionBlower, "Combustion blower", 120, 14, 1.0, 1.9))
        .Load("room-air", "room-air blower", BoardCalls.RoomAirBlower, OutputKind.PhaseControlled,
            Parts.Motor(RoomAirBlower, "Room-air blower", 120, 16, 0.9, 1.7), Parts.FanDisc)
        .ThermostatLoop(24, 2200)
        .Build(5, 0.4);
}
