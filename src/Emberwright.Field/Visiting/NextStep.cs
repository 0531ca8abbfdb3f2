using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Planning;
using Emberwright.Reports.FromVisit;

namespace Emberwright.Field.Visiting;

/// <summary>Where a recommended check leads: to a page of its own, or to a section of the visit.</summary>
public static class NextStep
{
    /// <summary>The address.</summary>
    /// <param name="visit">Id of the visit.</param>
    /// <param name="check">The recommendation.</param>
    public static string Address(string visit, RecommendedCheck check) => check.Check == Planner.MakeSafe ? $"visit/{visit}#safe"
        : CatalogueWords.Check(check.Check) is not null || CatalogueWords.Action(check.Check) is not null ? $"visit/{visit}/check/{Uri.EscapeDataString(check.Check)}"
        : $"visit/{visit}#stop";

    /// <summary>What the bar at the bottom says: the check's name, and a short word where a section of the visit says the rest.</summary>
    public static string Name(RecommendedCheck check) => check.Check == Planner.MakeSafe ? T("common.make-it-safe")
        : CatalogueWords.Check(check.Check) is null && CatalogueWords.Action(check.Check) is null ? T("NextStep.a-safety-stop-stands")
        : check.Name;

    /// <summary>The section of the visit it leads to, or null when it has a page.</summary>
    public static string? Section(string visit, RecommendedCheck check) =>
        Address(visit, check) is var address && address.IndexOf('#') is var at and >= 0 ? address[(at + 1)..] : null;
}
