using Microsoft.Playwright;
using Xunit;

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

    /// <summary>Writes a picture of the screen into the build output.</summary>
    public Task Picture(string name) => Page.ScreenshotAsync(new PageScreenshotOptions { Path = Repo.Artifacts("screens", name + ".png") });

    /// <summary>The page itself reported no error.</summary>
    public void HadNoTrouble() => Assert.Empty(troubles);

    public async ValueTask DisposeAsync() => await context.DisposeAsync();
}
