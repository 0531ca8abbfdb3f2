using System.Diagnostics;
using Emberwright.Reports.Pages;
using UglyToad.PdfPig;
using Xunit;

namespace Emberwright.Reports.Tests;

/// <summary>
/// A report with far more photos than usual. The bounds are our own: the file is little more than its photos, the work grows
/// no faster than they do, and a phone's memory holds it.
/// </summary>
public class ManyPhotosTests
{
    private const int Count = 60;
    private const int Each = 280_000;

    [Theory]
    [InlineData("US Letter")]
    [InlineData("A4")]
    public void Sixty_photos_are_all_there_whole_and_within_the_paper(string paper)
    {
        var format = ReportPdfTests.Paper(paper);
        var input = SampleReport.Cleaned with { Photos = Photos.Some(Count, Each) };
        ReportPdf.Render(SampleReport.Cleaned, format);
        var allocated = GC.GetAllocatedBytesForCurrentThread();
        var watch = Stopwatch.StartNew();
        var pdf = ReportPdf.Render(input, format);
        var took = watch.Elapsed;
        allocated = GC.GetAllocatedBytesForCurrentThread() - allocated;

        var photos = input.Photos.Sum(p => (long)p.File.Length);
        TestContext.Current.TestOutputHelper?.WriteLine($"{Count} photos of {photos / 1e6:F1} MB: file {pdf.Length / 1e6:F1} MB, {took.TotalMilliseconds:F0} ms, {allocated / 1e6:F0} MB allocated");
        Assert.InRange(pdf.Length, photos, photos + 300_000);
        Assert.True(took < TimeSpan.FromSeconds(5), $"It took {took.TotalSeconds:F1} s; five are allowed even on a busy machine.");
        Assert.True(allocated < 8 * photos + 60_000_000, $"{allocated / 1e6:F0} MB were allocated for {photos / 1e6:F1} MB of photos.");

        using var document = PdfDocument.Open(pdf);
        var shown = document.GetPages().SelectMany(p => p.GetImages().Select(i => (Page: p.Number, Image: i))).ToList();
        Assert.Equal(Count, shown.Count);
        Assert.Equal(Count, shown.Select(s => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(s.Image.RawBytes))).Distinct().Count());
        foreach (var (page, image) in shown)
        {
            Assert.InRange(image.BoundingBox.Left, format.Side - 0.5, format.Width - format.Side);
            Assert.InRange(image.BoundingBox.Right, format.Side, format.Width - format.Side + 0.5);
            Assert.InRange(image.BoundingBox.Bottom, format.Height - format.Bottom - 0.5, format.Height);
            Assert.InRange(image.BoundingBox.Top, 0, format.Height - format.Top + 0.5);
            Assert.Equal(8.0 / 6, image.BoundingBox.Width / image.BoundingBox.Height, 2);
            Assert.DoesNotContain(shown, other => other.Page == page && other.Image != image
                && other.Image.BoundingBox.Left < image.BoundingBox.Right - 0.5 && image.BoundingBox.Left < other.Image.BoundingBox.Right - 0.5
                && other.Image.BoundingBox.Bottom < image.BoundingBox.Top - 0.5 && image.BoundingBox.Bottom < other.Image.BoundingBox.Top - 0.5);
        }

        // Each caption stands on its photo's own page, and no page of photos but the last is half empty.
        var pages = ReadBack.Pages(pdf);
        for (var i = 0; i < Count; i++) Assert.Contains($"Photo {i + 1}:", pages[shown.OrderBy(s => s.Page).ThenByDescending(s => Math.Round(s.Image.BoundingBox.Top)).ThenBy(s => s.Image.BoundingBox.Left).ElementAt(i).Page - 1]);
        Assert.All(shown.GroupBy(s => s.Page).OrderBy(g => g.Key).SkipLast(1), page => Assert.True(page.Count() >= 6));
        Assert.Contains($"Page {pages.Count} of {pages.Count}", pages[^1]);
    }

    [Fact]
    public void Photos_that_are_on_another_phone_take_little_room_and_keep_their_captions()
    {
        var pages = ReadBack.Pages(ReportPdf.Render(SampleReport.Cleaned with { Photos = [.. Photos.Some(Count).Select(p => p with { File = [] })] }, PageFormat.A4));
        var text = string.Join(' ', pages);
        for (var i = 0; i < Count; i++) Assert.Contains($"Photo {i + 1}:", text);
        Assert.Equal(Count, text.Split("This photo is not on this device.").Length - 1);
        Assert.InRange(pages.Count, 3, 6);
    }
}
