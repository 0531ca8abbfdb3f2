using Emberwright.Diagnosis;
using Emberwright.Stove;

namespace Emberwright.Visits.Fouling;

/// <summary>What the visits to one stove tell of how it fouls.</summary>
public static class SeasonsOfAStove
{
    private const double LeastTonnes = 0.02;
    private const double UsualTonnesPerYear = 1.2;

    /// <summary>The forecast of a stove from what was concluded at its visits; null when none of them has a day.</summary>
    /// <param name="visits">Conclusions of all visits to the stove, in any order.</param>
    /// <param name="use">The household's fuel; null to take it from the visits' history, or a usual winter where that is silent.</param>
    /// <param name="day">Today; a forecast starts with the last visit's as-left state and the fuel burned since.</param>
    public static FoulingForecast? Forecast(IEnumerable<Findings> visits, FuelUse? use, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(visits);
        var dated = visits.Where(v => v.Visit.Day is not null).OrderBy(v => v.Visit.Day).ToArray();
        if (dated is not [.., var last]) return null;
        return Forecast(
            [.. dated.Select(v => AreasSeen.Of(v.Visit, v.Beliefs.Areas)!)],
            FoulingEnd.Of(new VirtualStove(last.Case.Pattern, last.Case.Card, last.Case.Site)), use, day);
    }

    /// <summary>The same from what each visit saw, with the stove's limits already found.</summary>
    /// <param name="visits">What each visit saw, in any order.</param>
    /// <param name="limits">The limit of each area.</param>
    /// <param name="use">The household's fuel; null to take it from the visits.</param>
    /// <param name="day">Today.</param>
    public static FoulingForecast? Forecast(IEnumerable<AreasSeen> visits, IReadOnlyDictionary<Parameter, FoulingEnd> limits, FuelUse? use, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(visits);
        var dated = visits.OrderBy(v => v.Day).ToArray();
        if (dated is not [.., var last]) return null;
        use ??= UseOf(dated);
        return FoulingForecast.Of(
            GrowthPrior.All.Select(prior => Growth.After(prior, Seasons(dated, prior.Passage, use))),
            last.Areas.ToDictionary(r => r.Parameter, r => Deposit.Of(r.Now)), limits, use, last.Day > day ? day : last.Day);
    }

    /// <summary>The fuel of a year, from what the households told at the visits.</summary>
    /// <param name="visits">Conclusions of all visits to the stove.</param>
    public static FuelUse UseOf(IEnumerable<Findings> visits) =>
        UseOf(visits.Select(v => AreasSeen.Of(v.Visit, v.Beliefs.Areas)).OfType<AreasSeen>());

    /// <inheritdoc cref="UseOf(IEnumerable{Findings})"/>
    public static FuelUse UseOf(IEnumerable<AreasSeen> visits)
    {
        ArgumentNullException.ThrowIfNull(visits);
        var told = visits
            .Where(v => v is { TonnesSince: > LeastTonnes, MonthsSince: >= 6 })
            .Select(v => v.TonnesSince!.Value * 12 / v.MonthsSince!.Value)
            .ToArray();
        return told.Length > 0
            ? new FuelUse(Math.Clamp(told.Average(), 0.01, 20), told.Length > 1 ? 0.2 : 0.25, basis: told.Length == 1 ? "told at one visit" : $"told at {told.Length} visits")
            : new FuelUse(UsualTonnesPerYear, 0.5, basis: "a usual household, nobody told; from memory");
    }

    // A season counts when both ends were estimated from readings of their own, not merely supposed.
    private static SeasonSeen[] Seasons(AreasSeen[] visits, Parameter passage, FuelUse use) =>
    [
        .. visits.Zip(visits.Skip(1), (before, after) => (before, after))
            .Where(pair => pair.before.ReadAsLeft && pair.after.ReadAsFound)
            .Select(pair => Season(pair.before, pair.after, passage, use))
            .OfType<SeasonSeen>(),
    ];

    private static SeasonSeen? Season(AreasSeen before, AreasSeen after, Parameter passage, FuelUse use)
    {
        var left = before.Areas.FirstOrDefault(r => r.Parameter == passage);
        var found = after.Areas.FirstOrDefault(r => r.Parameter == passage);
        if (left is null || found is null) return null;
        var tonnes = after.TonnesSince ?? use.TonnesBetween(before.Day, after.Day);
        return tonnes < LeastTonnes ? null : new SeasonSeen(tonnes, Deposit.Of(left.Now), Deposit.Of(found.AsFound));
    }
}
