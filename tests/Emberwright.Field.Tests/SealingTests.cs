using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>The whole job from the booked visit to its seal: an ordinary service, a breakdown, a stove put out of service.</summary>
public sealed class SealingTests(Chromium chromium, Site site)
{
    private const int MostTouches = 15;
    private static readonly string[] Areas = ["Ash passages", "Combustion blower", "Vent", "Room-air blower"];

    [Fact]
    public async Task An_ordinary_service_takes_at_most_fifteen_touches_beside_its_photos()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OwnClock();
        await page.CarryInstruments(site.Address);
        await page.Book(site.Address, "Service", "Ottoline Marsh");

        await page.GotoAsync(site.Address);
        await page.CountTouches();
        await page.GetByRole(AriaRole.Link, new() { Name = "Ottoline Marsh" }).ClickAsync();
        await page.WaitUntilConcluded();
        await Expect(page.Locator("#suspects .suspects")).ToBeHiddenAsync();
        await phone.Picture("service-begun");

        await page.Locator("#safe .wide").ClickAsync();
        await Expect(page.Locator("#safe .log li")).ToHaveCountAsync(5);
        await page.MiddleOfBand("#found");
        foreach (var area in Areas)
        {
            await page.TakePhoto($"{area}: photo before");
            await Expect(page.GetByLabel($"{area}: photo before", new() { Exact = true })).ToHaveCountAsync(0);
            await page.TakePhoto($"{area}: cleaned, with a photo after");
            await Expect(page.GetByLabel($"{area}: cleaned, with a photo after", new() { Exact = true })).ToHaveCountAsync(0);
        }
        await page.MiddleOfBand("#left");
        await page.GetByRole(AriaRole.Button, new() { Name = "Burning on high" }).ClickAsync();
        await Expect(page.Locator(".clock")).ToContainTextAsync("30 min more");
        await page.LetPass(TimeSpan.FromMinutes(31));
        await page.GetByRole(AriaRole.Button, new() { Name = "0 ppm" }).ClickAsync();
        await page.ProveEverything();
        await page.SignWithAFinger();
        await Expect(page.Locator(".signing")).ToContainTextAsync("Signed by Ottoline Marsh");
        await page.WaitUntilConcluded();
        await phone.Picture("service-to-sign");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign off", Exact = true }).ClickAsync();
        await Expect(page.Locator("#sign")).ToContainTextAsync("Everything it covers is here and unchanged.");
        await phone.Picture("service-sealed");

        var touched = await page.Touched();
        Assert.True(touched.Length <= MostTouches, $"{touched.Length} touches: {string.Join(" · ", touched)}");
        TestContext.Current.TestOutputHelper?.WriteLine($"{touched.Length} touches: {string.Join(" · ", touched)}");
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task A_breakdown_goes_from_the_call_to_the_seal()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OwnClock();
        await page.CarryInstruments(site.Address);
        await page.Book(site.Address, "Breakdown", "Crispin Yarrow", "It stops after ten minutes");
        await page.WaitUntilConcluded();
        await Expect(page.Locator("#suspects .suspects")).ToBeVisibleAsync();
        await page.MakeItSafe();
        await page.MiddleOfBand("#found");
        foreach (var area in Areas)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = $"{area}: cleaned", Exact = true }).ClickAsync();
            await Expect(page.GetByRole(AriaRole.Button, new() { Name = $"{area}: cleaned", Exact = true })).ToHaveCountAsync(0);
        }
        await page.MiddleOfBand("#left");
        foreach (var moment in new[] { "Start pressed", "First flame", "Burning on high" })
        {
            await page.GetByRole(AriaRole.Button, new() { Name = moment }).ClickAsync();
            await Expect(page.GetByRole(AriaRole.Button, new() { Name = moment })).ToHaveCountAsync(0);
            await page.LetPass(TimeSpan.FromMinutes(6));
        }
        // The timer runs while the phone is shut.
        await page.ReloadAsync();
        await Expect(page.Locator(".clock")).ToContainTextAsync("6 min on high");
        await page.GetByText("How a sound stove of this kind would light").ClickAsync();
        await Expect(page.Locator("#left figure svg").Last).ToBeVisibleAsync(new() { Timeout = 120_000 });
        await page.Locator("#fire").ScrollIntoViewIfNeededAsync();
        await phone.Picture("test-fire");
        await page.LetPass(TimeSpan.FromMinutes(25));
        await page.GetByRole(AriaRole.Button, new() { Name = "0 ppm" }).ClickAsync();
        await page.ProveEverything();
        await page.SignWithAFinger();
        await Expect(page.Locator(".signing")).ToContainTextAsync("Signed by Crispin Yarrow");
        await page.WaitUntilConcluded();
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign off", Exact = true }).ClickAsync();
        await Expect(page.Locator("#sign")).ToContainTextAsync("Everything it covers is here and unchanged.");
        await page.ReloadAsync();
        await Expect(page.Locator("#sign")).ToContainTextAsync("Everything it covers is here and unchanged.");
        var numbers = SealedNumbers.HoldEqualHere(await page.Downloaded("Visit file"));
        Assert.True(numbers > 100, $"only {numbers} numbers were sealed");
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task A_condemned_stove_is_closed_out_of_service_without_a_fire()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.Book(site.Address, "Breakdown", "Sidony Pell", "The warm air smells of smoke");
        await page.WaitUntilConcluded();
        await page.MakeItSafe();
        await page.Locator("summary", new() { HasText = "Stop-use notice" }).First.ClickAsync();
        await page.GetByLabel("Why it must not be operated").FillAsync("The exchanger is cracked: exhaust reaches the warm air.");
        await page.GetByLabel("Who may release it").FillAsync("A licensed technician, after a new exchanger");
        await page.GetByLabel("Read to").FillAsync("the owner");
        await page.GetByLabel("They signed it").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Issue it" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Lift it" })).ToBeVisibleAsync();
        await page.Locator(".dock input[type=file]").SetInputFilesAsync(new FilePayload { Name = "crack.png", MimeType = "image/png", Buffer = Touches.Png });
        await Expect(page.Locator("#sign .missing a")).ToHaveCountAsync(0);
        await Expect(page.Locator("#sign")).ToContainTextAsync("not cleaned; the appliance is out of service");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign off as out of service" }).ClickAsync();
        await Expect(page.Locator("#sign")).ToContainTextAsync("Signed off on");
        await page.GotoAsync(site.Address);
        await Expect(page.Locator("li", new() { HasText = "Sidony Pell" })).ToContainTextAsync("Stop-use notice");
        phone.HadNoTrouble();
    }
}
