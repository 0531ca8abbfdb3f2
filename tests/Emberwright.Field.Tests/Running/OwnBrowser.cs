using System.Diagnostics;
using Microsoft.Playwright;

namespace Emberwright.Field.Tests.Running;

/// <summary>A browser with a profile of its own that outlives it, so that it can be killed at any moment and started again.</summary>
internal sealed class OwnBrowser : IAsyncDisposable
{
    private readonly string profile;
    private readonly IPlaywright playwright;
    private Process? process;

    private OwnBrowser(string profile, IPlaywright playwright) => (this.profile, this.playwright) = (profile, playwright);

    public static async Task<OwnBrowser> New() => new(Directory.CreateTempSubdirectory("emberwright-profile-").FullName, await Playwright.CreateAsync());

    /// <summary>Starts it and opens a page.</summary>
    public async Task<IPage> Open()
    {
        var port = Host.FreePort();
        process = Process.Start(new ProcessStartInfo("/usr/bin/chromium",
        [
            "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
            "--disable-component-update", "--disable-sync", "--window-size=390,844",
            $"--user-data-dir={profile}", $"--remote-debugging-port={port}", "about:blank",
        ])
        { RedirectStandardError = true, RedirectStandardOutput = true })!;
        process.BeginErrorReadLine();
        process.BeginOutputReadLine();
        for (var tries = 0; ; tries++)
        {
            try
            {
                var browser = await playwright.Chromium.ConnectOverCDPAsync($"http://127.0.0.1:{port}");
                browser.Contexts[0].SetDefaultTimeout(Chromium.Patience);
                return browser.Contexts[0].Pages is [var first, ..] ? first : await browser.Contexts[0].NewPageAsync();
            }
            catch (PlaywrightException) when (tries < 60)
            {
                await Task.Delay(500);
            }
        }
    }

    /// <summary>Ends it as a flat battery would.</summary>
    public async Task Kill()
    {
        if (process is null) return;
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
        process = null;
    }

    public async ValueTask DisposeAsync()
    {
        await Kill();
        playwright.Dispose();
        try { Directory.Delete(profile, recursive: true); } catch (IOException) { }
    }
}
