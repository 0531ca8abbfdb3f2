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
    public static Wiring Create() => new(
        "damper-insert",
        [
            new(Points.Neutral, 7, "Neutral", SupplyCircuit.Mains),
            new("feed-out", null, "Board, feed terminal", SupplyCircuit.Mains),
            new("tp1", 1, "Feed lead, ahead of the high-limit disc", SupplyCircuit.Mains),
            new("tp2", 2, "Between high-limit disc and lid switch", SupplyCircuit.Mains),
            new("tp3", 3, "Between lid switch and vacuum switch", SupplyCircuit.Mains),
            new("tp4", 4, "Between vacuum switch and proof-of-fire disc", SupplyCircuit.Mains),
            new("tp5", 5, "Feed motor, live terminal", SupplyCircuit.Mains),
            new("igniter-out", null, "Board, igniter terminal", SupplyCircuit.Mains),
            new("igniter-live", null, "Igniter, live lead", SupplyCircuit.Mains),
            new("combustion-out", null, "Board, combustion-blower terminal", SupplyCircuit.Mains),
            new("combustion-live", null, "Combustion blower, live lead", SupplyCircuit.Mains),
            new("room-air-out", null, "Board, room-air-blower terminal", SupplyCircuit.Mains),
            new("room-air-disc-in", null, "Room-air-blower disc, board side", SupplyCircuit.Mains),
            new("room-air-live", null, "Room-air blower, live lead", SupplyCircuit.Mains),
            .. ThermostatLoop.TestPoints,
            new(Points.BoardLive, null, "Board's supply rail", SupplyCircuit.Mains),
            new(Points.FusedLive, 6, "Board's inlet, behind the fuse", SupplyCircuit.Mains),
            new(Points.Live, null, "Live at the inlet", SupplyCircuit.Mains),
            new(Points.Earth, null, "Earth: the appliance's metal", SupplyCircuit.Mains),
        ],
        [
            new MainsSupply(Supply, "Mains at the socket", Points.Live, Points.Neutral, 120, 60, 0.4),
            new EarthConductor(ComponentIds.EarthConductor, "Earth conductor", Points.Earth, Points.Neutral, 0.3),
            new Fuse(ComponentIds.Fuse, "Fuse", Points.Live, Points.FusedLive, 5, 0.03),
            new Connector(Board, "Board", Points.FusedLive, Points.BoardLive, 0.02),
            new BoardOutput(FeedOutput, "Board output, feed", Points.BoardLive, "feed-out", BoardCalls.Feed, OutputKind.Triac, 0.5, 100, 10e-9),
            new Connector(FeedConnector, "Feed plug", "feed-out", "tp1", 0.02),
            new Interlock(HighLimitDisc, "High-limit disc", "tp1", "tp2", ContactKind.LimitDisc, false, ResetKind.Manual, 0.05),
            new Interlock(LidSwitch, "Lid switch", "tp2", "tp3", ContactKind.LidSwitch, true, ResetKind.Automatic, 0.05),
            new Interlock(VacuumSwitch, "Vacuum switch", "tp3", "tp4", ContactKind.VacuumSwitch, true, ResetKind.Automatic, 0.05),
            new Interlock(ProofDisc, "Proof-of-fire disc", "tp4", "tp5", ContactKind.ProofDisc, true, ResetKind.Automatic, 0.05),
            new StartBypass(ProofBypass, "Board contact round the proof-of-fire disc", "tp4", "tp5", ProofTimeS, 0.1),
            new Motor(FeedMotor, "Feed motor", "tp5", Points.Neutral, 120, 92, 0.30, 0.6, 0.50, 0.75),
            new BoardOutput(IgniterOutput, "Board output, igniter", Points.BoardLive, "igniter-out", BoardCalls.Igniter, OutputKind.Relay, 0.05, 0, 0),
            new Connector(IgniterConnector, "Igniter plug", "igniter-out", "igniter-live", 0.02),
            new Igniter(ComponentIds.Igniter, "Igniter", "igniter-live", Points.Neutral, IgniterKind.Wire, 120, 300, 1.071),
            new BoardOutput(CombustionOutput, "Board output, combustion blower", Points.BoardLive, "combustion-out", BoardCalls.CombustionBlower, OutputKind.PhaseControlled, 0.5, 100, 10e-9),
            new Connector(CombustionConnector, "Combustion-blower plug", "combustion-out", "combustion-live", 0.02),
            new Motor(CombustionBlower, "Combustion blower", "combustion-live", Points.Neutral, 120, 14, 1.0, 0.6, 1.9, 0.7),
            new BoardOutput(RoomAirOutput, "Board output, room-air blower", Points.BoardLive, "room-air-out", BoardCalls.RoomAirBlower, OutputKind.PhaseControlled, 0.5, 100, 10e-9),
            new Connector(RoomAirConnector, "Room-air-blower plug", "room-air-out", "room-air-disc-in", 0.02),
            new Interlock(RoomAirDisc, "Room-air-blower disc", "room-air-disc-in", "room-air-live", ContactKind.FanDisc, true, ResetKind.Automatic, 0.05),
            new Motor(RoomAirBlower, "Room-air blower", "room-air-live", Points.Neutral, 120, 16, 0.9, 0.6, 1.7, 0.7),
            .. ThermostatLoop.Components(24, 2200),
        ],
        [HighLimitDisc, LidSwitch, VacuumSwitch, ProofDisc],
        Harness.Ordinary);
}
