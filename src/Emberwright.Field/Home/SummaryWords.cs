using Emberwright.Reports.FromVisit;
using Emberwright.Stove.Patterns;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Home;

/// <summary>A visit's summary in words.</summary>
public static class SummaryWords
{
    /// <summary>"Fennick &amp; Oar Hob 40, damper-regulated top-feed insert": what is known of the stove.</summary>
    public static string Stove(VisitSummary visit)
    {
        var label = string.Join(' ', new[] { visit.Maker, visit.Model }.Where(w => !string.IsNullOrEmpty(w)));
        var pattern = visit.Pattern is null ? "" : PatternLibrary.Find(visit.Pattern)?.Name ?? visit.Pattern;
        return string.Join(", ", new[] { label, pattern }.Where(w => w.Length > 0));
    }

    /// <summary>What a visit was for: the complaint, or its kind.</summary>
    public static string Why(VisitSummary visit) =>
        visit.Complaint is { } words ? $"“{words}”" : visit.Kind is { } kind ? ObservableName.Capital(EnumWords.Of(kind)) : T("common.visit");

    /// <summary>What a closed visit found, or how far an open one is.</summary>
    public static string Outcome(VisitSummary visit) => visit.State switch
    {
        VisitState.Called => T("SummaryWords.not-begun"),
        VisitState.Begun => T("SummaryWords.not-signed-off"),
        VisitState.SignedOff => Learning.Confirmed(visit).Where(c => c != Emberwright.Diagnosis.Suspect.Nothing).Select(Fault).ToArray() is { Length: > 0 } found
            ? T("SummaryWords.found", string.Join(", ", found)) : "",
    };

    /// <summary>A fault's name.</summary>
    public static string Fault(string id) => Emberwright.Stove.Faults.FaultList.All.FirstOrDefault(f => f.Id == id)?.Name is { } name ? char.ToLowerInvariant(name[0]) + name[1..] : id;
}
