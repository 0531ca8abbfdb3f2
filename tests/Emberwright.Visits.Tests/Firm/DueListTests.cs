using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Firm;

public class DueListTests
{
    private static readonly DateOnly Today = new(2026, 11, 24);
    private static readonly Dictionary<string, ForecastLine> None = [];
    private static readonly FirmBook Empty = FirmBook.Fold(FirmFile.Begin("f"));

    [Fact]
    public void The_last_visits_date_counts_and_earlier_ones_do_not()
    {
        var first = SomeVisits.Of("1", "s", "2024-10-01") with { Due = new(new(2025, 10, 1)) };
        var last = SomeVisits.Of("2", "s", "2025-10-20") with { Due = new(new(2026, 10, 20), DueFor.Service, "agreed") };
        var item = Assert.Single(DueList.Of([last, first], None, Empty, Today));
        Assert.Equal((new DateOnly(2026, 10, 20), "2"), (item.On, item.Last.Visit));
    }

    [Fact]
    public void A_stove_with_a_visit_taken_or_put_away_or_scrapped_is_not_due()
    {
        var served = SomeVisits.Of("1", "s", "2025-10-20") with { Due = new(new(2026, 10, 20)) };
        Assert.Empty(DueList.Of([served, SomeVisits.Of("2", "s", "2026-11-25", state: VisitState.Called)], None, Empty, Today));
        Assert.Empty(DueList.Of([served], None, FirmBook.Fold(SomeRecords.Book(new Archived("stove", "s"))), Today));
        Assert.Empty(DueList.Of([served, SomeVisits.Of("2", "s", "2026-02-01", VisitKind.Decommissioning) with { Due = new(new(2027, 1, 1)) }], None, Empty, Today));
    }

    [Fact]
    public void A_forecast_stands_where_no_day_was_agreed_and_warns_where_it_is_much_sooner()
    {
        var line = new ForecastLine(new(2026, 12, 1), new(2026, 11, 1), new(2027, 1, 1), new(2027, 4, 1), "Vent", "one season of this stove");
        var without = Assert.Single(DueList.Of([SomeVisits.Of("1", "s", "2026-04-20")], new Dictionary<string, ForecastLine> { ["s"] = line }, Empty, Today));
        Assert.Equal(line.Due, without.On);
        Assert.False(without.IsSoonerThanAgreed);
        var agreed = Assert.Single(DueList.Of([SomeVisits.Of("1", "s", "2026-04-20") with { Due = new(new(2027, 4, 20)) }], new Dictionary<string, ForecastLine> { ["s"] = line }, Empty, Today));
        Assert.Equal((new DateOnly(2027, 4, 20), line.Due, true), (agreed.On, agreed.Soonest, agreed.IsSoonerThanAgreed));
    }

    [Fact]
    public void A_week_after_a_visit_one_asks_how_it_runs_once()
    {
        var visit = SomeVisits.Of("1", "s", "2026-11-16");
        var item = Assert.Single(DueList.Of([visit], None, Empty, Today));
        Assert.Equal((DueFor.FollowUp, new DateOnly(2026, 11, 23)), (item.For, item.On));
        Assert.Empty(DueList.Of([visit], None, FirmBook.Fold(SomeRecords.Book(new Contact("s", ContactAbout.HowItRuns, Today))), Today));
        Assert.Empty(DueList.Of([SomeVisits.Of("1", "s", "2026-09-16")], None, Empty, Today));
    }

    [Theory]
    [InlineData("2026-11-17", true)]
    [InlineData("2026-11-18", false)]
    public void A_household_is_asked_again_after_a_week_without_an_answer(string asked, bool again)
    {
        var visit = SomeVisits.Of("1", "s", "2025-10-20") with { Due = new(new(2026, 10, 20)) };
        var book = FirmBook.Fold(SomeRecords.Book(new Contact("s", ContactAbout.Due, SomeVisits.Day(asked))));
        Assert.Equal(again, Assert.Single(DueList.Of([visit], None, book, Today)).AskAgain(Today));
        var answered = FirmBook.Fold(SomeRecords.Book(new Contact("s", ContactAbout.Due, SomeVisits.Day(asked), "in January")));
        Assert.False(Assert.Single(DueList.Of([visit], None, answered, Today)).AskAgain(Today));
    }

    [Fact]
    public void Joined_stoves_are_one_and_the_later_visit_counts()
    {
        var book = FirmBook.Fold(SomeRecords.Book(new Joined("stove", "old", "new")));
        var item = Assert.Single(DueList.Of(
            [SomeVisits.Of("1", "old", "2024-10-20") with { Due = new(new(2025, 10, 20)) }, SomeVisits.Of("2", "new", "2025-11-20") with { Due = new(new(2026, 11, 20)) }], None, book, Today));
        Assert.Equal(("new", "2"), (item.Stove, item.Last.Visit));
    }

    [Fact]
    public void Spring_offers_are_the_services_of_the_coming_summer_and_autumn()
    {
        var spring = new DateOnly(2027, 3, 10);
        DueItem Item(string on) => Assert.Single(DueList.Of([SomeVisits.Of("1", "s", "2026-01-20") with { Due = new(SomeVisits.Day(on)) }], None, Empty, spring));
        var filter = new DueFilter(SpringOffer: true);
        Assert.True(filter.Takes(Item("2027-09-20"), spring));
        Assert.False(filter.Takes(Item("2027-04-20"), spring));
        Assert.False(filter.Takes(Item("2026-10-20"), spring));
    }

    [Fact]
    public void A_letter_says_who_when_and_what_to_do_before()
    {
        var item = Assert.Single(DueList.Of([SomeVisits.Of("1", "s", "2025-10-20") with { Due = new(new(2026, 12, 4)) }], None, Empty, Today));
        var letter = Letters.Letter(item, ContactAbout.Due, new FirmDetails(Name: "Tamarack & Vale Hearth Service", Phone: "555-0100"), Today);
        foreach (var words in new[] { "Ottilie Brandreth", "14 Millrace Lane", "4 December 2026", "Fennick & Oar Hob 40", "three hours before", "555-0100" })
            Assert.Contains(words, letter.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(letter.Split('\n'), line => Assert.True(line.Length <= 72));
    }

    [Theory]
    [InlineData("brandreth", true)]
    [InlineData("Millrace Ln", true)]
    [InlineData("brandreth corwin", false)]
    [InlineData("auger motor", true)]
    [InlineData("exhaust fan", false)]
    public void Search_knows_what_else_a_thing_is_called(string typed, bool found) =>
        Assert.Equal(found, SearchWords.Match(typed, "ottilie brandreth\n14 millrace lane\nfeed motor with its gearbox"));
}
