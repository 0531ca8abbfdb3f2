using CsCheck;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Emberwright.Visits.Tests.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Firm;

public class FirmBookTests
{
    [Fact]
    public void Merging_is_commutative_associative_and_idempotent_and_the_records_follow() =>
        SomeRecords.Story.Sample(story =>
        {
            var (a, b, c) = SomeRecords.Play(story) switch { var j => (j[0], j[1], j[2]) };
            return a.Merge(b).Equals(b.Merge(a))
                && a.Merge(b).Merge(c).Equals(a.Merge(b.Merge(c)))
                && a.Merge(a).Equals(a)
                && Text(a.Merge(b)) == Text(b.Merge(a));
        });

    [Fact]
    public void Entries_that_arrive_in_any_order_come_to_the_same_records() =>
        Gen.Select(SomeRecords.Story, Gen.Int[0, 1000]).Sample((story, seed) =>
        {
            var books = SomeRecords.Play(story);
            var whole = books.Aggregate((x, y) => x.Merge(y));
            var deliveries = books.SelectMany(j => j.Entries).ToArray();
            new Random(seed).Shuffle(deliveries);
            var replica = deliveries.Aggregate(FirmFile.Begin("firm-1"), (book, entry) => book.Append(entry));
            return replica.Equals(whole) && Text(replica) == Text(whole);
        });

    [Fact]
    public void A_written_book_reads_back_equal_and_without_a_problem() =>
        SomeRecords.Story.Sample(story =>
        {
            var whole = SomeRecords.Play(story).Aggregate((x, y) => x.Merge(y));
            var back = FirmFile.Read(FirmFile.Write(whole));
            return back.Problems.Count == 0 && back.Journal.Equals(whole)
                && back.Journal.Entries.Select(e => e.Body).SequenceEqual(whole.Entries.Select(e => e.Body));
        });

    [Fact]
    public void Joining_always_ends_at_one_record_whoever_joined_what() =>
        SomeRecords.Story.Sample(story =>
        {
            var book = FirmBook.Fold(SomeRecords.Play(story).Aggregate((x, y) => x.Merge(y)));
            string[] ids = ["p0", "p1", "p2"];
            return ids.All(id => book.Into("person", id) == book.Into("person", book.Into("person", id)));
        });

    [Fact]
    public void Withdrawing_the_last_entry_gives_the_book_before_it() =>
        SomeRecords.Story.Where(s => s.Length > 0).Sample(story =>
        {
            var before = story[..^1].Aggregate(FirmFile.Begin("firm-1"), (b, s) => SomeEntries.Device(1, SomeEntries.Start, b.Entries.Count).Append(b, s.Body));
            var after = SomeEntries.Device(1, SomeEntries.Start, 90).Append(before, story[^1].Body);
            var undone = SomeEntries.Device(1, SomeEntries.Start, 91).Append(after, new CorrectionBody(after.Entries[^1].Id, null));
            return Text(undone) == Text(before);
        });

    [Fact]
    public void Members_are_put_together_the_latest_is_used_and_an_empty_one_clears()
    {
        var book = FirmBook.Fold(SomeRecords.Book(
            new Customer("c1", "Ottilie", "14 Millrace Lane", "555-0114"), new Customer("c1", Name: "Ottilie Brandreth"), new Customer("c1", Phone: "")));
        var customer = Assert.Single(book.Customers);
        Assert.Equal(("Ottilie Brandreth", "14 Millrace Lane", ""), (customer.Name, customer.Address, customer.Phone));
    }

    [Fact]
    public void Two_devices_that_say_different_things_are_both_shown()
    {
        var one = SomeEntries.Device(1, SomeEntries.Start, 1).Append(FirmFile.Begin("firm-1"), new Instrument("i1", Serial: "88"));
        var two = SomeEntries.Device(2, SomeEntries.Start.AddMinutes(5), 2).Append(FirmFile.Begin("firm-1"), new Instrument("i1", Serial: "89"));
        var difference = Assert.Single(FirmBook.Fold(one.Merge(two)).Differences);
        Assert.Equal("instrument/i1.serial", difference.Member);
        Assert.Equal(["88", "89"], difference.Claims.Select(c => c.Value));
    }

    [Fact]
    public void A_joined_duplicate_lends_what_the_staying_record_lacks_and_is_on_no_list()
    {
        var book = FirmBook.Fold(SomeRecords.Book(new Customer("c1", "Ottilie Brandreth"), new Customer("c7", "O. Brandreth", Phone: "555-0114"), new Joined("customer", "c7", "c1")));
        var customer = Assert.Single(book.Customers);
        Assert.Equal(("c1", "Ottilie Brandreth", "555-0114"), (customer.Id, customer.Name, customer.Phone));
        Assert.Equal("c1", book.Find<Customer>("customer", "c7")!.Id);
    }

    [Fact]
    public void What_is_put_away_leaves_the_list_and_comes_back()
    {
        EntryBody[] away = [new Part("n1", "igniter"), new Archived("part", "n1")];
        Assert.Empty(FirmBook.Fold(SomeRecords.Book(away)).Parts);
        Assert.Equal("n1", Assert.Single(FirmBook.Fold(SomeRecords.Book(away)).PutAway).Id);
        Assert.Single(FirmBook.Fold(SomeRecords.Book([.. away, new Archived("part", "n1", Away: false)])).Parts);
    }

    [Fact]
    public void Words_kept_as_bytes_are_shown_while_they_are_there_and_not_once_erased()
    {
        var bytes = TextBlob.Bytes("Ottilie Brandreth", new byte[16]);
        var customer = new Customer("c1", Blob.ReferenceTo(bytes), "14 Millrace Lane");
        Assert.Equal("Ottilie Brandreth", customer.With(r => r == Blob.ReferenceTo(bytes) ? TextBlob.Words(bytes) : null).Name);
        Assert.Null(customer.With(_ => null).Name);
        Assert.Equal("14 Millrace Lane", customer.With(_ => null).Address);
    }

    [Fact]
    public void A_visit_and_a_book_do_not_merge_even_under_one_id() =>
        Assert.Throws<ArgumentException>(() => FirmFile.Begin("x").Merge(VisitJournal.Begin("x")));

    [Fact]
    public void A_kind_from_a_later_version_is_kept_untouched()
    {
        const string Line = """{"at":"2026-01-14T09:30:00Z","kind":"van","body":{"id":"v1","plate":"TV 1"}}""";
        var file = FirmFile.Read(VisitHeader.For("f", JournalFormat.Firm).Line + "\n" + Line + "\n");
        Assert.Empty(file.Problems);
        Assert.Contains(Line, FirmFile.Write(file.Journal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("part", """{"id":"n1","price":-4}""", "body.price")]
    [InlineData("person", """{"id":"p1","qualifications":[{"what":"x","until":"June"}]}""", "body.qualifications[0].until")]
    [InlineData("instrument", """{"name":"gauge"}""", "body.id")]
    [InlineData("joined", """{"of":"part","from":"a","into":"a"}""", "body.into")]
    [InlineData("stove", """{"id":"s","clearances":[{"from":"side","measured":"4"}]}""", "body.clearances[0].measured")]
    public void What_is_wrong_is_named_with_its_field_and_remedy(string kind, string body, string field)
    {
        var file = FirmFile.Read(VisitHeader.For("f", JournalFormat.Firm).Line + "\n" + $$"""{"at":"2026-01-14T09:30:00Z","kind":"{{kind}}","body":{{body}}}""");
        Assert.Contains(file.Problems, p => p.Field == field && p.Remedy.Length > 0);
    }

    private static string Text(VisitJournal journal)
    {
        var book = FirmBook.Fold(journal);
        return string.Join('\n', book.People.Cast<object>().Concat(book.Parts).Concat(book.PutAway).Concat(book.Differences.Select(d => $"{d.Member}: {string.Join(" | ", d.Claims)}")));
    }
}
