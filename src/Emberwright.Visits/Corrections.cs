using Emberwright.Visits.Journal;

namespace Emberwright.Visits;

/// <summary>
/// Applies corrections: the latest one that stands decides; one that is itself withdrawn does not stand, and one
/// that replaces another correction goes on to what that one corrected.
/// </summary>
internal sealed class Corrections
{
    private readonly Dictionary<string, Entry> byId = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<CorrectionBody>> decisive = new(StringComparer.Ordinal);

    public Corrections(IReadOnlyList<Entry> entries)
    {
        foreach (var entry in entries) byId.TryAdd(entry.Id, entry);
        var withdrawn = WithdrawnCorrections(entries);
        var dangling = new List<Entry>();
        foreach (var entry in entries)
        {
            if (entry.Body is not CorrectionBody body || withdrawn.Contains(entry.Id)) continue;
            var root = Root(body.Target);
            if (root is null) dangling.Add(entry);
            else if (body.Replacement is not null || !IsCorrection(body.Target))
                (decisive.TryGetValue(root, out var list) ? list : decisive[root] = []).Add(body);
        }

        Dangling = dangling;
    }

    /// <summary>Corrections of entries that are not here (yet).</summary>
    public IReadOnlyList<Entry> Dangling { get; }

    /// <summary>What an entry says now; null when it is withdrawn.</summary>
    public (EntryBody? Body, bool Corrected) Apply(Entry entry) =>
        decisive.TryGetValue(entry.Id, out var list) ? (list[^1].Replacement, true) : (entry.Body, false);

    private bool IsCorrection(string id) => byId.TryGetValue(id, out var entry) && entry.Body is CorrectionBody;

    // Later withdrawals are looked at first: whether one stands depends only on those after it in the order.
    private HashSet<string> WithdrawnCorrections(IReadOnlyList<Entry> entries)
    {
        var withdrawn = new HashSet<string>(StringComparer.Ordinal);
        foreach (var entry in entries.Reverse())
            if (entry.Body is CorrectionBody { Replacement: null } body && !withdrawn.Contains(entry.Id) && IsCorrection(body.Target))
                withdrawn.Add(body.Target);
        return withdrawn;
    }

    private string? Root(string target)
    {
        for (var steps = 0; steps <= byId.Count && byId.TryGetValue(target, out var entry); steps++)
        {
            if (entry.Body is not CorrectionBody next) return target;
            target = next.Target;
        }

        return null;
    }
}
