// Question: are the entries that a signed visit rests on still all there and unchanged?
// Equation: hash = SHA-256 of the UTF-8 text of these lines, each ended by a line feed: for every covered entry, sorted
//   by id, "id SHA-256-of-its-line"; for every device, sorted, "device last-seq"; "engine version"; for every figure,
//   sorted by name, "name=value".
// Validity: any set of entries, in whatever order they arrived; a chain of hashes would depend on the order.
// Assumptions: the hash is printed on the signed report. It shows a change; it does not tell who made it.
// Where a person's words were erased from an entry, its line as first written is known by its hash alone.
// Source: SHA-256, FIPS 180-4.
using System.Security.Cryptography;
using System.Text;

namespace Emberwright.Visits.Journal;

/// <summary>How a journal stands to its seal.</summary>
/// <param name="Entry">The seal's entry.</param>
/// <param name="Body">What it says.</param>
/// <param name="Intact">True when everything it covers is here and unchanged.</param>
/// <param name="Missing">Ids it covers that are not here.</param>
/// <param name="Addenda">Entries it does not cover; they came later and are shown as such.</param>
/// <param name="Erased">Entries it covers from which a person's words were erased since: it goes by the hash of what they were.</param>
public sealed record SealCheck(Entry Entry, SealBody Body, bool Intact, IReadOnlyList<string> Missing, IReadOnlyList<Entry> Addenda, IReadOnlyList<Entry> Erased);

/// <summary>Seals a journal and checks a sealed one.</summary>
public static class Seal
{
    /// <summary>The body of a seal over everything in the journal now.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="engine">Version of the engine that computed the figures.</param>
    /// <param name="figures">Every figure shown, by name, as written.</param>
    public static SealBody Over(VisitJournal journal, string engine, IReadOnlyDictionary<string, string> figures)
    {
        ArgumentNullException.ThrowIfNull(journal);
        var last = new SortedDictionary<string, long>(StringComparer.Ordinal);
        foreach (var device in journal.Entries.GroupBy(e => e.Device)) last[device.Key] = device.Max(e => e.Seq);
        var sorted = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, value) in figures) sorted[name] = value;
        var covers = journal.Entries.Select(e => e.Id).Distinct().Order(StringComparer.Ordinal).ToArray();
        return new SealBody(Hash(journal.Entries, last, engine, sorted), engine, covers, last, sorted);
    }

    /// <summary>The latest seal of a journal, checked; null when there is none.</summary>
    public static SealCheck? Check(VisitJournal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        var entry = journal.Entries.LastOrDefault(e => e.Body is SealBody);
        if (entry?.Body is not SealBody seal) return null;
        var ids = seal.Covers.ToHashSet(StringComparer.Ordinal);
        var covered = journal.Entries.Where(e => ids.Contains(e.Id)).ToArray();
        var missing = ids.Except(covered.Select(e => e.Id)).Order(StringComparer.Ordinal).ToArray();
        var addenda = journal.Entries.Where(e => e != entry && !ids.Contains(e.Id)).ToArray();
        return new SealCheck(entry, seal, Hash(covered, seal.LastSeq, seal.Engine, seal.Figures) == seal.Hash, missing, addenda, [.. covered.Where(e => e.Was is not null)]);
    }

    private static string Hash(
        IEnumerable<Entry> covered, IReadOnlyDictionary<string, long> lastSeq, string engine, IReadOnlyDictionary<string, string> figures)
    {
        var text = new StringBuilder();
        foreach (var entry in covered.OrderBy(e => e.Id, StringComparer.Ordinal).ThenBy(e => e.Line, StringComparer.Ordinal))
            text.Append(entry.Id).Append(' ').Append(entry.LineHash()).Append('\n');
        foreach (var (device, seq) in lastSeq.OrderBy(d => d.Key, StringComparer.Ordinal)) text.Append(device).Append(' ').Append(seq).Append('\n');
        text.Append("engine ").Append(engine).Append('\n');
        foreach (var (name, value) in figures.OrderBy(f => f.Key, StringComparer.Ordinal)) text.Append(name).Append('=').Append(value).Append('\n');
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }
}
