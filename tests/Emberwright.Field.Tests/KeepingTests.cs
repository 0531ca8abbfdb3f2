using System.Text.RegularExpressions;
using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>Nothing recorded is lost: a killed browser, two tabs, two devices, a full or cleared store, a clock set back, a newer version.</summary>
public sealed class KeepingTests(Chromium chromium, Site site)
{
    [Fact]
    public async Task A_browser_killed_at_any_moment_loses_at_most_the_field_being_typed()
    {
        await using var browser = await OwnBrowser.New();
        var page = await browser.Open();
        await page.Book(site.Address, "Breakdown", "Isolde Craig", "It stops");
        await page.WaitUntilConcluded();
        var visit = page.Url.Split('#')[0];
        await page.GetByRole(AriaRole.Button, new() { Name = "Switched off at its own control" }).ClickAsync();
        await Expect(page.Locator("#safe .log li")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Link, new() { Name = "Add Firebox" }).ClickAsync();
        await page.Type("0.07");
        await Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("Firebox −0.07 inWC saved");
        foreach (var key in "12") await page.GetByRole(AriaRole.Button, new() { Name = key.ToString(), Exact = true }).ClickAsync();
        await browser.Kill();

        page = await browser.Open();
        await page.GotoAsync(visit);
        await page.WaitUntilConcluded();
        await Expect(page.Locator("#safe .log li")).ToHaveCountAsync(1);
        await Expect(page.Locator("#found tbody").First).ToContainTextAsync("−0.07 inWC");
        await Expect(page.Locator("#found tbody").First.Locator("b")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task Two_tabs_write_to_one_visit_and_each_sees_the_other()
    {
        await using var phone = await chromium.Phone();
        var one = phone.Page;
        await one.Book(site.Address, "Service", "Two Tabs");
        await one.WaitUntilConcluded();
        var two = await one.Context.NewPageAsync();
        await two.GotoAsync(one.Url);
        await two.WaitUntilConcluded();
        await one.Locator("#safe .two button").ClickAsync();
        await Expect(two.Locator("#safe .log li")).ToHaveCountAsync(1);
        await two.Locator("#safe .two button").ClickAsync();
        await Expect(one.Locator("#safe .log li")).ToHaveCountAsync(2);
        // At the very same moment.
        await Task.WhenAll(one.Locator("#safe .two button").ClickAsync(), two.Locator("#safe .two button").ClickAsync());
        await Expect(one.Locator("#record h2 small")).ToHaveTextAsync(await two.Locator("#record h2 small").InnerTextAsync());
        var file = await VisitFile(one);
        var sequence = Regex.Matches(file, "\"seq\":(\\d+)").Select(m => int.Parse(m.Groups[1].Value)).ToArray();
        Assert.Equal(sequence.Distinct().Count(), sequence.Length);
    }

    [Fact]
    public async Task Two_devices_are_put_together_and_what_they_say_differently_is_shown()
    {
        await using var first = await chromium.Phone();
        await using var second = await chromium.Phone();
        await first.Page.Book(site.Address, "Service", "Merle Ashdown");
        await first.Page.WaitUntilConcluded();
        var visit = first.Page.Url.Split('#')[0];
        await second.Page.GotoAsync(site.Address + "/stoves");
        await Bring(second.Page, await VisitFile(first.Page));
        await second.Page.GotoAsync(visit);
        await second.Page.WaitUntilConcluded();

        await first.Page.GotoAsync(visit + "/stove");
        await first.Page.GetByLabel("Serial number").FillAsync("A-17");
        await first.Page.GetByLabel("Serial number").BlurAsync();
        await second.Page.GotoAsync(visit + "/stove");
        await second.Page.GetByLabel("Serial number").FillAsync("A-71");
        await second.Page.GetByLabel("Serial number").BlurAsync();
        await second.Page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();
        await second.Page.Locator("#safe .two button").ClickAsync();
        await Expect(second.Page.Locator("#safe .log li")).ToHaveCountAsync(1);

        await first.Page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();
        var (fromFirst, fromSecond) = (await VisitFile(first.Page), await VisitFile(second.Page));
        await first.Page.GotoAsync(site.Address + "/stoves");
        await Bring(first.Page, fromSecond);
        await second.Page.GotoAsync(site.Address + "/stoves");
        await Bring(second.Page, fromFirst);
        foreach (var page in new[] { first.Page, second.Page })
        {
            await page.GotoAsync(visit);
            await page.WaitUntilConcluded();
            await Expect(page.GetByText("Two devices say different things.")).ToBeVisibleAsync();
            await Expect(page.Locator(".heed", new() { HasText = "A-17" })).ToContainTextAsync("A-71");
            await Expect(page.Locator("#safe .log li")).ToHaveCountAsync(1);
        }
        Assert.Equal(await VisitFile(first.Page), await VisitFile(second.Page));
    }

    [Fact]
    public async Task A_full_store_says_so_keeps_all_earlier_steps_and_goes_on_once_there_is_room()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        // A browser that has no room ends the transaction with this error (Indexed Database API 3.0, "committing a transaction").
        await page.AddInitScriptAsync("""
            const add = IDBObjectStore.prototype.add;
            IDBObjectStore.prototype.add = function (...what) {
                if (!window.full) return add.apply(this, what);
                const error = new DOMException('The current transaction exceeded its quota limitations.', 'QuotaExceededError');
                Object.defineProperty(this.transaction, 'error', { get: () => error });
                this.transaction.abort();
            };
            """);
        await page.Book(site.Address, "Service", "Full Up");
        await page.WaitUntilConcluded();
        await page.EvaluateAsync("window.full = true");
        await page.Locator("#safe .two button").ClickAsync();
        await Expect(page.GetByText("Not saved: this phone has no room left.")).ToBeVisibleAsync();
        await Expect(page.Locator("#safe .log li")).ToHaveCountAsync(0);
        await page.EvaluateAsync("window.full = false");
        await page.Locator("#safe .two button").ClickAsync();
        await Expect(page.Locator("#safe .log li")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_store_cleared_under_an_open_visit_is_said_and_the_visit_can_still_be_handed_over()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.Book(site.Address, "Service", "Evelyn Gale");
        await page.WaitUntilConcluded();
        await page.ReloadAsync();
        await page.WaitUntilConcluded();
        var cdp = await page.Context.NewCDPSessionAsync(page);
        await cdp.SendAsync("Storage.clearDataForOrigin", new() { ["origin"] = site.Address, ["storageTypes"] = "indexeddb" });
        await page.Locator("#safe .two button").ClickAsync();
        await Expect(page.GetByText("Not saved: the browser has cleared its store meanwhile.")).ToBeVisibleAsync();
        var file = await VisitFile(page);
        Assert.Contains("Evelyn Gale", file);

        await page.GotoAsync(site.Address);
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("This phone’s store was cleared.");
        await page.GotoAsync(site.Address + "/stoves");
        await Bring(page, file);
        await page.GotoAsync(site.Address);
        await Expect(page.GetByText("Evelyn Gale")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_clock_set_back_is_said_and_steps_stay_in_their_order()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OwnClock();
        await page.Book(site.Address, "Service", "Back Tide");
        await page.WaitUntilConcluded();
        await page.Locator("#safe .two button").ClickAsync();
        await Expect(page.Locator("#safe .log li")).ToHaveCountAsync(1);
        await page.LetPass(TimeSpan.FromHours(-3));
        await page.Locator("#safe .two button").ClickAsync();
        await Expect(page.GetByText("This phone’s clock is behind.")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await page.WaitUntilConcluded();
        await Expect(page.Locator("#safe .log li").Nth(0)).ToContainTextAsync("Switched off");
        await Expect(page.Locator("#safe .log li").Nth(1)).ToContainTextAsync("Burnt out");
    }

    [Fact]
    public async Task An_older_app_keeps_what_a_newer_one_wrote()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.Book(site.Address, "Service", "Old And New");
        await page.WaitUntilConcluded();
        var visit = page.Url.Split('#')[0];

        // Entries of a version to come, beside ours: shown as not understood, kept to the letter.
        const string Newer = """{"v":9,"id":"0199aaaa-0000-7000-8000-000000000001","device":"phone-of-2030","seq":1,"author":"x","at":"2030-01-01T09:00:00Z","clock":"1893488400000:0","kind":"moon-phase","body":{"phase":"full"}}""";
        var file = await VisitFile(page);
        await page.GotoAsync(site.Address + "/stoves");
        await Bring(page, file + Newer + "\n");
        await page.GotoAsync(visit);
        await page.WaitUntilConcluded();
        await Expect(page.GetByText("1 entry is not understood here.")).ToBeVisibleAsync();
        await page.Locator("#safe .two button").ClickAsync();
        await Expect(page.Locator("#safe .log li")).ToHaveCountAsync(1);
        Assert.Contains(Newer, await VisitFile(page));
    }

    private static async Task<string> VisitFile(IPage page)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Visit file" }).ClickAsync());
        return await File.ReadAllTextAsync(await download.PathAsync());
    }

    private static async Task Bring(IPage page, string file)
    {
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "visit.jsonl", MimeType = "application/jsonl", Buffer = System.Text.Encoding.UTF8.GetBytes(file) });
        await Expect(page.GetByText("visit.jsonl:")).ToBeVisibleAsync();
    }
}
