using Emberwright.Stove.Controls;

namespace Emberwright.Stove.Patterns;

/// <summary>Nameplate figures that parts of a family usually bear, as its wiring states them; common practice, no source.</summary>
public static class TypicalParts
{
    /// <summary>Motors, igniter and fuse: power, resistance cold and unpowered, running current.</summary>
    /// <param name="pattern">The family.</param>
    public static IReadOnlyList<(string Name, PartRating Rating)> Of(Pattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        return [.. pattern.Wiring.Components.Select(c => (c.Name, Rating: Rating(c))).Where(p => p.Rating is not null).Select(p => (p.Name, p.Rating!))];
    }

    private static PartRating? Rating(WiringComponent part) => part switch
    {
        Motor m => new PartRating(m.Id, null, m.WindingOhm, m.RunningA, null),
        Igniter g => new PartRating(g.Id, g.RatedW, g.RatedV * g.RatedV / g.RatedW / g.HotToCold, g.RatedW / g.RatedV, null),
        Fuse f => new PartRating(f.Id, null, null, f.RatedA, null),
        _ => null,
    };
}
