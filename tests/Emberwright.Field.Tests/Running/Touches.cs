using Microsoft.Playwright;

namespace Emberwright.Field.Tests.Running;

/// <summary>Counts what a finger does, and lets time pass on the phone's clock.</summary>
internal static class Touches
{
    /// <summary>Begins to count: every pointer that goes down counts, but one that takes a photo.</summary>
    public static Task CountTouches(this IPage page) => page.EvaluateAsync("""
        () => {
            window.touches = [];
            addEventListener('pointerdown', e => {
                if (e.isTrusted && !e.target.closest('.photo-button')) window.touches.push(e.target.closest('button, a, canvas, summary, input')?.ariaLabel ?? e.target.innerText ?? e.target.tagName);
            }, true);
        }
        """);

    /// <summary>What was touched so far.</summary>
    public static Task<string[]> Touched(this IPage page) => page.EvaluateAsync<string[]>("window.touches");

    /// <summary>Lets the phone's clock be moved; call before the first page is opened.</summary>
    public static Task OwnClock(this IPage page) => page.AddInitScriptAsync("""
        { const now = Date.now.bind(Date); Date.now = () => now() + Number(localStorage.getItem('skew') ?? 0); }
        """);

    /// <summary>Moves the phone's clock, forward or back, and keeps it so over a reload.</summary>
    public static Task LetPass(this IPage page, TimeSpan time) =>
        page.EvaluateAsync("ms => localStorage.setItem('skew', Number(localStorage.getItem('skew') ?? 0) + ms)", time.TotalMilliseconds);

    /// <summary>Takes a photo with one of the photo buttons.</summary>
    public static async Task TakePhoto(this IPage page, string label)
    {
        var input = page.GetByLabel(label, new() { Exact = true }).And(page.Locator("input[type=file]"));
        await input.SetInputFilesAsync(new FilePayload { Name = "photo.png", MimeType = "image/png", Buffer = Png });
    }

    /// <summary>Draws a signature.</summary>
    /// <param name="page">The page.</param>
    /// <param name="inside">Selector of what holds the place to sign, with a space behind it; the customer's at sign-off when left out.</param>
    public static async Task SignWithAFinger(this IPage page, string inside = ".signing ")
    {
        var canvas = page.Locator(inside + ".ink canvas");
        await canvas.ScrollIntoViewIfNeededAsync();
        var box = (await canvas.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + 40, box.Y + 60);
        await page.Mouse.DownAsync();
        for (var i = 1; i <= 12; i++) await page.Mouse.MoveAsync(box.X + 40 + i * 14, box.Y + 60 + (i % 3 - 1) * 18);
        await page.Mouse.UpAsync();
    }

    // One grey pixel.
    internal static readonly byte[] Png = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAADElEQVR4nGNoaGgAAAMEAYFL09IQAAAAAElFTkSuQmCC");
}
