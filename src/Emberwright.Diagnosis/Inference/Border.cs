// Question:    how would a hypothesis fare if one more fault shifted a parameter, judged from a fit without that fault?
// Equations:   with the fault's shifts δ added to a mode: γ = ∂Φ/∂δ, K = h_δδ − h_cδᵀΣh_cδ (the other unknowns following);
//              gain = −min_δ[γᵀδ + ½δᵀKδ + ½(δ−m)ᵀS⁻¹(δ−m)] − ½ln|1 + KS|;
//              at best ½γᵀK⁻¹γ, reached when the fault's severity may be anything (a score test).
// Symbols:     δ shifts, N(m, S) their prior; h the mixed curvatures of Problem's Φ; Σ the mode's covariance.
// Validity:    exact for linear predictions; a screen otherwise.
// Assumptions: the mode is a stationary point.
// Source:      Rao's score test; bordered least squares, Björck (1996), 3.3. From memory.
// Worked:      y = c + δ + e with unit variances and y = 0: gain = −½ln(3/2) (by hand, tested).
namespace Emberwright.Diagnosis.Inference;

/// <summary>What adding a fault's shifts to a fitted mode would do to its evidence, without another solve.</summary>
/// <param name="LnGain">Linear estimate of ln P(with) − ln P(without).</param>
/// <param name="LnBest">Upper estimate: the severity free.</param>
internal readonly record struct Border(double LnGain, double LnBest)
{
    /// <summary>Evaluates the shifts at a mode.</summary>
    /// <param name="mode">The mode without them.</param>
    /// <param name="shifts">The shifts to add.</param>
    public static Border Of(Mode mode, IReadOnlyList<FaultShift> shifts)
    {
        var problem = mode.Problem;
        var layout = problem.Layout;
        var n = layout.Count;
        var count = problem.Readings.Count;
        var m = shifts.Count;
        if (m == 0) return default;

        var gamma = new double[m];
        var mixed = new double[m][];
        var columns = new double[m][];
        var margins = new double[m][];
        for (var s = 0; s < m; s++)
        {
            columns[s] = new double[count];
            margins[s] = new double[problem.Margins.Count];
            mixed[s] = new double[n];
            for (var i = 0; i < count; i++)
            {
                var epoch = problem.Readings.Items[i].Epoch;
                var k = epoch < shifts[s].CuredIn ? layout.Carrier(shifts[s].Parameter, epoch) : -1;
                if (k >= 0) columns[s][i] = mode.At.Jacobian[i * n + k];
            }
            for (var t = 0; t < margins[s].Length; t++)
            {
                var epoch = problem.Margins[t].Quantities[0].Epoch;
                var k = epoch < shifts[s].CuredIn ? layout.Carrier(shifts[s].Parameter, epoch) : -1;
                if (k >= 0) margins[s][t] = mode.At.MarginJacobian[t * n + k];
            }
        }
        var bends = new double[problem.Margins.Count];
        var slopes = new double[problem.Margins.Count];
        for (var t = 0; t < bends.Length; t++)
        {
            var at = mode.MarginAt(t);
            (slopes[t], bends[t]) = (at.Slope, at.Curvature);
        }

        var k2 = new double[m * m];
        for (var s = 0; s < m; s++)
        {
            var weighted = new double[count];
            for (var i = 0; i < count; i++)
            {
                gamma[s] -= columns[s][i] * mode.Pull(i);
                weighted[i] = Cholesky.Dot(problem.Readings.Precision.AsSpan(i * count, count), columns[s]);
                Cholesky.AddScaled(mixed[s], weighted[i], mode.At.Jacobian.AsSpan(i * n, n));
            }
            for (var t = 0; t < bends.Length; t++)
            {
                gamma[s] -= slopes[t] * margins[s][t];
                Cholesky.AddScaled(mixed[s], bends[t] * margins[s][t], mode.At.MarginJacobian.AsSpan(t * n, n));
            }
            for (var r = 0; r <= s; r++)
            {
                var direct = Cholesky.Dot(weighted, columns[r]);
                for (var t = 0; t < bends.Length; t++) direct += bends[t] * margins[s][t] * margins[r][t];
                k2[s * m + r] = k2[r * m + s] = direct;
            }
        }
        for (var s = 0; s < m; s++)
        {
            var followed = mode.Times(mixed[s]);
            for (var r = 0; r <= s; r++)
            {
                k2[s * m + r] -= Cholesky.Dot(followed, mixed[r]);
                k2[r * m + s] = k2[s * m + r];
            }
        }
        return Evaluate(gamma, k2, shifts);
    }

    private static Border Evaluate(double[] gamma, double[] k, IReadOnlyList<FaultShift> shifts)
    {
        var m = gamma.Length;
        var a = (double[])k.Clone();
        var loose = (double[])k.Clone();
        var b = new double[m];
        var ln = 0.0;
        var constant = 0.0;
        for (var s = 0; s < m; s++)
        {
            var precision = 1 / (shifts[s].Sd * shifts[s].Sd);
            a[s * m + s] += precision;
            loose[s * m + s] += 0.01 * precision;
            b[s] = shifts[s].Mean * precision - gamma[s];
            constant += 0.5 * shifts[s].Mean * shifts[s].Mean * precision;
            ln -= Math.Log(precision);
        }
        if (Cholesky.Factor(a, m) is not { } tight || Cholesky.Factor(loose, m) is not { } free) return new Border(0, double.PositiveInfinity);
        var gain = 0.5 * Cholesky.Dot(b, tight.Solve(b)) - constant - 0.5 * (tight.LnDeterminant + ln);
        return new Border(gain, Math.Max(gain, 0.5 * Cholesky.Dot(gamma, free.Solve(gamma))));
    }
}
