namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>
/// Something that opens or comes off so that an area can be worked on: cover, door, plate, cap, or a part that lifts out.
/// </summary>
/// <param name="Id">Stable id within the pattern, lower case with hyphens.</param>
/// <param name="Name">Name in the trade's words.</param>
/// <param name="Where">Where it is.</param>
/// <param name="OpensTo">What lies behind it.</param>
/// <param name="Fasteners">What holds it; empty when it only lifts out.</param>
/// <param name="Serves">Areas that are worked on through it, the main one first.</param>
/// <param name="Cautions">What can hurt or be ruined while it is opened.</param>
/// <param name="Origin">Where all this comes from.</param>
public sealed record AccessPanel(
    string Id, string Name, string Where, string OpensTo, IReadOnlyList<Fastener> Fasteners, IReadOnlyList<Area> Serves,
    IReadOnlyList<string> Cautions, Origin Origin)
{
    /// <summary>Panels that must be off first, by id.</summary>
    public IReadOnlyList<string> After { get; init; } = [];

    /// <summary>Id of the gasket under it; null when it lies bare.</summary>
    public string? Gasket { get; init; }

    /// <summary>What a card says of its fasteners in free words; empty when it says nothing.</summary>
    public string FastenersNote { get; init; } = "";

    /// <summary>The fasteners in words.</summary>
    public string FastenersText => FastenersNote.Length > 0 ? FastenersNote
        : Fasteners.Count == 0 ? "lifts out, no fasteners"
        : string.Join("; ", Fasteners.Select(f => f.Words));
}
