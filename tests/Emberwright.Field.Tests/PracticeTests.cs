using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>A practice stove in the app, worked a little and given up, and the words one looks up meanwhile.</summary>
public sealed class PracticeTests(Chromium chromium, Site site)
{
    [Fact]
    public async Task A_hidden_stove_answers_keeps_the_bill_and_is_compared_with_the_planners_way()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/practice");
        await page.GetByLabel("Number of the stove").FillAsync("7");
        await page.GetByRole(AriaRole.Button, new() { Name = "Go to the stove" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Practice stove 7" })).ToBeVisibleAsync();
        await page.GetByPlaceholder("Hose, volts, igniter…").FillAsync("exhaust fan");
        await Expect(page.Locator("#do ~ ul button").First).ToContainTextAsync("ombustion blower");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make it safe" }).ClickAsync();
        await Expect(page.Locator("header.bar")).ToContainTextAsync("1 steps");
        await page.GetByRole(AriaRole.Button, new() { Name = "Give up" }).ClickAsync();
        await Expect(page.GetByText("Hidden:")).ToBeVisibleAsync(new() { Timeout = 4 * Chromium.Patience });
        await Expect(page.Locator("#end ~ table tbody tr").Last).ToContainTextAsync("In all");
        await phone.Picture("practice-end");
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task A_word_is_found_by_what_people_call_it_and_a_stove_from_the_first_screen()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/words");
        await page.GetByRole(AriaRole.Searchbox).FillAsync("red tag");
        await Expect(page.Locator(".words dt")).ToHaveTextAsync("Stop-use notice");
        await page.GotoAsync(site.Address);
        await page.GetByRole(AriaRole.Searchbox).FillAsync("Larkspur");
        await Expect(page.Locator("#found-h")).ToBeVisibleAsync();
        phone.HadNoTrouble();
    }
}
