namespace Emberwright.Visits.Journal;

/// <summary>
/// The append-only set of the entries of a visit, or of the firm's book, in their order. Immutable: appending and merging give a new journal.
/// Merging is a set union, so it is commutative, associative and idempotent and cannot conflict.
/// It is not the visit: what the entries come to is <see cref="Visit.Fold"/>.
/// </summary>
public sealed class VisitJournal : IEquatable<VisitJournal>
{
    private static readonly Dictionary<string, string> NoWords = [];

    private VisitJournal(VisitHeader header, IReadOnlyList<Entry> entries, IReadOnlyDictionary<string, string> words)
    {
        Header = header;
        Entries = entries;
        Words = words.Count == 0 ? words : Kept(words, entries);
    }

    /// <summary>The first line of its file.</summary>
    public VisitHeader Header { get; }

    /// <summary>All entries, in order.</summary>
    public IReadOnlyList<Entry> Entries { get; }

    /// <summary>
    /// Words about people that entries name by reference, with their salt as <see cref="TextBlob"/> keeps them. They
    /// belong to no entry and no seal, and two journals with the same entries are equal whatever is kept beside them.
    /// </summary>
    public IReadOnlyDictionary<string, string> Words { get; }

    /// <summary>This journal with words kept beside it; those that are erased, or not what their reference says, are left out.</summary>
    /// <param name="words">Salted words by reference.</param>
    public VisitJournal With(IEnumerable<KeyValuePair<string, string>> words) => new(Header, Entries, Words.Concat(words).DistinctBy(w => w.Key).ToDictionary());

    /// <summary>References that entries say were erased.</summary>
    public IEnumerable<string> Erased => Erasures(Entries);

    /// <summary>A journal with nothing in it.</summary>
    /// <param name="visit">Id of the visit.</param>
    public static VisitJournal Begin(string visit) => new(VisitHeader.For(visit), [], NoWords);

    /// <summary>A journal of any format with nothing in it.</summary>
    public static VisitJournal Begin(string id, JournalFormat format) => new(VisitHeader.For(id, format), [], NoWords);

    /// <summary>A journal of given entries; the same entry twice is one.</summary>
    public static VisitJournal Of(VisitHeader header, IEnumerable<Entry> entries) => new(header, Union(entries), NoWords);

    /// <summary>This journal with one more entry.</summary>
    public VisitJournal Append(Entry entry) => new(Header, Union(Entries.Append(entry)), Words);

    /// <summary>The entries of both.</summary>
    /// <exception cref="ArgumentException">The other journal belongs to another visit.</exception>
    public VisitJournal Merge(VisitJournal other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (other.Header.Visit != Header.Visit || other.Header.Format != Header.Format)
            throw new ArgumentException($"The journals belong to two visits, {Header.Visit} and {other.Header.Visit}. Merge journals of one visit only.", nameof(other));
        return new(Later(Header, other.Header), Union(Entries.Concat(other.Entries)), Words.Concat(other.Words).DistinctBy(w => w.Key).ToDictionary());
    }

    /// <summary>
    /// Entries that claim the same identity but differ: one id with two lines, or one device and seq with two ids
    /// (a device restored from a backup that kept its old name). All are kept.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<Entry>> Clashes() =>
    [
        .. Entries.GroupBy(e => e.Id).Where(g => g.Count() > 1).Select(g => g.ToArray()),
        .. Entries.Where(e => e.Device != Entry.ByHand).GroupBy(e => (e.Device, e.Seq))
            .Where(g => g.Select(e => e.Id).Distinct().Count() > 1).Select(g => g.ToArray()),
    ];

    /// <inheritdoc/>
    public bool Equals(VisitJournal? other) => other is not null && Header == other.Header && Entries.SequenceEqual(other.Entries);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as VisitJournal);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Header, Entries.Count);

    // One line met in two files may have been given two derived places; the earlier one holds in any order of merging.
    private static Entry[] Union(IEnumerable<Entry> entries)
    {
        var sorted = WithoutErased([.. entries.GroupBy(e => (e.Id, e.Line)).Select(same => same.Min()!)]);
        Array.Sort(sorted);
        return sorted;
    }

    // A line from which words were erased takes the place of the line it was; of two such, the one that says less stays.
    private static Entry[] WithoutErased(Entry[] entries)
    {
        if (!entries.Any(e => e.Was is not null)) return entries;
        var stays = entries.Where(e => e.Was is not null).GroupBy(e => (e.Id, e.Was)).ToDictionary(g => g.Key, g => g.OrderBy(e => e.Line.Length).ThenBy(e => e.Line, StringComparer.Ordinal).First());
        return [.. entries.Where(e => !stays.TryGetValue((e.Id, e.LineHash()), out var less) || ReferenceEquals(less, e))];
    }

    private static IEnumerable<string> Erasures(IReadOnlyList<Entry> entries) =>
        entries.SelectMany(e => e.Body switch { ErasedBody visit => visit.Blobs, Firm.Erased person => person.Blobs, _ => [] });

    private static Dictionary<string, string> Kept(IReadOnlyDictionary<string, string> words, IReadOnlyList<Entry> entries)
    {
        var erased = Erasures(entries).ToHashSet(StringComparer.Ordinal);
        return words.Where(w => !erased.Contains(w.Key)).ToDictionary();
    }

    private static VisitHeader Later(VisitHeader a, VisitHeader b) =>
        a.Version != b.Version ? (a.Version > b.Version ? a : b) : string.CompareOrdinal(a.Line, b.Line) <= 0 ? a : b;
}
