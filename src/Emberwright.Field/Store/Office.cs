using Emberwright.Visits;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Store;

/// <summary>
/// The firm's book on this phone: read when first needed, and the only place that writes to it. Customers' names,
/// addresses and telephones go into the book as references to bytes beside it, so that a person can be erased.
/// </summary>
public sealed class Office(JournalStore store, Names names, Preferences preferences, TimeProvider time)
{
    private const string InBook = "instruments-in-book";
    private Task? opening;
    private IReadOnlyList<Entry> last = [];

    /// <summary>Raised after the book changed.</summary>
    public event Action? Changed;

    /// <summary>What the book comes to; empty until it is opened.</summary>
    public FirmBook Book { get; private set; } = FirmBook.Fold(FirmFile.Begin("unopened"));

    /// <summary>What the last step was, in words; null when there is nothing to take back.</summary>
    public string? LastSaid { get; private set; }

    /// <summary>Reads the book; once.</summary>
    public Task Open() => opening ??= Read();

    /// <summary>Reads every customer's words, which only lists of customers need.</summary>
    public async Task LearnNames()
    {
        await Open();
        await names.Learn(Book.Journal);
    }

    /// <summary>Reads one customer's words.</summary>
    public async Task<Customer?> Customer(string? id)
    {
        await Open();
        if (Book.Find<Customer>("customer", id) is not { } customer) return null;
        await names.Learn(customer.References);
        return customer.With(Words);
    }

    /// <summary>The words of a reference; null when they were erased or not read yet.</summary>
    public string? Words(string reference) => names.Words(reference);

    /// <summary>Writes entries that belong to one step: all of them or none.</summary>
    /// <param name="bodies">The entries.</param>
    /// <param name="said">The step in words.</param>
    public async Task Write(IReadOnlyList<EntryBody> bodies, string said)
    {
        if (bodies.Count == 0) return;
        await Open();
        (last, LastSaid) = (await Append(bodies), said);
        await Carry();
        Changed?.Invoke();
    }

    private async Task<IReadOnlyList<Entry>> Append(IReadOnlyList<EntryBody> bodies)
    {
        if (bodies.Count == 0) return [];
        var journal = Book.Journal;
        var written = new List<Entry>();
        foreach (var body in bodies)
        {
            written.Add(Factory().Make(journal, await names.Hide(body)));
            journal = journal.Append(written[^1]);
        }

        await store.AppendBook(journal, written, demo: false);
        Book = FirmBook.Fold(journal);
        return written;
    }

    /// <summary>Takes the last step back. Its entries stay in the book, withdrawn.</summary>
    public async Task Undo()
    {
        if (last.Count == 0) return;
        await Write([.. last.Select(entry => new CorrectionBody(entry.Id, null, "taken back"))], T("Office.taken-back"));
        (last, LastSaid) = ([], null);
        Changed?.Invoke();
    }

    /// <summary>Takes a book in: one from another device of the same firm is put together with this; any other only fills an empty one.</summary>
    /// <param name="text">The book's text.</param>
    /// <param name="demo">True for the demo firm's.</param>
    /// <exception cref="FormatException">It is no book, or another firm's; the message says so.</exception>
    public async Task TakeIn(string text, bool demo)
    {
        await Open();
        var file = FirmFile.Read(text);
        if (file.Journal.Header.Visit.Length == 0) throw new FormatException(file.Problems is [var first, ..] ? first.ToString() : T("Office.this-is-not-a-firms-book"));
        if (Book.Journal.Entries.Count > 0 && file.Journal.Header.Visit != Book.Journal.Header.Visit)
        {
            if (demo) return;
            throw new FormatException(T("Office.this-is-the-book-of-another"));
        }

        var merged = Book.Journal.Entries.Count > 0 ? Book.Journal.Merge(file.Journal) : file.Journal;
        var (lines, news) = JournalStore.Gained(Book.Journal, merged);
        await store.RedactBook(lines);
        await store.AppendBook(merged, news, demo);
        await names.Take(merged);
        Set(merged);
        await Carry();
    }

    /// <summary>Forgets what was read, after the demo firm went.</summary>
    public async Task Reopen()
    {
        (opening, last, LastSaid) = (null, [], null);
        await Open();
        Changed?.Invoke();
    }

    /// <summary>Erases a person's words from the book on request. What stays is that there was somebody, and that they were erased.</summary>
    /// <param name="customers">Ids of the person's records.</param>
    /// <param name="person">The person.</param>
    /// <param name="asked">Who asked and how.</param>
    /// <param name="keys">Keys of stoves that name the household, and what each goes by from now on.</param>
    /// <param name="ofVisits">References erased from the person's visits.</param>
    /// <param name="also">Further entries to write with it.</param>
    public async Task Erase(
        IReadOnlyList<string> customers, PersonErased person, string? asked, IReadOnlyDictionary<string, string> keys, IReadOnlyList<string> ofVisits, IReadOnlyList<EntryBody> also)
    {
        var erasure = Erasure.Of(Book, customers, person, asked, keys, ofVisits);
        await Write([erasure.Says!, .. customers.Select(id => new Archived("customer", id)), .. also], T("Office.erased"));
        await store.RedactBook(erasure.Lines);
        await names.Forget(erasure.Blobs);
        // What is erased cannot be brought back.
        (last, LastSaid) = ([], null);
        Set(Book.Journal.Merge(erasure.Journal));
    }

    private async Task Read()
    {
        var kept = await store.Book();
        var journal = kept.Header is null
            ? FirmFile.Begin(Guid.CreateVersion7(time.GetUtcNow()).ToString())
            : FirmFile.Read(string.Join('\n', [kept.Header, .. kept.Lines, ""])).Journal;
        Book = FirmBook.Fold(journal);
        await TakeOver();
        await Carry();
    }

    // Instruments that a phone named before the book knew their kind stand in the book from now on.
    private async Task TakeOver()
    {
        if (await store.Setting(InBook) is not null) return;
        string[] known = [.. Book.Of<Instrument>().Select(i => i.Body.Name).OfType<string>()];
        await Append([.. preferences.Instruments.Where(own => !known.Contains(own.Name))
            .Select(own => new Instrument(Guid.CreateVersion7(time.GetUtcNow()).ToString(), own.Name, CalibratedUntil: own.Until, Tool: own.Tool))]);
        await store.KeepSetting(InBook, "yes");
    }

    private Task Carry() => preferences.Carry([.. Book.Instruments.Where(i => i.Tool is not null && i.Name is { Length: > 0 }).Select(i => new OwnInstrument(i.Tool!.Value, i.Name!, i.CalibratedUntil))]);

    private void Set(VisitJournal journal)
    {
        Book = FirmBook.Fold(journal);
        Changed?.Invoke();
    }

    private EntryFactory Factory() =>
        new(preferences.Device, preferences.Author.Length > 0 ? preferences.Author : "unnamed", time, at => Guid.CreateVersion7(at));
}
