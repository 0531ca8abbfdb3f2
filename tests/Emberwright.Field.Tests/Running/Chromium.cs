using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;

// Two at a time: a machine of two cores starts the app no faster for more.
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.Collections, MaxThreads = 2)]
[assembly: AssemblyFixture(typeof(Chromium))]

namespace Emberwright.Field.Tests.Running;

/// <summary>One headless browser for all tests; each test takes a fresh profile from it.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private const string Executable = "/usr/bin/chromium";

    // Long enough for a start on a machine that does other things too; nothing waits longer than it must.
    internal const int Patience = 150_000;

    private IPlaywright? playwright;
    private IBrowser? browser;

    public async ValueTask InitializeAsync()
    {
        if (!File.Exists(Executable))
            throw new InvalidOperationException($"The browser tests need {Executable}: apt-get install chromium.");
        Assertions.SetDefaultExpectTimeout(Patience);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Executable,
            Args =
            [
                "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync",
            ],
        });
    }

    /// <summary>A fresh profile on a phone of 390×844; every error the page reports is collected.</summary>
    public async Task<Phone> Phone(ColorScheme theme = ColorScheme.Light)
    {
        var context = await browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = 390, Height = 844 },
            DeviceScaleFactor = 2,
            HasTouch = true,
            ColorScheme = theme,
            ReducedMotion = ReducedMotion.Reduce,
            Locale = "en-US",
            AcceptDownloads = true,
        });
        context.SetDefaultTimeout(Patience);
        Assertions.SetDefaultExpectTimeout(Patience);
        return new Phone(context, await context.NewPageAsync());
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        playwright?.Dispose();
    }
}
