using Emberwright.Reports.FromVisit;
using Emberwright.Visits;
using Emberwright.Visits.Firm;

namespace Emberwright.Cli;

/// <summary>A visit's summary, with what its seal says was concluded.</summary>
internal static class SummaryOf
{
    public static VisitSummary Visit(Visit visit) =>
        VisitSummary.Of(visit, visit.Seal is { Intact: true, Body.Figures: var figures } ? SealedBeliefs.Of(figures) : null);
}
