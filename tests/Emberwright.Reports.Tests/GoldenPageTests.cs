using System.Diagnostics;
using System.IO.Compression;
using Emberwright.Reports.Pages;
using Xunit;

namespace Emberwright.Reports.Tests;

/// <summary>
/// The report's pages as they were last looked at and found good, as small grey pictures. Rasterisers differ by a shade,
/// so a page may differ by a little everywhere but not by much anywhere. EMBERWRIGHT_GOLDEN=write writes them anew.
/// </summary>
public class GoldenPageTests
{
    private const int Resolution = 40;

    [Theory]
    [InlineData("cleaned", "US Letter")]
    [InlineData("limited", "A4")]
    [InlineData("refused", "US Letter")]
    public void A_page_is_as_it_was_last_seen(string report, string paper)
    {
        Assert.SkipUnless(HasRasteriser(), "pdftoppm (poppler-utils) is not installed.");
        var input = report switch { "cleaned" => SampleReport.Cleaned, "limited" => SampleReport.Limited, _ => SampleReport.Refused };
        var pages = Rasterise(ReportPdf.Render(input, ReportPdfTests.Paper(paper)));
        Assert.Equal(2, pages.Count);
        for (var i = 0; i < pages.Count; i++)
        {
            var path = Path.Combine(GoldenPictureTests.Folder(), $"{report}-{i + 1}.pgm.gz");
            if (Environment.GetEnvironmentVariable("EMBERWRIGHT_GOLDEN") == "write") Write(path, pages[i]);
            Compare(Read(path), pages[i], Path.GetFileName(path));
        }
    }

    private static void Compare(byte[] golden, byte[] now, string name)
    {
        Assert.Equal(golden.Length, now.Length);
        var far = golden.Zip(now, (a, b) => Math.Abs(a - b)).Count(d => d > 64);
        var mean = golden.Zip(now, (a, b) => Math.Abs(a - b)).Average();
        Assert.True(far < golden.Length / 1000 && mean < 1.0, $"{name}: {far} of {golden.Length} points differ much, {mean:F2} grey levels on average. Look at the page, then write the golden anew.");
    }

    private static List<byte[]> Rasterise(byte[] pdf)
    {
        var folder = Directory.CreateTempSubdirectory("emberwright-pages");
        try
        {
            var file = Path.Combine(folder.FullName, "report.pdf");
            File.WriteAllBytes(file, pdf);
            using var tool = Process.Start(new ProcessStartInfo("pdftoppm", ["-gray", "-r", $"{Resolution}", file, Path.Combine(folder.FullName, "page")]))!;
            tool.WaitForExit();
            Assert.Equal(0, tool.ExitCode);
            return [.. folder.GetFiles("page*.pgm").OrderBy(f => f.Name, StringComparer.Ordinal).Select(f => File.ReadAllBytes(f.FullName))];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static bool HasRasteriser()
    {
        try
        {
            using var tool = Process.Start(new ProcessStartInfo("pdftoppm", "-v") { RedirectStandardError = true });
            tool!.WaitForExit();
            return true;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    private static void Write(string path, byte[] page)
    {
        using var zip = new GZipStream(File.Create(path), CompressionLevel.SmallestSize);
        zip.Write(page);
    }

    private static byte[] Read(string path)
    {
        using var zip = new GZipStream(File.OpenRead(path), CompressionMode.Decompress);
        using var whole = new MemoryStream();
        zip.CopyTo(whole);
        return whole.ToArray();
    }
}
