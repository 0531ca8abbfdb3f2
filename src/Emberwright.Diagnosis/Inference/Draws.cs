// Question:    how is each restriction and leak distributed, given everything?
// Equations:   draw c ~ N(ĉ, Σ); along the direction that changes no parameter (baseline +t, restrictions of that passage
//              +t, and for the exchanger UA +κt) draw t anew from its exact distribution: normal with precision
//              P = δᵀΛ⁻¹δ + Σ k·ż², slope g = −δᵀΛ⁻¹(c − c₀) − Σ 1/τ + Σ(ℓ′ − k·Δz)·ż, cut off where a restriction would
//              become negative. Draws are weighted by what stated signs say of the fouling they show.
// Symbols:     as in Problem; δ the direction over the normal unknowns; ż slope of a margin's z along it.
// Validity:    everywhere; no further solves of the stove.
// Assumptions: the fit's normal approximation for all that readings do see.
// Source:      partial Gibbs step within a normal approximation; truncated normal by inversion.
// Worked:      no evidence: restrictions come out exponential with mean τ (tested).
using MathNet.Numerics.Random;

namespace Emberwright.Diagnosis.Inference;

/// <summary>A weighted draw of the unknowns from the posterior.</summary>
/// <param name="Layout">Layout of the unknowns.</param>
/// <param name="Unknowns">Values.</param>
/// <param name="Weight">Weight.</param>
internal sealed record Draw(Layout Layout, double[] Unknowns, double Weight);

/// <summary>Draws from the posterior mixture; the same posterior gives the same draws.</summary>
internal static class Draws
{
    private const int Seed = 20_406;

    /// <summary>Draws from the mixture.</summary>
    /// <param name="file">The case.</param>
    /// <param name="library">Its fits.</param>
    /// <param name="candidates">Components with normalised weights.</param>
    /// <param name="count">Number of draws.</param>
    public static IEnumerable<Draw> From(CaseFile file, ModeLibrary library, IReadOnlyList<Candidate> candidates, int count)
    {
        var random = new Xoshiro256StarStar(Seed);
        var cumulated = 0.0;
        var used = 0;
        foreach (var candidate in candidates.Select((c, k) => (c, k)).OrderByDescending(x => x.c.Weight).ThenBy(x => x.k).Select(x => x.c))
        {
            cumulated += candidate.Weight;
            var share = (int)Math.Round(cumulated * count) - used;
            used += share;
            if (share == 0) continue;
            var mode = library.Full(candidate);
            var directions = Directions(mode);
            for (var k = 0; k < share; k++)
            {
                var c = One(mode, directions, random);
                yield return new Draw(mode.Problem.Layout, c, WeightOf(file, candidate, c));
            }
        }
    }

    private static double[] One(Mode mode, List<Direction> directions, Xoshiro256StarStar random)
    {
        var n = mode.Mean.Length;
        var c = new double[n];
        Normals(c, random);
        mode.Factor.Back(c);
        for (var k = 0; k < n; k++) c[k] += mode.Mean[k];

        var prior = mode.Problem.Prior;
        var away = new double[n];
        foreach (var d in directions)
        {
            for (var k = 0; k < n; k++) away[k] = c[k] - prior.Mean[k];
            var slope = d.Constant;
            foreach (var k in d.Normals)
            {
                slope -= d.Along[k] * Cholesky.Dot(prior.Precision.AsSpan(k * n, n), away);
            }
            foreach (var (row, gradient, curvature, along) in d.Margins)
            {
                var moved = 0.0;
                for (var j = 0; j < n; j++) moved += row[j] * (c[j] - mode.Mean[j]);
                slope += (gradient - curvature * moved) * along;
            }
            var least = double.NegativeInfinity;
            foreach (var k in d.Restrictions) least = Math.Max(least, -c[k]);
            var t = Truncated(slope / d.Precision, 1 / Math.Sqrt(d.Precision), least, Uniform(random));
            for (var k = 0; k < n; k++) c[k] += t * d.Along[k];
        }
        return c;
    }

    private static List<Direction> Directions(Mode mode)
    {
        var layout = mode.Problem.Layout;
        var n = layout.Count;
        var prior = mode.Problem.Prior;
        var directions = new List<Direction>();
        foreach (var parameter in PriorTable.Fouling)
        {
            var baseline = layout.IndexOf(UnknownKind.Baseline, parameter);
            if (baseline < 0) continue;
            var along = new double[n];
            along[baseline] = 1;
            var normals = new List<int> { baseline };
            var restrictions = new List<int>();
            var constant = 0.0;
            for (var k = 0; k < n; k++)
            {
                var unknown = layout.Unknowns[k];
                if (unknown.Kind == UnknownKind.Restriction && unknown.Parameter == parameter)
                {
                    along[k] = 1;
                    restrictions.Add(k);
                    constant -= 1 / unknown.Sd;
                }
                else if (parameter == Stove.Parameter.Exchanger && unknown.Kind == UnknownKind.Free && unknown.Parameter == Stove.Parameter.Insulation)
                {
                    along[k] = PriorTable.InsulationPerRestriction;
                    normals.Add(k);
                }
            }
            var precision = 0.0;
            foreach (var i in normals)
                foreach (var j in normals) precision += along[i] * prior.Precision[i * n + j] * along[j];
            var margins = new List<(double[], double, double, double)>();
            for (var t = 0; t < mode.Problem.Margins.Count; t++)
            {
                var row = mode.At.MarginJacobian.AsSpan(t * n, n).ToArray();
                var slope = Cholesky.Dot(row, along);
                if (Math.Abs(slope) < 1e-9) continue;
                var at = mode.MarginAt(t);
                precision += at.Curvature * slope * slope;
                margins.Add((row, at.Slope, at.Curvature, slope));
            }
            directions.Add(new Direction(along, normals, restrictions, constant, precision, margins));
        }
        return directions;
    }

    private static double WeightOf(CaseFile file, Candidate candidate, double[] c)
    {
        if (file.Stated.Count == 0) return 1;
        ulong mask = 0;
        for (var f = 0; f < file.Fouling.Count; f++)
        {
            for (var e = 0; e < file.Plan.Count; e++)
            {
                var bit = candidate.States.Bit(f, e);
                if (bit < 64 && Cholesky.Dot(candidate.States.Seen(bit), c) < file.Fouling[f].Fouling!.Limit) mask |= 1UL << bit;
            }
        }
        var at = Array.BinarySearch(candidate.States.Masks, mask);
        return at < 0 || candidate.States.Weights[at] <= 0 ? 1 : Math.Min(candidate.Stated.Weights[at] / candidate.States.Weights[at], 50);
    }

    /// <summary>A draw of N(mean, sd²) above a bound.</summary>
    internal static double Truncated(double mean, double sd, double least, double uniform)
    {
        var a = (least - mean) / sd;
        if (double.IsNegativeInfinity(a)) return mean + sd * Normal.Quantile(uniform);
        if (a > 5) return least + sd * -Math.Log(uniform) / a;
        var above = Normal.Below(-a);
        return mean - sd * Normal.Quantile(uniform * above);
    }

    /// <summary>Independent standard deviates, two at a time (Box and Muller, 1958).</summary>
    private static void Normals(Span<double> z, Xoshiro256StarStar random)
    {
        for (var k = 0; k < z.Length; k += 2)
        {
            var radius = Math.Sqrt(-2 * Math.Log(Uniform(random)));
            var (sin, cos) = Math.SinCos(2 * Math.PI * random.NextDouble());
            z[k] = radius * cos;
            if (k + 1 < z.Length) z[k + 1] = radius * sin;
        }
    }

    private static double Uniform(Xoshiro256StarStar random) => Math.Clamp(random.NextDouble(), 1e-12, 1 - 1e-12);

    private sealed record Direction(
        double[] Along, List<int> Normals, List<int> Restrictions, double Constant, double Precision,
        List<(double[] Row, double Slope, double Curvature, double Along)> Margins);
}
