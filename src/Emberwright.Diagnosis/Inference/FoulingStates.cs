// Question:    which of the fouled passages, wheels and surfaces are past their limits together, under one hypothesis?
// Equations:   each is past its limit with the probability p of Skew; together by a Gaussian copula with the correlations of
//              the fitted unknowns: past ⇔ u_i < Φ⁻¹(p_i), u ~ N(0, C), summed over a fixed set of evenly spread points;
//              then the joint table is scaled until its margins are exactly p (iterative proportional fitting).
// Symbols:     p_i marginal probability; C correlation matrix; a mask has one bit for each passage and span of epochs.
// Validity:    up to 60 bits; 256 points resolve joint probabilities to about 0.01.
// Assumptions: dependence as of a normal distribution: "one of the two is choked" survives, which independence would lose.
// Source:      Nelsen, An Introduction to Copulas; Deming & Stephan, Ann. Math. Stat. 11 (1940) 427; points: additive
//              recurrence with the generalised golden ratio (M. Roberts, 2018). From memory.
// Worked:      two with p = 0.5 and correlation 0: each of the four masks 0.25 (tested to 0.02).
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Joint distribution of "past its limit" over all fouling faults and epochs, under one hypothesis.</summary>
internal sealed class FoulingStates
{
    private const int Points = 256;
    private const int MostBits = 40;
    private static readonly double[] Spread = EvenNormals(Points, MostBits);

    private readonly double[][] _seen;
    private readonly int[,] _bit;
    private readonly (ulong[] Sets, int[] OfMask)?[] _sets;

    private FoulingStates(double[][] seen, int[,] bit, double[] marginal, ulong[] masks, double[] weights)
    {
        _seen = seen;
        _bit = bit;
        _sets = new (ulong[], int[])?[bit.GetLength(1)];
        Marginal = marginal;
        Masks = masks;
        Weights = weights;
    }

    /// <summary>Probability of each bit.</summary>
    public double[] Marginal { get; }

    /// <summary>Masks that have any weight.</summary>
    public ulong[] Masks { get; }

    /// <summary>Their probabilities.</summary>
    public double[] Weights { get; }

    /// <summary>Bit of a fouling fault in an epoch.</summary>
    public int Bit(int fouling, int epoch) => _bit[fouling, epoch];

    /// <summary>The different sets of foulings in an epoch (a bit for each fouling fault), and which of them each mask has.</summary>
    public (ulong[] Sets, int[] OfMask) In(int epoch) => (_sets[epoch] ??= SetsIn(epoch));

    /// <summary>The combination of unknowns whose value, ln of the share left, is compared with the limit.</summary>
    public double[] Seen(int bit) => _seen[bit];

    /// <summary>Sets up the distribution from a mode.</summary>
    public static FoulingStates Of(Mode mode, IReadOnlyList<Fault> fouling)
    {
        var layout = mode.Problem.Layout;
        var n = layout.Count;
        var seen = new List<double[]>();
        var bit = new int[fouling.Count, layout.Epochs];
        var marginal = new List<double>();
        for (var f = 0; f < fouling.Count; f++)
        {
            var from = seen.Count;
            for (var e = 0; e < layout.Epochs; e++)
            {
                var row = new double[n];
                layout.Seen(fouling[f].Fouling!.Parameter, e, row);
                var same = seen.FindIndex(from, s => s.AsSpan().SequenceEqual(row));
                if (same < 0)
                {
                    same = seen.Count;
                    seen.Add(row);
                    marginal.Add(Past(mode, row, fouling[f].Fouling!.Limit, -1, -1));
                }
                bit[f, e] = same;
            }
        }
        var (masks, weights) = Joint(mode, seen, marginal);
        return new FoulingStates([.. seen], bit, [.. marginal], masks, weights);
    }

    /// <summary>P(past the limit) of one combination of unknowns, optionally without one piece of evidence.</summary>
    public static double Past(Mode mode, double[] seen, double limit, int withoutReading, int withoutMargin)
    {
        var (mean, variance) = mode.Without(seen, withoutReading, withoutMargin);
        var only = Array.FindIndex(seen, s => s != 0);
        if (only < 0) return 0;
        var single = Array.FindLastIndex(seen, s => s != 0) == only;
        return single && mode.Problem.Layout.Unknowns[only].IsExponential
            ? mode.SkewOf(only, -mean, variance).Beyond(-limit)
            : Normal.Below((limit - mean) / Math.Sqrt(variance));
    }

    private (ulong[], int[]) SetsIn(int epoch)
    {
        var sets = new List<ulong>();
        var ofMask = new int[Masks.Length];
        for (var m = 0; m < ofMask.Length; m++)
        {
            ulong set = 0;
            for (var f = 0; f < _bit.GetLength(0); f++)
                if (_bit[f, epoch] < 64 && (Masks[m] >> _bit[f, epoch] & 1) != 0) set |= 1UL << f;
            ofMask[m] = sets.IndexOf(set);
            if (ofMask[m] >= 0) continue;
            ofMask[m] = sets.Count;
            sets.Add(set);
        }
        return ([.. sets], ofMask);
    }

    private static (ulong[], double[]) Joint(Mode mode, List<double[]> seen, List<double> marginal)
    {
        var m = Math.Min(seen.Count, MostBits);
        if (m == 0) return ([0], [1]);
        var covariance = new double[m * m];
        for (var i = 0; i < m; i++)
        {
            var spread = mode.Times(seen[i]);
            for (var j = 0; j <= i; j++) covariance[i * m + j] = Cholesky.Dot(spread, seen[j]);
        }
        var sd = new double[m];
        for (var i = 0; i < m; i++) sd[i] = Math.Sqrt(covariance[i * m + i]);
        for (var i = 0; i < m; i++)
            for (var j = 0; j <= i; j++) covariance[i * m + j] = i == j ? 1 + 1e-9 : 0.999 * covariance[i * m + j] / (sd[i] * sd[j]);
        var root = Cholesky.Factor(covariance, m);
        var cut = new double[m];
        for (var i = 0; i < m; i++) cut[i] = Normal.Quantile(marginal[i]);

        var table = new SortedDictionary<ulong, double> { [0] = 1e-6 };
        for (var i = 0; i < m; i++) table[1UL << i] = 1e-6;
        for (var point = 0; point < Points; point++)
        {
            var z = Spread.AsSpan(point * MostBits, m);
            var u = root is null ? z.ToArray() : root.Spread(z);
            ulong mask = 0;
            for (var i = 0; i < m; i++)
                if (u[i] < cut[i]) mask |= 1UL << i;
            table[mask] = table.GetValueOrDefault(mask) + 1.0 / Points;
        }
        ulong[] masks = [.. table.Keys];
        double[] weights = [.. table.Values];
        Fit(masks, weights, marginal, m);
        return (masks, weights);
    }

    private static void Fit(ulong[] masks, double[] weights, List<double> marginal, int bits)
    {
        for (var pass = 0; pass < 8; pass++)
        {
            for (var i = 0; i < bits; i++)
            {
                var (with, all) = (0.0, 0.0);
                for (var k = 0; k < masks.Length; k++)
                {
                    all += weights[k];
                    if ((masks[k] >> i & 1) != 0) with += weights[k];
                }
                var p = Math.Clamp(marginal[i], 1e-12, 1 - 1e-12);
                for (var k = 0; k < masks.Length; k++)
                    weights[k] *= (masks[k] >> i & 1) != 0 ? p / with : (1 - p) / Math.Max(all - with, 1e-300);
            }
        }
    }

    private static double[] EvenNormals(int points, int dimensions)
    {
        var root = 1.5;
        for (var k = 0; k < 40; k++) root = Math.Pow(1 + root, 1.0 / (dimensions + 1));
        var normals = new double[points * dimensions];
        for (var d = 0; d < dimensions; d++)
        {
            var step = Math.Pow(root, -(d + 1));
            for (var p = 0; p < points; p++)
            {
                var x = 0.5 + step * (p + 1);
                normals[p * dimensions + d] = Normal.Quantile(Math.Clamp(x - Math.Floor(x), 1e-6, 1 - 1e-6));
            }
        }
        return normals;
    }
}
