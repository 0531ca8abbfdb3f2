using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Signs;
using Emberwright.Reports.FromVisit;
using Emberwright.Stove.Faults;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Visiting;

/// <summary>The questions to the customer that have no answer yet.</summary>
public static class OpenQuestions
{
    /// <summary>The complaint first, then in the catalogue's order; only those that apply to the stove's pattern.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="first">Ids of checks whose questions come before the others, best first.</param>
    public static IReadOnlyList<Sign> Of(Visit visit, IReadOnlyList<string> first)
    {
        var pattern = visit.Appliance?.Pattern;
        var answered = visit.Of<AnswerBody>().Select(fact => fact.Body.Question).ToHashSet();
        if (visit.Of<ComplaintBody>().Any() || visit.Call?.VisitKind is not VisitKind.Breakdown) answered.Add(Complaints.Sign);
        return
        [
            .. CheckList.All
                .Where(check => check.Kind == CheckKind.Ask && (pattern is null || check.IsOn(pattern)))
                .OrderBy(check => first.Contains(check.Id) ? first.Index().First(one => one.Item == check.Id).Index : first.Count)
                .SelectMany(check => check.Signs)
                .Prepend(Complaints.Sign)
                .Distinct()
                .Where(sign => !answered.Contains(sign))
                .Select(CatalogueWords.Sign)
                .OfType<Sign>()
                .Where(sign => pattern is null || sign.IsOn(pattern)),
        ];
    }
}
