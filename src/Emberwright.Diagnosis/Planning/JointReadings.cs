using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Planning;

/// <summary>Several readings taken together: drawn under one explanation, weighed under all.</summary>
internal sealed class JointReadings
{
    private readonly double[][] _mean;
    private readonly Cholesky[] _root;
    private readonly double[] _value;
    private readonly double[] _z;

    private JointReadings(double[][] mean, Cholesky[] root, int n) => (_mean, _root, _value, _z) = (mean, root, new double[n], new double[n]);

    /// <summary>Sets up the readings that can be predicted under every explanation; null when there are none.</summary>
    public static JointReadings? Of(IReadOnlyList<Observable> reads, IPredictive predictive)
    {
        var k = predictive.Explanations.Count;
        var all = reads.Count;
        var (mean, cov) = (new double[k][], new double[k][]);
        var known = Enumerable.Repeat(true, all).ToArray();
        for (var e = 0; e < k; e++)
        {
            predictive.Predict(e, reads, mean[e] = new double[all], cov[e] = new double[all * all]);
            for (var i = 0; i < all; i++) known[i] &= !double.IsNaN(mean[e][i]);
        }

        var kept = Enumerable.Range(0, all).Where(i => known[i]).ToArray();
        if (kept.Length == 0) return null;
        var root = new Cholesky[k];
        for (var e = 0; e < k; e++)
        {
            var (m, c) = (mean[e], cov[e]);
            mean[e] = [.. kept.Select(i => ReadingRanges.Finite(m[i], 1).Mean)];
            double[] small = [.. from i in kept from j in kept select Entry(m, c, all, i, j)];
            root[e] = Cholesky.Factor(small, kept.Length)
                ?? throw new ArgumentException($"The predicted covariance of {string.Join(", ", reads.Select(r => r.Place))} is not positive definite.", nameof(predictive));
        }

        return new JointReadings(mean, root, kept.Length);
    }

    /// <summary>Draws the readings under one explanation and multiplies their density under each into the likelihoods.</summary>
    public void Weigh(int under, Spread spread, double[] likelihood)
    {
        for (var i = 0; i < _z.Length; i++) _z[i] = Normal.Quantile(Math.Clamp(spread.Next(), 1e-6, 1 - 1e-6));
        var drawn = _root[under].Spread(_z);
        for (var i = 0; i < _value.Length; i++) _value[i] = _mean[under][i] + drawn[i];
        Span<double> ln = stackalloc double[likelihood.Length];
        var best = double.NegativeInfinity;
        for (var e = 0; e < likelihood.Length; e++)
        {
            for (var i = 0; i < _z.Length; i++) _z[i] = _value[i] - _mean[e][i];
            var solved = _root[e].Solve(_z);
            ln[e] = -0.5 * (Cholesky.Dot(solved, _z) + _root[e].LnDeterminant);
            best = Math.Max(best, ln[e]);
        }

        for (var e = 0; e < likelihood.Length; e++) likelihood[e] *= Math.Exp(Math.Max(ln[e] - best, -30));
    }

    private static double Entry(double[] mean, double[] covariance, int n, int i, int j)
    {
        if (Math.Abs(mean[i]) < ReadingRanges.Open && Math.Abs(mean[j]) < ReadingRanges.Open) return covariance[i * n + j] + (i == j ? 1e-9 : 0);
        return i == j ? 1 : 0;
    }
}
