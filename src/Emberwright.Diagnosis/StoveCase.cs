using Emberwright.Diagnosis.Rates;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;

namespace Emberwright.Diagnosis;

/// <summary>The stove to be diagnosed: its construction, site and history. Readings are not part of it.</summary>
/// <param name="Pattern">Family of construction.</param>
/// <param name="Card">What is known of make and model, or null.</param>
/// <param name="Site">Where it stands and the day's weather.</param>
/// <param name="History">What was true before today.</param>
/// <param name="Rates">The firm's own rates for the pattern, or null.</param>
public sealed record StoveCase(Pattern Pattern, StoveCard? Card, Site Site, History History, PatternRates? Rates = null)
{
    /// <summary>Rated mains voltage, V: the card's, else the pattern's.</summary>
    public double SupplyV => Card?.Wiring?.SupplyV ?? Pattern.SupplyV;
}

/// <summary>What is known of the stove's past. Unknown facts are null.</summary>
/// <param name="AgeYears">Age of the appliance, years.</param>
/// <param name="TonnesSinceCleaning">Fuel burned since the last full service, metric tonnes.</param>
/// <param name="MonthsSinceCleaning">Months since the last full service.</param>
/// <param name="LastAsLeft">Readings as left at the last visit, if any.</param>
/// <param name="IsService">True when the visit was called for as a routine service with nothing wrong.</param>
/// <param name="Month">Month of the visit, 1…12.</param>
public sealed record History(
    double? AgeYears = null,
    double? TonnesSinceCleaning = null,
    double? MonthsSinceCleaning = null,
    IReadOnlyList<ReadingEvidence>? LastAsLeft = null,
    bool IsService = false,
    int? Month = null);
