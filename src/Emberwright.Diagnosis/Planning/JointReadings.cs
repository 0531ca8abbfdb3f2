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

    /// <summary>Sets up the readings; null when one of them cannot be predicted.</summary>
    public static JointReadings? Of(IReadOnlyList<Observable> reads, IPredictive predictive)
    {
        var (k, n) = (predictive.Explanations.Count, reads.Count);
        var mean = new double[k][];
        var root = new Cholesky[k];
        var covariance = new double[n * n];
        for (var e = 0; e < k; e++)
        {
            predictive.Predict(e, reads, mean[e] = new double[n], covariance);
            if (Array.Exists(mean[e], double.IsNaN)) return null;
            root[e] = Root(covariance, n);
        }

        return new JointReadings(mean, root, n);
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

    /// <summary>Square root of a covariance; one that approximations have made indefinite is drawn towards its diagonal.</summary>
    private static Cholesky Root(double[] covariance, int n)
    {
        while (true)
        {
            if (Cholesky.Factor(covariance, n) is { } root) return root;
            for (var i = 0; i < n; i++)
            {
                for (var j = 0; j < n; j++) covariance[i * n + j] = i == j ? Math.Max(covariance[i * n + j], 1e-9) : 0.8 * covariance[i * n + j];
            }
        }
    }
}
