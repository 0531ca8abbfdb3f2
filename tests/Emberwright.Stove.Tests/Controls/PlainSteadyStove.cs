using Emberwright.Stove.Controls.Sequence;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>A plain stove for testing the sequence alone: smooth curves through usual figures (common practice, no source).</summary>
internal sealed class PlainSteadyStove : ISteadyStove
{
    /// <summary>Share of the clean vacuum that is left.</summary>
    public double VacuumShare { get; init; } = 1;

    /// <summary>True when the fire heats water: the high-limit disc then does not depend on the room-air blower.</summary>
    public bool HeatsWater { get; init; }

    public double RoomC => 20;

    public SteadyPoint At(double burnShare, double combustionShare, double roomAirShare, bool pumpTurns)
    {
        var heat = Math.Pow(burnShare, 1.44);
        var vacuum = (29 - 10 * Math.Min(1, burnShare)) * combustionShare * combustionShare * VacuumShare;
        return new SteadyPoint(
            -vacuum, RoomC + 142 * heat, RoomC + 450 * Math.Pow(burnShare, 0.7),
            RoomC + (roomAirShare > 0 || HeatsWater ? 35 : 110) * burnShare, RoomC + (pumpTurns ? 50 : 90) * burnShare,
            burnShare > 0 && combustionShare < 0.2);
    }
}
