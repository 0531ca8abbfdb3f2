using Deque.AxeCore.Playwright;
using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>Every screen in both themes: no serious violation that axe finds, no sideways scrolling, targets of 48 px.</summary>
public sealed class AccessTests(Chromium chromium, Site site)
{
    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Screens_can_be_read_and_pressed(ColorScheme theme)
    {
        await using var phone = await chromium.Phone(theme);
        var page = phone.Page;
        await page.OpenTheCall(site.Address);
        var visit = new Uri(page.Url).AbsolutePath.TrimStart('/');
        await page.GetByRole(AriaRole.Link, new() { Name = "Add Firebox" }).ClickAsync();
        await page.Type("0.03");
        await page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();
        await page.WaitUntilConcluded();
        await page.EvaluateAsync("document.querySelectorAll('main details').forEach(d => d.open = true)");
        await Check(phone, "visit", theme);

        foreach (var (name, address) in new[]
        {
            ("today", ""), ("stoves", "stoves"), ("due", "due"), ("firm", "firm"), ("call", "visit/new"), ("parts", "firm/parts"), ("people", "firm/people"),
            ("customers", "firm/customers"), ("learnt", "firm/learnt"), ("exchange", "firm/exchange"), ("stove", "stoves/fennickoar~fo4020871"),
            ("reading", $"{visit}/reading"), ("checks", $"{visit}/checks"), ("check", $"{visit}/check/clean-ash-passages"),
        })
        {
            await page.GotoAsync($"{site.Address}/{address}");
            await Expect(page.Locator("h1[tabindex]")).ToBeVisibleAsync();
            await Check(phone, name, theme);
        }
    }

    private static async Task Check(Phone phone, string name, ColorScheme theme)
    {
        await phone.Picture($"{name}-{theme.ToString().ToLowerInvariant()}");
        var axe = await phone.Page.RunAxe();
        var serious = axe.Violations.Where(v => v.Impact is "serious" or "critical")
            .Select(v => $"{name}: {v.Id}, {v.Help}: {string.Join("; ", v.Nodes.Take(3).Select(n => n.Html))}");
        Assert.Empty(serious);

        var sideways = await phone.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth");
        Assert.True(sideways <= 0, $"{name} scrolls {sideways} px sideways.");
        var small = await phone.Page.EvaluateAsync<string[]>("""
            [...document.querySelectorAll('button, .button, summary, input:not([type=checkbox]):not([type=file]), select, .order a, .places a, .missing a')]
                .filter(e => e.checkVisibility() && !e.closest('.entry') && !e.classList.contains('away'))
                .filter(e => e.getBoundingClientRect().height < 47.5)
                .map(e => `${e.outerHTML.slice(0, 120)} is ${e.getBoundingClientRect().height} px high`)
            """);
        Assert.Empty(small);
    }
}
