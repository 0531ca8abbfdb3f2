using System.Text.RegularExpressions;
using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>The app starts, and starts again with no network, however it was built and wherever it is served.</summary>
public sealed class StartTests(Chromium chromium)
{
    // What a slow cellar's edge of signal can still fetch in a minute or so; a budget, not a measurement.
    private const long MostBrotliBytes = 4_500_000;

    [Fact]
    public async Task Built()
    {
        await using var host = await Host.Built();
        await StartsAt(host.Address + "/visit/new", "Take a call");
        await StartsWithAndWithoutNetwork(host.Address + "/", "stoves");
    }

    [Fact]
    public async Task Published_behind_its_server_and_as_plain_files_below_a_path()
    {
        var folder = Repo.Artifacts("static-" + Guid.NewGuid().ToString("N"));
        Copy(await PublishedApp.Folder, folder);
        await using (var host = await Host.Published(Repo.Artifacts("server")))
        {
            await StartsAt(host.Address + "/visit/new", "Take a call");
            await StartsWithAndWithoutNetwork(host.Address + "/", "due");
        }
        Assert.InRange(BrotliBytes(folder), 1_000_000, MostBrotliBytes);
        await using (var files = await PlainFiles.Start(folder, "/tools/stove"))
        {
            await StartsWithAndWithoutNetwork(files.Address, "firm");
            await GoesOnWhileANewerVersionComes(files.Address, folder);
        }
        Directory.Delete(folder, recursive: true);
    }

    // The static page stands long before the app behind it can be used; both times are kept, for this machine and its load.
    private static async Task Time(IPage page, string address)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        foreach (var slower in (int[])[1, 4])
        {
            await session.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = slower });
            await page.ReloadAsync(new() { WaitUntil = WaitUntilState.Commit });
            var usable = await page.EvaluateAsync<double>("""
                () => new Promise(resolve => {
                    const look = () => document.querySelector('nav.places a[aria-current=page]') && document.querySelector('h1[tabindex]') ? resolve(performance.now()) : setTimeout(look, 5);
                    look();
                })
                """);
            var shell = await page.EvaluateAsync<double>("performance.getEntriesByName('first-contentful-paint')[0].startTime");
            await File.AppendAllTextAsync(Repo.Artifacts("start-times.txt"), $"{address}: processor slowed {slower} ×, shell {shell:0} ms, usable {usable:0} ms, offline\n");
        }

        await session.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = 1 });
    }

    // The size of the first load: what the browser fetches to start, as a host that compresses sends it.
    private static long BrotliBytes(string folder)
    {
        var names = Regex.Matches(File.ReadAllText(Path.Combine(folder, "service-worker-assets.js")), "\"url\": \"([^\"]+)\"").Select(m => m.Groups[1].Value);
        // Of what is listed the worker fetches these kinds; the rest comes when it is asked for.
        var kinds = Regex.Matches(File.ReadAllText(Path.Combine(folder, "service-worker.js")), @"/\\\.(\w+)\$/").Select(m => "." + m.Groups[1].Value).ToHashSet();
        Assert.Contains(".wasm", kinds);
        var bytes = names.Where(name => kinds.Contains(Path.GetExtension(name))).Select(name => Path.Combine(folder, name)).Where(File.Exists)
            .Sum(path => new FileInfo(File.Exists(path + ".br") ? path + ".br" : path).Length);
        File.WriteAllText(Repo.Artifacts("size.txt"), $"{bytes} bytes\n");
        return bytes;
    }

    // Another version is put on the host while a visit is half done: the visit goes on in the old one, and stands in the new one.
    private async Task GoesOnWhileANewerVersionComes(string address, string folder)
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        // A host of plain files knows only the first page by itself.
        await page.GotoAsync(address);
        await phone.WaitUntilKept();
        await page.Book(address.TrimEnd('/'), "Service", "Half Done");
        await page.WaitUntilConcluded();
        await page.Locator("#safe .two button").ClickAsync();
        await Expect(page.Locator("#safe .log li")).ToHaveCountAsync(1);

        foreach (var (name, old, now) in new[] { ("service-worker-assets.js", "\"version\": \"", "\"version\": \"newer-"), ("service-worker.js", "// Keeps", "// Still keeps") })
        {
            var path = Path.Combine(folder, name);
            var text = await File.ReadAllTextAsync(path);
            Assert.Contains(old, text);
            await File.WriteAllTextAsync(path, text.Replace(old, now));
        }
        await page.ReloadAsync();
        await page.WaitUntilConcluded();
        await page.EvaluateAsync("async () => { await (await navigator.serviceWorker.getRegistration()).update(); }");
        await Expect(page.Locator("#newer")).ToBeVisibleAsync();
        await page.Locator("#safe .two button").ClickAsync();
        await Expect(page.Locator("#safe .log li")).ToHaveCountAsync(2);
        await page.Locator("#newer a").ClickAsync();
        await Expect(page.GetByText("Half Done")).ToBeVisibleAsync();
        Assert.Contains(await page.EvaluateAsync<string[]>("caches.keys()"), name => name.Contains("newer-", StringComparison.Ordinal));
        phone.HadNoTrouble();
    }

    private async Task StartsAt(string address, string heading)
    {
        await using var phone = await chromium.Phone();
        await phone.Page.GotoAsync(address);
        await Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = heading, Level = 1 })).ToBeVisibleAsync();
        phone.HadNoTrouble();
    }

    private async Task StartsWithAndWithoutNetwork(string address, string place)
    {
        await using var phone = await chromium.Phone();
        await phone.Page.GotoAsync(address);
        await Expect(phone.Page.Locator("nav.places a[aria-current=page]")).ToHaveTextAsync("Today");
        await phone.WaitUntilKept();

        await phone.Offline(true);
        await phone.Page.ReloadAsync();
        await Expect(phone.Page.Locator("nav.places a[aria-current=page]")).ToHaveTextAsync("Today");
        await Time(phone.Page, address);
        await phone.Page.GotoAsync(address + place);
        await Expect(phone.Page.Locator("nav.places a[aria-current=page]")).ToHaveTextAsync(place, new LocatorAssertionsToHaveTextOptions { IgnoreCase = true });
        phone.HadNoTrouble();
    }

    // A folder of its own: a newer version is put into it.
    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
