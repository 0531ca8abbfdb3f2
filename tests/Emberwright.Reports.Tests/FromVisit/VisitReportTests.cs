using System.Collections.Immutable;
using Emberwright.Diagnosis;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Reports.Tests.FromVisit;

public class VisitReportTests
{
    private static readonly Visit Service = DemoVisits.Load("healthy-service");

    [Fact]
    public void The_demo_s_service_becomes_a_report_of_two_pages_and_its_photos()
    {
        var input = Closed(Service);
        var pages = ReadBack.Pages(ReportPdf.Render(input, PageFormat.Letter));
        Assert.Contains("Yes.", pages[0]);
        Assert.Contains("Ottilie Brandreth", pages[0]);
        ReportPdfTests.AssertSays("Cleaned the burn pot, the ash passages, the combustion blower, the vent and the room-air blower.", pages[0]);
        ReportPdfTests.AssertSays("Ash had closed about half of the passages behind the fire.", pages[0]);
        Assert.Contains("20 April 2027", pages[0]);
        ReportPdfTests.AssertSays("Your CO alarm is good until 30 June 2031", pages[0]);
        foreach (var written in new[] { "−21 Pa", "−57 Pa", "+6 Pa", "−26 Pa", "+7 Pa", "11.8 %", "170 ppm", "155 °C" }) Assert.Contains(written, pages[1]);
        Assert.Contains("88.7 ± 0.4 %", pages[1]);
        Assert.Contains("Where limits and bands come from", pages[2]);
        Assert.Contains("fire-back panel", pages[3]);
        Assert.Contains("Photos", pages[4]);
    }

    [Fact]
    public void As_found_and_as_left_are_shown_in_the_same_condition()
    {
        var input = Closed(Service);
        Assert.Contains("fan only", input.ProfileFound!.Title);
        Assert.Contains("fan only", input.ProfileLeft!.Title);
        Assert.Equal([-21, -57, 6], input.ProfileFound.Stations.Select(s => s.ReadingPa!.Value));
        Assert.Equal([-26, -57, 7], input.ProfileLeft.Stations.Select(s => s.ReadingPa!.Value));
        Assert.Equal([-27, -58, 6], input.ProfileFound.Stations.Select(s => s.LastPa!.Value));
    }

    [Fact]
    public void A_signed_report_does_not_change_when_the_engine_does()
    {
        var beliefs = DemoVisits.Concluded(Service);
        var signed = DemoVisits.Sealed(Service, SealedFigures.Of(beliefs));
        var then = ReportPdf.Render(Report(signed, beliefs), PageFormat.A4);
        var today = beliefs with
        {
            Suspects = [new("unlisted", "Something else", 0.1, 0.9, [], 0.9)],
            Areas = [],
            Bands = [.. beliefs.Bands.Select(b => b with { Low = b.Low - 40, High = b.High + 40 })],
        };
        Assert.True(then.AsSpan().SequenceEqual(ReportPdf.Render(Report(signed, today, "9.9.9"), PageFormat.A4)));
        Assert.True(then.AsSpan().SequenceEqual(ReportPdf.Render(Report(signed, null, "9.9.9"), PageFormat.A4)));
        var open = ReportPdf.Render(Report(Service, today), PageFormat.A4);
        Assert.Contains("Something else", ReadBack.All(open));
    }

    [Fact]
    public void A_seal_survives_the_file_and_gives_the_same_report()
    {
        var beliefs = DemoVisits.Concluded(Service);
        var signed = DemoVisits.Sealed(Service, SealedFigures.Of(beliefs));
        var reread = Visit.Fold(VisitFile.Read(VisitFile.Write(signed.Journal)).Journal);
        Assert.True(reread.Seal!.Intact);
        Assert.True(ReportPdf.Render(Report(signed, null), PageFormat.A4).AsSpan().SequenceEqual(ReportPdf.Render(Report(reread, null), PageFormat.A4)));
    }

    [Fact]
    public void Sealed_figures_read_back_as_they_were()
    {
        var beliefs = DemoVisits.Concluded(Service) with
        {
            NoListedCauseFits = true,
            Stops = [new("co-room", "Stop: \"air\" the room\nand leave.", "e2", "the fire service", "EN 50291")],
            Areas = [new(Parameter.Vent, "Vent; \"cap\"", new(1.0 / 3, 0.5, double.NaN), new(0, 0, 0))],
        };
        var figures = SealedFigures.Of(beliefs);
        Assert.All(figures.Values, v => Assert.DoesNotContain('\n', v));
        var back = SealedBeliefs.Of(figures)!;
        Assert.Equal(beliefs.Suspects.Select(s => (s.Fault, s.Name, s.Prior, s.Probability, s.AsFound)), back.Suspects.Select(s => (s.Fault, s.Name, s.Prior, s.Probability, s.AsFound)));
        Assert.Equal(beliefs.Suspects[0].Because, back.Suspects[0].Because);
        Assert.Equal(beliefs.Areas, back.Areas);
        Assert.Equal(beliefs.Bands, back.Bands);
        Assert.Equal(beliefs.Comparisons, back.Comparisons);
        Assert.Equal(beliefs.Doubtful, back.Doubtful);
        Assert.Equal(beliefs.Alike.Select(a => (string.Join(',', a.Faults), a.Separator)), back.Alike.Select(a => (string.Join(',', a.Faults), a.Separator)));
        Assert.Equal(beliefs.Stops, back.Stops);
        Assert.Equal(beliefs.Notes, back.Notes);
        Assert.Equal((true, false), (back.NoListedCauseFits, back.CannotTell));
    }

    [Fact]
    public void A_seal_of_another_form_gives_nothing_rather_than_nonsense()
    {
        Assert.Null(SealedBeliefs.Of(new Dictionary<string, string>()));
        Assert.Null(SealedBeliefs.Of(new Dictionary<string, string> { ["firebox"] = "-7 Pa", ["probability 001 x"] = "[1,2]", ["band 001"] = "[\"pressure\"]" }));
    }

    [Fact]
    public void What_comes_after_the_seal_is_said()
    {
        var signed = DemoVisits.Sealed(Service, SealedFigures.Of(DemoVisits.Concluded(Service)));
        var later = DemoVisits.With(signed, new NoteBody("The customer called: all is well."));
        Assert.Contains(Report(later, null).Limitations, l => l.StartsWith("1 entry came after", StringComparison.Ordinal));
    }

    [Fact]
    public void A_stop_or_a_notice_forbids_use_whatever_else_is_well()
    {
        var beliefs = DemoVisits.Concluded(Service) with { Stops = [new("co-room", "Stop the stove and air the room", "e", "a licensed technician", "EN 50291")] };
        var stopped = Report(DemoVisits.Sealed(Service, SealedFigures.Of(beliefs)), beliefs);
        Assert.Equal(new Answer(Use.No, "Stop the stove and air the room."), stopped.Answer);
        Assert.Contains(stopped.ShouldDo, s => s.Contains("a licensed technician"));
        var noticed = DemoVisits.With(Service, new NoticeBody("The exchanger is cracked"));
        Assert.Equal(new Answer(Use.No, "The exchanger is cracked."), Report(noticed, null).Answer);
        Assert.Equal(Use.NotDecided, Report(Service, DemoVisits.Concluded(Service)).Answer.Use);
    }

    [Fact]
    public void Work_left_undone_limits_the_answer_but_a_missing_signature_does_not()
    {
        var undone = DemoVisits.With(Service, new ActionBody("clean-vent", Area.Vent, false, NotDoneReason.NoAccess));
        var answer = Closed(undone).Answer;
        Assert.Equal(Use.YesWithLimits, answer.Use);
        Assert.Contains("could not be reached safely", answer.Reason);
        var absent = DemoVisits.With(Service, new SignatureBody(Role.Customer, Absent: true));
        Assert.Equal(Use.Yes, Closed(absent).Answer.Use);
    }

    [Theory]
    [InlineData("nest-in-the-cap")]
    [InlineData("ash-passages-full")]
    public void A_stove_that_was_not_measured_after_the_work_is_not_called_fit(string name)
    {
        var answer = Closed(DemoVisits.Load(name)).Answer;
        Assert.Equal(Use.NotDecided, answer.Use);
        Assert.Contains("not measured after the work", answer.Reason);
    }

    [Fact]
    public void A_reading_left_out_of_band_must_be_explained()
    {
        var weak = DemoVisits.With(Service, new ReadingBody(Places.Firebox, false, Measure.Pressure, Condition.FanOnly, Quantity.Of(-12, Measure.Pressure), "-12 Pa", Phase: Phase.AsLeft));
        var answer = Closed(weak).Answer;
        Assert.Equal(Use.NotDecided, answer.Use);
        Assert.Contains("firebox too weak", answer.Reason);
        var explained = DemoVisits.With(weak, new ExplanationBody(Place: Places.Firebox, Cause: Cause.PartOnOrder, Consequence: Consequence.MarginReduced));
        Assert.Equal(Use.YesWithLimits, Closed(explained).Answer.Use);
    }

    [Fact]
    public void A_failed_proof_forbids_use()
    {
        var failed = DemoVisits.With(Service, new ProofBody(Proof.HoseOff, ProofOutcome.Failed));
        Assert.Equal(Use.No, Closed(failed).Answer.Use);
        Assert.Equal(Use.Yes, Closed(DemoVisits.With(failed, new ProofBody(Proof.HoseOff, ProofOutcome.Passed))).Answer.Use);
    }

    [Fact]
    public void A_name_kept_apart_from_the_journal_is_withheld_not_printed_as_a_hash()
    {
        var erased = DemoVisits.With(Service, new CustomerBody(Name: Blob.ReferenceTo([1, 2, 3])));
        var text = ReadBack.All(ReportPdf.Render(Closed(erased), PageFormat.Letter));
        Assert.DoesNotContain("sha256:", text);
        Assert.Contains("name withheld", text);
    }

    [Fact]
    public void A_drawn_signature_is_shown_when_its_picture_is_here()
    {
        var input = VisitReport.Of(Service, null, "0.1.0", UnitSystem.Si, _ => Pixels.Png);
        Assert.Contains(input.Signatures, s => s.Role == "customer" && !s.Image.IsDefaultOrEmpty);
    }

    [Theory]
    [InlineData("healthy-service")]
    [InlineData("nest-in-the-cap")]
    [InlineData("ash-passages-full")]
    public void Every_demo_visit_prints_open_or_signed_in_both_units(string name)
    {
        var visit = DemoVisits.Load(name);
        var beliefs = DemoVisits.Concluded(visit);
        foreach (var units in new[] { UnitSystem.Si, UnitSystem.Us })
            foreach (var v in new[] { visit, DemoVisits.Sealed(visit, SealedFigures.Of(beliefs)) })
            {
                var text = ReadBack.All(ReportPdf.Render(VisitReport.Of(v, beliefs, "0.1.0", units, _ => []), PageFormat.Letter));
                foreach (var reading in v.LeftWith) Assert.Contains(QuantityFormat.Format(reading.Body.Si, reading.Body.Measure, units, reading.Body.Measure == Measure.Pressure ? 1 : null, reading.Body.Measure == Measure.Pressure), text);
            }
    }

    public static TheoryData<string, string, UnitSystem> Fronts
    {
        get
        {
            var all = new TheoryData<string, string, UnitSystem>();
            foreach (var name in EveryPaper.All.Keys.Where(n => n is "inspection" or "commissioning" or "warranty" or "decommissioning" || n.StartsWith("report", StringComparison.Ordinal)))
                foreach (var paper in new[] { PageFormat.Letter, PageFormat.A4 })
                    foreach (var units in Enum.GetValues<UnitSystem>()) all.Add(name, paper.Name, units);
            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Fronts))]
    public void The_customer_s_page_is_one_page_with_its_signatures_and_no_sheet_is_nearly_empty(string name, string paper, UnitSystem units)
    {
        var made = EveryPaper.All[name](ReportPdfTests.Paper(paper), units);
        var pages = ReadBack.Pages(made.Pdf());
        Assert.Contains("May I use my stove?", pages[0]);
        Assert.Contains("What you ", pages[0]);
        if (pages[0].Contains("Yes")) Assert.Contains("technician,", pages[0]);
        foreach (var (page, number) in pages.Select((page, i) => (page, i)).Skip(1))
            Assert.True(
                page.Contains("The figures") || page.Contains("What follows from them") || page.Contains("The stove") || page.Contains("Photo") || page.Contains("Do not use"),
                $"Page {number + 1} begins in the middle: {page[..Math.Min(80, page.Length)]}");
    }

    [Fact]
    public void Look()
    {
        if (Environment.GetEnvironmentVariable("LOOK") is not { } folder) return;
        foreach (var name in new[] { "healthy-service", "nest-in-the-cap", "ash-passages-full" })
        {
            var visit = DemoVisits.Load(name);
            var beliefs = DemoVisits.Concluded(visit);
            File.WriteAllBytes(Path.Combine(folder, $"demo-{name}.pdf"), ReportPdf.Render(Report(DemoVisits.Sealed(visit, SealedFigures.Of(beliefs)), beliefs), PageFormat.Letter));
        }
    }

    private static ReportInput Closed(Visit visit)
    {
        var beliefs = DemoVisits.Concluded(visit);
        return Report(DemoVisits.Sealed(visit, SealedFigures.Of(beliefs, visit)), beliefs);
    }

    private static ReportInput Report(Visit visit, Beliefs? beliefs, string engine = "0.1.0") =>
        VisitReport.Of(visit, beliefs, engine, UnitSystem.Si, _ => ImmutableArray<byte>.Empty, "Low Orrin, county of Orrin · 555 0142");
}
