// What does it cost to look, to mend and to come again?
// Cost = minutes × PerMinute + parts + (1 − P(on the van)) × SecondTrip.
// Symbols: costs in the firm's currency.
// Validity: any non-negative rates.
// Assumptions: time, parts and trips add; harm is a sum of money.
// Source: from memory, no source; a firm sets its own.
// Worked: 12 minutes and a switch of 45 that is on the van: 12 × 1.25 + 45 = 60.
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>What time, trips and harm cost.</summary>
/// <param name="PerMinute">One minute of the technician's time.</param>
/// <param name="SecondTrip">Coming again.</param>
/// <param name="ProveMinutes">Minutes to see whether the stove goes after one repair.</param>
/// <param name="Harm">Burning the stove for a test with a fault that puts exhaust or fire where people are.</param>
/// <param name="Unsolved">Leaving with the cause not found.</param>
public sealed record Tariff(
    double PerMinute = 1.25, double SecondTrip = 90, double ProveMinutes = 2, double Harm = 200, double Unsolved = 200)
{
    /// <summary>The default, from memory, no source.</summary>
    public static Tariff Default { get; } = new();

    /// <summary>Cost of a remedy with its part and the chance of having to fetch it.</summary>
    /// <param name="remedy">The remedy.</param>
    public double Of(Remedy remedy) => (remedy.Minutes + ProveMinutes) * PerMinute + remedy.PartCost + (1 - remedy.OnVan) * SecondTrip;
}
