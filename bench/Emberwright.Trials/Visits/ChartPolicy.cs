using Emberwright.Diagnosis.Checks;

namespace Emberwright.Trials.Visits;

/// <summary>
/// The fixed fault chart, step by step. It is given what it would not have: each step finds its fault whenever it is there.
/// </summary>
internal static class ChartPolicy
{
    private static readonly IReadOnlyList<string> Last = [ActionList.FullService, "replace-board"];

    /// <summary>Attends.</summary>
    public static Ending Go(Attendance visit)
    {
        var path = new List<string>();
        visit.MakeSafe();
        foreach (var step in FaultChart.For(visit.Complaint).Concat(Last.Select(l => new ChartStep(l, [l], []))))
        {
            path.Add(step.Words);
            var changed = Step(visit, step);
            if (changed && visit.Prove()) return new Ending(false, null, path);
        }

        return new Ending(false, null, path);
    }

    private static bool Step(Attendance visit, ChartStep step)
    {
        var before = visit.Stove.Epoch;
        foreach (var id in step.Does)
        {
            if (visit.Stove.Catalogue.Check(id) is { } check) visit.Do(check);
            else if (visit.Stove.Catalogue.Action(id) is { } action) visit.Do(action);
        }

        foreach (var fault in visit.Stove.Discrete.Where(f => step.Finds.Contains(f.Id)).ToArray())
            if (visit.Stove.Catalogue.Action(ActionList.CureOf(fault.Id)) is { } cure) visit.Do(cure, fault.Remedy);
        foreach (var fault in visit.Stove.Fouled.Where(f => step.Finds.Contains(f.Id)).ToArray())
            if (visit.Stove.Catalogue.Action(ActionList.CureOf(fault.Id)) is { } cure) visit.Do(cure, fault.Remedy);
        return visit.Stove.Epoch > before;
    }
}
