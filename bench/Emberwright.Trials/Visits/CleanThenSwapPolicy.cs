using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;

namespace Emberwright.Trials.Visits;

/// <summary>Cleans everything, then does the remedy of one suspect after the other by its probability after the complaint, measuring nothing.</summary>
internal static class CleanThenSwapPolicy
{
    private const double Least = 0.003;
    private const int Most = 30;

    /// <summary>Attends.</summary>
    public static Ending Go(Attendance visit)
    {
        var catalogue = visit.Stove.Catalogue;
        var suspects = Diagnose.Infer(visit.Stove.Case, visit.Evidence, catalogue).Beliefs!.Suspects;
        var path = new List<string> { ActionList.FullService };
        visit.MakeSafe();
        visit.Do(catalogue.Check(ActionList.FullService)!);
        if (visit.Prove()) return new Ending(false, null, path);
        var done = new HashSet<string>();
        foreach (var suspect in suspects.Where(s => s.Probability >= Least).Take(Most))
        {
            if (catalogue.Fault(suspect.Fault) is not { Fouling: null } fault) continue;
            if (catalogue.Action(ActionList.CureOf(fault.Id)) is not { } cure || !done.Add(cure.Id)) continue;
            path.Add(cure.Id);
            visit.Do(cure, fault.Remedy);
            if (visit.Prove()) return new Ending(false, null, path);
        }

        return new Ending(false, null, path);
    }
}
