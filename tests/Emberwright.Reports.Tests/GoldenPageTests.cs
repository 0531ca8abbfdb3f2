using System.IO.Compression;
using System.Text;
using Emberwright.Reports.Pages;
using Emberwright.Stove.Quantities;
using Xunit;

namespace Emberwright.Reports.Tests;

/// <summary>
/// Every page of every paper as it was last looked at and found good, as small grey pictures. Rasterisers differ by a shade,
/// so a page may differ by a little everywhere but not by much anywhere. EMBERWRIGHT_GOLDEN=write writes them anew.
/// </summary>
public class GoldenPageTests
{
    private const int Resolution = 40;

    public static TheoryData<string, string, UnitSystem> Papers
    {
        get
        {
            var all = new TheoryData<string, string, UnitSystem>();
            // Half of them on each paper and in each units; the tag has a size of its own.
            foreach (var (name, i) in EveryPaper.All.Keys.Select((name, i) => (name, i))) all.Add(name, i % 2 == 0 ? "US Letter" : "A4", i % 2 == 0 ? UnitSystem.Us : UnitSystem.Si);
            return all;
        }
    }

    [Theory]
    [InlineData("cleaned", "US Letter")]
    [InlineData("limited", "A4")]
    [InlineData("refused", "US Letter")]
    public void A_page_is_as_it_was_last_seen(string report, string paper)
    {
        var input = report switch { "cleaned" => SampleReport.Cleaned, "limited" => SampleReport.Limited, _ => SampleReport.Refused };
        Hold(report, ReportPdf.Render(input, ReportPdfTests.Paper(paper)), 2);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void A_paper_is_as_it_was_last_seen(string name, string paper, UnitSystem units)
    {
        var made = EveryPaper.All[name](ReportPdfTests.Paper(paper), units);
        Hold("paper-" + name, made.Pdf(), made.Sheets.Length);
    }

    private static void Hold(string name, byte[] pdf, int count)
    {
        Assert.SkipUnless(Rasters.Installed, "pdftoppm (poppler-utils) is not installed.");
        var pages = Rasters.Of(pdf, Resolution);
        Assert.Equal(count, pages.Count);
        var writing = Environment.GetEnvironmentVariable("EMBERWRIGHT_GOLDEN") == "write";
        for (var i = 0; i < pages.Count; i++)
        {
            var path = Path.Combine(GoldenPictureTests.Folder(), $"{name}-{i + 1}.pgm.gz");
            if (writing) Write(path, pages[i]);
            var (far, mean) = Read(path).Against(pages[i]);
            Assert.True(far < pages[i].Grey.Length / 1000 && mean < 1.0, $"{Path.GetFileName(path)}: {far} of {pages[i].Grey.Length} points differ much, {mean:F2} grey levels on average. Look at the page, then write the golden anew.");
        }

        Assert.False(File.Exists(Path.Combine(GoldenPictureTests.Folder(), $"{name}-{pages.Count + 1}.pgm.gz")), $"{name} had more pages when it was last looked at.");
    }

    private static void Write(string path, Raster page)
    {
        using var zip = new GZipStream(File.Create(path), CompressionLevel.SmallestSize);
        zip.Write(Encoding.ASCII.GetBytes($"P5\n{page.Width} {page.Height}\n255\n"));
        zip.Write(page.Grey);
    }

    private static Raster Read(string path)
    {
        using var zip = new GZipStream(File.OpenRead(path), CompressionMode.Decompress);
        using var whole = new MemoryStream();
        zip.CopyTo(whole);
        return Rasters.Read(whole.ToArray());
    }
}
