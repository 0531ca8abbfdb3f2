// Question:    how long did each check of a visit take?
// Equation:    from the entry before the check's first result to its last result.
// Validity:    results entered as they are had. Results of one check that stand together count as one; a result that more
//              than one check gives goes to the one that gives fewest, for that is what was probably meant.
// Source:      own convention.
using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Patterns;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>Times the checks of a visit by its entries.</summary>
public static class ChecksTimed
{
    /// <summary>Ids of checks with the minutes each took, in order; empty for a stove of no known pattern.</summary>
    public static IReadOnlyList<(string Check, double Minutes)> Of(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        if (visit.Appliance?.Pattern is not { } pattern || PatternLibrary.Find(pattern)?.Id != pattern) return [];
        var checks = Catalogue.For(pattern).Checks.Where(c => c.Action is null).OrderBy(c => c.Reads.Count + c.Signs.Count).ThenBy(c => c.Id, StringComparer.Ordinal).ToArray();
        var timed = new List<(string, double)>();
        for (var i = 1; i < visit.Facts.Count; i++)
        {
            if (Gives(checks, visit.Facts[i].Body) is not { } check) continue;
            var before = visit.Facts[i - 1].At;
            while (i + 1 < visit.Facts.Count && Gives(checks, visit.Facts[i + 1].Body) == check) i++;
            timed.Add((check.Id, (visit.Facts[i].At - before).TotalMinutes));
        }

        return timed;
    }

    private static Check? Gives(Check[] checks, EntryBody body) => body switch
    {
        ReadingBody reading => checks.FirstOrDefault(c => c.Reads.Contains(reading.Observable)),
        ObservationBody seen => checks.FirstOrDefault(c => c.Signs.Contains(seen.Sign)),
        _ => null,
    };
}
