namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>The shape a gasket comes in.</summary>
public enum GasketForm
{
    /// <summary>Rope in a channel.</summary>
    Rope,
    /// <summary>Flat tape, often with an adhesive face.</summary>
    Tape,
    /// <summary>Cut from sheet or moulded flat.</summary>
    Sheet,
    /// <summary>Moulded ring or profile.</summary>
    Ring,
    /// <summary>A bead of sealant.</summary>
    Bead,
}

/// <summary>What leaks where a gasket fails.</summary>
public enum SealingSide
{
    /// <summary>Below room pressure in use: a leak draws room air in.</summary>
    Suction,
    /// <summary>Above room pressure in use: a leak puts exhaust into the room.</summary>
    Pressure,
    /// <summary>Water under pressure.</summary>
    Water,
}

/// <summary>A gasket or seal: where, what, which side, when to replace.</summary>
/// <param name="Id">Stable id within the pattern, lower case with hyphens.</param>
/// <param name="Where">Where it seals.</param>
/// <param name="Form">Its shape.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="Size">Size class, e.g. <c>5/8 in</c>; empty when it is cut to the part.</param>
/// <param name="Side">Suction or pressure.</param>
/// <param name="ReplaceWhen">When it is replaced.</param>
/// <param name="Origin">Where this comes from.</param>
public sealed record Gasket(
    string Id, string Where, GasketForm Form, string Material, string Size, SealingSide Side, string ReplaceWhen, Origin Origin)
{
    /// <summary>The link of the air path that is its leak; null when the air path does not count it.</summary>
    public string? Link { get; init; }
}
