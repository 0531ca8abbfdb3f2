using Emberwright.Diagnosis;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Reports.FromVisit;

/// <summary>How blocked each passage is, as diagnosis estimates it, with the limit at which it counts as a fault.</summary>
public static class AreaChanges
{
    private static readonly Parameter[] Passages =
        [Parameter.AshPassages, Parameter.Exchanger, Parameter.Wheel, Parameter.Vent, Parameter.RoomAir, Parameter.BurnPot, Parameter.Intake];

    /// <summary>True for a parameter that is the share of a passage left open, or a blower's strength left.</summary>
    internal static bool IsPassage(Parameter parameter) => Passages.Contains(parameter);

    /// <summary>Where the limits come from.</summary>
    public static string LimitOrigin { get; } = string.Join("; ", FaultList.All.Where(f => f.Fouling is not null).Select(f => f.Origin).Distinct());

    /// <summary>The passages in the order of the air.</summary>
    /// <param name="beliefs">What diagnosis concluded; null gives none.</param>
    /// <param name="worked">True once something was done, so that now differs from found.</param>
    public static IEnumerable<AreaChange> Of(Beliefs? beliefs, bool worked) =>
        from area in beliefs?.Areas ?? []
        where Passages.Contains(area.Parameter)
        orderby Array.IndexOf(Passages, area.Parameter)
        select new AreaChange(ObservableName.Capital(Say.Term(area.Name)), Of(area.AsFound), worked ? Of(area.Now) : null, Limit(area.Parameter));

    private static Restriction? Of(Interval interval)
    {
        if (!double.IsFinite(interval.Low + interval.Median + interval.High)) return null;
        var likely = Math.Clamp(interval.Median, 0, 1);
        return new(Math.Clamp(interval.Low, 0, likely), likely, Math.Clamp(interval.High, likely, 1));
    }

    // The fault's own limit: ln of the share left open.
    private static double? Limit(Parameter parameter) =>
        FaultList.All.Select(f => f.Fouling).FirstOrDefault(f => f?.Parameter == parameter) is { } fouling ? 1 - Math.Exp(fouling.Limit) : null;
}
