using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Air;

/// <summary>A place in the stove where gas mixes and has one pressure, temperature and composition.</summary>
/// <param name="Id">Stable id, lower case with hyphens.</param>
/// <param name="HeightM">Height above the floor the stove stands on, m.</param>
public sealed record Node(string Id, double HeightM);

/// <summary>Ids of the surroundings a link may end at; they have a given pressure and temperature.</summary>
public static class Boundary
{
    /// <summary>Room air at the height of the link's other end.</summary>
    public const string Room = "room";

    /// <summary>Where combustion air comes from: room air, or outdoor air through an outside-air kit.</summary>
    public const string AirSupply = "air-supply";

    /// <summary>Outdoor air at the vent's terminal, with the wind's pressure on it.</summary>
    public const string Terminal = "terminal";
}

/// <summary>What warms the other side of a link's wall.</summary>
public enum ColdSide
{
    /// <summary>Nothing: the link is adiabatic.</summary>
    None,
    /// <summary>The stream of the room-air blower (or the water of a hydronic stove), in counterflow.</summary>
    Stream,
    /// <summary>The vent's surroundings, at constant temperature.</summary>
    VentSurroundings,
}

/// <summary>A way for gas between two places; the positive direction is from <see cref="From"/> to <see cref="To"/>.</summary>
/// <param name="Id">Stable id, lower case with hyphens.</param>
/// <param name="From">Node or <see cref="Boundary"/> id.</param>
/// <param name="To">Node or <see cref="Boundary"/> id.</param>
/// <param name="Origin">Where the numbers of this link come from.</param>
public abstract record Link(string Id, string From, string To, Origin Origin)
{
    /// <summary>The parameter that scales its conductance; null when none does.</summary>
    public Parameter? Scale { get; init; }

    /// <summary>True when this link is stopped up in <see cref="OpeningState.IntakeStopped"/>.</summary>
    public bool IsIntake { get; init; }

    /// <summary>True when air for the fuel passes here (the burn pot's holes).</summary>
    public bool IsPotAir { get; init; }

    /// <summary>Free area, m², of this link while the fuel door is open; null when the door has no part in it.</summary>
    public double? DoorOpenAreaM2 { get; init; }
}

/// <summary>A hole whose loss is one velocity head: ṁ = C_d·A·√(2ρΔp).</summary>
/// <param name="Id">Stable id, lower case with hyphens.</param>
/// <param name="From">Node or <see cref="Boundary"/> id.</param>
/// <param name="To">Node or <see cref="Boundary"/> id.</param>
/// <param name="AreaM2">Free area, m²; &gt; 0.</param>
/// <param name="Discharge">Discharge coefficient C_d, 0.3 … 1.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record Opening(string Id, string From, string To, double AreaM2, double Discharge, Origin Origin)
    : Link(Id, From, To, Origin);

/// <summary>A gasket's or seam's leakage: V̇ = C·Δpⁿ.</summary>
/// <param name="Id">Stable id, lower case with hyphens.</param>
/// <param name="From">Node or <see cref="Boundary"/> id.</param>
/// <param name="To">Node or <see cref="Boundary"/> id.</param>
/// <param name="Coefficient">C, m³/(s·Paⁿ); &gt; 0.</param>
/// <param name="Exponent">n, 0.5 … 1; about 0.65 when unknown.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record Crack(string Id, string From, string To, double Coefficient, double Exponent, Origin Origin)
    : Link(Id, From, To, Origin);

/// <summary>A duct or chamber with friction and fittings: Δp = (ψL/D + Σζ)·ρw²/2.</summary>
/// <param name="Id">Stable id, lower case with hyphens.</param>
/// <param name="From">Node or <see cref="Boundary"/> id.</param>
/// <param name="To">Node or <see cref="Boundary"/> id.</param>
/// <param name="AreaM2">Cross-section, m²; &gt; 0.</param>
/// <param name="DiameterM">Hydraulic diameter, m; &gt; 0.</param>
/// <param name="LengthM">Length, m; ≥ 0.</param>
/// <param name="RoughnessM">Wall roughness, m; ≥ 0.</param>
/// <param name="Loss">Σζ, –; ≥ 0.</param>
/// <param name="ColdSide">What takes heat from it; its conductance is the pattern's.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record Passage(
    string Id, string From, string To, double AreaM2, double DiameterM, double LengthM, double RoughnessM, double Loss,
    Origin Origin, ColdSide ColdSide = ColdSide.None) : Link(Id, From, To, Origin)
{
    /// <summary>How its cross-section is made up; null when it is one round hole.</summary>
    public PassageShape? Shape { get; init; }

    /// <summary>A chamber known only by its cross-section and loss coefficient.</summary>
    public static Passage Chamber(string id, string from, string to, double areaM2, double loss, Origin origin) =>
        new(id, from, to, areaM2, Math.Sqrt(4 * areaM2 / Math.PI), 0, 0, loss, origin);
}

/// <summary>The combustion blower.</summary>
/// <param name="Id">Stable id, lower case with hyphens.</param>
/// <param name="From">Node or <see cref="Boundary"/> id.</param>
/// <param name="To">Node or <see cref="Boundary"/> id.</param>
/// <param name="Curve">Its pressure over flow.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record Blower(string Id, string From, string To, FanCurve Curve, Origin Origin) : Link(Id, From, To, Origin);

/// <summary>The vent run: geometry from the site, or the pattern's usual run.</summary>
/// <param name="Id">Stable id, lower case with hyphens.</param>
/// <param name="From">Node or <see cref="Boundary"/> id.</param>
/// <param name="To">Node or <see cref="Boundary"/> id.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record VentLink(string Id, string From, string To, Origin Origin) : Link(Id, From, To, Origin);

/// <summary>The air path of a pattern: what is joined to what.</summary>
/// <param name="Nodes">Places in the order gas passes them in use.</param>
/// <param name="Links">Ways between them.</param>
/// <param name="FireNode">The node into which the fuel burns.</param>
/// <param name="FlueNode">The node whose gas a flue probe samples.</param>
public sealed record Topology(IReadOnlyList<Node> Nodes, IReadOnlyList<Link> Links, string FireNode, string FlueNode);
