using System.Text;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Emberwright.Visits.Tests.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Firm;

/// <summary>A person who asks to be erased is erased: nothing tells who they were, and what was signed stays proven.</summary>
public class ErasureTests
{
    private const string Name = "Ottilie Brandreth", Address = "14 Millrace Lane, county of Orrin", Phone = "555-0114";
    private static readonly PersonErased Ottilie = new([Name], [Address], [Phone], ["R. Sorrel"]);
    private static readonly string[] Telling = ["Ottilie", "Brandreth", "Millrace", "555-0114"];

    private static readonly EntryBody[] Story =
    [
        new VisitBody(VisitKind.Breakdown, "Tamarack & Vale Hearth Service", "R. Sorrel"),
        new CustomerBody(Name, Address, Phone),
        new ApplianceBody("damper-insert", null, "Fennick & Oar", "Hob 40", "FO-40-20871"),
        new ComplaintBody("Mrs Brandreth says it smells since Ottilie cleaned it; call 555-0114."),
        SomeEntries.Reading(-27),
        new ConsentBody("estimate", true, "180", Name, true),
        new NoticeBody("crack", "firm", Name, true),
        new SignatureBody(Role.Customer, Name, Blob.ReferenceTo([4, 2])),
    ];

    private static VisitJournal Written(IEnumerable<EntryBody> story, bool seal = true)
    {
        var journal = VisitJournal.Begin("visit-1");
        var step = 0;
        foreach (var body in story) journal = SomeEntries.Device(1, SomeEntries.Start.AddMinutes(step), ++step).Append(journal, body);
        return seal ? SomeEntries.Device(1, SomeEntries.Start.AddHours(1), 90).Append(journal, Seal.Over(journal, "0.1.0", new Dictionary<string, string> { ["a"] = "b" })) : journal;
    }

    // As the app writes: words beside the journal, references in it.
    private static VisitJournal Kept(IEnumerable<EntryBody> story)
    {
        var words = new Dictionary<string, string>();
        byte n = 0;
        var hidden = story.Select(body => PersonalWords.Replace(body, text =>
        {
            var bytes = TextBlob.Bytes(text, Enumerable.Repeat(++n, 16).ToArray());
            words[Blob.ReferenceTo(bytes)] = Encoding.UTF8.GetString(bytes);
            return Blob.ReferenceTo(bytes);
        })).ToArray();
        return Written(hidden).With(words);
    }

    private static VisitJournal Erase(VisitJournal journal)
    {
        var erasure = Erasure.Of(Visit.Fold(journal), Ottilie, $"by letter of {Name}");
        return SomeEntries.Device(1, SomeEntries.Start.AddDays(9), 99).Append(erasure.Journal, erasure.Says!);
    }

    public static TheoryData<bool> BothWays() => [true, false];

    [Theory]
    [MemberData(nameof(BothWays))]
    public void Nothing_tells_who_it_was_and_the_seal_still_holds(bool kept)
    {
        var journal = kept ? Kept(Story) : Written(Story);
        Assert.True(Seal.Check(journal)!.Intact);
        Assert.Equal(Name, Visit.Fold(VisitFile.Read(VisitFile.Write(journal)).Journal).Customer!.Name);

        var erased = VisitFile.Read(VisitFile.Write(Erase(journal)));
        Assert.Empty(erased.Problems);
        var text = VisitFile.Write(erased.Journal);
        Assert.All(Telling, word => Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase));
        Assert.Empty(erased.Journal.Words);

        var visit = Visit.Fold(erased.Journal);
        Assert.True(visit.Seal!.Intact);
        Assert.Empty(visit.Seal.Missing);
        Assert.Equal(kept ? 1 : 5, visit.Seal.Erased.Count);
        Assert.Equal(PersonalWords.Erased, visit.Customer!.Name);
        Assert.Equal(PersonalWords.Erased, visit.Of<SignatureBody>().Single().Body.Name);
        Assert.Equal("Fennick & Oar", visit.Appliance!.Maker);
        Assert.Equal(-27, visit.Readings.Single().Body.Si);
        Assert.Contains("it smells since", visit.Of<ComplaintBody>().Single().Body.Words, StringComparison.Ordinal);
        Assert.Contains(Blob.ReferenceTo([4, 2]), erased.Journal.Erased);

        var summary = VisitSummary.Of(visit, null);
        var line = VisitSummaryJson.Write(summary) + summary.Text() + StoveLine.Of(summary.Stove, [summary], null)!.ToJson();
        Assert.All(Telling, word => Assert.DoesNotContain(word, line, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [MemberData(nameof(BothWays))]
    public void Another_device_that_still_has_the_words_loses_them_when_both_meet(bool kept)
    {
        var journal = kept ? Kept(Story) : Written(Story);
        var erased = Erase(journal);
        foreach (var both in new[] { journal.Merge(erased), erased.Merge(journal) })
        {
            Assert.Equal(erased, both);
            Assert.Empty(both.Clashes());
            Assert.All(Telling, word => Assert.DoesNotContain(word, VisitFile.Write(both), StringComparison.OrdinalIgnoreCase));
            Assert.True(Seal.Check(both)!.Intact);
        }
    }

    [Fact]
    public void A_line_that_only_claims_to_have_been_another_breaks_the_seal()
    {
        var text = VisitFile.Write(Erase(Written(Story)));
        var was = text.Split("\"was\":\"")[1][..64];
        Assert.False(Seal.Check(VisitFile.Read(text.Replace(was, new string('0', 64), StringComparison.Ordinal)).Journal)!.Intact);
    }

    [Fact]
    public void A_file_written_by_hand_keeps_its_order_and_its_times()
    {
        var text = """
            {"format":"emberwright-visit","version":1,"visit":"hand"}
            {"at":"2026-01-14T09:30:00-05:00","author":"R. Sorrel","kind":"customer","body":{"name":"Ottilie Brandreth"}}
            {"kind":"note","body":{"words":"Brandreth is deaf, ring twice"}}
            {"at":"2026-01-14T10:30:00-05:00","kind":"reading","body":{"port":"firebox","condition":"fan only","value":"-27 Pa"}}
            """;
        var journal = VisitFile.Read(text).Journal;
        var erased = VisitFile.Read(VisitFile.Write(Erasure.Of(Visit.Fold(journal), Ottilie, null).Journal)).Journal;
        Assert.Equal(journal.Entries.Select(e => (e.Id, e.Seq, e.At, e.Clock, e.Author)), erased.Entries.Select(e => (e.Id, e.Seq, e.At, e.Clock, e.Author)));
        Assert.Equal("erased on request is deaf, ring twice", Assert.IsType<NoteBody>(erased.Entries[1].Body).Words);
    }

    [Fact]
    public void The_book_forgets_the_person_and_the_keys_that_name_the_house()
    {
        var key = StoveKey.Of(null, null, Name, Address)!;
        var journal = SomeRecords.Book(
            new Customer("c1", Name, Address, Phone, Access: "dog; Ottilie has the key"), new Customer("c2", "Dorcas Elderfield", "3 Kiln Road"),
            new Contact(key, ContactAbout.Due, new DateOnly(2027, 3, 14), "Mrs Brandreth: yes"));
        var erasure = Erasure.Of(FirmBook.Fold(journal), ["c1"], Ottilie, "by telephone", new Dictionary<string, string> { [key] = "visit/visit-1" });
        var text = FirmFile.Write(erasure.Journal);
        Assert.All(Telling, word => Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase));
        var book = FirmBook.Fold(FirmFile.Read(text).Journal);
        Assert.Equal("visit/visit-1", book.Of<Contact>().Single().Body.Stove);
        Assert.Contains(book.Customers, c => c.Name == "Dorcas Elderfield");
    }

    [Fact]
    public void Only_the_visits_of_the_person_are_theirs()
    {
        var own = SomeVisits.Of("v1", "s", "2026-01-14");
        Assert.True(Ottilie.IsOf(own));
        Assert.True(Ottilie.IsOf(own with { Address = null }));
        Assert.False(Ottilie.IsOf(own with { Address = "3 Kiln Road" }));
        Assert.False(Ottilie.IsOf(own with { Customer = "Dorcas Elderfield" }));
    }

    [Fact]
    public void Who_works_for_the_firm_keeps_a_name_shared_with_the_person()
    {
        var person = new PersonErased(["Ivo Sorrel"], [], [], ["R. Sorrel"]);
        Assert.Equal("R. Sorrel swept it", person.Erase("R. Sorrel swept it"));
        Assert.Equal("erased on request paid", person.Erase("Ivo Sorrel paid"));
    }
}
