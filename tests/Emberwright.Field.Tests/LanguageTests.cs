using System.Text.Json;
using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>Every screen speaks the language chosen, and writes numbers as the region does.</summary>
public sealed class LanguageTests(Chromium chromium, Site site)
{
    [Fact]
    public async Task Every_screen_says_its_words_in_the_language_of_the_phone()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OpenTheCall(site.Address);
        var visit = new Uri(page.Url).AbsolutePath.TrimStart('/');
        await page.EvaluateAsync("import('./js/store.js').then(store => store.keepSetting('language', 'qps'))");
        var english = JsonSerializer.Deserialize<Dictionary<string, string>>(
            await File.ReadAllTextAsync(Path.Combine(Repo.Root, "src", "Emberwright.Field", "Words", "en.json"), TestContext.Current.CancellationToken))!;
        // A single word may also be one of the engine's: Vent, Wind, Look. A sentence is the app's own.
        var sentences = english.Values.Where(said => said.Count(char.IsWhiteSpace) > 1 && !said.Contains('{', StringComparison.Ordinal)).ToArray();
        await page.ReloadAsync();
        await Expect(page.Locator("h1[tabindex]")).ToBeVisibleAsync();
        foreach (var address in ScreenList.All(visit))
        {
            await phone.Go(address);
            if (address == visit) await Expect(page.Locator("#suspects[aria-busy=false]")).ToBeAttachedAsync();
            var (marked, plain) = await Texts(page, sentences);
            Assert.True(marked >= 5, $"{address}: only {marked} texts come from the file.");
            Assert.True(plain.Length == 0, $"{address} says in English: {string.Join("; ", plain)}");
        }
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task A_region_with_a_decimal_comma_reads_shows_and_keeps_numbers_rightly()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/firm");
        await page.GetByLabel("Numbers, days and times as written in").SelectOptionAsync("de-DE");
        await Expect(page.GetByLabel("Numbers, days and times as written in")).ToHaveValueAsync("de-DE");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "SI: Pa, °C", Pressed = true })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "US: inWC" }).ClickAsync();
        await page.OpenTheCall(site.Address);
        await page.GetByRole(AriaRole.Link, new() { Name = "Add Firebox" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Decimal point" })).ToHaveTextAsync(",");
        await page.Locator(".entry input").FillAsync("-0,03");
        await page.Locator(".pad .go").ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();
        await page.WaitUntilConcluded();
        await Expect(page.Locator("#found tbody").First).ToContainTextAsync("−0,03 inWC");
        await Expect(page.Locator("#found .profile svg")).ToContainTextAsync("−0,03");
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Visit file" }).ClickAsync());
        Assert.Contains("-0.03 inWC", (await File.ReadAllTextAsync(await download.PathAsync(), TestContext.Current.CancellationToken)).Replace('−', '-'));
        await phone.Picture("decimal-comma");
        phone.HadNoTrouble();
    }

    // How many texts on the page are marked, and which sentences of the file stand there in English.
    private static async Task<(int Marked, string[] Plain)> Texts(IPage page, string[] sentences)
    {
        var texts = await page.EvaluateAsync<string[]>("""
            () => {
                const walk = document.createTreeWalker(document.getElementById('app'), NodeFilter.SHOW_TEXT);
                const all = [];
                // Pictures say the same as on paper, in the engine's words.
                while (walk.nextNode()) if (!walk.currentNode.parentElement.closest('svg')) all.push(walk.currentNode.data.trim());
                for (const e of document.querySelectorAll('#app [aria-label]')) all.push(e.ariaLabel.trim());
                return all;
            }
            """);
        return (texts.Count(text => text.Contains('⟦', StringComparison.Ordinal)), [.. texts.Intersect(sentences)]);
    }
}
