using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>Small things a technician does in passing.</summary>
public sealed class HandlingTests(Chromium chromium, Site site)
{
    [Fact]
    public async Task A_step_is_taken_back_and_stays_in_the_record()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OpenTheCall(site.Address);
        var before = await page.Suspects();

        await page.GetByRole(AriaRole.Link, new() { Name = "Add Firebox" }).ClickAsync();
        await page.Type("0.03");
        await Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("Firebox −0.03 inWC saved");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();
        await page.WaitUntilConcluded();

        Assert.Equal(before, await page.Suspects());
        await page.GetByText("Everything recorded, in order").ClickAsync();
        await Expect(page.Locator("#record .taken-back", new() { HasText = "Firebox −0.03 inWC, fan only" })).ToHaveCountAsync(1);
        await Expect(page.Locator("#record")).ToContainTextAsync("Taken back: Firebox");
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task A_slipped_point_is_asked_about_and_can_still_be_saved()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OpenTheCall(site.Address);
        await page.GetByRole(AriaRole.Link, new() { Name = "Add Firebox" }).ClickAsync();
        foreach (var key in "10") await page.GetByRole(AriaRole.Button, new() { Name = key.ToString(), Exact = true }).ClickAsync();
        await Expect(page.Locator("#hint")).ToContainTextAsync("Did the point slip?");
        await phone.Picture("reading-hint");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make it −0.100" }).ClickAsync();
        await Expect(page.Locator(".entry input")).ToHaveValueAsync("−0.100");
        await Expect(page.Locator("#hint")).Not.ToContainTextAsync("slip");

        await page.GetByRole(AriaRole.Button, new() { Name = "Clear" }).ClickAsync();
        await page.Type("-10");
        await Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("Firebox −10 inWC saved");
    }

    [Fact]
    public async Task Units_are_chosen_once_and_hold_everywhere()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/firm");
        await page.GetByRole(AriaRole.Button, new() { Name = "SI: Pa, °C" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "SI: Pa, °C", Pressed = true })).ToBeVisibleAsync();
        await page.OpenTheCall(site.Address);
        await page.GetByRole(AriaRole.Link, new() { Name = "Add Firebox" }).ClickAsync();
        await Expect(page.Locator(".entry b")).ToHaveTextAsync("Pa");
        await page.Type("7");
        await page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();
        await Expect(page.Locator("#found tbody tr").First).ToContainTextAsync("−7 Pa");
        await page.ReloadAsync();
        await Expect(page.Locator("#found tbody tr").First).ToContainTextAsync("−7 Pa");
    }

    [Fact]
    public async Task Sign_off_is_refused_with_what_is_missing_and_where()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OpenTheCall(site.Address);
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Sign off:" })).ToHaveAttributeAsync("aria-disabled", "true");
        var missing = page.Locator("#sign .missing a");
        var many = await missing.CountAsync();
        Assert.True(many > 0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Switched off at its own control" }).ClickAsync();
        await Expect(missing).ToHaveCountAsync(many - 1);
    }

    [Fact]
    public async Task A_call_is_taken_and_the_demo_firm_goes_without_it()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/visit/new");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Ambrose Tarn");
        await page.GetByLabel("Construction").SelectOptionAsync("damper-insert");
        await page.GetByRole(AriaRole.Button, new() { Name = "Dead: no lights" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin the visit" }).ClickAsync();
        await page.WaitUntilConcluded();

        await page.GotoAsync(site.Address + "/firm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove the demo firm" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Lay out the demo firm" })).ToBeVisibleAsync();
        await page.GotoAsync(site.Address);
        await Expect(page.GetByText("Ambrose Tarn")).ToBeVisibleAsync();
        await Expect(page.GetByText(Screens.Customer)).ToHaveCountAsync(0);
    }
}
