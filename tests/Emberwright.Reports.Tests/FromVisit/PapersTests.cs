using System.Collections.Immutable;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Papers;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using UglyToad.PdfPig;
using Xunit;

namespace Emberwright.Reports.Tests.FromVisit;

public class PapersTests
{
    private static readonly Firm Firm = new("Tamarack & Vale Hearth Service", "Low Orrin, county of Orrin · 555 0142");
    private static readonly Visit Service = DemoVisits.Load("healthy-service");
    private static readonly Visit Stopped = DemoVisits.With(Service, new NoticeBody("CO in the room rose to 41 ppm while it burned", "a licensed technician, after cure and measurement", "Ottilie Brandreth", Signed: true));

    [Fact]
    public void A_stop_use_notice_that_stands_has_a_page_of_its_own()
    {
        var pages = ReadBack.Pages(ReportPdf.Render(Report(Stopped), PageFormat.Letter));
        Assert.Contains("No.", pages[0]);
        Assert.Contains("Do not use this stove", pages[1]);
        ReportPdfTests.AssertSays("CO in the room rose to 41 ppm while it burned.", pages[1]);
        ReportPdfTests.AssertSays("A licensed technician, after cure and measurement.", pages[1]);
        Assert.Contains("Read to Ottilie Brandreth and signed", pages[1]);
        Assert.Single(ReadBack.Pages(Papers.Papers.StopUseNotice(Report(Stopped), PageFormat.A4).Pdf()));
    }

    [Fact]
    public void A_notice_that_was_lifted_is_not_printed()
    {
        var lifted = DemoVisits.With(Stopped, new NoticeBody("The gasket is new and the room measured clean", Lifted: true));
        Assert.Null(Report(lifted).Notice);
        Assert.Throws<InvalidOperationException>(() => Papers.Papers.StopUseNotice(Report(lifted), PageFormat.A4));
    }

    [Fact]
    public void The_tag_is_A6_and_says_the_same_as_the_notice()
    {
        using var document = PdfDocument.Open(Papers.Papers.DoorTag(Report(Stopped)).Pdf());
        var page = Assert.Single(document.GetPages());
        Assert.Equal(105 / 25.4 * 72, page.Width, 1);
        Assert.Equal(148 / 25.4 * 72, page.Height, 1);
        var text = ReadBack.All(Papers.Papers.DoorTag(Report(Stopped)).Pdf());
        Assert.Contains("Do not use", text);
        ReportPdfTests.AssertSays("CO in the room rose to 41 ppm", text);
        Assert.DoesNotContain("Serviced", text);
        Assert.Contains("20 April 2027", ReadBack.All(Papers.Papers.DoorTag(Report(Service) with { Answer = new(Use.Yes, "It is clean.") }).Pdf()));
    }

    [Fact]
    public void A_tag_keeps_whatever_is_written_within_its_paper()
    {
        var long1 = string.Join(' ', Enumerable.Repeat("because of everything that was found behind the panel", 20));
        using var document = PdfDocument.Open(Papers.Papers.DoorTag(Report(Stopped) with { Notice = new(long1, long1, "", false, SampleReport.At), Firm = new(long1, long1), Technician = long1 }).Pdf());
        foreach (var letter in document.GetPage(1).Letters)
        {
            Assert.InRange(letter.StartBaseLine.X, 15, 105 / 25.4 * 72 - 12);
            Assert.InRange(letter.StartBaseLine.Y, 5, 148 / 25.4 * 72);
        }
    }

    [Fact]
    public void The_card_shows_what_was_shown_and_what_to_do_when_it_smells()
    {
        var text = ReadBack.All(Papers.Papers.HandoverCard(Report(Service), PageFormat.A4).Pdf());
        Assert.Contains("Keeping the hopper lid shut", text);
        ReportPdfTests.AssertSays("everyone out, then the emergency number", text);
    }

    [Fact]
    public void The_form_names_every_port_and_everything_sign_off_asks_for()
    {
        foreach (var kind in Enum.GetValues<VisitKind>())
        {
            var form = VisitPapers.Form(kind, Hydronic.Pattern, Firm, "0.1.0");
            var text = ReadBack.All(Papers.Papers.BlankForm(form, PageFormat.Letter).Pdf());
            foreach (var port in Hydronic.Pattern.Ports) Assert.Contains(port.Name, text);
            Assert.NotEmpty(form.Required);
            foreach (var required in form.Required) ReportPdfTests.AssertSays(required, text);
            foreach (var (step, caution) in form.Steps) ReportPdfTests.AssertSays(caution, text);
        }
    }

    [Fact]
    public void The_quote_lists_parts_to_order_with_what_was_agreed()
    {
        var visit = DemoVisits.With(DemoVisits.With(Service, new PartBody("door rope", "DR-9", "ordered")), new ConsentBody("door rope", true, "85 USD", InWriting: true));
        var text = ReadBack.All(Papers.Papers.Quote(VisitPapers.Quote(visit, null, Firm, "0.1.0"), PageFormat.Letter).Pdf());
        Assert.Contains("Door rope, DR-9", text);
        Assert.Contains("85 USD", text);
        ReportPdfTests.AssertSays("Door rope: agreed, 85 USD, in writing.", text);
    }

    [Fact]
    public void Labour_and_parts_come_as_comma_separated_values()
    {
        var visit = DemoVisits.With(Service, new PartBody("=cmd|' /C calc'!A1", "say \"x\", twice", "fitted"));
        var lines = LabourAndParts.Csv(visit).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("visit,kind,at,what,number,use,area,minutes,amount,by,condition,from", lines[0]);
        Assert.Contains(lines, l => l.Contains(",part,") && l.Contains("combustion-blower gasket,FO-1187,fitted,Combustion blower"));
        Assert.Contains(lines, l => l.Contains("'=cmd|' /C calc'!A1,\"say \"\"x\"\", twice\",fitted"));
        // From the first reading at 09:05:20 to the signature at 11:54:01.
        Assert.Contains(",labour,2026-04-21T09:05:20-04:00,time on site,,,,169,,R. Sorrel", LabourAndParts.Csv(Service));
    }

    [Fact]
    public void Every_paper_gives_the_same_bytes_again()
    {
        var input = Report(Stopped);
        Func<Paper>[] papers =
        [
            () => Papers.Papers.StopUseNotice(input, PageFormat.A4), () => Papers.Papers.DoorTag(input), () => Papers.Papers.HandoverCard(input, PageFormat.A4),
            () => Papers.Papers.BlankForm(VisitPapers.Form(VisitKind.Service, null, Firm, "0.1.0"), PageFormat.A4),
            () => Papers.Papers.Quote(VisitPapers.Quote(Service, null, Firm, "0.1.0"), PageFormat.A4),
        ];
        foreach (var paper in papers) Assert.True(paper().Pdf().AsSpan().SequenceEqual(paper().Pdf()));
    }

    private static ReportInput Report(Visit visit) =>
        VisitReport.Of(visit, DemoVisits.Concluded(visit), "0.1.0", UnitSystem.Si, _ => ImmutableArray<byte>.Empty, letterhead: Firm);
}
