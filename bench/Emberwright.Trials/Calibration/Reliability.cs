// How well do stated probabilities agree with what was so?
// Equations: ECE = Σ_b n_b/N·|mean p − share true|, ten bins of equal width; Brier = mean over stoves of Σ_f (p_f − y_f)²;
//            wrong at 95 % = share not so among statements with p ≥ 0.95.
// Symbols: p stated marginal of a fault, y 1 when it was there, b bin, n_b statements in it, N statements in all.
// Validity: statements below 1 % are left out of ECE: they are the many faults nobody speaks of and would hide every error.
//           Which statements count hangs on p alone; choosing them by what was so would make any forecaster look wrong.
// Assumptions: a fault that was there and not named was stated at 0 and counts in the Brier score.
// Source: Naeini, Cooper & Hauskrecht, AAAI 2015 (ECE); Brier, Mon. Weather Rev. 78 (1950). From memory.
// Worked: two statements at 0.75, one of them true: ECE 0.25.
using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Trials.Calibration;

/// <summary>A probability that was stated, and whether it was so.</summary>
/// <param name="P">Stated probability.</param>
/// <param name="So">True when it was so.</param>
internal readonly record struct Stated(double P, bool So);

/// <summary>Agreement of statements with the truth.</summary>
internal static class Reliability
{
    /// <summary>Number of bins.</summary>
    public const int Bins = 10;

    private const double Spoken = 0.01;
    private const double NearlySure = 0.95;

    /// <summary>All fault marginals of one rung: those named, and at nought those that were there and not named.</summary>
    public static IEnumerable<Stated> Marginals(CalibrationRow row, Statement says) => says.Probabilities.Keys.Union(row.Truth)
        .Where(f => f is not (Suspect.Nothing or Suspect.Unlisted))
        .Select(f => new Stated(says.Probabilities.GetValueOrDefault(f), row.Truth.Contains(f)));

    /// <summary>The likeliest fault of one rung; none when no fault is named.</summary>
    public static IEnumerable<Stated> First(CalibrationRow row, Statement says) => says.Probabilities
        .Where(p => p.Key is not (Suspect.Nothing or Suspect.Unlisted))
        .OrderByDescending(p => p.Value).ThenBy(p => p.Key, StringComparer.Ordinal).Take(1)
        .Select(p => new Stated(p.Value, row.Truth.Contains(p.Key)));

    /// <summary>Per bin: mean stated probability, share that was so, number.</summary>
    public static IReadOnlyList<(double Stated, double So, int Count)> Diagram(IEnumerable<Stated> statements) =>
    [
        .. statements.Where(s => s.P >= Spoken)
            .GroupBy(s => Math.Min((int)(s.P * Bins), Bins - 1)).OrderBy(g => g.Key)
            .Select(g => (g.Average(s => s.P), g.Average(s => s.So ? 1.0 : 0), g.Count())),
    ];

    /// <summary>Expected calibration error.</summary>
    public static double Error(IEnumerable<Stated> statements)
    {
        var bins = Diagram(statements);
        var all = bins.Sum(b => b.Count);
        return all == 0 ? 0 : bins.Sum(b => b.Count * Math.Abs(b.Stated - b.So)) / all;
    }

    /// <summary>Wrong and all statements at 95 % and above.</summary>
    public static (int Wrong, int All) NearlySureOnes(IEnumerable<Stated> statements)
    {
        var sure = statements.Where(s => s.P >= NearlySure).ToArray();
        return (sure.Count(s => !s.So), sure.Length);
    }

    /// <summary>Of the statements at 95 % and above that were wrong, those where nothing in the same area of the stove was wrong either.</summary>
    public static int WrongAreaToo(CalibrationRow row, Statement says)
    {
        var areas = row.Truth.Select(AreaOf).OfType<Area>().ToHashSet();
        return says.Probabilities.Count(p => p.Value >= NearlySure && !row.Truth.Contains(p.Key) && AreaOf(p.Key) is { } area && !areas.Contains(area));
    }

    private static Area? AreaOf(string fault) => FaultList.All.FirstOrDefault(f => f.Id == fault)?.Area;

    /// <summary>Brier score summed over the faults of one stove.</summary>
    public static double Brier(CalibrationRow row, Statement says) => Marginals(row, says).Sum(s => (s.P - (s.So ? 1 : 0)) * (s.P - (s.So ? 1 : 0)));

    /// <summary>True when a fault that was there is among the three likeliest.</summary>
    public static bool AmongThree(CalibrationRow row, Statement says) => says.Probabilities
        .Where(p => p.Key is not Suspect.Unlisted).OrderByDescending(p => p.Value).ThenBy(p => p.Key, StringComparer.Ordinal).Take(3).Any(p => row.Truth.Contains(p.Key));
}
