using Emberwright.Diagnosis;

namespace Emberwright.Visits.Fouling;

/// <summary>
/// How much of a passage a deposit has taken, as the virtual stove counts it: x = −ln(share left open), 0 when clean.
/// Not a restriction: a passage half shut has restriction 0.5 and x = 0.693, and only x grows in proportion to fuel.
/// </summary>
/// <param name="Mean">Mean, 0 or more.</param>
/// <param name="Sd">Standard deviation, above 0.</param>
public readonly record struct Deposit(double Mean, double Sd)
{
    private const double SdsInA90PercentInterval = 3.289707;
    private const double LeastSd = 0.01;
    private const double MostShare = 0.995;

    /// <summary>From a restriction's median and 90 % interval; the interval is taken as normal in x.</summary>
    /// <param name="restriction">Shares lost, 0…1.</param>
    public static Deposit Of(Interval restriction) => new(
        X(restriction.Median), Math.Max(LeastSd, (X(restriction.High) - X(restriction.Low)) / SdsInA90PercentInterval));

    /// <summary>x of a restriction.</summary>
    /// <param name="share">Share of the passage lost; held to 0…0.995.</param>
    public static double X(double share) => -Math.Log(1 - Math.Clamp(share, 0, MostShare));

    /// <summary>The restriction of an x.</summary>
    public static double Share(double x) => 1 - Math.Exp(-x);
}
