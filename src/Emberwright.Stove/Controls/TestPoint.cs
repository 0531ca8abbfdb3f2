namespace Emberwright.Stove.Controls;

/// <summary>Which supply a test point belongs to; it decides what a voltage is read against.</summary>
public enum SupplyCircuit
{
    /// <summary>Mains, alternating; voltages are read against <see cref="Points.Neutral"/>.</summary>
    Mains,
    /// <summary>The board's own low-voltage direct supply; voltages are read against <see cref="Points.BoardCommon"/>.</summary>
    LowVoltage,
}

/// <summary>
/// A place on the wiring where a meter lead goes. It is not a port: pressures are measured at ports.
/// </summary>
/// <param name="Id">Id, unique in its wiring.</param>
/// <param name="Number">Number shown on the wiring picture, or null for a point that is not numbered.</param>
/// <param name="Name">Name in the trade's words.</param>
/// <param name="Circuit">Supply it belongs to.</param>
public sealed record TestPoint(string Id, int? Number, string Name, SupplyCircuit Circuit);

/// <summary>Ids of the test points that every wiring has.</summary>
public static class Points
{
    /// <summary>Neutral, the reference for mains voltages.</summary>
    public const string Neutral = "neutral";
    /// <summary>Live as it enters the appliance, ahead of the fuse.</summary>
    public const string Live = "live";
    /// <summary>Live behind the fuse, at the board's inlet.</summary>
    public const string FusedLive = "fused-live";
    /// <summary>The board's supply rail.</summary>
    public const string BoardLive = "board-live";
    /// <summary>The appliance's metal and its protective conductor.</summary>
    public const string Earth = "earth";
    /// <summary>Common return of the board's low-voltage side.</summary>
    public const string BoardCommon = "board-common";
}
