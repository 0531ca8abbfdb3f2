using CsCheck;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Emberwright.Visits.Tests.Journal;

namespace Emberwright.Visits.Tests.Firm;

/// <summary>Makes firm's books as several devices would: each writes with its own clock, and some see each other's entries.</summary>
internal static class SomeRecords
{
    public static readonly Gen<EntryBody> Body = Gen.OneOf<EntryBody>(
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 9]).Select((id, n) => (EntryBody)new Person($"p{id}", Name: $"Name {n}")),
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 9]).Select((id, n) => (EntryBody)new Person($"p{id}", Phone: $"555-010{n}")),
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 5]).Select((id, n) => (EntryBody)new Part($"n{id}", Keep: n)),
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 2]).Where((a, b) => a != b).Select((a, b) => (EntryBody)new Joined("person", $"p{a}", $"p{b}")),
        Gen.Select(Gen.Int[0, 2], Gen.Bool).Select((id, away) => (EntryBody)new Archived("person", $"p{id}", away)),
        Gen.Int[0, 5].Select(n => (EntryBody)new Counted("n1", n)));

    public static readonly Gen<(int Device, int Seen, EntryBody Body, int ClockError)[]> Story =
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 4], Body, Gen.Int[-90, 90]).Array[0, 14];

    public static VisitJournal[] Play((int Device, int Seen, EntryBody Body, int ClockError)[] story)
    {
        var books = Enumerable.Range(0, 3).Select(_ => FirmFile.Begin("firm-1")).ToArray();
        for (var step = 0; step < story.Length; step++)
        {
            var (device, seen, body, error) = story[step];
            if (seen < 3) books[device] = books[device].Merge(books[seen]);
            books[device] = SomeEntries.Device(device, SomeEntries.Start.AddMinutes(step + error), step).Append(books[device], body);
        }

        return books;
    }

    public static VisitJournal Book(params EntryBody[] bodies)
    {
        var book = FirmFile.Begin("firm-1");
        for (var step = 0; step < bodies.Length; step++) book = SomeEntries.Device(1, SomeEntries.Start.AddMinutes(step), step).Append(book, bodies[step]);
        return book;
    }

    public static Quantity Q(string text) => Quantity.TryParse(text, out var quantity, out _) ? quantity : throw new ArgumentException(text);

    public static IReadOnlyList<EntryBody> EveryKind { get; } =
    [
        new FirmDetails(Name: "Tamarack & Vale Hearth Service", Address: "1 Weir Street", Phone: "555-0100", Currency: "USD", PerMinute: 1.5, Opening: "Good day,"),
        new Person("p1", "R. Sorrel", "555-0101", [new("solid-fuel inspection", "17-204", new DateOnly(2027, 6, 30)), new("ladder work")]),
        new Instrument("i1", "gauge", "88", "pressure", new DateOnly(2025, 11, 30), new DateOnly(2026, 11, 30), Tool.CoMeter),
        new Part("FO-1187", "gasket", "FO-1187", "FO-1188", ["KL-9", "KL-10"], 14.5, 2, "warranty 7", "Hob 40"),
        new Counted("FO-1187", 3),
        new Customer("c1", "Ottilie Brandreth", Blob.ReferenceTo([7]), "555-0114", "o@example.org", "dog", Q("1.1 t")),
        new StoveRecord("s1", "c1", "damper-insert", "Fennick & Oar", "Hob 40", "FO-40-20871", "120 V", "parlour", "L",
            [new("side to panelling", Q("4 in"), Q("3 in"))], [new("permit", Blob.ReferenceTo([9]), "B-117", "county", new DateOnly(2019, 10, 2), new DateOnly(2029, 10, 2))]),
        CardRecord.Of(new StoveCard { Pattern = "damper-insert", Name = "Hob 40", SensePort = "blower-inlet" }),
        new OwnRate(OwnRate.IdOf("damper-insert", RateOf.Fault, "igniter-dead"), "damper-insert", RateOf.Fault, "igniter-dead", 12.5, "our county's wet pellets"),
        new Joined("customer", "c7", "c1"),
        new Archived("part", "FO-1187", false),
        new Erased("c1", [Blob.ReferenceTo([7])], "by letter"),
        new Contact("s1", ContactAbout.SpringOffer, new DateOnly(2027, 3, 14), "yes"),
        new CorrectionBody("id", null, "typing slip"),
        new CorrectionBody("id", new Person("p1", "right"), "typing slip"),
    ];
}
