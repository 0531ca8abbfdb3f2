using Emberwright.Diagnosis;
using Emberwright.Reports.Pages;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>Readings over the visits, where an earlier one is known: left last time, found today, left today.</summary>
internal static class VisitTrends
{
    private const int Most = 4;

    public static IEnumerable<Trend> Of(Visit visit, Beliefs? beliefs)
    {
        if (visit.Day is not { } today || visit.Past is not { LastAsLeft: { Count: > 0 } last } past) return [];
        var then = past.LastService ?? (past.MonthsSinceService is { } months ? today.AddDays(-(int)Math.Round(months * 365.2425 / 12)) : (DateOnly?)null);
        if (then is not { } before || before >= today) return [];
        return last.GroupBy(r => r.Observable)
            .Select(same => (Observable: same.Key, Last: same.Last().Si, Found: Latest(visit, same.Key, Phase.AsFound), Left: Latest(visit, same.Key, Phase.AsLeft)))
            .Where(r => r.Found is not null || r.Left is not null)
            .OrderByDescending(r => r.Observable.Measure == Measure.Pressure).ThenByDescending(r => r.Observable.Condition == Condition.FanOnly).ThenBy(r => r.Observable.Place, StringComparer.Ordinal)
            .Take(Most)
            .Select(r => Trend(r.Observable, [new(before, r.Last, true), .. Point(today, r.Found, false), .. Point(today, r.Left, true)], beliefs));
    }

    private static Trend Trend(Observable observable, TrendPoint[] points, Beliefs? beliefs)
    {
        var band = beliefs?.Bands.FirstOrDefault(b => b.Observable == observable);
        return new($"{ObservableName.Of(observable)}, {ConditionWords.Of(observable.Condition)}", observable.Measure, [.. points], band?.Low, band?.High);
    }

    private static IEnumerable<TrendPoint> Point(DateOnly on, double? value, bool left) => value is { } v ? [new(on, v, left)] : [];

    private static double? Latest(Visit visit, Observable observable, Phase phase) =>
        visit.Readings.LastOrDefault(r => r.Phase == phase && r.Body.Observable == observable)?.Body.Si;
}
