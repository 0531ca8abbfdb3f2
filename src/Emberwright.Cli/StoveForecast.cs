using Emberwright.Diagnosis;
using Emberwright.Reports.FromVisit;
using Emberwright.Stove;
using Emberwright.Visits;
using Emberwright.Visits.Fouling;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli;

/// <summary>The forecast of one stove from its visits. What a sealed visit concluded is taken from its seal; an open one is concluded now.</summary>
internal static class StoveForecast
{
    /// <summary>The forecast; null when no visit says which pattern the stove is of.</summary>
    public static FoulingForecast? Of(IReadOnlyList<Visit> visits, Func<FuelUse, FuelUse?> use, DateOnly day)
    {
        var seen = visits.Select(v => AreasSeen.Of(v, Areas(v))).OfType<AreasSeen>().ToArray();
        if (visits.LastOrDefault(v => v.Appliance is not null) is not { } last || Findings.StoveOf(last) is not { } stove) return null;
        return SeasonsOfAStove.Forecast(seen, FoulingEnd.Of(stove), use(SeasonsOfAStove.UseOf(seen)), day);
    }

    private static IReadOnlyList<RestrictionEstimate> Areas(Visit visit) =>
        (visit.Seal is { Intact: true, Body.Figures: var figures } ? SealedBeliefs.Of(figures)?.Areas : null)
        ?? Findings.Of(new VisitFile(visit.Journal, []))?.Beliefs.Areas ?? [];
}
