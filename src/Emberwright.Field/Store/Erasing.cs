using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Store;

/// <summary>Erases a person on request from everything this phone holds: visits, the firm's book, lists and search.</summary>
public sealed class Erasing(JournalStore store, Book visits, Office office, Shelf shelf, Preferences preferences, Screen screen)
{
    /// <summary>Erases a person.</summary>
    /// <param name="name">The name.</param>
    /// <param name="address">The address; null when none is known.</param>
    /// <param name="phone">The telephone; null when none is known.</param>
    /// <param name="record">Id of the customer's record in the book; null looks for one of that name and address.</param>
    /// <param name="asked">Who asked and how.</param>
    /// <returns>From how many visits.</returns>
    public async Task<int> Erase(string name, string? address, string? phone, string? record, string? asked)
    {
        await office.LearnNames();
        await screen.ForgetFirst();
        var first = new PersonErased([name], [address], [phone]);
        var records = office.Book.Of<Customer>().Select(c => (c.Body.Id, Said: c.Body.With(office.Words)))
            .Where(c => record is not null ? office.Book.Into("customer", c.Id) == record : c.Said.Name == name && (address is null || c.Said.Address is null || c.Said.Address == address)).ToArray();
        VisitSummary[] own = [.. (await store.EveryVisit()).Where(first.IsOf)];
        var person = new PersonErased(
            [name, .. own.Select(v => v.Customer), .. records.Select(r => r.Said.Name)],
            [address, .. own.Select(v => v.Address), .. records.Select(r => r.Said.Address)],
            [phone, .. own.Select(v => v.Phone), .. records.SelectMany(r => new[] { r.Said.Phone, r.Said.Mail })],
            [preferences.Author, .. office.Book.People.Select(p => p.Title)]);
        var gone = new List<string>();
        foreach (var visit in own) gone.AddRange(await visits.Erase(visit.Visit, person, asked));

        // A stove without a serial number goes by its household: from now on by the first of its visits.
        var keys = own.GroupBy(v => v.Stove).Where(g => g.Key.StartsWith("house/", StringComparison.Ordinal)).ToArray();
        var joins = keys.SelectMany(g => g.Skip(1).Select(v => new Joined("stove", "visit/" + v.Visit, "visit/" + g.First().Visit)));
        await office.Erase([.. records.Select(r => r.Id).Distinct()], person, asked, keys.ToDictionary(g => g.Key, g => "visit/" + g.First().Visit), gone, [.. joins]);
        await shelf.Put([.. own.Select(v => visits.Find(v.Visit)?.Visit).OfType<Emberwright.Visits.Visit>()]);
        await shelf.PutStoves(own.Select(v => v.Stove));
        return own.Length;
    }
}
