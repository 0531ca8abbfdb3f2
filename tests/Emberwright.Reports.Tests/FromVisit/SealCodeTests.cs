using System.Collections.Immutable;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Xunit;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Emberwright.Reports.Tests.FromVisit;

/// <summary>
/// The seal's code as a camera sees it: the page painted by another program, the code found and read by another library
/// (ZXing), and what it says held against the visit file.
/// </summary>
public class SealCodeTests
{
    private static readonly Visit Open = DemoVisits.Load("healthy-service");
    private static readonly Visit Signed = DemoVisits.Sealed(Open, SealedFigures.Of(DemoVisits.Concluded(Open), Open));

    [Theory]
    [InlineData("US Letter", 300)]
    [InlineData("US Letter", 150)]
    [InlineData("A4", 300)]
    [InlineData("A4", 200)]
    public void The_code_read_from_the_painted_page_proves_the_visit_file(string paper, int resolution)
    {
        Assert.SkipUnless(Rasters.Installed, "pdftoppm (poppler-utils) is not installed.");
        var said = Read(Print(Signed, ReportPdfTests.Paper(paper)), resolution);
        var words = Assert.Single(said).Split(' ');
        Assert.Equal(["EMBERWRIGHT", "SEAL", "1"], words[..3]);

        // The visit file, as it was kept elsewhere, is the one of the code, and everything the seal covers is in it.
        var kept = Visit.Fold(VisitFile.Read(VisitFile.Write(Signed.Journal)).Journal);
        Assert.Equal(kept.Id, words[3], ignoreCase: true);
        Assert.Equal(kept.Seal!.Body.Hash, words[4], ignoreCase: true);
        Assert.True(kept.Seal.Intact);

        Assert.Equal((kept.Id, kept.Seal.Body.Hash), PrintedSeal.Read(said[0]) is { } seal ? (seal.Visit, seal.Hash) : default);
    }

    [Fact]
    public void A_code_shows_that_the_visit_file_was_changed()
    {
        Assert.SkipUnless(Rasters.Installed, "pdftoppm (poppler-utils) is not installed.");
        var seal = PrintedSeal.Read(Assert.Single(Read(Print(Signed, PageFormat.A4), 200)))!;
        var changed = Visit.Fold(VisitFile.Read(VisitFile.Write(Signed.Journal).Replace("\"-57 Pa\"", "\"-58 Pa\"")).Journal);
        Assert.True(SealVerdict.Of(seal, Signed).Holds);
        Assert.False(SealVerdict.Of(seal, changed).Holds);
        Assert.False(SealVerdict.Of(seal, DemoVisits.Sealed(DemoVisits.Load("nest-in-the-cap"), SealedFigures.Of(null))).Holds);
    }

    [Fact]
    public void A_report_that_is_not_signed_carries_no_code()
    {
        Assert.SkipUnless(Rasters.Installed, "pdftoppm (poppler-utils) is not installed.");
        Assert.Empty(Read(Print(Open, PageFormat.A4), 200));
    }

    [Theory]
    [InlineData("")]
    [InlineData("https://example.org/")]
    [InlineData("EMBERWRIGHT SEAL 2 A B")]
    [InlineData("EMBERWRIGHT SEAL 1 A")]
    [InlineData("EMBERWRIGHT SEAL 1 A XYZ")]
    public void Another_code_is_no_seal(string text) => Assert.Null(PrintedSeal.Read(text));

    // Everything a camera reads that looks at each half of a page from three distances, as one does who waits for the sharp one.
    private static List<string> Read(byte[] pdf, int resolution) =>
    [
        .. new[] { 1.0, 0.9, 1.1 }
            .SelectMany(nearer => Rasters.Of(pdf, (int)(resolution * nearer)))
            .SelectMany(page => new[] { 0, page.Height / 4, page.Height / 2 }.Select(top => Decode(page, top)))
            .OfType<string>().Distinct(),
    ];

    private static string? Decode(Raster page, int top)
    {
        var (width, height) = (page.Width / 2, page.Height / 2);
        var seen = new byte[width * height];
        for (var row = 0; row < height; row++) page.Grey.AsSpan((top + row) * page.Width, width).CopyTo(seen.AsSpan(row * width));
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(seen, width, height, RGBLuminanceSource.BitmapFormat.Gray8))))?.Text;
    }

    private static byte[] Print(Visit visit, PageFormat format) =>
        ReportPdf.Render(VisitReport.Of(visit, DemoVisits.Concluded(visit), "0.1.0", UnitSystem.Si, _ => ImmutableArray<byte>.Empty), format);
}
