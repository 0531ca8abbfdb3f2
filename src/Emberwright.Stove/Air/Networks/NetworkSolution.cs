namespace Emberwright.Stove.Air.Networks;

/// <summary>A node of a solved network.</summary>
/// <param name="Node">The node.</param>
/// <param name="PressurePa">Total pressure against still outdoor air at its height, Pa.</param>
public sealed record NodeState(NetworkNode Node, double PressurePa);

/// <summary>A link of a solved network.</summary>
/// <param name="Link">The link.</param>
/// <param name="MassFlowKgPerS">Flow, kg/s; positive from its first to its second end.</param>
/// <param name="VolumeFlowM3PerS">The same by volume at the density of the air that enters, m³/s.</param>
/// <param name="LossPa">Loss of total pressure in the direction from → to, Pa; a blower's is negative while it drives.</param>
/// <param name="StackPa">What the link's own column of air adds, Pa: (ρ_outdoor − ρ)·g·Δz.</param>
public sealed record LinkState(Link Link, double MassFlowKgPerS, double VolumeFlowM3PerS, double LossPa, double StackPa);

/// <summary>Pressures and flows of a network, and how well they satisfy its equations.</summary>
/// <param name="Nodes">In the network's order.</param>
/// <param name="Links">In the network's order.</param>
/// <param name="Converged">True when every mass residual is below 1e-9 kg/s and every pressure residual below 1e-7 Pa.</param>
/// <param name="Iterations">Steps taken.</param>
/// <param name="MassResidualKgPerS">Largest imbalance of mass at a free node, kg/s.</param>
/// <param name="PressureResidualPa">Largest miss of a link's pressure equation, Pa.</param>
/// <param name="Worst">The link or node whose equation is met worst.</param>
public sealed record NetworkSolution(
    IReadOnlyList<NodeState> Nodes, IReadOnlyList<LinkState> Links, bool Converged, int Iterations,
    double MassResidualKgPerS, double PressureResidualPa, string Worst);
