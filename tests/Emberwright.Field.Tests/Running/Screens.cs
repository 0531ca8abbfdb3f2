using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests.Running;

/// <summary>What a technician does on the screens, in the words of the screens.</summary>
internal static class Screens
{
    public const string Customer = "Perpetua Larkspur";

    /// <summary>The demo call whose owner says that it lights, feeds for ten minutes and stops.</summary>
    public static async Task OpenTheCall(this IPage page, string address)
    {
        await page.GotoAsync(address);
        await page.GetByRole(AriaRole.Link, new() { Name = Customer }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = Customer, Level = 1 })).ToBeVisibleAsync();
        await page.WaitUntilConcluded();
    }

    /// <summary>Waits until the engine has weighed everything recorded.</summary>
    public static Task WaitUntilConcluded(this IPage page) =>
        Expect(page.Locator("#suspects[aria-busy=false] .suspects")).ToBeAttachedAsync(new() { Timeout = 2 * Chromium.Patience });

    /// <summary>Names the instruments that travel with this phone, in date for a year.</summary>
    public static async Task CarryInstruments(this IPage page, string address)
    {
        await page.GotoAsync(address + "/firm/instruments");
        foreach (var (kind, name) in new[] { ("Pressure gauge", "gauge"), ("CO in the room", "CO meter") })
        {
            var form = page.Locator("main > details.change");
            if (await form.GetAttributeAsync("open") is null) await form.Locator("summary").ClickAsync();
            await form.GetByLabel("The name readings use").FillAsync(name);
            await form.GetByLabel("What it reads").SelectOptionAsync(new SelectOptionValue { Label = kind });
            await form.GetByLabel("Good until").FillAsync(DateTime.Today.AddYears(1).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
            await form.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
            await Expect(page.Locator("main > ul.rows")).ToContainTextAsync(name);
        }
    }

    /// <summary>Takes a call and begins its visit.</summary>
    public static async Task Book(this IPage page, string address, string kind, string customer, string? complaint = null)
    {
        await page.GotoAsync(address + "/visit/new");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync(customer);
        await page.GetByRole(AriaRole.Button, new() { Name = kind, Exact = true }).ClickAsync();
        if (complaint is not null) await page.GetByLabel("In the customer’s own words").FillAsync(complaint);
        await page.GetByLabel("Construction").SelectOptionAsync("damper-insert");
        await page.GetByLabel("Height above sea").FillAsync("820 ft");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin the visit" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = customer, Level = 1 })).ToBeVisibleAsync();
    }

    /// <summary>Touches the number in the middle of the healthy band.</summary>
    public static async Task MiddleOfBand(this IPage page, string section)
    {
        var numbers = page.Locator($"{section} .quick .healthy");
        await Expect(numbers.First).ToBeVisibleAsync();
        await page.WaitUntilConcluded();
        await numbers.Nth(await numbers.CountAsync() / 2).ClickAsync();
        await Expect(numbers).ToHaveCountAsync(0);
    }

    /// <summary>Says of each proof a service needs that it came out as it should.</summary>
    public static async Task ProveEverything(this IPage page)
    {
        foreach (var proof in new[] { "Sensing hose off", "Hopper lid open", "Shutdown", "Smoke pencil" })
        {
            var button = page.Locator(".proofs li", new() { HasText = proof }).GetByRole(AriaRole.Button, new() { Name = "as it should" });
            await button.ClickAsync();
            await Expect(button).ToHaveCountAsync(0);
        }
    }

    /// <summary>Types on the pad, key by key, and saves.</summary>
    public static async Task Type(this IPage page, string keys)
    {
        foreach (var key in keys)
        {
            var name = key switch { '.' => "Decimal point", '-' => "Minus", _ => key.ToString() };
            await page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();
        }
        await page.Locator(".pad .go").ClickAsync();
    }

    /// <summary>Records every step of making the stove safe, each as its button comes up.</summary>
    public static async Task MakeItSafe(this IPage page)
    {
        var recorded = page.Locator("#safe .log li");
        var step = page.Locator("#safe .two button");
        for (var n = await recorded.CountAsync(); await step.CountAsync() > 0; n++)
        {
            await step.ClickAsync();
            await Expect(recorded).ToHaveCountAsync(n + 1);
        }
        await page.WaitUntilConcluded();
    }

    /// <summary>Does whatever a check's page asks for: answers each question, or says that it is done.</summary>
    public static async Task DoTheCheck(this IPage page)
    {
        await Expect(page.Locator("header.bar")).ToBeVisibleAsync();
        var questions = page.Locator("main fieldset");
        var many = await questions.CountAsync();
        if (many == 0) await page.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        for (var n = 0; n < many && page.Url.Contains("/check/", StringComparison.Ordinal); n++)
            await questions.Nth(n).Locator("button").First.ClickAsync();
        if (!page.Url.Contains("/check/", StringComparison.Ordinal)) await page.GoBackAsync();
    }

    /// <summary>The suspects as listed, with their probabilities.</summary>
    public static async Task<string> Suspects(this IPage page) => string.Join('\n', await page.Locator("#suspects .suspects summary").AllInnerTextsAsync());

    /// <summary>How long the last conclusion took in the browser, ms.</summary>
    public static async Task<int> Took(this IPage page) => int.Parse(await page.Locator("#suspects").GetAttributeAsync("data-took") ?? "");
}
