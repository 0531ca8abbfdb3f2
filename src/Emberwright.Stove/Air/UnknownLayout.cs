namespace Emberwright.Stove.Air;

/// <summary>Where each unknown and each equation stands in the vectors of one solve.</summary>
/// <param name="Links">Number of links.</param>
/// <param name="Nodes">Number of nodes.</param>
/// <param name="HasShares">True when something burns, so that the gas's composition is unknown.</param>
/// <param name="IsControlled">True when a controller adds the blower's speed as an unknown.</param>
internal readonly record struct UnknownLayout(int Links, int Nodes, bool HasShares, bool IsControlled)
{
    /// <summary>Number of unknowns and of equations.</summary>
    public int Count => Links + ((HasShares ? 3 : 2) * Nodes) + (IsControlled ? 1 : 0);

    /// <summary>Index of the speed's unknown and the controller's equation; −1 when there is none.</summary>
    public int Control => IsControlled ? Count - 1 : -1;

#pragma warning disable CA1822 // reads like its neighbours; that flows stand first is this type's business
    public int Q(int link) => link;
#pragma warning restore CA1822

    /// <summary>The controller's setting; 1 when there is none.</summary>
    public double Setting(ReadOnlySpan<double> z) => IsControlled ? z[Control] : 1;

    public int P(int node) => Links + node;

    public int T(int node) => Links + Nodes + node;

    public int Y(int node) => Links + (2 * Nodes) + node;

    public int Mass(int node) => Links + node;

    public int Heat(int node) => Links + Nodes + node;

    public int Share(int node) => Links + (2 * Nodes) + node;
}
