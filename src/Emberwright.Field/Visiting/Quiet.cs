using Emberwright.Diagnosis;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Visiting;

/// <summary>Whether a visit goes the ordinary way: due, nothing complained of, nothing out of its band. Suspects stay folded then.</summary>
public static class Quiet
{
    /// <summary>True while nothing gives cause to look for a fault.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="findings">What is concluded so far; null counts as nothing yet.</param>
    public static bool Is(Visit visit, Findings? findings) =>
        visit.Call?.VisitKind is VisitKind.Service or VisitKind.Inspection or VisitKind.Commissioning
        && !visit.Of<ComplaintBody>().Any()
        && !visit.Of<CodeBody>().Any()
        && visit.Of<ProofBody>().GroupBy(fact => fact.Body.Proof).All(same => same.Last().Body.Outcome != ProofOutcome.Failed)
        && findings is not { NeedsAttention: true };
}
