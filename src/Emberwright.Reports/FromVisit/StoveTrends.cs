using System.Collections.Immutable;
using Emberwright.Diagnosis;
using Emberwright.Reports.Pictures.Trend;
using Emberwright.Stove;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Fouling;

namespace Emberwright.Reports.FromVisit;

/// <summary>A stove's history as trends: each area's restriction with its forecast, exhaust, O2, CO.</summary>
public static class StoveTrends
{
    private const int Steps = 12;

    /// <summary>The trends that have something to show.</summary>
    /// <param name="visits">The stove's visits.</param>
    /// <param name="forecast">Its forecast; null without one.</param>
    /// <param name="today">Today.</param>
    public static IReadOnlyList<TrendInput> Of(IReadOnlyList<VisitSummary> visits, FoulingForecast? forecast, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(visits);
        var seen = visits.Select(v => v.Seen).OfType<AreasSeen>().ToArray();
        var areas = GrowthPrior.All.Select(prior => Area(prior.Passage, seen, forecast?.Areas.FirstOrDefault(a => a.Growth.Prior.Passage == prior.Passage), today));
        return
        [
            .. areas.Where(t => t.Marks.Length + t.Band.Length > 0),
            .. new[]
            {
                Figure("Exhaust on high, as left", "°C", 0, visits, v => v.ExhaustC), Figure("O2 on high, as left", "%", 1, visits, v => v.OxygenPercent),
                Figure("CO on high, as left", "ppm", 0, visits, v => v.CarbonMonoxidePpm),
            }.Where(t => t.Marks.Length > 0),
        ];
    }

    private static TrendInput Area(Parameter passage, AreasSeen[] seen, AreaForecast? forecast, DateOnly today) => new(
        PassageWords.Of(passage), "% shut", 0, [.. seen.SelectMany(s => s.Areas.Where(a => a.Parameter == passage).SelectMany(a => Marks(s, a)))],
        forecast is null ? [] : Foretold(forecast, today), forecast is null ? null : 100 * Deposit.Share(forecast.Limit), today);

    private static IEnumerable<TrendMark> Marks(AreasSeen seen, RestrictionEstimate area)
    {
        if (seen.ReadAsFound && Mark(seen.Day, area.AsFound, true) is { } found) yield return found;
        if (seen.ReadAsLeft && Mark(seen.Day, area.Now, false) is { } left) yield return left;
    }

    private static TrendMark? Mark(DateOnly day, Interval interval, bool found) =>
        double.IsFinite(interval.Low + interval.Median + interval.High)
            ? new TrendMark(day, 100 * Math.Clamp(interval.Median, 0, 1), found, 100 * Math.Clamp(interval.Low, 0, 1), 100 * Math.Clamp(interval.High, 0, 1))
            : null;

    // From the last visit to when it should be past its limit, two years at the most.
    private static ImmutableArray<TrendBand> Foretold(AreaForecast forecast, DateOnly today)
    {
        var end = forecast.DateTo(0.5) is { } likely && likely < forecast.From.AddYears(2) ? likely.AddMonths(2) : forecast.From.AddYears(2);
        if (end < today) end = today.AddMonths(1);
        return
        [
            .. Enumerable.Range(0, Steps + 1).Select(i => forecast.From.AddDays((end.DayNumber - forecast.From.DayNumber) * i / Steps)).Select(day =>
            {
                var (low, middle, high) = forecast.Restriction(forecast.Use.TonnesBetween(forecast.From, day));
                return new TrendBand(day, 100 * low, 100 * middle, 100 * high);
            }),
        ];
    }

    private static TrendInput Figure(string title, string unit, int decimals, IReadOnlyList<VisitSummary> visits, Func<VisitSummary, double?> of) =>
        new(title, unit, decimals, [.. visits.Where(v => v.Day is not null && of(v) is not null).Select(v => new TrendMark(v.Day!.Value, of(v)!.Value))]);
}
