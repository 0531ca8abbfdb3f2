using System.Collections.Immutable;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>
/// Places the names in two columns beside the section, each with a straight leader to its part. A name goes to the nearer
/// side, in the order of the parts' heights, so that leaders rarely cross; where they would touch they move apart as
/// little as they can.
/// </summary>
internal static class NamesBeside
{
    private const double LineHeight = 13;
    private const double Gap = 5;
    private const double Middle = 176;

    public static ImmutableArray<Shape> Draw(IReadOnlyList<PartName> names, double left, double right, double width, ref double top, ref double bottom)
    {
        var made = ImmutableArray.CreateBuilder<Shape>();
        var leaders = ImmutableArray.CreateBuilder<Shape>();
        foreach (var side in (bool[])[true, false])
        {
            var here = names.Where(n => n.At.X < Middle == side).OrderBy(n => n.At.Y).Select(n => (n.At, Lines: Words.Wrap(n.Words, side ? left : width - right, Roles.Word))).ToList();
            var ys = Apart([.. here.Select(h => h.At.Y)], [.. here.Select(h => h.Lines.Count * LineHeight + Gap)], top, bottom);
            for (var i = 0; i < here.Count; i++)
            {
                var (at, lines) = here[i];
                var height = lines.Count * LineHeight;
                for (var k = 0; k < lines.Count; k++)
                    made.Add(new Text(new(side ? left : right, ys[i] - height / 2 + 10 + k * LineHeight), lines[k], Roles.Word, side ? Anchor.End : Anchor.Start));
                leaders.Add(new Line(new(side ? left + 3 : right - 3, ys[i]), at, CutawayRoles.Leader));
                leaders.Add(new Circle(at, 1.6, CutawayRoles.Foot));
                top = Math.Min(top, ys[i] - height / 2 - 2);
                bottom = Math.Max(bottom, ys[i] + height / 2 + 2);
            }
        }

        return [.. leaders, .. made];
    }

    // Pool adjacent names that would overlap and centre each pool on its members' wishes; then hold the ends.
    private static double[] Apart(double[] wished, double[] heights, double top, double bottom)
    {
        var pools = new List<(int First, int Last, double Centre, double Height)>();
        for (var i = 0; i < wished.Length; i++)
        {
            pools.Add((i, i, wished[i], heights[i]));
            while (true)
            {
                var p = pools[^1];
                var centre = Math.Max(top + p.Height / 2, Math.Min(bottom - p.Height / 2, p.Centre));
                pools[^1] = p with { Centre = centre };
                if (pools.Count < 2 || pools[^2].Centre + pools[^2].Height / 2 <= centre - p.Height / 2 + 1e-9) break;
                var q = pools[^2];
                pools.RemoveRange(pools.Count - 2, 2);
                double sum = 0, offset = 0;
                for (var k = q.First; k <= p.Last; k++)
                {
                    sum += wished[k] - (offset + heights[k] / 2);
                    offset += heights[k];
                }

                pools.Add((q.First, p.Last, sum / (p.Last - q.First + 1) + offset / 2, offset));
            }
        }

        var ys = new double[wished.Length];
        foreach (var p in pools)
        {
            var y = p.Centre - p.Height / 2;
            for (var k = p.First; k <= p.Last; k++)
            {
                ys[k] = y + heights[k] / 2;
                y += heights[k];
            }
        }

        return ys;
    }
}
