using System.Collections.Immutable;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>What the section's signs mean: ports, panels, the flows.</summary>
internal static class CutawayKey
{
    private const double LineHeight = 14;

    /// <summary>One row of the key.</summary>
    public sealed record Row(ImmutableArray<Shape> Sign, string Words, bool Whole = false);

    /// <summary>Rows side by side where two fit, from a height downwards.</summary>
    public static ImmutableArray<Shape> Draw(IReadOnlyList<Row> rows, double width, ref double y)
    {
        var made = ImmutableArray.CreateBuilder<Shape>();
        double x = 0, tallest = 0;
        foreach (var row in rows)
        {
            var lines = Words.Wrap(row.Words, (row.Whole ? width : width / 2) - 34, Roles.Word);
            if (row.Whole && x > 0) (x, y, tallest) = (0, y + tallest, 0);
            made.Add(new Group(row.Sign, x + 12, y + 10));
            for (var i = 0; i < lines.Count; i++) made.Add(new Text(new(x + 30, y + 14 + i * LineHeight), lines[i], Roles.Word));
            tallest = Math.Max(tallest, Math.Max(23, lines.Count * LineHeight + 7));
            if (row.Whole || x > 0) (x, y, tallest) = (0, y + tallest, 0);
            else x = width / 2;
        }

        y += tallest;
        return made.ToImmutable();
    }
}
