// How much fuel has a stove burned in the hours its counter shows?
// Equation: m = h·(f_low + s·(f_high − f_low)).
// Symbols: m fuel (kg), h hours with a fire (h), f feed at the lowest and highest setting (kg/h), s mean share of the way between (–).
// Validity: whole heating weeks; a stove run on one setting only is off by the factor between its feeds.
// Assumptions: s = 0.35: most hours are spent near the lowest setting (from memory, no source).
// Source: a mean over time, elementary.
// Worked value: 0.6 and 1.9 kg/h, 700 h: 700·(0.6 + 0.35·1.3) = 738.5 kg.

using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Controls;

/// <summary>Fuel burned, from hours run.</summary>
public static class FuelByHours
{
    private const double MeanShare = 0.35;

    /// <summary>Fuel burned in so many hours with a fire, metric tonnes.</summary>
    /// <param name="pattern">The stove's pattern, whose feeds it takes.</param>
    /// <param name="hours">Hours with a fire, h; 0 … 100 000.</param>
    /// <exception cref="InputException">The hours are out of range.</exception>
    public static double Tonnes(Pattern pattern, double hours)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        InputException.Require(hours, 0, 100_000, "hours", "h", "Read the counter again.");
        var (low, high) = (pattern.Levels[FireState.Low].FeedKgPerH, pattern.Levels[FireState.High].FeedKgPerH);
        return hours * (low + MeanShare * (high - low)) / 1000;
    }
}
