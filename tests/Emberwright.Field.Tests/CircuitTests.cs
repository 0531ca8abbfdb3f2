using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>The meter on the wiring: a test point is touched, or reached by keyboard, read, and its meaning seen.</summary>
public sealed class CircuitTests(Chromium chromium, Site site)
{
    [Fact]
    public async Task An_open_switch_is_found_by_touching_test_points()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OpenTheCall(site.Address);
        await page.GetByText("Meter on the wiring").ClickAsync();
        var wiring = page.Locator("#wiring");
        var field = wiring.GetByLabel("What the meter shows, V");
        var meaning = wiring.GetByRole(AriaRole.Status);

        // Touch: the supply's side has its volts.
        await wiring.Locator("[data-tap=tp1]").ClickAsync();
        await Expect(wiring.GetByRole(AriaRole.Heading, new() { Name = "Feed lead, ahead of the high-limit disc" })).ToBeVisibleAsync();
        await Expect(wiring).ToContainTextAsync("Mains is live here");
        await Expect(wiring).ToContainTextAsync(new System.Text.RegularExpressions.Regex("A sound stove shows 1(18|19|20) V"));
        await field.FillAsync("121");
        await Expect(meaning).ToHaveTextAsync("As it should be.");
        await wiring.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await Expect(page.Locator("#record, .saved, [role=status]").Filter(new() { HasTextString = "121 V saved" }).First).ToBeAttachedAsync();

        // At the motor there is nothing: one of those between is open, and the tool does not guess which.
        await wiring.Locator("[data-tap=tp5]").ClickAsync();
        await field.FillAsync("0.3");
        await Expect(meaning).ToContainTextAsync("One of these is open: high-limit disc, lid switch, vacuum switch.");
        await phone.Picture("circuit-between");
        await wiring.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await Expect(wiring.Locator("[data-tap=tp5]")).ToContainTextAsync("0.3");

        // By keyboard: the lid's far side still has its volts, the vacuum switch's has none.
        await wiring.Locator("[data-tap=tp3]").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(field).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("120");
        await page.Keyboard.PressAsync("Enter");
        await Expect(wiring.Locator("[data-tap=tp3]")).ToContainTextAsync("120");
        await wiring.Locator("[data-tap=tp4]").FocusAsync();
        await page.Keyboard.PressAsync(" ");
        await Expect(field).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("0.2");
        await Expect(meaning).ToHaveTextAsync("Open: vacuum switch.");
        await page.Keyboard.PressAsync("Enter");
        await Expect(wiring.Locator("[data-tap=vacuum-switch]")).ToContainTextAsync("Open here");
        await page.WaitUntilConcluded();
        await wiring.Locator("[data-tap=vacuum-switch]").ScrollIntoViewIfNeededAsync();
        await phone.Picture("circuit-open");
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task With_the_plug_out_a_part_is_read_alone_and_an_open_igniter_is_kept_without_a_number()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OpenTheCall(site.Address);
        await page.GetByText("Meter on the wiring").ClickAsync();
        var wiring = page.Locator("#wiring");
        await wiring.GetByRole(AriaRole.Combobox, new() { Name = "Circuit" }).SelectOptionAsync("igniter");
        await wiring.GetByRole(AriaRole.Combobox, new() { Name = "The stove" }).SelectOptionAsync("Unplugged");
        await wiring.Locator("[data-tap=igniter]").ClickAsync();
        // 300 W at 120 V is 48 Ω hot, about 7 % less cold.
        await Expect(wiring).ToContainTextAsync("A sound stove shows 44.8 Ω");
        await Expect(wiring).ToContainTextAsync("Plug out and proved dead first");
        await wiring.GetByLabel("What the meter shows, Ω").FillAsync("46");
        await Expect(wiring.GetByRole(AriaRole.Status)).ToHaveTextAsync("As it should be.");
        await wiring.GetByRole(AriaRole.Button, new() { Name = "Open: no reading" }).ClickAsync();
        await Expect(wiring.Locator("[data-tap=igniter]")).ToContainTextAsync("open");
        await page.WaitUntilConcluded();
        await Expect(page.Locator("#suspects .suspects")).ToContainTextAsync("Igniter dead");
        await phone.Picture("circuit-unplugged");
    }
}
