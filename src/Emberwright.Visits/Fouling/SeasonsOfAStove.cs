using Emberwright.Stove;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Fouling;

/// <summary>What the visits to one stove tell of how it fouls.</summary>
public static class SeasonsOfAStove
{
    private const double LeastTonnes = 0.02;
    private const double UsualTonnesPerYear = 1.2;

    /// <summary>The forecast of a stove from what was concluded at its visits; null when none of them says which stove it is.</summary>
    /// <param name="visits">Conclusions of all visits to the stove, in any order.</param>
    /// <param name="use">The household's fuel; null to take it from the visits' history, or a usual winter where that is silent.</param>
    /// <param name="day">Today; a forecast starts with the last visit's as-left state and the fuel burned since.</param>
    public static FoulingForecast? Forecast(IEnumerable<Findings> visits, FuelUse? use, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(visits);
        var dated = visits.Where(v => v.Visit.Day is not null).OrderBy(v => v.Visit.Day).ToArray();
        if (dated is not [.., var last]) return null;
        use ??= UseOf(dated);
        var from = last.Visit.Day!.Value;
        return FoulingForecast.Of(
            GrowthPrior.All.Select(prior => Growth.After(prior, Seasons(dated, prior.Passage, use))),
            last.Beliefs.Areas.ToDictionary(r => r.Parameter, r => Deposit.Of(r.Now)),
            FoulingEnd.Of(new VirtualStove(last.Case.Pattern, last.Case.Card, last.Case.Site)), use, from > day ? day : from);
    }

    /// <summary>The fuel of a year, from what the households told at the visits.</summary>
    /// <param name="visits">Conclusions of all visits to the stove.</param>
    public static FuelUse UseOf(IEnumerable<Findings> visits)
    {
        ArgumentNullException.ThrowIfNull(visits);
        var told = visits
            .Select(v => (Tonnes: v.Visit.Past?.TonnesSinceService, Months: v.Visit.Day is { } day ? v.Visit.Past?.MonthsBefore(day) : null))
            .Where(t => t is { Tonnes: > LeastTonnes, Months: >= 6 })
            .Select(t => t.Tonnes!.Value * 12 / t.Months!.Value)
            .ToArray();
        return told.Length > 0
            ? new FuelUse(Math.Clamp(told.Average(), 0.01, 20), told.Length > 1 ? 0.2 : 0.25, basis: told.Length == 1 ? "told at one visit" : $"told at {told.Length} visits")
            : new FuelUse(UsualTonnesPerYear, 0.5, basis: "a usual household, nobody told; from memory");
    }

    // A season counts when both ends were estimated from readings of their own, not merely supposed.
    private static SeasonSeen[] Seasons(Findings[] visits, Parameter passage, FuelUse use) =>
    [
        .. visits.Zip(visits.Skip(1), (before, after) => (before, after))
            .Where(pair => pair.before.Visit.AsLeft.Any() && pair.after.Visit.AsFound.Any())
            .Select(pair => Season(pair.before, pair.after, passage, use))
            .OfType<SeasonSeen>(),
    ];

    private static SeasonSeen? Season(Findings before, Findings after, Parameter passage, FuelUse use)
    {
        var left = before.Beliefs.Areas.FirstOrDefault(r => r.Parameter == passage);
        var found = after.Beliefs.Areas.FirstOrDefault(r => r.Parameter == passage);
        if (left is null || found is null) return null;
        var tonnes = after.Visit.Past?.TonnesSinceService ?? use.TonnesBetween(before.Visit.Day!.Value, after.Visit.Day!.Value);
        return tonnes < LeastTonnes ? null : new SeasonSeen(tonnes, Deposit.Of(left.Now), Deposit.Of(found.AsFound));
    }
}
