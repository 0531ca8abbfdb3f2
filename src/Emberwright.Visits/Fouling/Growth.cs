// Question:    how fast does this stove foul, given the seasons seen so far?
// Equations:   p(ln g | seen) ∝ N(ln g; ln g₀, s²) · Π_i Σ_k w_k N(Δ_i; g·e^(t·z_k)·F_i, s_left,i² + s_found,i²),
//              Δ_i = found_i − left_i; z_k, w_k the nine Gauss–Hermite points of a standard normal.
// Symbols:     as in GrowthPrior; Δ growth of one season.
// Validity:    any number of seasons; a season that "shrank" (somebody cleaned in between) merely says growth is small
//              within its error: give only seasons without work in between.
// Assumptions: seasons are independent given g; the clean baseline cancels in the difference.
// Source:      Bayes' theorem on a grid; Gauss–Hermite abscissae from Abramowitz & Stegun, table 25.10.
// Worked:      without seasons the belief is the prior: median g₀, 80 % within g₀·e^(±1.2816 s).
namespace Emberwright.Visits.Fouling;

/// <summary>What is believed of an area's growth per tonne on this stove. Immutable.</summary>
public sealed class Growth
{
    private const int Points = 61;
    private const double Reach = 4;

    // Abscissae and weights for ∫ f(z) φ(z) dz: √2 times those for e^(−x²), weights over √π.
    private static readonly (double Z, double Weight)[] Hermite =
        [.. new[] { (0.0, 0.7202352156061), (0.7235510187528, 0.4326515590026), (1.4685532892167, 0.08847452739438), (2.2665805845318, 0.004943624275537), (3.1909932017815, 0.00003960697726326) }
            .SelectMany(p => p.Item1 == 0 ? [p] : new[] { p, (-p.Item1, p.Item2) })
            .Select(p => (Math.Sqrt(2) * p.Item1, p.Item2 / Math.Sqrt(Math.PI)))];

    private readonly double[] weights = new double[Points];

    private Growth(GrowthPrior prior, IReadOnlyList<SeasonSeen> seasons)
    {
        Prior = prior;
        Seasons = seasons;
        var total = 0.0;
        for (var i = 0; i < Points; i++)
        {
            weights[i] = PriorWeight(i) * seasons.Aggregate(1.0, (p, season) => p * Likelihood(season, PerTonne(i)));
            total += weights[i];
        }

        // Seasons that no growth explains tell nothing of the growth.
        if (!(total > 0))
        {
            for (var i = 0; i < Points; i++) total += weights[i] = PriorWeight(i);
        }

        for (var i = 0; i < Points; i++) weights[i] /= total;
    }

    /// <summary>What was believed before.</summary>
    public GrowthPrior Prior { get; }

    /// <summary>What it rests on besides.</summary>
    public IReadOnlyList<SeasonSeen> Seasons { get; }

    /// <summary>The belief after the seasons seen.</summary>
    /// <param name="prior">The pattern's.</param>
    /// <param name="seasons">This stove's, without work in between.</param>
    public static Growth After(GrowthPrior prior, IReadOnlyList<SeasonSeen> seasons)
    {
        ArgumentNullException.ThrowIfNull(prior);
        ArgumentNullException.ThrowIfNull(seasons);
        return new Growth(prior, [.. seasons.Where(s => s.Tonnes > 0)]);
    }

    /// <summary>Growth per tonne below which it lies with a probability.</summary>
    /// <param name="probability">Between 0 and 1.</param>
    public double Quantile(double probability)
    {
        var below = 0.0;
        for (var i = 0; i < Points; i++)
        {
            if (below + weights[i] >= probability)
            {
                var part = weights[i] > 0 ? (probability - below) / weights[i] - 0.5 : 0;
                return PerTonne(i + part);
            }

            below += weights[i];
        }

        return PerTonne(Points - 1);
    }

    /// <summary>Mean of a function of the growth per tonne.</summary>
    internal double Mean(Func<double, double> of)
    {
        var sum = 0.0;
        for (var i = 0; i < Points; i++) sum += weights[i] * of(PerTonne(i));
        return sum;
    }

    private static double Deviate(double point) => Reach * (2 * point / (Points - 1) - 1);

    private static double PriorWeight(int point) => Math.Exp(-0.5 * Deviate(point) * Deviate(point));

    private double PerTonne(double point) => Prior.MedianPerTonne * Math.Exp(Prior.LnSdBetweenStoves * Deviate(point));

    private double Likelihood(SeasonSeen season, double perTonne)
    {
        var variance = season.Left.Sd * season.Left.Sd + season.Found.Sd * season.Found.Sd;
        var seen = season.Found.Mean - season.Left.Mean;
        return Hermite.Sum(p =>
        {
            var off = seen - perTonne * Math.Exp(Prior.LnSdBetweenSeasons * p.Z) * season.Tonnes;
            return p.Weight * Math.Exp(-0.5 * off * off / variance);
        });
    }
}
