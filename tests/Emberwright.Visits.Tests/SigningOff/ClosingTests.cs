using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;
using Emberwright.Visits.SigningOff;
using Xunit;

namespace Emberwright.Visits.Tests.SigningOff;

/// <summary>Three ways of closing a visit (common practice, no source): one to permit, one out of service, one to refuse.</summary>
public class ClosingTests
{
    private static readonly string[] Folder = ["tests", "Emberwright.Visits.Tests", "Fixtures", "closing"];

    [Fact]
    public void A_service_with_everything_measured_is_permitted_and_nothing_more_is_asked()
    {
        var review = SignOff.Review(Closing("all-in-order"), VisitKind.Service);
        Assert.Empty(review.Missing);
        Assert.Empty(review.Limitations);
        Assert.Equal(Decision.Permitted, review.Decision);
    }

    [Fact]
    public void A_condemned_stove_closes_out_of_service_without_being_fired_or_cleaned()
    {
        var review = SignOff.Review(Closing("cracked-exchanger"), VisitKind.Breakdown);
        Assert.Empty(review.Missing);
        Assert.Equal(Decision.OutOfService, review.Decision);
        Assert.Equal(4, review.Limitations.Count);
    }

    [Fact]
    public void A_stop_use_notice_nobody_signed_closes_nothing()
    {
        var visit = Closing("cracked-exchanger", ("\"readTo\": \"the owner\", \"signed\": true", "\"signed\": false"));
        var review = SignOff.Review(visit, VisitKind.Breakdown);
        Assert.Equal(["notice"], review.Missing.Select(m => m.Id));
        Assert.Equal(Section.MakeSafe, review.Missing[0].Go);
    }

    [Fact]
    public void An_absent_owner_is_a_printed_limitation()
    {
        var visit = Closing("all-in-order", ("\"name\": \"O. Brandreth\"", "\"absent\": true"));
        var review = SignOff.Review(visit, VisitKind.Service);
        Assert.Equal(Decision.PermittedWithLimitations, review.Decision);
        Assert.Contains("absent", Assert.Single(review.Limitations), StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_explained_away_are_refused_and_every_reason_is_named()
    {
        var visit = Closing("explained-away");
        var review = SignOff.Review(visit, VisitKind.Breakdown, Bands(visit));
        Assert.Equal(Decision.Refused, review.Decision);
        Assert.Equal(["four-areas", "in-band", "in-band", "switch-margin"], review.Missing.Select(m => m.Id));
        Assert.StartsWith("Vent: clean it", review.Missing[0].Words, StringComparison.Ordinal);
        Assert.Contains("-0.05 inWC where −0.12 inWC to −0.10 inWC is healthy", review.Missing[1].Words, StringComparison.Ordinal);
        Assert.Contains("only 4 Pa above", review.Missing[3].Words, StringComparison.Ordinal);
        Assert.All(review.Missing.Skip(1), m => Assert.Equal(Section.AsLeft, m.Go));
    }

    [Fact]
    public void It_is_permitted_once_the_vent_is_cleared_and_the_readings_are_right()
    {
        var visit = Closing("explained-away",
            (", \"done\": false, \"outcome\": \"swept by somebody else last week, not opened\"", ", \"outcome\": \"nest out of the cap, tee emptied\""),
            ("-0.05 inWC", "-0.11 inWC"), ("+0.18 inWC", "+0.02 inWC"));
        var review = SignOff.Review(visit, VisitKind.Breakdown, Bands(visit));
        Assert.Empty(review.Missing);
        Assert.Equal(Decision.Permitted, review.Decision);
    }

    [Fact]
    public void Or_once_it_is_recorded_as_refused_by_the_owner_with_a_date_of_return()
    {
        const string Refused = "\"cause\": \"work-refused\", \"consequence\": \"restriction-remains\"";
        var visit = Closing("explained-away",
            ("\"done\": false,", "\"done\": false, \"reason\": \"owner-refused\","),
            ("\"words\": \"in a hurry, it runs now\"", Refused),
            ("{\"on\": \"2027-02-12\"}", "{\"on\": \"2026-02-20\", \"for\": \"return\"}"),
            ("{\"kind\": \"signature\"", "{\"kind\": \"consent\", \"body\": {\"about\": \"clearing the vent\", \"given\": false, \"inWriting\": true, \"area\": \"vent\"}}\n{\"kind\": \"signature\""));
        var review = SignOff.Review(visit, VisitKind.Breakdown, Bands(visit));
        Assert.Empty(review.Missing);
        Assert.Equal(Decision.PermittedWithLimitations, review.Decision);
        Assert.Contains(review.Limitations, l => l.Contains("vent stays restricted", StringComparison.Ordinal));
    }

    [Fact]
    public void The_refusal_must_be_in_writing_and_the_return_dated()
    {
        var visit = Closing("explained-away",
            ("\"done\": false,", "\"done\": false, \"reason\": \"owner-refused\","),
            ("\"words\": \"in a hurry, it runs now\"", "\"cause\": \"work-refused\", \"consequence\": \"restriction-remains\""));
        var review = SignOff.Review(visit, VisitKind.Breakdown, Bands(visit));
        Assert.Equal(["four-areas", "in-band", "in-band", "switch-margin"], review.Missing.Select(m => m.Id));
    }

    // Healthy values of this stove, as its owner's papers state them: firebox −0.12 … −0.10, collar 0.00 … +0.04 inWC.
    private static List<Comparison> Bands(Visit visit) =>
    [
        .. visit.LeftWith.Where(r => r.Body is { Measure: Measure.Pressure, Place: Places.Firebox or Places.Collar }).Select(r =>
        {
            var (low, high) = r.Body.Place == Places.Firebox ? (-0.12, -0.10) : (0.00, 0.04);
            var band = new Band(r.Body.Observable, Units.InchOfWater.ToBase(low), Units.InchOfWater.ToBase((low + high) / 2), Units.InchOfWater.ToBase(high), 0.9, "card");
            var verdict = r.Body.Si < band.Low ? Verdict.Low : r.Body.Si > band.High ? Verdict.High : Verdict.In;
            return new Comparison(r.Id, r.Body.Si, band, verdict, r.Epoch);
        }),
    ];

    private static Visit Closing(string name, params (string Old, string New)[] changes)
    {
        var text = Repository.Text([.. Folder, name + ".jsonl"]);
        foreach (var (old, now) in changes)
        {
            Assert.Contains(old, text, StringComparison.Ordinal);
            text = text.Replace(old, now, StringComparison.Ordinal);
        }

        var file = VisitFile.Read(text);
        Assert.Empty(file.Problems);
        return Visit.Fold(file.Journal);
    }
}
