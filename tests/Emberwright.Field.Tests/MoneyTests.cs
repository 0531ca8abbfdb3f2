using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>Parts, time and what may be spent, from the limit agreed to the signed change.</summary>
public sealed class MoneyTests(Chromium chromium, Site site)
{
    [Fact]
    public async Task A_limit_is_agreed_work_goes_past_it_and_the_customer_signs_the_change()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.GotoAsync(site.Address + "/firm");
        await page.GetByText("Name and prices of the firm").ClickAsync();
        await page.GetByLabel("Currency of prices").FillAsync("USD");
        await page.GetByLabel("One minute of work costs").FillAsync("1.25");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add it" }).Or(page.GetByRole(AriaRole.Button, new() { Name = "Save the changes" })).First.ClickAsync();
        await phone.Go("firm/parts");
        await page.GetByText("Add a part").ClickAsync();
        await page.GetByLabel("What it is").FillAsync("igniter");
        await page.GetByLabel("Number", new() { Exact = true }).FillAsync("IG-4");
        await page.GetByLabel("Price").FillAsync("38,50");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Expect(page.Locator("main .rows b")).ToContainTextAsync("igniter");

        await page.Book(site.Address, "Breakdown", "Wilmot Ash", "It does not light");
        await page.WaitUntilConcluded();
        var money = page.Locator("#money");
        await money.Locator("summary").ClickAsync();
        await money.GetByRole(AriaRole.Button, new() { Name = "Limit" }).ClickAsync();
        await money.GetByLabel("Sum or limit, with its currency").FillAsync("60 USD");
        await money.GetByRole(AriaRole.Button, new() { Name = "Agreed" }).ClickAsync();
        await Expect(money).ToContainTextAsync("60.00 USD");

        await page.GetByRole(AriaRole.Button, new() { Name = "Ash passages: cleaned", Exact = true }).ClickAsync();
        await page.Locator("#time summary").ClickAsync();
        await page.Locator("#time").GetByRole(AriaRole.Button, new() { NameRegex = new("^20 min") }).ClickAsync();
        await Expect(page.Locator("#time")).ToContainTextAsync("20 min in all");
        await Expect(money.Locator(".heed")).ToHaveCountAsync(0);

        var parts = page.Locator("#parts");
        await parts.Locator("summary").ClickAsync();
        await parts.GetByLabel("What it is").FillAsync("igniter");
        await parts.GetByLabel("What it is").BlurAsync();
        await Expect(parts.GetByLabel("Its number")).ToHaveValueAsync("IG-4");
        await parts.GetByRole(AriaRole.Button, new() { Name = "Record the part" }).ClickAsync();
        await Expect(parts.Locator(".log")).ToContainTextAsync("Igniter IG-4 fitted, new, from the van");

        // 20 min at 1.25 and a part at 38.50 come to 63.50.
        await Expect(money).ToContainTextAsync("63.50 USD");
        await Expect(money.Locator(".heed")).ToContainTextAsync("Past what was agreed.");
        await money.GetByRole(AriaRole.Button, new() { Name = "Change" }).ClickAsync();
        await money.GetByLabel("Sum or limit, with its currency").FillAsync("120 USD");
        await money.GetByRole(AriaRole.Button, new() { Name = "Agreed" }).ClickAsync();
        await Expect(money).ToContainTextAsync("A change is agreed in writing");
        await page.SignWithAFinger("#money ");
        await Expect(money.GetByLabel("In writing, signed")).ToBeCheckedAsync();
        await money.GetByRole(AriaRole.Button, new() { Name = "Agreed" }).ClickAsync();
        await Expect(money.Locator(".heed")).ToHaveCountAsync(0);
        await money.ScrollIntoViewIfNeededAsync();
        await phone.Picture("money");

        await page.WaitUntilConcluded();
        await phone.Go(new Uri(page.Url).AbsolutePath.TrimStart('/') + "/papers");
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Labour and parts, CSV" }).ClickAsync());
        var csv = await File.ReadAllTextAsync(await download.PathAsync(), TestContext.Current.CancellationToken);
        Assert.Matches("labour,[^,]*,Empty and brush the ash passages,,,Ash passages,20,", csv);
        Assert.Matches("part,[^,]*,igniter,IG-4,fitted,,,,,new,van", csv);
        Assert.Matches("consent,[^,]*,change,,agreed,,,120 USD", csv);
        phone.HadNoTrouble();
    }
}
