using System.Diagnostics;
using System.Text;
using Emberwright.Field.Tests.Running;
using Emberwright.Reports;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>The papers of a visit on the phone, and the same report from the same file outside the browser.</summary>
public sealed class PapersTests(Chromium chromium, Site site)
{
    private const int Resolution = 60;

    [Fact]
    public async Task The_report_made_on_the_phone_is_the_one_made_at_a_terminal()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address);
        await page.GetByRole(AriaRole.Link, new() { Name = "Ottilie Brandreth" }).First.ClickAsync();
        await Expect(page.Locator("#suspects[aria-busy=false]")).ToBeAttachedAsync(new() { Timeout = 120_000 });
        var journal = await page.Downloaded("Visit file");
        await page.GetByRole(AriaRole.Link, new() { Name = "Look, share, print" }).ClickAsync();
        await Expect(page.Locator(".papers .sheets figure").First).ToBeVisibleAsync(new() { Timeout = 120_000 });
        await phone.Picture("papers");
        var fromPhone = await page.Downloaded("Share or save the PDF");
        TestContext.Current.TestOutputHelper?.WriteLine($"laid out in {await page.Locator("main").GetAttributeAsync("data-laid")} ms, written in {await page.Locator("main").GetAttributeAsync("data-written")} ms, {fromPhone.Length / 1024} kB");

        var findings = Findings.Of(VisitFile.Read(Encoding.UTF8.GetString(journal)))!;
        var input = VisitReport.Of(findings.Visit, findings.Beliefs, Engine.Version, UnitSystem.Us, _ => []);
        var fromTerminal = ReportPdf.Render(input, PageFormat.Letter);
        Assert.Equal(Words(fromTerminal), Words(fromPhone));
        foreach (var (terminal, browser) in Rasters(fromTerminal).Zip(Rasters(fromPhone)))
        {
            Assert.Equal(terminal.Length, browser.Length);
            Assert.True(terminal.Zip(browser, (a, b) => Math.Abs(a - b)).Average() < 0.5, "A page differs between browser and terminal.");
        }

        // Every other paper can be looked at too.
        foreach (var paper in (string[])["Door tag, A6", "Weekly care", "Quote", "Blank form"])
        {
            await page.GetByRole(AriaRole.Button, new() { Name = paper }).ClickAsync();
            await Expect(page.GetByRole(AriaRole.Button, new() { Name = paper, Pressed = true })).ToBeVisibleAsync();
            await Expect(page.Locator(".papers .sheets svg").First).ToBeVisibleAsync();
        }

        await phone.Picture("papers-form");
        phone.HadNoTrouble();
    }

    private static string Words(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return string.Join('\n', document.GetPages().Select(p => string.Join(' ', p.GetWords().Select(w => w.Text))));
    }

    private static List<byte[]> Rasters(byte[] pdf)
    {
        var folder = Directory.CreateTempSubdirectory("emberwright-papers");
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
}

/// <summary>Files out of the app.</summary>
internal static class Downloads
{
    public static async Task<byte[]> Downloaded(this IPage page, string button)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync());
        var path = Repo.Artifacts("downloads", Guid.NewGuid().ToString("N"));
        await download.SaveAsAsync(path);
        return await File.ReadAllBytesAsync(path);
    }
}
