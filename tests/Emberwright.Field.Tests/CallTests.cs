using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>From the telephone to knowing which stove it is.</summary>
public sealed class CallTests(Chromium chromium, Site site)
{
    [Fact]
    public async Task A_call_asks_for_danger_first_then_tells_what_to_ask_say_and_bring()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/visit/new");
        await page.GetByRole(AriaRole.Button, new() { Name = "A CO alarm sounds" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Everyone out now");
        await page.GetByRole(AriaRole.Button, new() { Name = "None of these" }).ClickAsync();
        await Expect(page.GetByText("Everyone out now")).ToHaveCountAsync(0);

        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Jessamy Fold");
        await page.GetByRole(AriaRole.Button, new() { Name = "It lights, then stops" }).Or(page.GetByRole(AriaRole.Button, new() { Name = "lights", Exact = false })).First.ClickAsync();
        await page.GetByText("Find it by its look").ClickAsync();
        await phone.Picture("looks");
        await page.GetByRole(AriaRole.Button, new() { Name = "In a masonry fireplace" }).ClickAsync();
        await Expect(page.Locator(".looks li")).ToHaveCountAsync(1);
        await page.Locator(".look").ClickAsync();
        await Expect(page.GetByLabel("Construction")).ToHaveValueAsync("damper-insert");

        await page.GetByText("Vent run").ClickAsync();
        await page.GetByLabel("Inside diameter").FillAsync("three inches");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin the visit" }).ClickAsync();
        await Expect(page.GetByText("Vent’s inside diameter:")).ToBeVisibleAsync();
        await page.GetByLabel("Inside diameter").FillAsync("3 in");
        await page.GetByLabel("Rise").FillAsync("18 ft");
        await phone.Picture("call-form");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin the visit" }).ClickAsync();
        await page.WaitUntilConcluded();
        await Expect(page.GetByText("3 in vent, 18 ft up")).ToBeVisibleAsync();
        await page.GetByText("Agree for the visit").ClickAsync();
        await Expect(page.Locator("#call")).ToContainTextAsync("three hours before");
        await page.GetByText("Bring", new() { Exact = true }).ClickAsync();
        await Expect(page.Locator("#call details[open] li", new() { HasText = "needed" }).First).ToBeVisibleAsync();
        await phone.Picture("call-plan");
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task An_unknown_stove_gets_its_card_on_the_spot_and_hands_it_on()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.Book(site.Address, "Service", "Hester Quill");
        await page.WaitUntilConcluded();
        await page.GetByRole(AriaRole.Link, new() { Name = "Stove and card" }).ClickAsync();
        await Expect(page.GetByLabel("Maker")).ToBeVisibleAsync();
        await page.Locator("label.photo-button input").SetInputFilesAsync(new FilePayload { Name = "label.png", MimeType = "image/png", Buffer = Touches.Png });
        await Expect(page.Locator(".pictures img")).ToBeVisibleAsync();
        await page.GetByLabel("Maker").FillAsync("Dunlin & Rook");
        await page.GetByLabel("Model").FillAsync("Cairn 30");
        await page.GetByLabel("Model").BlurAsync();

        // The construction is changed, and bands with it; then the hose's place goes on the card.
        await page.GetByRole(AriaRole.Button, new() { Name = "Free in the room" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "It is pushed up from below" }).ClickAsync();
        await Expect(page.GetByText("One construction looks so.")).ToBeVisibleAsync();
        await page.Locator(".look").First.ClickAsync();
        await Expect(page.Locator("#card ~ div")).ToContainTextAsync("computed as usual for this construction");
        await page.Locator("fieldset", new() { HasText = "hose join" }).GetByRole(AriaRole.Button).Nth(1).ClickAsync();
        await page.GetByLabel("Switch closes at").FillAsync("wide");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep these on the card" }).ClickAsync();
        await Expect(page.Locator("[role=status]").Last).Not.ToBeEmptyAsync();
        await page.GetByLabel("Switch closes at").FillAsync("0.05 inWC");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep these on the card" }).ClickAsync();
        await Expect(page.Locator("#card ~ div")).ToContainTextAsync("0.050 inWC, not known");
        await phone.Picture("card");
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Hand the card over" }).ClickAsync());
        var path = Repo.Artifacts("handed-over.card.json");
        await download.SaveAsAsync(path);

        // Undone, the card is as before; brought in again, it stands.
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator("#card ~ div")).ToContainTextAsync("not known, not known");
        await page.GetByLabel("Bring in a card file").SetInputFilesAsync(path);
        await Expect(page.Locator("#card ~ div")).ToContainTextAsync("0.050 inWC, not known");
        await page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();
        await page.WaitUntilConcluded();
        await Expect(page.Locator("main > header")).ToContainTextAsync("Dunlin & Rook Cairn 30");
        phone.HadNoTrouble();
    }

    [Fact]
    public async Task The_cold_test_adapts_to_one_port_and_a_door_switch_and_the_feed_is_weighed_by_the_watch()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.OwnClock();
        await page.Book(site.Address, "Breakdown", "Lettice Holm", "It will not stay lit");
        await page.WaitUntilConcluded();
        await page.GetByRole(AriaRole.Link, new() { Name = "Cold test" }).First.ClickAsync();
        var states = page.Locator("main section h2 svg");
        await Expect(states).ToHaveCountAsync(4);
        await page.GetByLabel("Opening the door stops the blower").CheckAsync();
        await Expect(states).ToHaveCountAsync(3);
        foreach (var port in new[] { "Blower inlet", "Vent collar" })
            await page.GetByRole(AriaRole.Button, new() { Name = port, Exact = true }).ClickAsync();
        await Expect(page.Locator("main .slot")).ToHaveCountAsync(3);
        await Expect(page.GetByText("It says next to nothing of:")).ToBeVisibleAsync();
        await phone.Picture("cold-test");
        await page.GetByRole(AriaRole.Link, new() { Name = "Add Firebox, fan only", Exact = true }).ClickAsync();
        await page.Type("0.09");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Cold test in three states" })).ToBeVisibleAsync();
        await Expect(page.Locator("main .slot").First).ToContainTextAsync("read −0.09 inWC");
        await page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "Weigh the feed" }).First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin: the bag" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "End: the bag" })).ToBeVisibleAsync();
        await page.LetPass(TimeSpan.FromMinutes(5));
        await page.ReloadAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "End: the bag" }).ClickAsync();
        await page.GetByLabel("Weight, with its unit").FillAsync("146 g");
        // 146 g in 300 s and a little: 1.75 kg/h, 3.86 lb/h.
        await Expect(page.GetByRole(AriaRole.Status).Last).ToContainTextAsync("3.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the feed" }).ClickAsync();
        await page.WaitUntilConcluded();
        await page.GetByRole(AriaRole.Button, new() { Name = "High burn", Exact = true }).First.ClickAsync();
        await Expect(page.Locator("#found tbody").First).ToContainTextAsync("lb/h");
        phone.HadNoTrouble();
    }
}
