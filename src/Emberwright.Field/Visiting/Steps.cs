using Emberwright.Reports.FromVisit;
using Emberwright.Stove;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Visiting;

/// <summary>How far each step of a visit is.</summary>
/// <param name="Safe">Make safe.</param>
/// <param name="Found">As found.</param>
/// <param name="Areas">The four areas.</param>
/// <param name="Left">As left.</param>
/// <param name="Sign">Sign-off.</param>
public sealed record Steps(HowFar Safe, HowFar Found, HowFar Areas, HowFar Left, HowFar Sign)
{
    /// <summary>Reads how far a visit is from what it records.</summary>
    public static Steps Of(Visit visit)
    {
        var safe = visit.Of<SafeBody>().Select(fact => fact.Body.Step).ToHashSet();
        var found = visit.AsFound.Count(reading => reading.Body.Measure == Measure.Pressure);
        var areas = ServiceAreas.InOrder.Count(area => AreaIsSettled(visit, area));
        var left = visit.LeftWith.Count();
        return new(
            Part(safe.Count, safe.IsSupersetOf([SafeStep.Unplugged, SafeStep.ProvedDead])),
            Part(visit.AsFound.Count(), found >= 3),
            Part(areas, areas == ServiceAreas.InOrder.Count),
            Part(left, left >= 3),
            Part(visit.Of<SignatureBody>().Count(), visit.Seal is not null));
    }

    /// <summary>True when an area was done, or left undone with its reason.</summary>
    public static bool AreaIsSettled(Visit visit, Area area) =>
        visit.Of<ActionBody>().Any(fact => fact.Body.Area == area && (fact.Body.Done || fact.Body.Reason is not null));

    /// <summary>The strip at the top.</summary>
    public IReadOnlyList<Step> Strip(bool suspectsKnown) =>
    [
        new("call", T("common.call"), T("common.call"), HowFar.Done),
        new("safe", T("common.make-safe"), T("Steps.safe"), Safe),
        new("found", T("common.as-found"), T("common.found-2"), Found),
        new("areas", T("common.areas"), T("common.areas"), Areas),
        new("suspects", T("common.suspects"), T("common.suspects"), suspectsKnown ? HowFar.Doing : HowFar.ToDo),
        new("left", T("common.as-left"), T("Steps.left"), Left),
        new("sign", T("common.sign-off"), T("Steps.sign"), Sign),
    ];

    private static HowFar Part(int done, bool all) => all ? HowFar.Done : done > 0 ? HowFar.Doing : HowFar.ToDo;
}
