using System.Collections.Immutable;
using System.Text;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Reports.Tests.FromVisit;

/// <summary>The seal in a report against the visit file: what belongs together holds, every change is named.</summary>
public class SealVerdictTests
{
    private static readonly Visit Open = DemoVisits.Load("healthy-service");
    private static readonly Visit Signed = DemoVisits.Sealed(Open, SealedFigures.Of(DemoVisits.Concluded(Open), Open));
    private static readonly byte[] Pdf = Print(Signed);

    [Fact]
    public void A_report_and_its_visit_file_belong_together()
    {
        var verdict = SealVerdict.Of(Pdf, Reread(VisitFile.Write(Signed.Journal)), _ => Print(Signed));
        Assert.True(verdict.Holds);
        Assert.Contains(verdict.Reasons, r => r.StartsWith("All 5 pages", StringComparison.Ordinal));
    }

    [Fact]
    public void A_figure_changed_in_the_visit_file_is_found()
    {
        var changed = VisitFile.Write(Signed.Journal).Replace("\"-57 Pa\"", "\"-58 Pa\"");
        var verdict = SealVerdict.Of(Pdf, Reread(changed), null);
        Assert.False(verdict.Holds);
        Assert.Contains(verdict.Reasons, r => r.Contains("was changed"));
    }

    [Fact]
    public void An_entry_taken_out_of_the_visit_file_is_found()
    {
        var lines = VisitFile.Write(Signed.Journal).Split('\n').ToList();
        lines.RemoveAt(lines.FindIndex(l => l.Contains("\"kind\":\"proof\"")));
        var verdict = SealVerdict.Of(Pdf, Reread(string.Join('\n', lines)), null);
        Assert.False(verdict.Holds);
        Assert.Contains(verdict.Reasons, r => r.Contains("missing"));
    }

    [Fact]
    public void A_report_of_another_visit_is_found()
    {
        var other = DemoVisits.Load("nest-in-the-cap");
        var verdict = SealVerdict.Of(Pdf, DemoVisits.Sealed(other, SealedFigures.Of(null)), null);
        Assert.False(verdict.Holds);
        Assert.Contains(verdict.Reasons, r => r.Contains("another visit"));
        Assert.Contains(verdict.Reasons, r => r.Contains("another seal"));
    }

    [Fact]
    public void A_visit_that_is_not_signed_proves_nothing()
    {
        Assert.False(SealVerdict.Of(Pdf, Open, null).Holds);
        Assert.StartsWith("No: this PDF file carries no seal", SealVerdict.Of(Print(Open), Signed, null).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_whose_words_were_changed_is_named()
    {
        var other = VisitReport.Of(Signed, null, "0.1.0", UnitSystem.Si, _ => []) with { Found = ["Everything was perfect."] };
        var verdict = SealVerdict.Of(ReportPdf.Render(other, PageFormat.A4), Signed, _ => Print(Signed));
        Assert.False(verdict.Holds);
        Assert.Contains(verdict.Reasons, r => r.StartsWith("Page 1 differs", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_no_PDF_file_is_refused_with_words() =>
        Assert.Contains("Give the report first", Assert.Throws<InvalidDataException>(() => SealVerdict.Of(Encoding.UTF8.GetBytes("{}"), Signed, null)).Message);

    [Fact]
    public void The_code_on_the_page_says_the_seal()
    {
        var text = new PrintedSeal(Signed.Id, Signed.Seal!.Body.Hash, "si a4").CodeText;
        Assert.Equal($"EMBERWRIGHT SEAL 1 {Signed.Id.ToUpperInvariant()} {Signed.Seal.Body.Hash.ToUpperInvariant()}", text);
        // Capital letters and digits only: the smallest form of the code.
        Assert.All(text, c => Assert.Contains(c, "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"));
    }

    private static Visit Reread(string file) => Visit.Fold(VisitFile.Read(file).Journal);

    private static byte[] Print(Visit visit) => ReportPdf.Render(VisitReport.Of(visit, DemoVisits.Concluded(visit), "0.1.0", UnitSystem.Si, _ => ImmutableArray<byte>.Empty), PageFormat.A4);
}
