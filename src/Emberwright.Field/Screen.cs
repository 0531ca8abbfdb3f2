using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Emberwright.Field;

/// <summary>The page's own side of things: theme, scrolling, files in and out (<c>js/screen.js</c>).</summary>
public sealed class Screen(IJSRuntime js)
{
    private readonly Lazy<Task<IJSObjectReference>> module = new(() => js.InvokeAsync<IJSObjectReference>("import", "./js/screen.js").AsTask());

    /// <summary>The theme chosen: <c>light</c>, <c>dark</c>, or empty for the system's.</summary>
    public async Task<string> Theme() => await (await module.Value).InvokeAsync<string>("theme");

    /// <summary>Chooses a theme; empty follows the system.</summary>
    public async Task UseTheme(string theme) => await (await module.Value).InvokeVoidAsync("setTheme", theme);

    /// <summary>Keeps the words of the page that paints before the app does, for the next start.</summary>
    /// <param name="words">A JSON object of sentences by key; null for English, which that page has by itself.</param>
    public async Task KeepShell(string? words) => await (await module.Value).InvokeVoidAsync("keepShell", words);

    /// <summary>Brings a step of the visit to the top and puts the reader there.</summary>
    public async Task GoTo(string id) => await (await module.Value).InvokeVoidAsync("goTo", id);

    /// <summary>Makes a picture's marked places answer to touch and keyboard.</summary>
    /// <param name="figure">What holds the picture.</param>
    /// <param name="listener">Its <c>Tapped</c> is told the place.</param>
    /// <param name="chosen">The place chosen now, or null.</param>
    public async Task Taps<T>(ElementReference figure, DotNetObjectReference<T> listener, string? chosen) where T : class
    {
        var page = await module.Value;
        try
        {
            await page.InvokeVoidAsync("taps", figure, listener, chosen);
        }
        catch (ObjectDisposedException)
        {
            // The part was left while this script was fetched; nobody is there to touch it.
        }
    }

    /// <summary>Puts the reader into a part of the page, its field where it has one.</summary>
    public async Task Into(string id) => await (await module.Value).InvokeVoidAsync("into", id);

    /// <summary>Hands a file to the person.</summary>
    public async Task HandOver(string name, string mediaType, byte[] bytes) =>
        await (await module.Value).InvokeVoidAsync("handOver", name, mediaType, bytes);

    /// <summary>The photo just taken, upright and small enough to keep; null when none was.</summary>
    /// <param name="input">The file input.</param>
    /// <param name="withPlace">True to read where it was taken; the picture itself never holds that.</param>
    public async Task<TakenPhoto?> TakeIn(ElementReference input, bool withPlace) =>
        await (await module.Value).InvokeAsync<TakenPhoto?>("takeIn", input, withPlace);

    /// <summary>Keeps the first screen as it stands, so that the next start shows it at once.</summary>
    public async Task KeepFirst() => await (await module.Value).InvokeVoidAsync("keepFirst");

    /// <summary>Forgets the first screen that was kept.</summary>
    public async Task ForgetFirst() => await (await module.Value).InvokeVoidAsync("forgetFirst");

    /// <summary>The logo just chosen, as PNG of at most 900 by 300 px; null when none was, empty when the browser cannot draw it.</summary>
    /// <param name="input">The file input.</param>
    public async Task<byte[]?> LogoIn(ElementReference input) => await (await module.Value).InvokeAsync<byte[]?>("logoIn", input);

    /// <summary>Opens the browser's print dialog.</summary>
    public async Task Print() => await js.InvokeVoidAsync("print");

    /// <summary>Reports which step lies at the top of the screen, until stopped; null when the screen was left meanwhile.</summary>
    public async Task<IJSObjectReference?> WatchSteps<T>(IEnumerable<string> ids, DotNetObjectReference<T> listener) where T : class
    {
        var page = await module.Value;
        try
        {
            return await page.InvokeAsync<IJSObjectReference>("watchSteps", ids.ToArray(), listener);
        }
        catch (ObjectDisposedException)
        {
            return null;
        }
    }
}

/// <summary>A photo as it is kept.</summary>
/// <param name="Bytes">JPEG.</param>
/// <param name="Place">Latitude and longitude, degrees; null when not wanted or not known.</param>
public sealed record TakenPhoto(byte[] Bytes, string? Place);
