using System.Text;
using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>What the firm knows better than the catalogue, its cards, its demo year, and visits that travel with their photos.</summary>
public sealed class FirmsOwnTests(Chromium chromium, Site site)
{
    private const string Card = """{"format":"emberwright-card","version":1,"pattern":"damper-insert","name":"Hob 40","codes":[{"code":"E3","meaning":"low draught"}]}""";

    [Fact]
    public async Task A_year_is_laid_out_teaches_and_is_removed()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OpenTheCall(site.Address);
        var before = await page.Suspects();

        await page.GotoAsync(site.Address + "/firm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Load its whole year" }).ClickAsync();
        await Expect(page.GetByText(" visits…")).ToBeVisibleAsync();
        await Expect(page.GetByText("visits are on this phone.")).ToBeVisibleAsync(new() { Timeout = 4 * Chromium.Patience });
        await page.GotoAsync(site.Address + "/stoves");
        await Expect(page.Locator("main p.fine")).ToContainTextAsync("30", new() { Timeout = 4 * Chromium.Patience });
        await phone.Picture("stoves-year");

        await page.GotoAsync(site.Address + "/firm/learnt");
        await page.GetByRole(AriaRole.Button, new() { Name = "Learn from all visits" }).ClickAsync();
        await Expect(page.GetByText("closed visits taught")).ToBeVisibleAsync();
        await Expect(page.GetByText("Based on").First).ToBeVisibleAsync();
        await page.GetByText("Figures that suspects go by").First.ClickAsync();
        await phone.Picture("learnt-year");
        var own = page.GetByLabel("Your own figure, ").First;
        await own.FillAsync("900");
        await own.BlurAsync();
        await Expect(page.GetByText("up to 100")).ToBeVisibleAsync();
        await own.FillAsync("95");
        await own.BlurAsync();
        await Expect(page.Locator(".said")).ToContainTextAsync("95");

        // What was learned and set moves what is held likely on the same call.
        await page.OpenTheCall(site.Address);
        Assert.NotEqual(before, await page.Suspects());

        await page.GotoAsync(site.Address + "/firm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove the demo firm" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Lay out the demo firm" })).ToBeVisibleAsync(new() { Timeout = 4 * Chromium.Patience });
        await page.GotoAsync(site.Address + "/stoves");
        await Expect(page.GetByText("No stove yet.")).ToBeVisibleAsync();
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task A_card_is_taken_in_used_at_a_visit_and_handed_over_the_same()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/firm/cards");
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "hob.card.json", MimeType = "application/json", Buffer = Encoding.UTF8.GetBytes(Card) });
        await Expect(page.GetByText("1 alarm code.")).ToBeVisibleAsync();
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "no.json", MimeType = "application/json", Buffer = "{}"u8.ToArray() });
        await Expect(page.GetByText("no.json was not taken in.")).ToBeVisibleAsync();
        await phone.Picture("cards");
        var handed = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Hand over Hob 40" }).ClickAsync());
        Assert.Equal("hob-40.card.json", handed.SuggestedFilename);
        Assert.Contains("low draught", await File.ReadAllTextAsync(await handed.PathAsync(), TestContext.Current.CancellationToken), StringComparison.Ordinal);

        await page.Book(site.Address, "Service", "Dorcas Elderfield");
        await page.GotoAsync(page.Url.TrimEnd('/') + "/stove");
        await page.GetByRole(AriaRole.Button, new() { Name = "Hob 40", Exact = true }).ClickAsync();
        await Expect(page.GetByText("E3 low draught")).ToBeVisibleAsync();
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task A_visit_travels_with_its_photos_and_its_household_is_known_at_the_next_call()
    {
        string file;
        await using (var phone = await chromium.Phone())
        {
            await phone.Page.Book(site.Address, "Service", "Dorcas Elderfield");
            await phone.Page.WaitUntilConcluded();
            await phone.Page.Locator(".dock input[type=file]").SetInputFilesAsync(new FilePayload { Name = "photo.png", MimeType = "image/png", Buffer = Touches.Png });
            var button = phone.Page.GetByRole(AriaRole.Button, new() { Name = "Visit with its photos" });
            await Expect(button).ToBeVisibleAsync();
            var handed = await phone.Page.RunAndWaitForDownloadAsync(() => button.ClickAsync());
            file = Repo.Artifacts("screens", "with-photos.zip");
            await handed.SaveAsAsync(file);
            phone.HadNoTrouble();
        }

        await using var other = await chromium.Phone();
        var page = other.Page;
        await page.GotoAsync(site.Address + "/stoves");
        await page.Locator("input[type=file]").SetInputFilesAsync(file);
        await Expect(page.GetByText("1 visit, 1 photos.")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await page.GotoAsync(site.Address + "/visit/new");
        await page.GetByLabel("Name", new() { Exact = true }).PressSequentiallyAsync("elder");
        await page.GetByRole(AriaRole.Button, new() { Name = "Dorcas Elderfield" }).ClickAsync();
        await Expect(page.GetByLabel("Name", new() { Exact = true })).ToHaveValueAsync("Dorcas Elderfield");
        await Expect(page.GetByLabel("Construction")).ToHaveValueAsync("damper-insert");
        other.HadNoTrouble();
    }
}
