using System.Text;
using Emberwright.Field.Tests.Running;
using Emberwright.Reports;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Tests;
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
        foreach (var (terminal, browser) in Rasters.Of(fromTerminal, Resolution).Zip(Rasters.Of(fromPhone, Resolution)))
            Assert.True(terminal.Against(browser).Mean < 0.5, "A page differs between browser and terminal.");

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

    [Fact]
    public async Task Print_opens_the_dialog_on_the_sheets_alone_one_to_a_page()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.AddInitScriptAsync("window.printed = 0; window.print = () => window.printed++;");
        await page.OpenPapers(site.Address);
        await page.GetByRole(AriaRole.Button, new() { Name = "Print" }).ClickAsync();
        await page.WaitForFunctionAsync("window.printed === 1");

        foreach (var (paper, format) in (Dictionary<string, string>)new() { ["Report"] = "Letter", ["Weekly care"] = "A4", ["Door tag, A6"] = "Letter" })
        {
            await page.GetByRole(AriaRole.Button, new() { Name = paper }).ClickAsync();
            await Expect(page.GetByRole(AriaRole.Button, new() { Name = paper, Pressed = true })).ToBeVisibleAsync();
            var status = page.Locator(".papers p[role=status]");
            await Expect(status).ToContainTextAsync("sheet");
            await Expect(page.Locator(".papers .sheets figure").First).ToBeVisibleAsync();
            var sheets = await page.Locator(".papers .sheets figure").CountAsync();
            using var printed = PdfDocument.Open(await page.PdfAsync(new() { Format = format, PreferCSSPageSize = false }));
            Assert.Equal(sheets, printed.NumberOfPages);
            var words = string.Join(' ', printed.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
            Assert.DoesNotContain("Share or save", words);
            Assert.DoesNotContain("Labour and parts", words);
        }

        phone.HadNoTrouble();
    }

    [Fact]
    public async Task Share_hands_the_pdf_to_the_phone_s_own_sheet_and_falls_back_to_a_file()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.AddInitScriptAsync("""
            { const media = window.matchMedia.bind(window); window.matchMedia = query => query === '(pointer: coarse)' ? { matches: true } : media(query); }
            window.shared = []; window.refuse = null;
            navigator.canShare = what => what.files?.length === 1;
            navigator.share = async what => {
                if (window.refuse) throw new DOMException('no', window.refuse);
                window.shared.push({ name: what.files[0].name, type: what.files[0].type, head: new TextDecoder().decode((await what.files[0].arrayBuffer()).slice(0, 5)) });
            };
            """);
        await page.OpenPapers(site.Address);
        await page.GetByRole(AriaRole.Button, new() { Name = "Share or save the PDF" }).ClickAsync();
        await page.WaitForFunctionAsync("window.shared.length === 1");
        Assert.Equal("application/pdf|%PDF-", await page.EvaluateAsync<string>("window.shared[0].type + '|' + window.shared[0].head"));
        Assert.EndsWith("-ottilie-brandreth-report.pdf", await page.EvaluateAsync<string>("window.shared[0].name"));

        // A sheet that the person closes is an answer; one that the phone refuses is not, so the file is kept.
        await page.EvaluateAsync("window.refuse = 'NotAllowedError'");
        var kept = await page.Downloaded("Share or save the PDF");
        Assert.Equal("%PDF-"u8.ToArray(), kept[..5]);
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task A_logo_drawn_as_svg_stands_on_the_letterhead_and_what_is_no_picture_is_refused()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/firm");
        var logo = page.GetByLabel("Logo");
        await logo.SetInputFilesAsync(new FilePayload { Name = "logo.svg", MimeType = "image/svg+xml", Buffer = Encoding.UTF8.GetBytes("not a drawing") });
        await Expect(page.GetByText("Choose an SVG, PNG or JPEG file")).ToBeVisibleAsync();
        await logo.SetInputFilesAsync(new FilePayload
        {
            Name = "logo.svg",
            MimeType = "image/svg+xml",
            Buffer = Encoding.UTF8.GetBytes("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 60 20' width='60' height='20'><rect width='60' height='20' fill='#3b5a4a'/></svg>"),
        });
        await Expect(page.GetByText("kept on this phone")).ToBeVisibleAsync();
        await page.OpenPapers(site.Address);
        await Expect(page.Locator(".papers .sheets svg image[href^='data:image/png']").First).ToBeAttachedAsync();
        using var document = PdfDocument.Open(await page.Downloaded("Share or save the PDF"));
        var image = Assert.Single(document.GetPage(1).GetImages());
        Assert.Equal((900, 300), (image.WidthInSamples, image.HeightInSamples));
        Assert.Equal(3.0, image.BoundingBox.Width / image.BoundingBox.Height, 0.05);
        phone.HadNoTrouble();
    }

    private static string Words(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return string.Join('\n', document.GetPages().Select(p => string.Join(' ', p.GetWords().Select(w => w.Text))));
    }
}

/// <summary>Papers and files out of the app.</summary>
internal static class Downloads
{
    /// <summary>The papers of the demo's service, laid out.</summary>
    public static async Task OpenPapers(this IPage page, string address)
    {
        await page.GotoAsync(address);
        await page.GetByRole(AriaRole.Link, new() { Name = "Ottilie Brandreth" }).First.ClickAsync();
        await page.WaitUntilConcluded();
        await page.GetByRole(AriaRole.Link, new() { Name = "Look, share, print" }).ClickAsync();
        await Expect(page.Locator(".papers .sheets figure").First).ToBeVisibleAsync();
    }

    public static async Task<byte[]> Downloaded(this IPage page, string button)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync());
        var path = Repo.Artifacts("downloads", Guid.NewGuid().ToString("N"));
        await download.SaveAsAsync(path);
        return await File.ReadAllBytesAsync(path);
    }
}
