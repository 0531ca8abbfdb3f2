// Question:    how often is each fault met, and how fast do passages foul, once closed visits have been counted?
// Equations:   shares of calls: Dirichlet with α_f = n₀·r_f/Σr before; after N visits r′_f = Σr·(α_f + n_f)/(n₀ + N);
//              fouling: x | t ~ Exp(mean θt), 1/θ ~ Gamma(a₀, b₀), b₀ = (a₀ − 1)·θ₀; θ′ = (b₀ + Σ x/t)/(a₀ + n − 1).
// Symbols:     r_f rate of fault f, % of breakdown calls; n_f visits in which it was found; n₀ = 60 the weight of what was
//              believed before, in visits; x fouling found, −ln of the share left; t tonnes since cleaning; θ mean per tonne;
//              n pairs; a₀ = 6.
// Validity:    counts of closed breakdown visits of one pattern; pairs with t > 0.05 t.
// Assumptions: visits are independent; a visit may have found more than one fault, each is counted.
// Source:      conjugate updating: Gelman et al., Bayesian Data Analysis, 2.6 and 3.4. From memory.
// Worked:      r = 8, Σr = 100, 60 visits of which 20 found it: 100·(4.8 + 20)/120 = 20.7 %.
using System.Globalization;
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Rates;

/// <summary>What a firm's closed breakdown visits of one pattern found, as counts; no visit is needed to learn from it.</summary>
/// <param name="Pattern">Pattern id.</param>
/// <param name="Visits">Number of visits counted.</param>
/// <param name="Found">In how many of them each fault was found.</param>
/// <param name="Fouling">Fouling found, with the fuel burned since the last cleaning.</param>
public sealed record ClosedVisits(
    string Pattern, int Visits, IReadOnlyDictionary<string, int> Found, IReadOnlyList<FoulingFound> Fouling);

/// <summary>A passage as found.</summary>
/// <param name="Passage">Which passage.</param>
/// <param name="Restriction">Its restriction, share lost, 0…1.</param>
/// <param name="Tonnes">Tonnes of fuel since it was cleaned.</param>
public sealed record FoulingFound(Parameter Passage, double Restriction, double Tonnes);

/// <summary>Learns rates from counts.</summary>
public static class Learning
{
    private const double BelievedVisits = 60;
    private const double BelievedPairs = 6;
    private const double LeastTonnes = 0.05;

    /// <summary>The rates after the visits, each that was learned saying on how many visits it rests.</summary>
    /// <param name="before">What was believed before.</param>
    /// <param name="seen">What the visits found.</param>
    /// <exception cref="ArgumentException">A count is negative, larger than the number of visits, or of another pattern.</exception>
    public static PatternRates After(PatternRates before, ClosedVisits seen)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(seen);
        if (seen.Pattern != before.Pattern) throw new ArgumentException($"The visits are of pattern '{seen.Pattern}', the rates of '{before.Pattern}'.", nameof(seen));
        foreach (var (fault, count) in seen.Found)
            if (count < 0 || count > seen.Visits) throw new ArgumentException($"Fault '{fault}' is counted {count} times in {seen.Visits} visits; a count lies between 0 and the visits.", nameof(seen));
        if (seen.Visits == 0 && seen.Fouling.Count == 0) return before;

        var sum = before.Faults.Values.Sum(r => r.Value);
        var faults = before.Faults.ToDictionary(f => f.Key, f => seen.Visits == 0 ? f.Value : new Rate(
            sum * (BelievedVisits * f.Value.Value / sum + seen.Found.GetValueOrDefault(f.Key)) / (BelievedVisits + seen.Visits), Based(seen.Visits, f.Value)));
        var fouling = before.Fouling.ToDictionary(f => f.Key, f => Fouls(f.Value, [.. seen.Fouling.Where(s => s.Passage == f.Key && s.Tonnes > LeastTonnes)]));
        return before with { Faults = faults, Fouling = fouling };
    }

    private static Rate Fouls(Rate before, FoulingFound[] pairs) => pairs.Length == 0 ? before : new Rate(
        ((BelievedPairs - 1) * before.Value + pairs.Sum(p => -Math.Log(1 - Math.Clamp(p.Restriction, 0, 0.98)) / p.Tonnes)) / (BelievedPairs + pairs.Length - 1),
        Based(pairs.Length, before));

    private static string Based(int visits, Rate before) =>
        string.Create(CultureInfo.InvariantCulture, $"based on {visits} of your visits, before that: {before.Origin}");
}
