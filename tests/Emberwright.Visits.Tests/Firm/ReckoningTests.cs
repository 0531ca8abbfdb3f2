using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Emberwright.Visits.Tests.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Firm;

/// <summary>What a visit comes to, added up by hand from the prices of the book.</summary>
public class ReckoningTests
{
    private static readonly FirmBook Book = FirmBook.Fold(Written(FirmFile.Begin("firm-1"),
        new FirmDetails(PerMinute: 1.25, Currency: "USD"), new Part("ig-4", "igniter", "IG-4", Price: 38.5), new Part("dr-9", "door rope", "DR-9", "DR-10", Price: 12)));

    private static VisitJournal Written(VisitJournal journal, params EntryBody[] bodies)
    {
        for (var step = 0; step < bodies.Length; step++)
            journal = SomeEntries.Device(1, SomeEntries.Start.AddMinutes(step), step).Append(journal, bodies[step]);
        return journal;
    }

    private static Reckoning Of(params EntryBody[] bodies) => Reckoning.Of(Visit.Fold(Written(VisitJournal.Begin("visit-1"), bodies)), Book);

    private static LabourBody Took(string work, double minutes) => new(work, new Quantity(minutes, Units.Minute), Area.Vent);

    [Fact]
    public void Minutes_and_parts_are_added_at_the_book_s_prices()
    {
        var sum = Of(Took("clean-vent", 30), Took("clean-ash-passages", 15), new PartBody("igniter", "IG-4", "fitted", From: PartSource.Van), new PartBody("door rope", "dr-10", "ordered"));
        Assert.Equal(45, sum.Minutes);
        Assert.Equal(56.25, sum.Labour);
        Assert.Equal(50.5, sum.Parts);
        Assert.Equal(106.75, sum.Total);
        Assert.Empty(sum.Unpriced);
        Assert.False(sum.IsPastLimit);
    }

    [Fact]
    public void A_later_time_on_the_same_work_replaces_the_earlier_one()
    {
        Assert.Equal(20, Of(Took("clean-vent", 30), Took("clean-vent", 20)).Minutes);
    }

    [Fact]
    public void What_is_removed_returned_or_the_customer_s_own_costs_nothing_and_what_has_no_price_is_named()
    {
        var sum = Of(
            new PartBody("igniter", "IG-4", "removed"), new PartBody("igniter", "IG-4", "returned"), new PartBody("igniter", "IG-4", "fitted", From: PartSource.Customer),
            new PartBody("gasket", "G-1", "fitted"));
        Assert.Equal(0, sum.Parts);
        Assert.Equal(["gasket G-1"], sum.Unpriced);
    }

    [Fact]
    public void A_limit_is_passed_by_a_cent_and_a_signed_change_raises_it()
    {
        EntryBody[] spent = [Took("clean-vent", 30), new PartBody("igniter", "IG-4", "fitted")];
        Assert.False(Of([new ConsentBody(Reckoning.UpTo, true, "76 USD"), .. spent]).IsPastLimit);
        Assert.True(Of([new ConsentBody(Reckoning.UpTo, true, "75.99 USD"), .. spent]).IsPastLimit);
        Assert.False(Of([new ConsentBody(Reckoning.UpTo, true, "50 USD"), .. spent, new ConsentBody(Reckoning.Change, true, "up to $1,200", InWriting: true)]).IsPastLimit);
        Assert.True(Of([new ConsentBody(Reckoning.UpTo, true, "50 USD"), .. spent, new ConsentBody(Reckoning.Change, false, "1200 USD")]).IsPastLimit);
    }

    [Theory]
    [InlineData("250 USD", 250.0)]
    [InlineData("$ 1,200.50", 1200.5)]
    [InlineData("nothing more", null)]
    [InlineData(null, null)]
    public void A_sum_is_found_in_words(string? words, double? sum) => Assert.Equal(sum, Reckoning.SumIn(words));

    [Fact]
    public void Time_that_is_missing_or_nought_is_refused_with_what_to_write()
    {
        var file = VisitFile.Read("""
            {"format":"emberwright-visit","version":1,"visit":"v"}
            {"id":"0199aaaa-0000-7000-8000-000000000001","device":"d","seq":1,"author":"x","at":"2026-01-14T09:30:00Z","clock":"1768383000000:0","kind":"labour","body":{"work":"clean-vent","time":"0 min"}}
            {"id":"0199aaaa-0000-7000-8000-000000000002","device":"d","seq":2,"author":"x","at":"2026-01-14T09:31:00Z","clock":"1768383060000:0","kind":"labour","body":{"work":"clean-vent"}}

            """);
        Assert.Equal(2, file.Problems.Count);
        Assert.All(file.Problems, problem => Assert.Contains("25 min", problem.ToString(), StringComparison.Ordinal));
    }
}
