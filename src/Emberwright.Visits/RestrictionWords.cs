using Emberwright.Diagnosis;

namespace Emberwright.Visits;

/// <summary>
/// How a restriction is said: open below 15 %, fair below 40, poor below 70, else shut
/// (our own scale; common practice gives none).
/// </summary>
public static class RestrictionWords
{
    /// <summary>The word for a restriction.</summary>
    /// <param name="restriction">Share of the passage lost, 0…1.</param>
    public static string Of(double restriction) => restriction switch
    {
        < 0.15 => "open",
        < 0.40 => "fair",
        < 0.70 => "poor",
        _ => "shut",
    };

    /// <summary>Word, per cent and 90 % interval: "poor, 62 % (48–74)".</summary>
    public static string Sentence(Interval restriction) =>
        $"{Of(restriction.Median)}, {Percent(restriction.Median)} % ({Percent(restriction.Low)}–{Percent(restriction.High)})";

    private static string Percent(double share) => Math.Round(100 * Math.Max(share, 0)).ToString("0");
}
