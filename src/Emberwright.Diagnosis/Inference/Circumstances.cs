// Question:    how often is each fault met on a stove of this age, in this weather, in this month?
// Equations:   r = r₀·Π factors: parts that wear (those that are replaced) √(age/8), age/8 held between 0.2 and 4; terminal snowed in ×2 at or
//              below 2 °C outdoors, ×0.1 above 6 °C; condensate ×1.5 at or below 2 °C; a nest ×1.6 in September to November.
// Symbols:     r₀ rate of the pattern, %; age in years.
// Validity:    what is unknown changes nothing; months are those of the northern hemisphere.
// Assumptions: the factors are independent of each other.
// Source:      judgement from memory, no source.
// Worked:      a stove of 12 years: its feed motor 1.22 times as often as usual.
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Rates of faults on the stove at hand.</summary>
internal static class Circumstances
{
    private const double UsualAge = 8;
    private const double FreezingC = 2;
    private const double MildC = 6;

    /// <summary>The faults with their rates on this stove: the firm's own where it has them, then age, weather and month.</summary>
    public static IReadOnlyList<Fault> Rated(IReadOnlyList<Fault> faults, StoveCase stove) =>
        [.. faults.Select(f => f with { BaseRatePercent = (stove.Rates?.Faults.GetValueOrDefault(f.Id)?.Value ?? f.BaseRatePercent) * Factor(f, stove) })];

    private static double Factor(Fault fault, StoveCase stove)
    {
        var factor = 1.0;
        if (stove.History.AgeYears is { } age && fault.Fouling is null && fault.Remedy.Kind == RemedyKind.Replace) factor *= Math.Sqrt(Math.Clamp(age / UsualAge, 0.2, 4));
        if (stove.Site.OutdoorC is { } outdoor)
        {
            if (fault.Id == "terminal-snowed-in") factor *= outdoor <= FreezingC ? 2 : outdoor > MildC ? 0.1 : 1;
            if (fault.Id.StartsWith("condensate-", StringComparison.Ordinal) && outdoor <= FreezingC) factor *= 1.5;
        }
        if (fault.Id == "nest-in-cap" && stove.History.Month is >= 9 and <= 11) factor *= 1.6;
        return factor;
    }
}
