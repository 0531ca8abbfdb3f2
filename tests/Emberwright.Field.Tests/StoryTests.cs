using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>One call from the telephone to the report, on a fresh phone, with the network gone half way.</summary>
public sealed class StoryTests(Chromium chromium, Site site)
{
    [Fact]
    public async Task A_call_is_worked_to_its_report_with_the_network_off()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;

        await page.GotoAsync(site.Address);
        await Expect(page.GetByText("It lights, feeds for ten minutes and stops. Then")).ToBeVisibleAsync();
        await phone.Picture("today");
        await page.OpenTheCall(site.Address);

        // What a healthy stove should read here today, before anything is read.
        var profile = page.Locator("#found .profile svg");
        await Expect(profile).ToBeVisibleAsync();
        await Expect(profile.Locator(".band").First).ToBeAttachedAsync();
        await Expect(page.Locator("#found")).ToContainTextAsync("Nothing is read yet");
        var before = await page.Suspects();
        var nextBefore = await page.Locator(".dock .go").InnerTextAsync();
        Assert.StartsWith("Next check", nextBefore);

        // Danger first, then two answers to what is most worth asking.
        var answers = page.Locator("#call dl dt");
        var told = await answers.CountAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "None of these" }).ClickAsync();
        await Expect(answers).ToHaveCountAsync(told + 1);
        await page.WaitUntilConcluded();
        await page.Locator("#call fieldset .choices button").First.ClickAsync();
        await Expect(answers).ToHaveCountAsync(told + 2);
        await page.GetByRole(AriaRole.Button, new() { Name = "Another question" }).ClickAsync();
        await page.Locator("#call fieldset .choices button").First.ClickAsync();
        await Expect(answers).ToHaveCountAsync(told + 3);
        await page.WaitUntilConcluded();

        // Four readings: a choked way between firebox and blower.
        await page.GetByRole(AriaRole.Link, new() { Name = "Add Firebox" }).ClickAsync();
        await phone.Picture("reading-empty");
        await page.Type("0.03");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Blower inlet, as found" })).ToBeVisibleAsync();
        await page.Type("0.31");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Vent collar, as found" })).ToBeVisibleAsync();
        await page.Type("-0.01");
        await page.GotoAsync($"{page.Url.Split("/reading")[0].Split('#')[0]}");
        await page.WaitUntilConcluded();
        await page.GetByRole(AriaRole.Link, new() { Name = "Add Supply" }).ClickAsync();
        await page.Type("121");
        await page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();
        await page.WaitUntilConcluded();

        var after = await page.Suspects();
        Assert.NotEqual(before, after);
        Assert.Matches("(?i)ash passages|exchanger", after.Split('\n', 3)[1] + after.Split('\n', 3)[0]);
        await Expect(page.Locator("#found .flag").First).ToBeVisibleAsync();
        await page.Locator("#suspects").ScrollIntoViewIfNeededAsync();
        await phone.Picture("suspects");

        // Every probability opens to what it rests on.
        await page.Locator("#suspects .suspects summary").First.ClickAsync();
        await Expect(page.Locator("#suspects details[open] .why tbody tr").Nth(1)).ToBeVisibleAsync();

        // The next check is named, and done.
        await Expect(page.Locator(".dock .go .next")).ToHaveTextAsync("Next check");
        if ((await page.Locator(".dock .go").InnerTextAsync()).Contains("Make it safe", StringComparison.Ordinal))
        {
            await page.Locator(".dock .go").ClickAsync();
            await page.MakeItSafe();
        }
        var facts = await page.Locator("#suspects h2 small").InnerTextAsync();
        await page.Locator(".dock .go").ClickAsync();
        await page.DoTheCheck();
        await phone.Picture("check");
        await page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();
        await page.WaitUntilConcluded();
        await Expect(page.Locator("#suspects h2 small")).Not.ToHaveTextAsync(facts);
        after = await page.Suspects();

        // No network from here on.
        await phone.WaitUntilKept();
        await phone.Offline(true);
        await page.ReloadAsync();
        await page.WaitUntilConcluded();
        await Expect(page.Locator("#found")).ToContainTextAsync("−0.03 inWC");
        Assert.Equal(after, await page.Suspects());

        // The report, still with no network.
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Report as it stands" }).ClickAsync());
        var path = Repo.Artifacts("report.pdf");
        await download.SaveAsAsync(path);
        using var pdf = PdfDocument.Open(path);
        Assert.InRange(pdf.NumberOfPages, 2, 5);
        var text = string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
        Assert.Contains("Perpetua Larkspur", text);
        Assert.Contains("9 Ropewalk", text);
        Assert.Contains("Firebox", text);
        phone.HadNoTrouble();
    }
}
