using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits;

/// <summary>
/// What a journal comes to: the stove, its site and past, the facts in order with corrections applied, and what is
/// still unclear. Derived from the journal alone; the same journal always gives the same visit.
/// </summary>
public sealed class Visit
{
    private readonly List<Difference> differences = [];

    private Visit(VisitJournal journal)
    {
        Journal = journal;
        var corrections = new Corrections(journal.Entries);
        Facts = FactsOf(journal.Entries, corrections, WordsOf(journal));
        Dangling = corrections.Dangling;
        Readings = [.. Of<ReadingBody>().Select(f => new Reading(f, f.Body.Phase ?? (f.Epoch == 0 ? Phase.AsFound : Phase.AsLeft)))];
        Appliance = Singletons.Combine(Of<ApplianceBody>(), differences);
        Site = Singletons.Combine(Of<SiteBody>(), differences);
        Customer = Singletons.Combine(Of<CustomerBody>(), differences);
        Call = Singletons.Combine(Of<VisitBody>(), differences);
        Past = Singletons.Combine(Of<HistoryBody>(), differences);
        Seal = Emberwright.Visits.Journal.Seal.Check(journal);
    }

    /// <summary>Folds a journal into the visit it records.</summary>
    public static Visit Fold(VisitJournal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        return new Visit(journal);
    }

    /// <summary>The journal.</summary>
    public VisitJournal Journal { get; }

    /// <summary>Id of the visit.</summary>
    public string Id => Journal.Header.Visit;

    /// <summary>Everything that stands, in order.</summary>
    public IReadOnlyList<Fact<EntryBody>> Facts { get; }

    /// <summary>Which stove it is; null when not yet recorded.</summary>
    public ApplianceBody? Appliance { get; }

    /// <summary>Where it stands, as entered.</summary>
    public SiteBody? Site { get; }

    /// <summary>Whose it is.</summary>
    public CustomerBody? Customer { get; }

    /// <summary>Why and by whom it is attended.</summary>
    public VisitBody? Call { get; }

    /// <summary>What is known of its past.</summary>
    public HistoryBody? Past { get; }

    /// <summary>Every reading, in order.</summary>
    public IReadOnlyList<Reading> Readings { get; }

    /// <summary>Readings before any work.</summary>
    public IEnumerable<Reading> AsFound => Readings.Where(r => r.Phase == Phase.AsFound);

    /// <summary>Readings after work, in order; the last of each observable is what the stove was left with.</summary>
    public IEnumerable<Reading> AsLeft => Readings.Where(r => r.Phase == Phase.AsLeft);

    /// <summary>The last as-left reading of each observable.</summary>
    public IEnumerable<Reading> LeftWith => AsLeft.GroupBy(r => r.Body.Observable).Select(same => same.Last());

    /// <summary>Number of actions done so far.</summary>
    public int Epoch => Facts.Count == 0 ? 0 : Facts[^1].Epoch;

    /// <summary>Members of facts on which devices disagree.</summary>
    public IReadOnlyList<Difference> Differences => differences;

    /// <summary>Corrections of entries that are not here.</summary>
    public IReadOnlyList<Entry> Dangling { get; }

    /// <summary>Lines that could not be read.</summary>
    public IEnumerable<Entry> Unread => Journal.Entries.Where(e => e.Body is UnreadBody);

    /// <summary>Entries of a kind this version does not know.</summary>
    public IEnumerable<Entry> Unknown => Journal.Entries.Where(e => e.Body is UnknownBody);

    /// <summary>The seal, checked; null while the visit is open.</summary>
    public SealCheck? Seal { get; }

    /// <summary>When it began: the first entry's time, or when it was booked for if nothing is recorded.</summary>
    public DateTimeOffset? Began => Facts.Count > 0 ? Facts[0].At : Call?.Booked;

    /// <summary>The day of the visit, by the technician's own clock.</summary>
    public DateOnly? Day => (Call?.Booked ?? Began) is { } time ? DateOnly.FromDateTime(time.DateTime) : null;

    /// <summary>The facts of one kind, in order.</summary>
    public IEnumerable<Fact<T>> Of<T>() where T : EntryBody =>
        Facts.Where(f => f.Body is T).Select(f => new Fact<T>(f.Entry, (T)f.Body, f.Epoch, f.Corrected));

    /// <summary>The time stated for each piece of work: the last entry of each, in order.</summary>
    public IEnumerable<Fact<LabourBody>> Labour => Of<LabourBody>().GroupBy(fact => fact.Body.Work).Select(same => same.Last());

    // A reference gives the words kept beside the journal; where they are not here it stays what it is.
    private static Func<string, string> WordsOf(VisitJournal journal)
    {
        var erased = journal.Erased.ToHashSet(StringComparer.Ordinal);
        return words => !Blob.IsReference(words) ? words
            : erased.Contains(words) ? PersonalWords.Erased
            : journal.Words.TryGetValue(words, out var kept) ? TextBlob.Words(System.Text.Encoding.UTF8.GetBytes(kept)) ?? words
            : words;
    }

    private static List<Fact<EntryBody>> FactsOf(IReadOnlyList<Entry> entries, Corrections corrections, Func<string, string> words)
    {
        var facts = new List<Fact<EntryBody>>();
        var epoch = 0;
        foreach (var entry in entries.Where(e => e.Body is not (CorrectionBody or UnreadBody or UnknownBody or SealBody)))
        {
            var (said, corrected) = corrections.Apply(entry);
            if (said is null) continue;
            var body = said.WithPersonal(words);
            if (body is ActionBody { Done: true } || epoch == 0 && body is ReadingBody { Phase: Phase.AsLeft }) epoch++;
            facts.Add(new Fact<EntryBody>(entry, body, epoch, corrected));
        }

        return facts;
    }
}
