using System.Text.RegularExpressions;
using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>The stove cut open: a touched port opens the entry of its pressure, as the list does.</summary>
public sealed class SectionTests(Chromium chromium, Site site)
{
    [Fact]
    public async Task A_touched_port_opens_its_entry_by_finger_and_by_keyboard()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OpenTheCall(site.Address);
        var visit = page.Url;
        await page.GetByText("Where it is on this stove").ClickAsync();
        var firebox = page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Port A, firebox") });
        await firebox.ScrollIntoViewIfNeededAsync();
        await phone.Picture("section-ports");
        await firebox.ClickAsync();
        await Expect(page).ToHaveURLAsync(new Regex("/reading\\?what=pressure&at=firebox"));
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Firebox, as found" })).ToBeVisibleAsync();
        await page.Type("0.09");
        await page.GotoAsync(visit);
        await page.WaitUntilConcluded();
        await Expect(page.Locator("#found table").First).ToContainTextAsync("0.09");

        await page.GetByText("Where it is on this stove").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Port C, vent collar") }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Vent collar, as found" })).ToBeVisibleAsync();
        phone.HadNoTrouble();
    }
}
