namespace Emberwright.Stove.Patterns;

/// <summary>
/// A brand-free family of construction: how fuel is fed, how fire is proved, where air goes, how controls are wired.
/// It is complete: with no card at all the tool works, with wider bands.
/// </summary>
public sealed record Pattern
{
    /// <summary>Stable id, lower case with hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>Name in the trade's words.</summary>
    public required string Name { get; init; }
}

/// <summary>What a technician knows of one make and model: overrides of its pattern. A portable file.</summary>
public sealed record StoveCard
{
    /// <summary>Pattern the card refines.</summary>
    public required string Pattern { get; init; }
}
