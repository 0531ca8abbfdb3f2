namespace Emberwright.Stove.Air;

/// <summary>Units in which unknowns and residuals are of like size: g/s, 10 Pa, 100 K, shares of 0.05, W/1000.</summary>
internal static class Scaling
{
    public static double Column(in UnknownLayout at, int k) =>
        k < at.Links ? 1e-3
        : k < at.Links + at.Nodes ? 10
        : k < at.Links + (2 * at.Nodes) ? 100
        : k == at.Control ? 0.1
        : 0.05;

    public static double Row(in UnknownLayout at, int i) =>
        i < at.Links || i == at.Control ? 0.1
        : i < at.Links + at.Nodes ? 1e3
        : i < at.Links + (2 * at.Nodes) ? 1e-3
        : 2e4;

    /// <summary>Sum of squares of the scaled residuals.</summary>
    public static double Merit(in UnknownLayout at, ReadOnlySpan<double> residual)
    {
        double sum = 0;
        for (var i = 0; i < residual.Length; i++)
        {
            var r = residual[i] * Row(at, i);
            sum += r * r;
        }

        return sum;
    }

    /// <summary>Scales matrix and right-hand side in place.</summary>
    public static void Apply(in UnknownLayout at, Span<double> jacobian, Span<double> residual)
    {
        var n = at.Count;
        Span<double> columns = stackalloc double[n];
        for (var k = 0; k < n; k++)
        {
            columns[k] = Column(at, k);
        }

        for (var i = 0; i < n; i++)
        {
            var scale = Row(at, i);
            residual[i] *= scale;
            var row = jacobian.Slice(i * n, n);
            for (var k = 0; k < n; k++)
            {
                row[k] *= scale * columns[k];
            }
        }
    }
}
