using Emberwright.Diagnosis;
using Emberwright.Stove;

namespace Emberwright.Visits;

/// <summary>
/// How a restriction is said: open below 15 %, fair below 40, poor below 70, else shut; and a leak: tight below twice
/// what such a stove leaks when sound, leaking below five times, else wide open (our own scales; common practice gives none).
/// </summary>
public static class RestrictionWords
{
    /// <summary>True for a gap whose estimate is its leakage over that of a sound stove, not a share of a passage lost.</summary>
    public static bool IsLeak(Parameter parameter) => parameter is
        Parameter.DoorLeak or Parameter.AshDoorLeak or Parameter.LidLeak or Parameter.ExhaustLeak or Parameter.BlowerGasketLeak or Parameter.VentLeak;

    /// <summary>The word for an estimate.</summary>
    /// <param name="parameter">What is estimated.</param>
    /// <param name="value">Share of the passage lost, 0…1; or leakage over that of a sound stove.</param>
    public static string Of(Parameter parameter, double value) => IsLeak(parameter)
        ? value switch { < 2 => "tight", < 5 => "leaking", _ => "wide open" }
        : value switch { < 0.15 => "open", < 0.40 => "fair", < 0.70 => "poor", _ => "shut" };

    /// <summary>Word, figure and 90 % interval: "poor, 62 % (48–74)" or "leaking, ×3 (1–8) of a sound one".</summary>
    /// <param name="parameter">What is estimated.</param>
    /// <param name="estimate">The estimate.</param>
    public static string Sentence(Parameter parameter, Interval estimate) => IsLeak(parameter)
        ? $"{Of(parameter, estimate.Median)}, ×{Times(estimate.Median)} ({Times(estimate.Low)}–{Times(estimate.High)}) of a sound one"
        : $"{Of(parameter, estimate.Median)}, {Percent(estimate.Median)} % ({Percent(estimate.Low)}–{Percent(estimate.High)})";

    /// <summary>As found and as left: "poor, 62 % (48–74) → open, 6 % (2–13)"; as found alone where nothing was done since.</summary>
    /// <param name="estimate">The estimate.</param>
    public static string Sentence(RestrictionEstimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        var found = Sentence(estimate.Parameter, estimate.AsFound);
        return estimate.Now == estimate.AsFound ? found : $"{found} → {Sentence(estimate.Parameter, estimate.Now)}";
    }

    private static string Percent(double share) => Math.Round(100 * Math.Max(share, 0)).ToString("0");

    private static string Times(double ratio) => ratio.ToString(ratio < 1.95 ? "0.#" : "0");
}
