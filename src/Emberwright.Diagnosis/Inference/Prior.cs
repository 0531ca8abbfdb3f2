// Question:    what is the joint prior of the unknowns, and its precision matrix?
// Equations:   N(c₀, Λ); Λ is diagonal from pattern or card. After a last visit the persistent unknowns have that visit's
//              posterior covariance plus what a year adds, and cov = Λ₁₁.
// Symbols:     c₀ means, Λ covariance, both over the unknowns of a Layout.
// Validity:    Λ positive definite; exponential unknowns stand in it as N(τ, τ²) and are put right by Skew.
// Assumptions: shifts of supposed faults are independent of everything else.
// Source:      textbook Gaussian conditioning; from memory.
// Worked:      a single unknown N(0, 2²): precision 0.25, ln|Λ| = 1.386.
namespace Emberwright.Diagnosis.Inference;

/// <summary>Gaussian prior over the unknowns of a layout.</summary>
internal sealed class Prior
{
    private Prior(double[] mean, double[] covariance, double[] precision, double lnDeterminant)
    {
        Mean = mean;
        Covariance = covariance;
        Precision = precision;
        LnDeterminant = lnDeterminant;
    }

    /// <summary>c₀.</summary>
    public double[] Mean { get; }

    /// <summary>Λ, row major.</summary>
    public double[] Covariance { get; }

    /// <summary>Λ⁻¹, row major.</summary>
    public double[] Precision { get; }

    /// <summary>ln|Λ|.</summary>
    public double LnDeterminant { get; }

    /// <summary>Independent unknowns with their own means and widths.</summary>
    public static Prior Of(Layout layout)
    {
        var n = layout.Count;
        var covariance = new double[n * n];
        var precision = new double[n * n];
        var ln = 0.0;
        for (var k = 0; k < n; k++)
        {
            var variance = layout.Unknowns[k].Sd * layout.Unknowns[k].Sd;
            covariance[k * n + k] = variance;
            precision[k * n + k] = 1 / variance;
            ln += Math.Log(variance);
        }
        return new Prior([.. layout.Unknowns.Select(u => u.Mean)], covariance, precision, ln);
    }

    /// <summary>The same with some unknowns jointly known from an earlier visit.</summary>
    /// <param name="layout">Layout of this visit.</param>
    /// <param name="known">What the earlier visit left.</param>
    public static Prior Of(Layout layout, AsLeft? known)
    {
        var plain = Of(layout);
        if (known is null) return plain;
        var n = layout.Count;
        var mean = (double[])plain.Mean.Clone();
        var covariance = (double[])plain.Covariance.Clone();
        var here = Enumerable.Range(0, n)
            .Where(k => layout.Unknowns[k].Epoch == 0)
            .Select(k => (Index: k, Then: known.IndexOf(layout.Unknowns[k])))
            .Where(m => m.Then >= 0)
            .ToArray();
        foreach (var (i, a) in here)
        {
            mean[i] = known.Mean[a];
            foreach (var (j, b) in here) covariance[i * n + j] = known.Covariance(a, b);
        }
        var factor = Cholesky.Factor(covariance, n)
            ?? throw new InvalidOperationException("The covariance left by the last visit is not positive definite.");
        return new Prior(mean, covariance, factor.Inverse(), factor.LnDeterminant);
    }

    /// <summary>The same with other normals standing in for exponential priors, which depend on nothing else.</summary>
    /// <param name="standIns">Index of the unknown, mean and variance of its new stand-in.</param>
    public Prior StandingIn(IReadOnlyList<(int Unknown, double Mean, double Variance)> standIns)
    {
        if (standIns.Count == 0) return this;
        var n = Mean.Length;
        var mean = (double[])Mean.Clone();
        var covariance = (double[])Covariance.Clone();
        var precision = (double[])Precision.Clone();
        var ln = LnDeterminant;
        foreach (var (k, m, v) in standIns)
        {
            ln += Math.Log(v / covariance[k * n + k]);
            (mean[k], covariance[k * n + k], precision[k * n + k]) = (m, v, 1 / v);
        }
        return new Prior(mean, covariance, precision, ln);
    }

    /// <summary>The same with the stand-ins that another prior has for these exponential unknowns.</summary>
    /// <param name="other">The other prior.</param>
    /// <param name="layout">The first unknowns, which both have.</param>
    public Prior StandingInAs(Prior other, Layout layout)
    {
        var (n, m) = (Mean.Length, other.Mean.Length);
        return StandingIn(
        [
            .. Enumerable.Range(0, layout.Count)
                .Where(k => layout.Unknowns[k].IsExponential && Covariance[k * n + k] != other.Covariance[k * m + k])
                .Select(k => (k, other.Mean[k], other.Covariance[k * m + k])),
        ]);
    }

    /// <summary>The same with shifts appended to the layout.</summary>
    public Prior With(Layout extended)
    {
        var n = Mean.Length;
        var m = extended.Count;
        if (n == m) return this;
        var covariance = new double[m * m];
        var precision = new double[m * m];
        for (var i = 0; i < n; i++)
        {
            Covariance.AsSpan(i * n, n).CopyTo(covariance.AsSpan(i * m));
            Precision.AsSpan(i * n, n).CopyTo(precision.AsSpan(i * m));
        }
        var ln = LnDeterminant;
        for (var k = n; k < m; k++)
        {
            var variance = extended.Unknowns[k].Sd * extended.Unknowns[k].Sd;
            covariance[k * m + k] = variance;
            precision[k * m + k] = 1 / variance;
            ln += Math.Log(variance);
        }
        return new Prior([.. Mean, .. extended.Unknowns.Skip(n).Select(u => u.Mean)], covariance, precision, ln);
    }
}
