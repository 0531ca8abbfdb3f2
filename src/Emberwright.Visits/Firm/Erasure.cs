using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>What erasing a person changes in one journal.</summary>
/// <param name="Journal">The journal without the person's words, before <paramref name="Says"/> is written.</param>
/// <param name="Lines">Lines that take the place of others, with the id of each and the hash of what it was.</param>
/// <param name="Blobs">References to bytes to erase: words kept beside the journal, drawn signatures.</param>
/// <param name="Says">The entry that says so; null when nothing of the person stands there.</param>
public sealed record Erasure(VisitJournal Journal, IReadOnlyList<Entry> Lines, IReadOnlyList<string> Blobs, EntryBody? Says)
{
    // Labels and constructions share words with names; a seal's figures are the engine's.
    private static readonly HashSet<string> NoNames = ["appliance", "site", "part", "seal", "stove"];

    /// <summary>Erases a person from one of their visits.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="person">The person.</param>
    /// <param name="asked">Who asked and how.</param>
    public static Erasure Of(Visit visit, PersonErased person, string? asked)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(person);
        string[] blobs =
        [
            .. visit.Journal.Entries.SelectMany(e => PersonalWords.References(e.Body))
                .Concat(visit.Journal.Entries.Select(e => e.Body).OfType<SignatureBody>().Where(s => s.Role == Role.Customer).Select(s => s.Image).Where(Blob.IsReference).OfType<string>()).Distinct(),
        ];
        var changed = Without(visit.Journal, entry => PlainCustomer(entry.Body, person), person);
        return new(changed.Journal, changed.Lines, blobs, changed.Lines.Count + blobs.Length == 0 ? null : new ErasedBody(blobs, asked is null ? null : person.Erase(asked)));
    }

    /// <summary>Erases a person from the firm's book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="customers">Ids of the person's records.</param>
    /// <param name="person">The person.</param>
    /// <param name="asked">Who asked and how.</param>
    /// <param name="keys">Keys of stoves that name the household, and what each goes by from now on.</param>
    /// <param name="ofVisits">References erased from the person's visits, so that another device that takes the book in erases them too.</param>
    public static Erasure Of(
        FirmBook book, IReadOnlyCollection<string> customers, PersonErased person, string? asked, IReadOnlyDictionary<string, string> keys, IEnumerable<string>? ofVisits = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(keys);
        string[] blobs = [.. book.Journal.Entries.Select(e => e.Body).OfType<Customer>().Where(c => customers.Contains(c.Id)).SelectMany(c => c.References).Concat(ofVisits ?? []).Distinct()];
        var changed = Without(book.Journal, entry => entry.Body is Customer c && customers.Contains(c.Id) ? PlainCustomer(c, person) : person, person, keys);
        return new(changed.Journal, changed.Lines, blobs, new Erased(customers.FirstOrDefault() ?? "household", blobs, asked is null ? null : person.Erase(asked)));
    }

    private static (VisitJournal Journal, IReadOnlyList<Entry> Lines) Without(
        VisitJournal journal, Func<Entry, PersonErased> by, PersonErased person, IReadOnlyDictionary<string, string>? keys = null)
    {
        var text = new List<string>();
        foreach (var entry in journal.Entries)
        {
            var who = by(entry);
            if (Redaction.Of(entry, words => keys?.GetValueOrDefault(words) ?? who.Erase(words, parts: !NoNames.Contains(entry.Body.Kind))) is { } line) text.Add(line);
        }

        if (text.Count == 0) return (journal, []);
        var lines = VisitFile.Read(string.Join('\n', [journal.Header.Line, .. text, ""]), journal.Header.Format).Journal;
        return (journal.Merge(lines), lines.Entries);
    }

    // An entry about the person gives up all its words about a person, also those written otherwise than elsewhere.
    private static PersonErased PlainCustomer(EntryBody body, PersonErased person) =>
        body is CustomerBody or Customer or CorrectionBody ? new(person.Names.Concat(PersonalWords.In(body)), person.Addresses, person.Others) : person;
}
