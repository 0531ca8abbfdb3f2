using System.IO.Compression;
using System.Text;
using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>A person erased on request leaves nothing behind on the phone, and a visit taken by the app names people by reference only.</summary>
public sealed class ErasingTests(Chromium chromium, Site site)
{
    private const string Everything = """
        async () => {
            const db = await new Promise((resolve, reject) => { const r = indexedDB.open('emberwright'); r.onsuccess = () => resolve(r.result); r.onerror = () => reject(r.error); });
            let text = '';
            for (const name of db.objectStoreNames) {
                const rows = await new Promise(resolve => { const r = db.transaction(name).objectStore(name).getAll(); r.onsuccess = () => resolve(r.result); });
                for (const row of rows) {
                    text += JSON.stringify(row) + '\n';
                    if (row.bytes instanceof Blob) text += await row.bytes.text() + '\n';
                }
                const keys = await new Promise(resolve => { const r = db.transaction(name).objectStore(name).getAllKeys(); r.onsuccess = () => resolve(r.result); });
                text += JSON.stringify(keys) + '\n';
            }
            db.close();
            return text + JSON.stringify(localStorage);
        }
        """;

    [Fact]
    public async Task Nothing_of_a_person_stays_on_the_phone_or_in_what_it_hands_over()
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        await page.Book(site.Address, "Service", "Dorcas Elderfield");
        await page.WaitUntilConcluded();
        await page.GotoAsync(site.Address + "/stoves");
        await page.GetByRole(AriaRole.Searchbox).FillAsync("elderfield");
        await Expect(page.Locator("main .rows > li")).ToHaveCountAsync(1);
        var before = await page.EvaluateAsync<string>(Everything);
        Assert.Contains("Elderfield", before, StringComparison.Ordinal);
        // The journal itself names the person by reference.
        Assert.DoesNotContain(before.Split('\n'), line => line.Contains("\"kind\\\":\\\"customer", StringComparison.Ordinal) && line.Contains("Elderfield", StringComparison.Ordinal));

        foreach (var (typed, gone) in new[] { ("elderfield", "Dorcas Elderfield"), ("brandreth", "Ottilie Brandreth") })
        {
            await page.GotoAsync(site.Address + "/stoves");
            await page.GetByRole(AriaRole.Searchbox).FillAsync(typed);
            await page.Locator("main .rows a").First.ClickAsync();
            await Expect(page.GetByRole(AriaRole.Heading, new() { Name = gone, Level = 1 })).ToBeVisibleAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = "Erase on request" }).ClickAsync();
            await page.GetByLabel("Who asked, and how").FillAsync($"{gone}, by telephone");
            await page.GetByRole(AriaRole.Button, new() { Name = "Erase them" }).ClickAsync();
            await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "erased on request", Level = 1 })).ToBeVisibleAsync();
        }

        await phone.Picture("erased");
        string[] telling = ["Dorcas", "Elderfield", "Ottilie", "Brandreth", "Millrace"];
        var after = await page.EvaluateAsync<string>(Everything);
        Assert.All(telling, word => Assert.DoesNotContain(word, after, StringComparison.OrdinalIgnoreCase));

        await page.GotoAsync(site.Address + "/firm/exchange");
        var handed = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Hand over everything" }).ClickAsync());
        var file = Repo.Artifacts("screens", "erased.zip");
        await handed.SaveAsAsync(file);
        using var zip = ZipFile.OpenRead(file);
        foreach (var entry in zip.Entries)
        {
            using var reader = new StreamReader(entry.Open(), Encoding.UTF8);
            var text = await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
            Assert.All(telling, word => Assert.DoesNotContain(word, entry.FullName + text, StringComparison.OrdinalIgnoreCase));
        }

        phone.HadNoTrouble();
    }

    [Fact]
    public async Task A_visit_file_alone_says_whose_stove_it_is()
    {
        string file;
        await using (var phone = await chromium.Phone())
        {
            await phone.Page.Book(site.Address, "Service", "Dorcas Elderfield");
            await phone.Page.WaitUntilConcluded();
            var handed = await phone.Page.RunAndWaitForDownloadAsync(() => phone.Page.GetByRole(AriaRole.Button, new() { Name = "Visit file" }).ClickAsync());
            file = Repo.Artifacts("screens", "named.jsonl");
            await handed.SaveAsAsync(file);
            phone.HadNoTrouble();
        }

        await using var other = await chromium.Phone();
        await other.Page.GotoAsync(site.Address + "/stoves");
        await other.Page.Locator("input[type=file]").SetInputFilesAsync(file);
        await Expect(other.Page.GetByText("Dorcas Elderfield").First).ToBeVisibleAsync();
        await other.Page.ReloadAsync();
        await other.Page.GetByRole(AriaRole.Searchbox).FillAsync("elderfield");
        await Expect(other.Page.Locator("main .rows > li")).ToHaveCountAsync(1);
        other.HadNoTrouble();
    }
}
