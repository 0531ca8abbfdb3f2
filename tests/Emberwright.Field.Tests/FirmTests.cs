using System.IO.Compression;
using System.Text;
using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>The firm of one on its phone: stoves, what is due, the book, tables, the archive.</summary>
public sealed class FirmTests(Chromium chromium, Site site)
{
    [Fact]
    public async Task A_stove_is_found_by_the_words_people_use_and_its_page_foretells()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/stoves");
        await Expect(page.Locator("main .rows > li")).Not.ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Searchbox).FillAsync("brandreth millrace ln");
        await Expect(page.Locator("main .rows > li")).ToHaveCountAsync(1);
        await phone.Picture("stoves-found");
        await page.Locator("main .rows a").First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Ottilie Brandreth", Level = 1 })).ToBeVisibleAsync();
        await Expect(page.Locator("#due-h + p")).ToContainTextAsync("20");
        await Expect(page.GetByRole(AriaRole.List, new() { Name = "Each area and when it reaches its limit" }).Locator("li")).ToHaveCountAsync(6);
        await Expect(page.Locator(".trends svg").First).ToBeVisibleAsync();
        await phone.Picture("stove");
        await page.Locator("details.change > summary").ClickAsync();
        await page.GetByLabel("Clearances: between what; measured; required").FillAsync("side to panelling; 2 in; 3 in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Expect(page.GetByText("Too close")).ToBeVisibleAsync();
        await page.GetByLabel("Keep a file with this stove").SetInputFilesAsync(new FilePayload { Name = "permit.txt", MimeType = "text/plain", Buffer = "B-117"u8.ToArray() });
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Open permit.txt" })).ToBeVisibleAsync();
        await page.ReloadAsync();
        var permit = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Open permit.txt" }).ClickAsync());
        Assert.Equal("B-117", await File.ReadAllTextAsync(await permit.PathAsync(), TestContext.Current.CancellationToken));
        await Expect(page.GetByText("Too close")).ToBeVisibleAsync();
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task What_is_entered_in_the_book_is_checked_kept_and_taken_back()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/firm/instruments");
        await Add(page, ("The name readings use", "gauge"), ("Good until", "2024-11-30"));
        await Expect(page.GetByText("calibration ran out Nov 30, 2024")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.GetByText("No instrument yet.")).ToBeVisibleAsync();

        await page.GotoAsync(site.Address + "/firm/people");
        await Add(page, ("Name, as it stands under entries", "R. Sorrel"), ("Qualifications: what; number; until", "inspection; 17; June"));
        await Expect(page.GetByText("Write year-month-day")).ToBeVisibleAsync();
        await page.GetByLabel("Qualifications: what; number; until").Last.FillAsync("inspection; 17; 2024-06-30");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Expect(page.GetByText("inspection ran out")).ToBeVisibleAsync();

        await page.GotoAsync(site.Address + "/firm/customers");
        await Add(page, ("Name", "Dorcas Elderfield"), ("Address", "3 Kiln Road"));
        await Expect(page.GetByText("Dorcas Elderfield")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Expect(page.GetByText("Dorcas Elderfield")).ToBeVisibleAsync();
        await phone.Picture("customers");
        await page.GetByRole(AriaRole.Button, new() { Name = "Erase on request" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Erase them" }).ClickAsync();
        await Expect(page.GetByText("Dorcas Elderfield")).ToHaveCountAsync(0);
        await page.ReloadAsync();
        await Expect(page.GetByText("Put away")).ToBeVisibleAsync();
        Assert.DoesNotContain("Dorcas", await page.ContentAsync(), StringComparison.Ordinal);
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task A_table_with_a_wrong_cell_is_refused_whole_and_the_mended_one_taken_in()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/firm/exchange");
        await page.GetByRole(AriaRole.Button, new() { Name = "Parts", Exact = true }).ClickAsync();
        await Choose(page, "parts.csv", "number,name,price,keep\nFO-1,rope,4.50,2\nFO-2,igniter,cheap,1\n");
        await Expect(page.GetByText("Line 3, column 3 (price)")).ToBeVisibleAsync();
        await phone.Picture("import-refused");
        await Choose(page, "parts.csv", "number,name,price,keep\nFO-1,rope,4.50,2\nFO-2,igniter,38,1\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take in 2" }).ClickAsync();
        await page.GotoAsync(site.Address + "/firm/parts");
        await Expect(page.GetByText("2 × rope FO-1")).ToBeVisibleAsync();
        await phone.Picture("parts");
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task Everything_leaves_as_one_file_and_comes_back_on_another_phone()
    {
        string file;
        await using (var phone = await chromium.Phone())
        {
            await phone.Page.GotoAsync(site.Address + "/firm/people");
            await Add(phone.Page, ("Name, as it stands under entries", "R. Sorrel"));
            await Expect(phone.Page.GetByText("R. Sorrel")).ToBeVisibleAsync();
            await phone.Page.GotoAsync(site.Address + "/firm/exchange");
            var handed = await phone.Page.RunAndWaitForDownloadAsync(() => phone.Page.GetByRole(AriaRole.Button, new() { Name = "Hand over everything" }).ClickAsync());
            file = Repo.Artifacts("screens", "everything.zip");
            await handed.SaveAsAsync(file);
            phone.HadNoTrouble();
        }

        using (var zip = ZipFile.OpenRead(file))
            Assert.True(zip.Entries.Count(e => e.FullName.StartsWith("visits/", StringComparison.Ordinal)) >= 9);
        await using var other = await chromium.Phone();
        await other.Page.GotoAsync(site.Address + "/firm/exchange");
        await other.Page.Locator("section:has(#archive) input[type=file]").SetInputFilesAsync(file);
        await Expect(other.Page.GetByText("visits taken in")).ToBeVisibleAsync();
        await other.Page.GotoAsync(site.Address + "/firm/people");
        await Expect(other.Page.GetByText("R. Sorrel")).ToBeVisibleAsync();
        other.HadNoTrouble();
    }

    [Fact]
    public async Task What_is_due_is_listed_written_about_and_noted()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/due");
        await page.GetByRole(AriaRole.Button, new() { Name = "Next 12 months" }).ClickAsync();
        var first = page.Locator(".rows.due > li").First;
        await Expect(first).ToBeVisibleAsync();
        await phone.Picture("due-year");
        var letter = await page.RunAndWaitForDownloadAsync(() => first.GetByRole(AriaRole.Button, new() { Name = "Letter" }).ClickAsync());
        Assert.EndsWith("letter.txt", letter.SuggestedFilename);
        await first.GetByRole(AriaRole.Button, new() { Name = "Asked today" }).ClickAsync();
        await Expect(page.Locator(".rows.due")).ToContainTextAsync("Asked ");
        var calendar = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Calendar file" }).ClickAsync());
        Assert.Equal("due.ics", calendar.SuggestedFilename);
        phone.HadNoTrouble();
    }

    private static async Task Add(IPage page, params (string Label, string Text)[] fields)
    {
        await page.Locator("main > details.change > summary").ClickAsync();
        var form = page.Locator("main > details.change");
        foreach (var (label, text) in fields) await form.GetByLabel(label, new() { Exact = true }).FillAsync(text);
        await form.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
    }

    private static Task Choose(IPage page, string name, string text) =>
        page.Locator("section:has(#tables) input[type=file]").SetInputFilesAsync(new FilePayload { Name = name, MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes(text) });
}
