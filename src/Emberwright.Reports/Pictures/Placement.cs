namespace Emberwright.Reports.Pictures;

/// <summary>
/// Finds room for labels: counts what a label would cover and takes the cheapest place. The first of equal places wins,
/// so the same picture always comes out the same.
/// </summary>
internal sealed class Placement
{
    private readonly List<(Box Box, double Weight)> _boxes = [];
    private readonly List<(Spot[] Path, double Weight)> _paths = [];

    /// <summary>Something not to cover; cost per square unit covered.</summary>
    public void Avoid(Box box, double weight) => _boxes.Add((box, weight));

    /// <summary>A line not to cover; cost per unit of length covered.</summary>
    public void Avoid(IEnumerable<Spot> path, double weight) => _paths.Add(([.. path], weight));

    /// <summary>What covering this box costs.</summary>
    public double Cost(Box box)
    {
        var cost = 0.0;
        foreach (var (other, weight) in _boxes) cost += weight * box.Overlap(other);
        foreach (var (path, weight) in _paths)
            for (var i = 1; i < path.Length; i++) cost += weight * Covered(box, path[i - 1], path[i]);
        return cost;
    }

    /// <summary>What a straight leader costs on its way: a fixed price for each thing it crosses.</summary>
    public double Crossing(Spot from, Spot to)
    {
        var cost = 0.0;
        foreach (var (box, weight) in _boxes)
            if (Covered(box, from, to) > 0.5) cost += 40 * weight;
        return cost;
    }

    /// <summary>The cheapest of several places, with its own price added.</summary>
    public (Box Box, double Cost) Best(IEnumerable<(Box Box, double Price)> places)
    {
        (Box, double Cost) best = (default, double.PositiveInfinity);
        foreach (var (box, price) in places)
        {
            if (price >= best.Cost) continue;
            var cost = price + Cost(box);
            if (cost < best.Cost - 1e-9) best = (box, cost);
        }

        return best;
    }

    /// <summary>Length of the piece of a straight line inside a box (Liang and Barsky, 1984).</summary>
    private static double Covered(Box box, Spot a, Spot b)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y, enter = 0, leave = 1;
        foreach (var (p, q) in ((double, double)[])[(-dx, a.X - box.X), (dx, box.Right - a.X), (-dy, a.Y - box.Y), (dy, box.Bottom - a.Y)])
        {
            if (p == 0 && q < 0) return 0;
            if (p < 0) enter = Math.Max(enter, q / p);
            if (p > 0) leave = Math.Min(leave, q / p);
        }

        return enter < leave ? (leave - enter) * Math.Sqrt(dx * dx + dy * dy) : 0;
    }
}
