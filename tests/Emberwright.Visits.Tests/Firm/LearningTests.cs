using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Rates;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Firm;

public class LearningTests
{
    [Fact]
    public void A_cause_counts_when_the_work_cured_it_and_not_when_only_believed()
    {
        var cured = SomeVisits.Of("1", "a", "2026-01-05", VisitKind.Breakdown) with { Causes = [new("nest-in-cap", 0.95, 0.02)] };
        var believed = SomeVisits.Of("2", "b", "2026-01-06", VisitKind.Breakdown) with { Causes = [new("nest-in-cap", 0.95, 0.95)] };
        var sound = SomeVisits.Of("3", "c", "2026-01-07") with { Causes = [new(Suspect.Nothing, 0.9, 0.9)] };
        var open = SomeVisits.Of("4", "d", "2026-01-08", state: VisitState.Begun) with { Causes = [new("nest-in-cap", 0.95, 0.02)] };
        var counts = Assert.Single(Emberwright.Visits.Firm.Learning.Of([cured, believed, sound, open]).Patterns);
        Assert.Equal((3, 1, 1, 1), (counts.Visits, counts.Unclear, counts.Found["nest-in-cap"], counts.Found[Suspect.Nothing]));
    }

    [Fact]
    public void What_the_firm_finds_often_becomes_likelier_and_says_on_how_many_visits_it_rests()
    {
        var visits = Enumerable.Range(0, 20).Select(n => SomeVisits.Of($"{n}", $"{n}", "2026-01-05", VisitKind.Breakdown) with { Causes = [new("nest-in-cap", 0.95, 0.02)], Seen = SomeVisits.Seen("2026-01-05") }).ToArray();
        var own = RatesFile.Read(FirmRates.Write(FirmRates.Of(visits)))["damper-insert"];
        var before = PatternRates.Of("damper-insert");
        Assert.True(own.Faults["nest-in-cap"].Value > 2 * before.Faults["nest-in-cap"].Value);
        Assert.True(own.Faults["feed-motor-dead"].Value < before.Faults["feed-motor-dead"].Value);
        Assert.Contains("20 of your visits", own.Faults["nest-in-cap"].Origin, StringComparison.Ordinal);
        // As found 25 % shut after 1.1 t: −ln 0.75 / 1.1 = 0.26 a tonne, and twenty of them outweigh what was believed.
        Assert.InRange(own.Fouling[Stove.Parameter.AshPassages].Value, 0.2, 0.3);
    }

    [Fact]
    public void A_good_part_renewed_is_told_and_a_bad_one_is_not()
    {
        var good = SomeVisits.Of("1", "a", "2026-01-05") with { Work = [("replace-feed-motor", 25)], Causes = [new("nest-in-cap", 0.95, 0.02), new("feed-motor-dead", 0.06, 0.01)] };
        var bad = SomeVisits.Of("2", "b", "2026-01-05") with { Work = [("replace-feed-motor", 25)], Causes = [new("feed-motor-dead", 0.9, 0.01)] };
        var told = Assert.Single(Emberwright.Visits.Firm.Learning.Of([good, bad]).GoodParts);
        Assert.Equal(("1", "replace-feed-motor"), (told.Visit.Visit, told.Action));
    }

    [Fact]
    public void A_breakdown_within_a_month_is_a_comeback_of_what_was_found_before()
    {
        var first = SomeVisits.Of("1", "a", "2026-01-05", VisitKind.Breakdown) with { Causes = [new("igniter-dead", 0.9, 0.01)] };
        var soon = SomeVisits.Of("2", "a", "2026-02-04", VisitKind.Breakdown);
        var late = SomeVisits.Of("3", "a", "2026-03-07", VisitKind.Breakdown);
        var comeback = Assert.Single(Emberwright.Visits.Firm.Learning.Of([late, first, soon]).Comebacks);
        Assert.Equal(("1", "2", "igniter-dead"), (comeback.First.Visit, comeback.Again.Visit, comeback.Cause));
    }

    [Fact]
    public void Minutes_are_the_median_of_three_or_more()
    {
        var visits = new[] { 20.0, 24, 90 }.Select((m, i) => SomeVisits.Of($"{i}", $"{i}", "2026-01-05") with { Work = [("clean-vent", m), .. i == 0 ? new[] { ("clean-burn-pot", 5.0) } : []] });
        var taken = Assert.Single(Emberwright.Visits.Firm.Learning.Of(visits).Minutes);
        Assert.Equal(("clean-vent", 3, 24.0), (taken.Work, taken.Times, taken.Median));
    }

    [Fact]
    public void The_van_holds_what_was_counted_less_what_was_fitted_since()
    {
        var book = SomeRecords.Book(new Part("FO-1187", "gasket", "FO-1187", Keep: 4, SupersededBy: "FO-1188"), new Counted("FO-1187", 3));
        // The count was made on 14 January 2026.
        var visits = new[] { SomeVisits.Of("1", "a", "2026-01-05") with { Parts = [SomeVisits.Fitted("fo 1187", "2026-01-05")] }, SomeVisits.Of("2", "b", "2026-02-05") with { Parts = [SomeVisits.Fitted("FO1187", "2026-02-05"), SomeVisits.Fitted("KL-9", "2026-02-05")] } };
        var stock = Assert.Single(VanStock.Of(FirmBook.Fold(book), visits));
        Assert.Equal((2, 2, "FO-1188"), (stock.Count, stock.ToOrder, stock.OrderNumber));
        Assert.Equal("KL-9", Assert.Single(VanStock.Unknown(FirmBook.Fold(book), visits)).Number);
    }

    [Fact]
    public void A_job_is_open_until_its_return_has_been_and_waits_for_parts_ordered()
    {
        var first = SomeVisits.Of("1", "a", "2026-01-05") with { Job = "TV-1", Due = new(new(2026, 1, 12), DueFor.Return), Parts = [new("igniter", "KL-9", "ordered", null, SomeVisits.Noon("2026-01-05"))] };
        Assert.True(Assert.Single(Jobs.Of([first])).IsOpen);
        Assert.Single(Assert.Single(Jobs.Of([first])).Waiting);
        var back = SomeVisits.Of("2", "a", "2026-01-12") with { Job = "TV-1", Parts = [SomeVisits.Fitted("KL-9", "2026-01-12")] };
        var job = Assert.Single(Jobs.Of([back, first]));
        Assert.False(job.IsOpen);
        Assert.Empty(job.Waiting);
    }

    [Fact]
    public void A_check_takes_from_the_entry_before_it_to_its_last_result()
    {
        string[] lines =
        [
            """{"format":"emberwright-visit","version":1,"visit":"v"}""",
            """{"at":"2026-01-14T09:00:00Z","author":"R. Sorrel","kind":"appliance","body":{"pattern":"damper-insert"}}""",
            """{"at":"2026-01-14T09:10:00Z","kind":"safe","body":{"step":"cool"}}""",
            """{"at":"2026-01-14T09:14:00Z","kind":"observation","body":{"sign":"glass","outcome":"black"}}""",
            """{"at":"2026-01-14T09:20:00Z","kind":"action","body":{"action":"clean-vent"}}""",
        ];
        var timed = Assert.Single(ChecksTimed.Of(Visit.Fold(VisitFile.Read(string.Join('\n', lines)).Journal)));
        Assert.Equal(4, timed.Minutes);
        Assert.Contains("glass", Catalogue.For("damper-insert").Check(timed.Check)!.Signs);
        Assert.Empty(ChecksTimed.Of(Visit.Fold(VisitFile.Read(string.Join('\n', [lines[0], lines[1].Replace("damper-insert", "pyre"), .. lines[2..]])).Journal)));
    }

    [Fact]
    public void Minutes_and_rates_learned_and_set_go_into_one_file_and_what_was_set_goes_first()
    {
        var visits = Enumerable.Range(0, 3).Select(n => SomeVisits.Of($"{n}", "a", $"2026-0{n + 1}-05", VisitKind.Breakdown) with
        {
            Causes = [new("nest-in-cap", 0.95, 0.02)],
            Work = [("clean-vent", 30 + n)],
        }).ToArray();
        var learnt = FirmRates.Of(visits);
        Assert.Equal((31, "based on 3 of your visits"), (learnt["damper-insert"].Minutes["clean-vent"].Value, learnt["damper-insert"].Minutes["clean-vent"].Origin));

        var book = FirmBook.Fold(SomeRecords.Book(
            new OwnRate(OwnRate.IdOf("damper-insert", RateOf.Work, "clean-vent"), "damper-insert", RateOf.Work, "clean-vent", 50, "a boy helps"),
            new OwnRate(OwnRate.IdOf("underfed", RateOf.Fault, "igniter-dead"), "underfed", RateOf.Fault, "igniter-dead", 22)));
        var both = FirmRates.With(learnt, book);
        Assert.Equal((50, "set by you: a boy helps"), (both["damper-insert"].Minutes["clean-vent"].Value, both["damper-insert"].Minutes["clean-vent"].Origin));
        Assert.Equal(22, both["underfed"].Faults["igniter-dead"].Value);
        Assert.Equal(learnt["damper-insert"].Faults["nest-in-cap"], both["damper-insert"].Faults["nest-in-cap"]);

        var back = RatesFile.Read(FirmRates.Write(both));
        Assert.Equal(50, back["damper-insert"].Minutes["clean-vent"].Value);
        Assert.Equal(both["underfed"].Faults["igniter-dead"].Value, back["underfed"].Faults["igniter-dead"].Value, 1e-6);
    }

    [Fact]
    public void A_summary_reads_back_as_it_was_written()
    {
        var summary = SomeVisits.Of("1", "a", "2026-01-05") with
        {
            Booked = SomeVisits.Noon("2026-01-05"),
            Job = "TV-1",
            Phone = "555",
            Pattern = "underfed",
            Serial = "7",
            Label = "Parlour",
            Complaint = "“no heat”",
            StopUse = true,
            Due = new(new(2027, 1, 5), DueFor.Return, "why"),
            Codes = ["E3"],
            ExhaustC = 155.5,
            OxygenPercent = 11.8,
            CarbonMonoxidePpm = 170,
            MinutesOnSite = 95.25,
        };
        var text = VisitSummaryJson.Write(summary);
        var back = VisitSummaryJson.Read(text)!;
        Assert.Equal(summary with { Parts = back.Parts, Codes = back.Codes, Work = back.Work, Causes = back.Causes }, back);
        var full = summary with { Parts = [SomeVisits.Fitted("KL-9", "2026-01-05")], Work = [("clean-vent", 12.5)], Causes = [new("nest-in-cap", 0.9, 0.1)], Seen = SomeVisits.Seen("2026-01-05") };
        Assert.Equal(VisitSummaryJson.Write(full), VisitSummaryJson.Write(VisitSummaryJson.Read(VisitSummaryJson.Write(full))!));
    }
}
