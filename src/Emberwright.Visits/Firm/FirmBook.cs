using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>
/// What the firm's book comes to: records put together member by member, the latest value used and differences between
/// devices listed; corrections applied; duplicates joined; what was put away marked. Derived from the journal alone.
/// </summary>
public sealed class FirmBook
{
    private readonly Dictionary<(string Kind, string Id), RecordBody> records = [];
    private readonly Dictionary<(string Kind, string Id), string> joined = [];
    private readonly HashSet<(string Kind, string Id)> away = [];
    private readonly List<Difference> differences = [];
    private readonly Lazy<Dictionary<string, StoveRecord>> byLabel;

    private FirmBook(VisitJournal journal)
    {
        Journal = journal;
        var corrections = new Corrections(journal.Entries);
        Facts = [.. journal.Entries.Where(e => e.Body is not (CorrectionBody or UnreadBody or UnknownBody)).Select(e => Fact(e, corrections)).OfType<Fact<EntryBody>>()];
        foreach (var fact in Facts)
            if (fact.Body is Joined j) joined[(j.Of, j.From)] = j.Into;
        foreach (var same in Of<RecordBody>().GroupBy(f => (f.Body.Kind, Id: Into(f.Body.Kind, f.Body.Id))))
            records[same.Key] = Combine(same, same.Key.Id);
        foreach (var (key, last) in Of<Archived>().GroupBy(f => (f.Body.Of, Into(f.Body.Of, f.Body.Record))).Select(g => (g.Key, g.Last().Body)))
            if (last.Away) away.Add(key);
        byLabel = new(() => Stoves.Where(s => !string.IsNullOrEmpty(s.Serial)).DistinctBy(Key).ToDictionary(Key));
        string Key(StoveRecord s) => Into("stove", StoveKey.Of(s.Maker, s.Serial, null, null)!);
    }

    /// <summary>Folds a book's journal.</summary>
    public static FirmBook Fold(VisitJournal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        return new FirmBook(journal);
    }

    /// <summary>The journal.</summary>
    public VisitJournal Journal { get; }

    /// <summary>Everything that stands, in order.</summary>
    public IReadOnlyList<Fact<EntryBody>> Facts { get; }

    /// <summary>Members of records on which devices disagree, named kind/id.member.</summary>
    public IReadOnlyList<Difference> Differences => differences;

    /// <summary>The firm itself.</summary>
    public FirmDetails Firm => Find<FirmDetails>("firm", FirmDetails.Only) ?? new();

    /// <summary>The people on the list, by name.</summary>
    public IEnumerable<Person> People => Listed<Person>();

    /// <summary>The instruments on the list, by name.</summary>
    public IEnumerable<Instrument> Instruments => Listed<Instrument>();

    /// <summary>The parts on the list, by name.</summary>
    public IEnumerable<Part> Parts => Listed<Part>();

    /// <summary>The customers on the list, as written: their words may be references.</summary>
    public IEnumerable<Customer> Customers => Listed<Customer>();

    /// <summary>The stove cards on the list, by name.</summary>
    public IEnumerable<CardRecord> Cards => Listed<CardRecord>();

    /// <summary>Rates the firm's people set themselves.</summary>
    public IEnumerable<OwnRate> Rates => Listed<OwnRate>();

    /// <summary>The stoves that have a record and are on the list.</summary>
    public IEnumerable<StoveRecord> Stoves => Listed<StoveRecord>();

    /// <summary>The record of an id, put away or not, after joining; null when there is none.</summary>
    public T? Find<T>(string kind, string? id) where T : RecordBody => id is null ? null : records.GetValueOrDefault((kind, Into(kind, id))) as T;

    /// <summary>True for a record that was put away.</summary>
    public bool IsAway(string kind, string id) => away.Contains((kind, Into(kind, id)));

    /// <summary>Records that were put away.</summary>
    public IEnumerable<RecordBody> PutAway => records.Where(r => away.Contains(r.Key)).Select(r => r.Value).OrderBy(r => r.Title, StringComparer.OrdinalIgnoreCase);

    /// <summary>Where an id leads after joining: the record that stays, or the id itself.</summary>
    public string Into(string kind, string id)
    {
        // Two devices may each have joined the one to the other: the walk ends where it has been, at the least of the ring.
        var seen = new List<string> { id };
        while (joined.TryGetValue((kind, seen[^1]), out var next))
        {
            if (seen.IndexOf(next) is var at and >= 0) return seen.Skip(at).Order(StringComparer.Ordinal).First();
            seen.Add(next);
        }

        return seen[^1];
    }

    /// <summary>An id with every id that was joined to it.</summary>
    public IReadOnlyList<string> Joins(string kind, string id)
    {
        var into = Into(kind, id);
        return [into, .. joined.Keys.Where(k => k.Kind == kind && k.Id != into && Into(kind, k.Id) == into).Select(k => k.Id)];
    }

    /// <summary>The record of a stove known from visits: the one joined to its key, or the one with its maker and serial number.</summary>
    /// <param name="key">The stove's key.</param>
    public StoveRecord? StoveOf(string key) =>
        Joins("stove", key).Select(id => records.GetValueOrDefault(("stove", id)) as StoveRecord).FirstOrDefault(r => r is not null)
        ?? byLabel.Value.GetValueOrDefault(Into("stove", key));

    /// <summary>The facts of one kind, in order.</summary>
    public IEnumerable<Fact<T>> Of<T>() where T : EntryBody =>
        Facts.Where(f => f.Body is T).Select(f => new Fact<T>(f.Entry, (T)f.Body, f.Epoch, f.Corrected));

    private IEnumerable<T> Listed<T>() where T : RecordBody =>
        records.Where(r => r.Value is T && !away.Contains(r.Key)).Select(r => (T)r.Value).OrderBy(r => r.Title, StringComparer.OrdinalIgnoreCase).ThenBy(r => r.Id, StringComparer.Ordinal);

    // Members of a joined duplicate come first, so that what the staying record says is used.
    private RecordBody Combine(IEnumerable<Fact<RecordBody>> facts, string id)
    {
        var ordered = facts.OrderBy(f => f.Body.Id == id ? 1 : 0).ToArray();
        var own = ordered.Count(f => f.Body.Id == id);
        var found = new List<Difference>();
        var whole = Singletons.Combine(ordered, found, JournalFormat.Firm, $"{ordered[0].Body.Kind}/{id}")!;
        if (own == ordered.Length) differences.AddRange(found.Where(d => !d.Member.EndsWith(".id", StringComparison.Ordinal)));
        return whole with { Id = id };
    }

    private static Fact<EntryBody>? Fact(Entry entry, Corrections corrections) =>
        corrections.Apply(entry) is ({ } body, var corrected) ? new(entry, body, 0, corrected) : null;
}
