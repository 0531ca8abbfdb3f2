using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

namespace Emberwright.DemoFirm;

/// <summary>The invented firm's book: itself, its one person, instruments, parts.</summary>
internal static class PartList
{
    public static string NumberOf(string action) => $"TV-{1000 + ActionList.All.Select(a => a.Id).ToList().IndexOf(action)}";

    public static VisitJournal Book(Chance chance, DateTimeOffset begun, IReadOnlyList<Household> houses)
    {
        var book = FirmFile.Begin(chance.Id(begun).ToString());
        var at = begun;
        foreach (var body in Bodies(houses))
        {
            at = at.AddSeconds(20);
            book = new EntryFactory("phone-vale-1", "R. Sorrel", new Standing(at), chance.Id).Append(book, body);
        }

        return book;
    }

    private static IEnumerable<EntryBody> Bodies(IReadOnlyList<Household> houses)
    {
        yield return new FirmDetails(Name: "Tamarack & Vale Hearth Service", Address: "2 Weir Street, Sorrel Mills, county of Orrin", Phone: "555-0100", Currency: "USD", PerMinute: 1.25);
        yield return new Person("r-sorrel", "R. Sorrel", "555-0101", [new("solid-fuel appliance inspection", "17-204", new DateOnly(2027, 6, 30)), new("work at height", "H-88", new DateOnly(2026, 12, 15))]);
        yield return new Instrument("gauge", "gauge", "88104", "pressure, 0.1 Pa", new DateOnly(2025, 11, 30), new DateOnly(2026, 11, 30));
        yield return new Instrument("analyser", "analyser", "A-2207", "O2, CO, temperature of flue gas", new DateOnly(2025, 9, 30), new DateOnly(2026, 9, 30));
        yield return new Instrument("co-meter", "CO meter", "C-19", "CO in room air", new DateOnly(2026, 3, 31), new DateOnly(2027, 3, 31));
        yield return new Instrument("meter", "meter", "M-5", "volts, amps, ohms", new DateOnly(2026, 1, 31), new DateOnly(2027, 1, 31));
        foreach (var action in ActionList.All.Where(a => a.Kind == RemedyKind.Replace && a.Id.StartsWith("replace-", StringComparison.Ordinal)))
        {
            yield return new Part(NumberOf(action.Id), action.Name.Replace("Replace the ", "", StringComparison.Ordinal), NumberOf(action.Id), Price: action.PartCost, Keep: action.PartCost < 40 ? 2 : 1);
            yield return new Counted(NumberOf(action.Id), action.PartCost < 40 ? 9 : 5);
        }

        for (var i = 0; i < houses.Count; i++)
            if (i % 10 == 0) yield return new StoveRecord($"s-{i:000}", Maker: houses[i].Maker, Serial: houses[i].Serial, Place: i % 20 == 0 ? "living room" : "kitchen", VentClass: "listed pellet vent");
    }

    private sealed class Standing(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now.ToUniversalTime();

        public override TimeZoneInfo LocalTimeZone { get; } = TimeZoneInfo.CreateCustomTimeZone("Orrin", now.Offset, "Orrin", "Orrin");
    }
}
