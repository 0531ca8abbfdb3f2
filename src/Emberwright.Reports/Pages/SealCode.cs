using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using QRCoder;

namespace Emberwright.Reports.Pages;

/// <summary>
/// A text as a square code for a camera (ISO/IEC 18004), drawn as vectors: dark runs of each row. It says the seal itself,
/// not an address, so that it can be checked with no network.
/// </summary>
internal static class SealCode
{
    /// <summary>The code with its quiet margin in a square.</summary>
    /// <param name="text">What it says.</param>
    /// <param name="at">Upper left corner of the square.</param>
    /// <param name="side">Side of the square.</param>
    public static ImmutableArray<Shape> Draw(string text, Spot at, double side)
    {
        using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var rows = data.ModuleMatrix;
        // The library's matrix brings its quiet margin with it.
        var module = side / rows.Count;
        var runs = ImmutableArray.CreateBuilder<Box>();
        for (var row = 0; row < rows.Count; row++)
            for (var from = 0; from < rows.Count; from++)
            {
                if (!rows[row][from]) continue;
                var to = from;
                while (to + 1 < rows.Count && rows[row][to + 1]) to++;
                runs.Add(Box.Between(at.X + from * module, at.Y + row * module, at.X + (to + 1) * module, at.Y + (row + 1) * module));
                from = to;
            }

        return [new Rect(new Box(at.X, at.Y, side, side), new Role("paper", Token.Sheet)), new Mosaic(runs.ToImmutable(), new Role("code", Token.Ink))];
    }
}
