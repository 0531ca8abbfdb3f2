using System.Collections.Immutable;
using System.Text;
using Emberwright.Reports.Pages;

namespace Emberwright.Reports.Tests;

/// <summary>Photos as a phone keeps them, in size: a JPEG of few pixels, made long by comment segments (ITU-T T.81, B.2.4.5).</summary>
internal static class Photos
{
    private static readonly string[] Captions = ["ash passages behind the fire-back panel", "combustion blower wheel", "tee of the vent", "burn pot", "room-air blower", "rating label"];

    /// <summary>So many photos, in pairs before and after, no two alike.</summary>
    /// <param name="count">How many.</param>
    /// <param name="bytes">Least size of each, bytes.</param>
    public static ImmutableArray<ReportPhoto> Some(int count, int bytes = 0) =>
        [.. Enumerable.Range(0, count).Select(i => new ReportPhoto($"Photo {i + 1}: {Captions[i / 2 % Captions.Length]}, {(i % 2 == 0 ? "before" : "after")}", File(i, bytes)) { Pair = $"pair {i / 2}", After = i % 2 == 1 })];

    private static ImmutableArray<byte> File(int number, int bytes)
    {
        var made = new List<byte>(bytes + 70_000);
        var jpeg = Pixels.Jpeg;
        // Start of image and the JFIF segment, which must come first; then comments, then the rest.
        var head = 4 + (jpeg[4] << 8 | jpeg[5]);
        made.AddRange(jpeg[..head]);
        var noise = new Random(number);
        do
        {
            var comment = new byte[Math.Clamp(bytes - made.Count, 16, 65_000)];
            noise.NextBytes(comment);
            Encoding.ASCII.GetBytes($"{number:D4}").CopyTo(comment, 0);
            made.AddRange([0xFF, 0xFE, (byte)((comment.Length + 2) >> 8), (byte)(comment.Length + 2)]);
            made.AddRange(comment);
        }
        while (made.Count < bytes);
        made.AddRange(jpeg[head..]);
        return [.. made];
    }
}
