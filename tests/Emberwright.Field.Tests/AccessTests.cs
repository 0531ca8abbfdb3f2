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

        foreach (var (name, address) in ScreenList.Named(visit).Where(screen => screen.Name != "visit"))
        {
            await phone.Go(address);
            await page.EvaluateAsync("document.querySelectorAll('main details').forEach(d => d.open = true)");
            await Check(phone, name, theme);
        }
    }

    [Fact]
    public async Task Text_twice_as_large_never_makes_a_screen_scroll_sideways()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OpenTheCall(site.Address);
        var visit = new Uri(page.Url).AbsolutePath.TrimStart('/');
        await page.EvaluateAsync("document.documentElement.style.fontSize = '200%'");
        foreach (var (name, address) in ScreenList.Named(visit))
        {
            await phone.Go(address);
            if (name == "visit") await page.WaitUntilConcluded();
            await phone.Picture($"{name}-large");
            var sideways = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth");
            Assert.True(sideways <= 0, $"{name} scrolls {sideways} px sideways with its text doubled.");
        }
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Every_screen_is_pictured_whole_on_a_phone_and_a_laptop(ColorScheme theme)
    {
        await using var phone = await chromium.Phone(theme);
        var page = phone.Page;
        await page.OpenTheCall(site.Address);
        var visit = new Uri(page.Url).AbsolutePath.TrimStart('/');
        foreach (var (width, height, device) in new[] { (390, 844, "phone"), (1280, 800, "laptop") })
        {
            await page.SetViewportSizeAsync(width, height);
            foreach (var (name, address) in ScreenList.Named(visit))
            {
                await phone.Go(address);
                if (name == "visit") await page.WaitUntilConcluded();
                if (name == "papers") await Expect(page.Locator(".sheets figure").First).ToBeVisibleAsync();
                await page.ScreenshotAsync(new PageScreenshotOptions { Path = Repo.Artifacts("screens", $"{name}-{device}-{theme.ToString().ToLowerInvariant()}.png"), FullPage = true });
            }
        }
        phone.HadNoTrouble();
    }

    private static async Task Check(Phone phone, string name, ColorScheme theme)
    {
        await phone.Picture($"{name}-open-{theme.ToString().ToLowerInvariant()}");
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
