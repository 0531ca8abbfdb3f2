using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;

namespace Emberwright.Diagnosis;

/// <summary>
/// What was worked out about a stove and serves the next conclusion about it. Hand the same one to each conclusion of a visit: a
/// piece of evidence that leaves the fits alone then costs little. It never changes a conclusion, only how long it takes; for
/// another stove it begins anew. Not for two conclusions at a time.
/// </summary>
public sealed class Workings
{
    private Groundwork? _ground;

    internal Groundwork For(StoveCase stove, Catalogue catalogue)
    {
        if (_ground is { } known && ReferenceEquals(known.Catalogue.Faults, catalogue.Faults) && IsSame(known.Stove, stove)) return known;
        return _ground = new Groundwork(stove, new VirtualStoveModel(new VirtualStove(stove.Pattern, stove.Card, stove.Site)), catalogue);
    }

    /// <summary>True where two cases say the same, though one may have been read again from its file.</summary>
    private static bool IsSame(StoveCase a, StoveCase b) => ReferenceEquals(a, b)
        || ReferenceEquals(a.Pattern, b.Pattern) && a.Site == b.Site && ReferenceEquals(a.Rates, b.Rates)
        && (a.Card is null ? b.Card is null : b.Card is not null && (ReferenceEquals(a.Card, b.Card) || CardFile.Write(a.Card) == CardFile.Write(b.Card)))
        && a.History with { LastAsLeft = null } == b.History with { LastAsLeft = null }
        && (a.History.LastAsLeft ?? []).SequenceEqual(b.History.LastAsLeft ?? []);
}
