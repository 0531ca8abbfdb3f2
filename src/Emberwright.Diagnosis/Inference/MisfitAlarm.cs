// Question:    do the readings fit even the best listed explanation, and how probable is then a cause that is not listed?
// Equations:   T = r̂ᵀR⁻¹r̂ + (ĉ − c₀)ᵀΛ⁻¹(ĉ − c₀) over all unknowns but the restrictions; p the share of T at least as large
//              simulated in the same linear model, where with w = S⁻¹y, S = JΛJᵀ + R it is yᵀw − Σ_a Λ_aa(Jᵀw)_a² over the
//              restrictions a, which stay as fitted while everything else is drawn anew. A passage that is choked as few are is still a listed cause; what is left
//              over, and what the stove's tolerances and the instruments must bear, is what may not fit. The alarm sounds
//              below p = 0.1. Whatever the unlisted cause does, it is at least as probable as 1/(1 + o·(−e·p·ln p)), p < 1/e,
//              o the odds against it beforehand.
// Symbols:     as in Mode; y readings less their prior expectation, linearised.
// Validity:    readings only; signs have their own lapses.
// Assumptions: predictions linear over the prior's range, as far as the alarm's level goes. The best of many explanations fits
//              better than one that was named beforehand: on hidden stoves with a listed cause p falls below 0.1 about three
//              times in a hundred (bench/results).
// Source:      posterior predictive checking: Box (1980). The least probability that goes with a p: Sellke, Bayarri & Berger, The
//              American Statistician 55 (2001) 62. Both from memory.
// Worked:      no restriction, one reading: T is χ² with one degree of freedom, 95 % quantile 3.84 (tested to 0.3);
//              p = 0.01 and odds of 19 to 1: at least 0.30 (tested).
using MathNet.Numerics.Random;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Says when no listed cause fits.</summary>
internal static class MisfitAlarm
{
    private const int Simulations = 400;
    private const double Level = 0.1;

    /// <summary>True when readings that the best listed explanation explains would so seldom misfit it as these do.</summary>
    /// <param name="share">Share of such readings, from <see cref="Share"/>.</param>
    public static bool Sounds(double share) => share < Level;

    /// <summary>The share of readings that a component explains and that misfit it at least as much as these; 1 without readings.</summary>
    public static double Share(Mode mode)
    {
        if (mode.Problem.Readings.Count == 0) return 1;
        var misfit = mode.ReadingMisfit() - Fouling(mode, [.. Enumerable.Range(0, mode.Problem.Readings.Count).Select(mode.Pull)]);
        var simulated = Simulated(mode);
        var below = Array.FindIndex(simulated, v => v >= misfit);
        return (double)(1 + simulated.Length - (below < 0 ? simulated.Length : below)) / (1 + simulated.Length);
    }

    /// <summary>The least probability of a cause that is not listed, from how seldom the best listed one is misfitted so.</summary>
    /// <param name="share">That share.</param>
    /// <param name="before">Probability of an unlisted cause before any evidence.</param>
    public static double LeastUnlisted(double share, double before) =>
        share >= Math.Exp(-1) ? 0 : 1 / (1 + (1 - before) / before * -Math.E * share * Math.Log(share));

    /// <summary>Σ_a Λ_aa(Jᵀw)_a² over the restrictions: their part of the misfit.</summary>
    private static double Fouling(Mode mode, double[] w)
    {
        var layout = mode.Problem.Layout;
        var n = layout.Count;
        var sum = 0.0;
        for (var a = 0; a < n; a++)
        {
            if (!layout.Unknowns[a].IsExponential) continue;
            var along = 0.0;
            for (var i = 0; i < w.Length; i++) along += w[i] * mode.At.Jacobian[i * n + a];
            sum += mode.Problem.Prior.Covariance[a * n + a] * along * along;
        }
        return sum;
    }

    /// <summary>Misfits of readings that the component explains, rising; empty where they cannot be drawn.</summary>
    internal static double[] Simulated(Mode mode)
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
            return [];
        var values = new double[Simulations];
        var z = new double[n];
        var e = new double[m];
        for (var k = 0; k < Simulations; k++)
        {
            for (var j = 0; j < n; j++) z[j] = Normal.Quantile(Math.Clamp(random.NextDouble(), 1e-12, 1 - 1e-12));
            var c = root.Spread(z);
            for (var j = 0; j < n; j++)
                if (layout.Unknowns[j].IsExponential) c[j] = mode.Mean[j] - prior.Mean[j];
            for (var i = 0; i < m; i++) e[i] = Normal.Quantile(Math.Clamp(random.NextDouble(), 1e-12, 1 - 1e-12));
            var y = noise.Spread(e);
            for (var i = 0; i < m; i++) y[i] += Cholesky.Dot(jacobian.AsSpan(i * n, n), c);
            var w = total.Solve(y);
            values[k] = Cholesky.Dot(y, w) - Fouling(mode, w);
        }
        Array.Sort(values);
        return values;
    }
}
