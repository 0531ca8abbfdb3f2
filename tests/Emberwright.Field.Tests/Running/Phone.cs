using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests.Running;

/// <summary>One page of one fresh profile.</summary>
public sealed class Phone : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly List<string> troubles = [];

    internal Phone(IBrowserContext context, IPage page)
    {
        this.context = context;
        Page = page;
        page.PageError += (_, text) => troubles.Add(text);
        page.Console += (_, message) =>
        {
            if (message.Type == "error") troubles.Add(message.Text);
        };
    }

    public IPage Page { get; }

    public Task Offline(bool off) => context.SetOfflineAsync(off);

    /// <summary>Waits until the service worker holds the whole app.</summary>
    public async Task WaitUntilKept() =>
        await Page.WaitForFunctionAsync("async () => (await navigator.serviceWorker.ready).active?.state === 'activated' && navigator.serviceWorker.controller !== null");

    /// <summary>
    /// Goes to an address inside the app as a link would, without starting the app anew: ten screens take the time of one start.
    /// </summary>
    /// <param name="address">Without the leading slash.</param>
    public async Task Go(string address)
    {
        await Page.EvaluateAsync("""
            address => {
                document.querySelector('main')?.setAttribute('data-left', '');
                Blazor.navigateTo(address || '.');
            }
            """, address);
        await Expect(Page.Locator("main:not([data-left]) h1[tabindex]")).ToBeVisibleAsync();
    }

    /// <summary>Writes a picture of the screen into the build output.</summary>
    public Task Picture(string name) => Page.ScreenshotAsync(new PageScreenshotOptions { Path = Repo.Artifacts("screens", name + ".png") });

    /// <summary>The page itself reported no error.</summary>
    public void HadNoTrouble() => Assert.True(troubles.Count == 0, string.Join('\n', troubles));

    public async ValueTask DisposeAsync() => await context.DisposeAsync();
}
