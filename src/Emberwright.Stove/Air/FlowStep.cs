// One global-gradient step: with temperatures held, linearise each link's loss, δq = (E + δp_from − δp_to)/loss′(q), and
// choose the pressure changes so that mass balances at every node. The matrix is symmetric and positive definite because
// every loss′ > 0 and every node connects to a boundary.
// Source: Todini & Pilati (1988), A gradient algorithm for the analysis of pipe networks.
namespace Emberwright.Stove.Air;

/// <summary>Flow and pressure step at fixed temperatures.</summary>
internal static class FlowStep
{
    private const int MostOnStack = 64;
    private const double LeastSetting = 0.02;
    private const double MostSetting = 4;

    /// <summary>Takes the step; returns the largest change of flow over the largest flow.</summary>
    public static double Take(Scenario s, in UnknownLayout at, Span<double> z, Span<LinkPoint> points, double damping)
    {
        var n = at.Nodes;
        Span<double> matrix = n <= MostOnStack ? stackalloc double[n * n] : new double[n * n];
        Span<double> right = n <= MostOnStack ? stackalloc double[n] : new double[n];
        Span<int> pivots = n <= MostOnStack ? stackalloc int[n] : new int[n];
        Span<double> miss = at.Links <= MostOnStack ? stackalloc double[at.Links] : new double[at.Links];
        matrix.Clear();
        right.Clear();
        if (s.IsBurning)
        {
            right[s.FireNode] += s.Burn.GasKgPerS;
        }

        for (var l = 0; l < at.Links; l++)
        {
            ref readonly var link = ref s.Links[l];
            ref var point = ref points[l];
            var (from, to) = (link.From, link.To);
            var q = z[at.Q(l)];
            point.Evaluate(link, s.Duty(l, at.Setting(z)), q,
                from >= 0 ? z[at.T(from)] : s.BoundaryK(from), to >= 0 ? z[at.T(to)] : s.BoundaryK(to));
            var fromPa = from >= 0 ? z[at.P(from)] : s.BoundaryPa(from, link.HeightM);
            var toPa = to >= 0 ? z[at.P(to)] : s.BoundaryPa(to, link.HeightM);
            miss[l] = fromPa - toPa + ((s.OutdoorDensity - point.Density) * Atmosphere.GravityMPerS2 * link.RiseM) - point.Loss;
            var weight = 1 / point.LossByQ;
            var flow = q + (weight * miss[l]);
            if (from >= 0)
            {
                matrix[(from * n) + from] += weight;
                right[from] -= flow;
            }

            if (to >= 0)
            {
                matrix[(to * n) + to] += weight;
                right[to] += flow;
            }

            if (from >= 0 && to >= 0)
            {
                matrix[(from * n) + to] -= weight;
                matrix[(to * n) + from] -= weight;
            }
        }

        if (!DenseLu.Factor(matrix, pivots, n))
        {
            return double.PositiveInfinity;
        }

        DenseLu.Solve(matrix, pivots, n, right);
        double change = 0, largest = 1e-9;
        for (var l = 0; l < at.Links; l++)
        {
            ref readonly var link = ref s.Links[l];
            var rise = (link.From >= 0 ? right[link.From] : 0) - (link.To >= 0 ? right[link.To] : 0);
            var step = damping * (miss[l] + rise) / points[l].LossByQ;
            z[at.Q(l)] += step;
            change = Math.Max(change, Math.Abs(step));
            largest = Math.Max(largest, Math.Abs(z[at.Q(l)]));
        }

        for (var i = 0; i < n; i++)
        {
            z[at.P(i)] += damping * right[i];
        }

        if (at.IsControlled)
        {
            var task = s.Regulation!;
            var wanted = (task.SetPointPa - task.ZeroPa) / (task.SensedPa(s, z[at.P(task.Node)]) - task.ZeroPa);
            z[at.Control] = Math.Clamp(z[at.Control] * (wanted > 0 ? Math.Clamp(Math.Sqrt(wanted), 0.7, 1.4) : 1.2), LeastSetting, MostSetting);
        }

        return change / largest;
    }
}
