using System.Reflection;
using Emberwright.Visits;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Microsoft.JSInterop;

namespace Emberwright.Field.Store;

/// <summary>One visit on this phone. Immutable; a new entry makes a new one.</summary>
/// <param name="journal">Its entries.</param>
/// <param name="demo">True for those that come with the app.</param>
/// <param name="problems">What could not be read in it.</param>
public sealed class BookVisit(VisitJournal journal, bool demo, IReadOnlyList<Problem> problems)
{
    private Visit? visit;

    /// <summary>Id of the visit.</summary>
    public string Id => Journal.Header.Visit;

    /// <summary>Its entries.</summary>
    public VisitJournal Journal { get; } = journal;

    /// <summary>True for those that come with the app.</summary>
    public bool Demo { get; } = demo;

    /// <summary>What could not be read in it.</summary>
    public IReadOnlyList<Problem> Problems { get; } = problems;

    /// <summary>What the entries come to.</summary>
    public Visit Visit => visit ??= Visit.Fold(Journal);

    /// <summary>The same visit with another state of its journal.</summary>
    public BookVisit With(VisitJournal later, IReadOnlyList<Problem>? more = null) => new(later, Demo, [.. Problems.Union(more ?? [])]);
}

/// <summary>
/// All visits on this phone, in memory and in the store. The only place that writes: an entry stands in memory, and so
/// on any screen, only after it has reached the disk.
/// </summary>
public sealed class Book(JournalStore store, Names names, Preferences preferences, Shelf shelf, TimeProvider time)
{
    private const string Unnamed = "unnamed";
    private const int MostTries = 20;
    // Visits kept in memory beside the open ones: instruments and cards are looked for among them.
    private const int Latest = 40;
    private readonly Dictionary<string, BookVisit> visits = [];
    private readonly HashSet<string> indexing = [];

    /// <summary>Raised after any visit changed.</summary>
    public event Action? Changed;

    /// <summary>How many visits are on this phone.</summary>
    public int Count { get; private set; }

    /// <summary>The visits in memory: every open one, the latest that are closed, and those opened since; in no order.</summary>
    public IReadOnlyCollection<BookVisit> Visits => visits.Values;

    /// <summary>The visit of an id, or null when it is not in memory; see <see cref="Open"/>.</summary>
    public BookVisit? Find(string id) => visits.GetValueOrDefault(id);

    /// <summary>True when the browser has cleared what this phone once held.</summary>
    public bool WasCleared { get; private set; }

    /// <summary>Brings a visit into memory.</summary>
    /// <returns>False when it is not on this phone.</returns>
    public async Task<bool> Open(string id)
    {
        if (!visits.ContainsKey(id) && await store.Visit(id) is { } kept) await Hold([kept]);
        return visits.ContainsKey(id);
    }

    /// <summary>Reads what a start needs; on the very first start lays out the demo firm.</summary>
    public async Task Load()
    {
        WasCleared = await store.WasCleared();
        var start = await store.Start(Latest);
        await Hold(start.Visits);
        Count = start.Count;
        _ = ReadOn(start);
        await store.Follow(DotNetObjectReference.Create(this));
        if (preferences.DemoSeen || WasCleared) return;
        await LayOutDemo();
        await preferences.SawDemo();
    }

    /// <summary>Called by the store when another tab has written to a visit.</summary>
    [JSInvokable]
    public async Task Written(string visit)
    {
        if (await store.Visit(visit) is not { } kept) return;
        await Hold([kept]);
        Changed?.Invoke();
    }

    /// <summary>Writes entries, now and after everything the visit holds: all of them or none.</summary>
    public async Task<IReadOnlyList<Entry>> Write(string visit, params IReadOnlyList<EntryBody> bodies)
    {
        for (var tries = 0; tries < MostTries; tries++)
        {
            var journal = visits[visit].Journal;
            var written = new List<Entry>();
            foreach (var body in bodies)
            {
                written.Add(Factory().Make(journal, await names.Hide(body)));
                journal = journal.Append(written[^1]);
            }
            if (await Add(visit, written)) return written;
        }
        throw Busy();
    }

    private static JSException Busy() => new("Another tab writes to this visit all the time. Close it.");

    // False when another tab was quicker; what it wrote is read in then.
    private async Task<bool> Add(string visit, IReadOnlyList<Entry> entries)
    {
        var held = visits[visit];
        if (!await store.Append(visit, entries, held.Journal.Entries.Count))
        {
            await Written(visit);
            return false;
        }
        Index(visit);
        Set(visits[visit].With(names.With(entries.Aggregate(visits[visit].Journal, (all, entry) => all.Append(entry)))));
        return true;
    }

    /// <summary>What takes an entry back: a correction that withdraws it. The entry stays in the journal, struck through.</summary>
    public static CorrectionBody Withdrawal(string entry) => new(entry, null, "taken back");

    /// <summary>Begins a visit with its first entries.</summary>
    /// <returns>The visit's id.</returns>
    public async Task<string> Begin(IEnumerable<EntryBody> bodies)
    {
        var journal = VisitJournal.Begin(Guid.CreateVersion7(time.GetUtcNow()).ToString());
        foreach (var body in bodies) journal = Factory().Append(journal, await names.Hide(body));
        journal = names.With(journal);
        await store.Begin(journal, demo: false);
        Count++;
        Set(new(journal, false, []));
        Index(journal.Header.Visit);
        return journal.Header.Visit;
    }

    /// <summary>Takes a visit file in. A visit that is here already gains the entries it lacks; nothing is lost on either side.</summary>
    /// <returns>The visit taken in.</returns>
    /// <exception cref="FormatException">The file is no visit file; the message says why.</exception>
    public async Task<BookVisit> TakeIn(string text)
    {
        var file = VisitFile.Read(text);
        if (file.Journal.Header.Visit.Length == 0)
            throw new FormatException(file.Problems is [var first, ..] ? first.ToString() : T("Book.this-is-not-a-visit-file"));
        return await TakeIn(file, demo: false);
    }

    /// <summary>Lays out the visits of the demo firm that come with the app.</summary>
    public async Task LayOutDemo()
    {
        var assembly = Assembly.GetExecutingAssembly();
        foreach (var name in assembly.GetManifestResourceNames().Where(name => name.EndsWith(".jsonl", StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            await TakeIn(VisitFile.Read(await reader.ReadToEndAsync()), demo: true);
        }
    }

    /// <summary>Removes the demo firm's visits from this phone.</summary>
    public async Task RemoveDemo()
    {
        await store.RemoveDemo();
        foreach (var visit in visits.Values.Where(visit => visit.Demo).ToArray()) visits.Remove(visit.Id);
        var start = await store.Start(Latest);
        Count = start.Count;
        Changed?.Invoke();
        await ReadOn(start);
    }

    /// <summary>Takes a visit file in without saying so to the screens; <see cref="Refresh"/> does, once all are in.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="demo">True for the demo firm's.</param>
    public async Task TakeInQuietly(string text, bool demo)
    {
        var file = VisitFile.Read(text);
        if (file.Journal.Header.Visit.Length > 0) await Keep(file, demo);
    }

    /// <summary>Reads the start anew and makes the lines that are missing.</summary>
    public async Task Refresh()
    {
        var start = await store.Start(Latest);
        await Hold(start.Visits);
        Count = start.Count;
        Changed?.Invoke();
        await ReadOn(start);
    }

    /// <summary>The journal of a visit as the store keeps it.</summary>
    public static VisitFile Parse(KeptVisit kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        return VisitFile.Read(string.Join('\n', [kept.Header, .. kept.Lines, ""]));
    }

    /// <summary>Erases a person's words from a visit on request. Its entries stay, and so does what was signed.</summary>
    /// <param name="id">The visit.</param>
    /// <param name="person">The person.</param>
    /// <param name="asked">Who asked and how.</param>
    /// <returns>References to what was kept beside the visit and is gone.</returns>
    public async Task<IReadOnlyList<string>> Erase(string id, PersonErased person, string? asked)
    {
        if (!await Open(id) || Erasure.Of(Find(id)!.Visit, person, asked) is not { Says: { } says } erasure) return [];
        await Write(id, says);
        await store.Redact(id, erasure.Lines);
        await names.Forget(erasure.Blobs);
        Set(Find(id)!.With(Find(id)!.Journal.Merge(erasure.Journal)));
        return erasure.Blobs;
    }

    // What no first screen waits for: the visits made last, a few at a time, and the lines that are missing.
    private async Task ReadOn(KeptStart start)
    {
        await Task.Delay(1);
        foreach (var kept in start.Count > start.Visits.Count ? await store.LatestVisits(Latest) : [])
        {
            if (visits.ContainsKey(kept.Visit)) continue;
            await Hold([kept]);
            await Task.Delay(1);
        }

        await shelf.CatchUp(start.Missing, Folded);
        Changed?.Invoke();
    }

    // An open visit whose line was missing is brought into memory, where it belongs.
    private async Task<IReadOnlyList<Visit>> Folded(IEnumerable<KeptVisit> kept)
    {
        var files = kept.Select(one => (Kept: one, File: Parse(one))).ToArray();
        await names.Learn(files.Select(f => f.File.Journal));
        var folded = new List<Visit>();
        foreach (var (one, file) in files)
        {
            var held = new BookVisit(names.With(file.Journal), one.Demo, file.Problems);
            if (held.Visit.Seal is null) visits.TryAdd(one.Visit, held);
            folded.Add(held.Visit);
        }

        return folded;
    }

    private async Task Hold(IReadOnlyList<KeptVisit> kept)
    {
        var files = kept.Select(one => (Kept: one, File: Parse(one))).ToArray();
        await names.Learn(files.Select(f => f.File.Journal));
        foreach (var (one, file) in files) visits[one.Visit] = new(names.With(file.Journal), one.Demo, file.Problems);
    }

    // Lines are made when the hand rests: a step of the work does not wait for them, and a start makes those it finds missing.
    private void Index(string visit)
    {
        if (!indexing.Add(visit)) return;
        _ = Task.Delay(700).ContinueWith(async _ =>
        {
            indexing.Remove(visit);
            if (Find(visit) is { } held) await shelf.Put(held.Visit);
        }, TaskScheduler.Current);
    }

    private async Task<BookVisit> TakeIn(VisitFile file, bool demo)
    {
        var taken = await Keep(file, demo);
        Set(taken);
        Index(taken.Id);
        return taken;
    }

    private async Task<BookVisit> Keep(VisitFile file, bool demo)
    {
        var id = file.Journal.Header.Visit;
        if (!await Open(id))
        {
            await names.Take(file.Journal);
            await store.Begin(file.Journal, demo);
            Count++;
            return new(file.Journal, demo, file.Problems);
        }
        for (var tries = 0; tries < MostTries; tries++)
        {
            var merged = Find(id)!.Journal.Merge(file.Journal);
            var (lines, news) = JournalStore.Gained(Find(id)!.Journal, merged);
            if (lines.Count > 0) await store.Redact(id, lines);
            await names.Take(merged);
            if (await Add(id, news)) return Find(id)!.With(merged, file.Problems);
        }
        throw Busy();
    }

    private BookVisit Set(BookVisit visit)
    {
        visits[visit.Id] = visit;
        Changed?.Invoke();
        return visit;
    }

    private EntryFactory Factory() =>
        new(preferences.Device, preferences.Author.Length > 0 ? preferences.Author : Unnamed, time, at => Guid.CreateVersion7(at));
}
