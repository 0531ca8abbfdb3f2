namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>A place where ash settles or hides, and how it is reached.</summary>
/// <param name="Id">Stable id within the pattern, lower case with hyphens.</param>
/// <param name="Name">Name in the trade's words.</param>
/// <param name="Where">Where it is.</param>
/// <param name="Area">Area it is cleaned with.</param>
/// <param name="Reach">How it is reached and cleaned.</param>
/// <param name="Through">Panels it is reached through, by id; empty when it lies open.</param>
/// <param name="IsHidden">True when a look into the firebox does not show it.</param>
/// <param name="Origin">Where this comes from.</param>
public sealed record AshTrap(
    string Id, string Name, string Where, Area Area, string Reach, IReadOnlyList<string> Through, bool IsHidden, Origin Origin)
{
    /// <summary>The link of the air path that it chokes as it fills; null when it chokes none.</summary>
    public string? Link { get; init; }
}
