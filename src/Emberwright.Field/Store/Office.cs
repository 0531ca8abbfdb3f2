using Emberwright.Visits;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Store;

/// <summary>
/// The firm's book on this phone: read when first needed, and the only place that writes to it. Customers' names,
/// addresses and telephones go into the book as references to bytes beside it, so that a person can be erased.
/// </summary>
public sealed class Office(JournalStore store, Preferences preferences, TimeProvider time)
{
    private readonly Dictionary<string, string> words = new(StringComparer.Ordinal);
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

    /// <summary>The words of a reference; null when they were erased.</summary>
    public string? Words(string reference) => words.GetValueOrDefault(reference);

    /// <summary>Writes entries that belong to one step: all of them or none.</summary>
    /// <param name="bodies">The entries.</param>
    /// <param name="said">The step in words.</param>
    public async Task Write(IReadOnlyList<EntryBody> bodies, string said)
    {
        if (bodies.Count == 0) return;
        await Open();
        var journal = Book.Journal;
        var written = new List<Entry>();
        foreach (var body in bodies)
        {
            written.Add(Factory().Make(journal, body is Customer customer ? await Hidden(customer) : body));
            journal = journal.Append(written[^1]);
        }

        await store.AppendBook(journal, written, demo: false);
        (last, LastSaid) = (written, said);
        Set(journal);
    }

    /// <summary>Takes the last step back. Its entries stay in the book, withdrawn.</summary>
    public async Task Undo()
    {
        if (last.Count == 0) return;
        await Write([.. last.Select(entry => new CorrectionBody(entry.Id, null, "taken back"))], "Taken back");
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
        if (file.Journal.Header.Visit.Length == 0) throw new FormatException(file.Problems is [var first, ..] ? first.ToString() : "This is not a firm's book.");
        if (Book.Journal.Entries.Count > 0 && file.Journal.Header.Visit != Book.Journal.Header.Visit)
        {
            if (demo) return;
            throw new FormatException("This is the book of another firm. Only one firm can be on a phone.");
        }

        var merged = Book.Journal.Entries.Count > 0 ? Book.Journal.Merge(file.Journal) : file.Journal;
        await store.AppendBook(merged, [.. merged.Entries.Except(Book.Journal.Entries)], demo);
        await Remember(merged);
        Set(merged);
    }

    /// <summary>Forgets what was read, after the demo firm went.</summary>
    public async Task Reopen()
    {
        (opening, last, LastSaid) = (null, [], null);
        await Open();
        Changed?.Invoke();
    }

    /// <summary>Erases a customer's words on request. What stays is that there was one, and that it was erased.</summary>
    public async Task Erase(Customer customer, string asked)
    {
        string[] references = [.. Book.Of<Customer>().Where(f => Book.Into("customer", f.Body.Id) == customer.Id).SelectMany(f => f.Body.References).Distinct()];
        await store.Erase(references);
        foreach (var reference in references) words.Remove(reference);
        await Write([new Erased(customer.Id, references, asked.Length > 0 ? asked : null), new Archived("customer", customer.Id)], "Erased");
        // What is erased cannot be brought back.
        (last, LastSaid) = ([], null);
    }

    private async Task Read()
    {
        var kept = await store.Book();
        var journal = kept.Header is null
            ? FirmFile.Begin(Guid.CreateVersion7(time.GetUtcNow()).ToString())
            : FirmFile.Read(string.Join('\n', [kept.Header, .. kept.Lines, ""])).Journal;
        await Remember(journal);
        Book = FirmBook.Fold(journal);
    }

    private async Task Remember(VisitJournal journal)
    {
        foreach (var (reference, text) in await store.Texts(journal.Entries.Select(e => e.Body).OfType<Customer>().SelectMany(c => c.References))) words[reference] = text;
    }

    private async Task<Customer> Hidden(Customer customer) => customer with
    {
        Name = await Hidden(customer.Name),
        Address = await Hidden(customer.Address),
        Phone = await Hidden(customer.Phone),
        Mail = await Hidden(customer.Mail),
    };

    private async Task<string?> Hidden(string? text)
    {
        if (string.IsNullOrEmpty(text) || Blob.IsReference(text)) return text;
        var reference = await store.KeepText(text);
        words[reference] = text;
        return reference;
    }

    private void Set(VisitJournal journal)
    {
        Book = FirmBook.Fold(journal);
        Changed?.Invoke();
    }

    private EntryFactory Factory() =>
        new(preferences.Device, preferences.Author.Length > 0 ? preferences.Author : "unnamed", time, at => Guid.CreateVersion7(at));
}
