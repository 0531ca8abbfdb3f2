// Question:    do the readings fit even the best listed explanation?
// Equations:   T = r̃ᵀS⁻¹r̃, S = JΛJᵀ + R, against the 95 % quantile of T simulated in the same linear model with the
//              restrictions drawn from their exponential priors instead of the normal stand-in.
// Symbols:     as in Mode; r̃ readings less their prior expectation, linearised.
// Validity:    readings only; signs have their own lapses.
// Assumptions: predictions linear over the prior's range, as far as the alarm's level goes.
// Source:      posterior predictive checking: Box (1980). From memory.
// Worked:      no restriction, one reading: T is χ² with one degree of freedom, 95 % quantile 3.84 (tested to 0.3).
using MathNet.Numerics.Random;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Says when no listed cause fits.</summary>
internal static class MisfitAlarm
{
    private const int Simulations = 400;
    private const double Level = 0.95;

    /// <summary>True when the readings misfit a component more than 95 % of readings would that it explains.</summary>
    public static bool Sounds(Mode mode) => mode.Problem.Readings.Count > 0 && mode.ReadingMisfit() > Quantile(mode);

    /// <summary>The 95 % quantile of the misfit.</summary>
    internal static double Quantile(Mode mode)
    {
        var random = new Xoshiro256StarStar(7_919);
        var layout = mode.Problem.Layout;
        var prior = mode.Problem.Prior;
        var readings = mode.Problem.Readings;
        var n = layout.Count;
        var m = readings.Count;
        var jacobian = mode.At.Jacobian;
        var s = new double[m * m];
        var r = new double[m * m];
        for (var i = 0; i < m; i++)
        {
            var row = jacobian.AsSpan(i * n, n);
            var spread = new double[n];
            for (var k = 0; k < n; k++) spread[k] = Cholesky.Dot(prior.Covariance.AsSpan(k * n, n), row);
            for (var j = 0; j < m; j++)
            {
                r[i * m + j] = readings.Covariance(i, j);
                s[i * m + j] = r[i * m + j] + Cholesky.Dot(jacobian.AsSpan(j * n, n), spread);
            }
        }
        if (Cholesky.Factor(s, m) is not { } total || Cholesky.Factor(r, m) is not { } noise || Cholesky.Factor(prior.Covariance, n) is not { } root)
            return double.PositiveInfinity;
        var values = new double[Simulations];
        var z = new double[n];
        var e = new double[m];
        for (var k = 0; k < Simulations; k++)
        {
            for (var j = 0; j < n; j++) z[j] = Normal.Quantile(Math.Clamp(random.NextDouble(), 1e-12, 1 - 1e-12));
            var c = root.Spread(z);
            for (var j = 0; j < n; j++)
                if (layout.Unknowns[j].IsExponential) c[j] = -layout.Unknowns[j].Sd * Math.Log(Math.Max(random.NextDouble(), 1e-12)) - prior.Mean[j];
            for (var i = 0; i < m; i++) e[i] = Normal.Quantile(Math.Clamp(random.NextDouble(), 1e-12, 1 - 1e-12));
            var y = noise.Spread(e);
            for (var i = 0; i < m; i++) y[i] += Cholesky.Dot(jacobian.AsSpan(i * n, n), c);
            values[k] = Cholesky.Dot(y, total.Solve(y));
        }
        Array.Sort(values);
        return values[(int)(Level * Simulations)];
    }
}
