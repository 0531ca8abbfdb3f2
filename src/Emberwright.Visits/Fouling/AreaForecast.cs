// Question:    when will this area have fouled to its limit?
// Equations:   P(passed by F) = 1 − E_g E_x0 [ Φ( ln((L − x₀)/(g·F)) / t ) ], and 1 where x₀ ≥ L;
//              by a date: F the expected fuel to that date and √(t² + u²) in place of t.
// Symbols:     L limit of x; x₀ x today; g growth per tonne; F fuel from today, t; t season's spread, u the year's fuel
//              spread, both ln.
// Validity:    F from 0 up. The spread of one season stands for all to come: over several years the interval is too wide.
// Assumptions: as in Growth and FuelUse; x₀ normal, cut off at 0.
// Source:      law of total probability over the growth's grid.
// Worked:      g known as 0.25/t, x₀ = 0, L = 0.5, t = 0: passed at 2 t and not before.
using Emberwright.Diagnosis.Inference;

namespace Emberwright.Visits.Fouling;

/// <summary>The forecast of one area.</summary>
/// <param name="Growth">How fast it fouls.</param>
/// <param name="Today">How fouled it is.</param>
/// <param name="Limit">The limit, as x.</param>
/// <param name="Why">Why the limit is there, in words.</param>
/// <param name="Use">The household's fuel.</param>
/// <param name="From">Today.</param>
public sealed record AreaForecast(Growth Growth, Deposit Today, double Limit, string Why, FuelUse Use, DateOnly From)
{
    private static readonly double[] Levels = [0.1, 0.3, 0.5, 0.7, 0.9];
    private const double MostTonnes = 1000;

    /// <summary>Probability that the limit is passed once an amount has burned.</summary>
    /// <param name="tonnes">Fuel from today, t.</param>
    public double Passed(double tonnes) => Passed(tonnes, Growth.Prior.LnSdBetweenSeasons);

    /// <summary>Probability that the limit is passed by a date.</summary>
    public double Passed(DateOnly date) => Passed(Use.TonnesBetween(From, date), DateSpread);

    /// <summary>The amount by which the limit is passed with a probability, t.</summary>
    /// <param name="probability">Between 0 and 1.</param>
    public double TonnesTo(double probability) => Solve(probability, Growth.Prior.LnSdBetweenSeasons);

    /// <summary>The day by which the limit is passed with a probability; null when that is more than thirty years away.</summary>
    /// <param name="probability">Between 0 and 1.</param>
    public DateOnly? DateTo(double probability) => Use.DateAfter(From, Solve(probability, DateSpread));

    /// <summary>Restriction expected once an amount has burned: 10 %, 50 % and 90 % quantiles, shares lost.</summary>
    /// <param name="tonnes">Fuel from today, t.</param>
    public (double Low, double Middle, double High) Restriction(double tonnes) => (At(tonnes, 0.1), At(tonnes, 0.5), At(tonnes, 0.9));

    private double DateSpread => Math.Sqrt(Math.Pow(Growth.Prior.LnSdBetweenSeasons, 2) + Use.LnSd * Use.LnSd);

    private double Passed(double tonnes, double spread) => Above(Limit, tonnes, spread);

    private double Above(double x, double tonnes, double spread)
    {
        var sum = 0.0;
        foreach (var level in Levels)
        {
            var room = x - Start(level);
            sum += room <= 0 ? 1
                : tonnes <= 0 ? 0
                : 1 - Growth.Mean(g => Normal.Below(Math.Log(room / (g * tonnes)) / Math.Max(spread, 1e-6)));
        }

        return Math.Clamp(sum / Levels.Length, 0, 1);
    }

    private double At(double tonnes, double probability)
    {
        var (low, high) = (0.0, 10.0);
        for (var i = 0; i < 30; i++)
        {
            var middle = (low + high) / 2;
            if (1 - Above(middle, tonnes, Growth.Prior.LnSdBetweenSeasons) < probability) low = middle;
            else high = middle;
        }

        return Deposit.Share(high);
    }

    private double Solve(double probability, double spread)
    {
        if (Passed(0, spread) >= probability) return 0;
        var (low, high) = (0.0, 1.0);
        while (Passed(high, spread) < probability && high < MostTonnes) high *= 2;
        for (var i = 0; i < 30; i++)
        {
            var middle = (low + high) / 2;
            if (Passed(middle, spread) < probability) low = middle;
            else high = middle;
        }

        return high;
    }

    // A quantile of today's normal, cut off at nought.
    private double Start(double level)
    {
        var cut = Normal.Below(-Today.Mean / Today.Sd);
        return Math.Max(0, Today.Mean + Today.Sd * Normal.Quantile(cut + level * (1 - cut)));
    }
}
