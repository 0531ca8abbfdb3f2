using System.Globalization;
using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>
/// How long a report with twelve photos takes on the phone: taken in through the app, kept in its store, laid out, written.
/// Measured on the published app where one lies in artifacts/server, else on the built one. The times are kept in
/// artifacts/report-times.txt; they are judged on a quiet machine, not here.
/// </summary>
public sealed class ReportTimeTests(Chromium chromium)
{
    private const int Photos = 12;

    [Fact]
    public async Task Six_pages_with_twelve_photos()
    {
        var published = Repo.Artifacts("server");
        var isPublished = File.Exists(Path.Combine(published, "Emberwright.Server.dll"));
        await using var host = isPublished ? await Host.Published(published) : await Host.Built();
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(host.Address);
        await page.GetByRole(AriaRole.Link, new() { Name = "Philippa Wrenfield" }).First.ClickAsync();
        await page.WaitUntilConcluded();
        var recorded = page.Locator("#record h2 small");
        for (var i = 0; i < Photos; i++)
        {
            var before = await recorded.InnerTextAsync();
            await page.Locator(".dock input[type=file]").SetInputFilesAsync(new FilePayload { Name = "photo.jpg", MimeType = "image/jpeg", Buffer = await Picture(page, i) });
            await Expect(recorded).Not.ToHaveTextAsync(before);
        }

        await page.WaitUntilConcluded();
        await page.GetByRole(AriaRole.Link, new() { Name = "Look, share, print" }).ClickAsync();
        var main = page.Locator("main.papers");
        List<double> laid = [], written = [];
        var pdf = Array.Empty<byte>();
        for (var run = 0; run < 3; run++)
        {
            await Expect(page.Locator(".papers .sheets figure").First).ToBeVisibleAsync();
            pdf = await page.Downloaded("Share or save the PDF");
            laid.Add(await Number(main, "data-laid"));
            written.Add(await Number(main, "data-written"));
            await page.GetByRole(AriaRole.Button, new() { Name = "Door tag, A6" }).ClickAsync();
            await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Door tag, A6", Pressed = true })).ToBeVisibleAsync();
            await Expect(page.Locator(".papers .sheets figure")).ToHaveCountAsync(1);
            await page.GetByRole(AriaRole.Button, new() { Name = "Report" }).ClickAsync();
            await Expect(page.Locator(".papers .sheets figure").Nth(1)).ToBeAttachedAsync();
        }

        using var document = PdfDocument.Open(pdf);
        Assert.Equal(Photos, document.GetPages().Sum(p => p.GetImages().Count()));
        Assert.True(pdf.Length < 4_000_000, $"The file has {pdf.Length / 1e6:F1} MB; 4 are the most.");
        var best = laid.Zip(written, (l, w) => l + w).Min();
        var said = FormattableString.Invariant($"{(isPublished ? "published" : "built")}: {document.NumberOfPages} pages, {Photos} photos, {pdf.Length / 1e6:F2} MB; laid out {laid.Min():0} ms, written {written.Min():0} ms, together {best:0} ms at best, {laid.Zip(written, (l, w) => l + w).Max():0} ms at worst of 3");
        TestContext.Current.TestOutputHelper?.WriteLine(said);
        await File.AppendAllTextAsync(Repo.Artifacts("report-times.txt"), said + "\n");
        phone.HadNoTrouble();
    }

    private static async Task<double> Number(ILocator main, string attribute) =>
        double.Parse(await main.GetAttributeAsync(attribute) ?? "", CultureInfo.InvariantCulture);

    // 1600 by 1200 pixels of coarse noise, about as large a file as a photo.
    private static async Task<byte[]> Picture(IPage page, int seed) => Convert.FromBase64String(await page.EvaluateAsync<string>("""
        async seed => {
            const canvas = new OffscreenCanvas(1600, 1200), context = canvas.getContext('2d');
            let state = seed * 7919 + 1;
            const chance = () => (state = (state * 1103515245 + 12345) % 2147483648) / 2147483648;
            for (let y = 0; y < 1200; y += 4) for (let x = 0; x < 1600; x += 4) {
                const light = 95 + 42 * chance();
                context.fillStyle = `rgb(${light} ${light * 0.8} ${light * 0.6})`;
                context.fillRect(x, y, 4, 4);
            }
            const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 })).arrayBuffer());
            return btoa(bytes.reduce((text, byte) => text + String.fromCharCode(byte), ''));
        }
        """, seed));
}
