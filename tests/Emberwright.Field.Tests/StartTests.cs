using System.Diagnostics;
using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>The app starts, and starts again with no network, however it was built and wherever it is served.</summary>
public sealed class StartTests(Chromium chromium)
{
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
        await Run("bash", "start", "static", folder);
        await using (var host = await Host.Published(Repo.Artifacts("server")))
        {
            await StartsAt(host.Address + "/visit/new", "Take a call");
            await StartsWithAndWithoutNetwork(host.Address + "/", "due");
        }
        await using (var files = await PlainFiles.Start(folder, "/tools/stove"))
            await StartsWithAndWithoutNetwork(files.Address, "firm");
        Directory.Delete(folder, recursive: true);
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
        await phone.Page.GotoAsync(address + place);
        await Expect(phone.Page.Locator("nav.places a[aria-current=page]")).ToHaveTextAsync(place, new LocatorAssertionsToHaveTextOptions { IgnoreCase = true });
        phone.HadNoTrouble();
    }

    private static async Task Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = Repo.Root,
            RedirectStandardOutput = true,
        })!;
        var said = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0, said);
    }
}
