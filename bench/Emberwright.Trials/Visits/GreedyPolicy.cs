using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;
using Emberwright.Stove.Faults;

namespace Emberwright.Trials.Visits;

/// <summary>
/// Always the suspect with the greatest probability over cost of finding out: looks whether it is so, believes what the same
/// diagnosis then says, mends whatever it has looked at and finds more likely than not. It asks nothing that is not about that one suspect.
/// </summary>
internal static class GreedyPolicy
{
    private const int Most = 30;
    private const double Least = 0.01;
    private const double LikelyEnough = 0.5;

    /// <summary>Attends.</summary>
    public static Ending Go(Attendance visit)
    {
        var catalogue = visit.Stove.Catalogue;
        var path = new List<string>();
        var looked = new HashSet<string>();
        visit.MakeSafe();
        var beliefs = Believe(visit);
        for (var step = 0; step < Most; step++)
        {
            var found = beliefs.Suspects.Where(s => s.Probability >= LikelyEnough && looked.Contains(s.Fault)).Select(s => catalogue.Fault(s.Fault)).FirstOrDefault(f => f is not null);
            if (found is null)
            {
                var best = beliefs.Suspects
                    .Where(s => s.Probability >= Least && !looked.Contains(s.Fault) && catalogue.Fault(s.Fault) is not null)
                    .Select(s => (Fault: catalogue.Fault(s.Fault)!, s.Probability, Check: Confirmation.Of(catalogue.Fault(s.Fault)!, catalogue)))
                    .Select(s => (s.Fault, s.Check, Ratio: s.Probability / Cost(visit, s.Fault, s.Check)))
                    .OrderByDescending(s => s.Ratio).FirstOrDefault();
                if (best.Fault is null) break;
                looked.Add(best.Fault.Id);
                path.Add(best.Check?.Id ?? best.Fault.Id);
                if (best.Check is { } check)
                {
                    visit.Do(check);
                    beliefs = Believe(visit);
                    continue;
                }

                found = best.Fault;
            }

            if (catalogue.Action(ActionList.CureOf(found.Id)) is not { } cure) break;
            path.Add(cure.Id);
            visit.Do(cure, found.Remedy);
            if (visit.Prove()) return new Ending(false, Among(beliefs, visit), path);
            looked.Clear(); // everything may be looked at again: what was mended changes what is seen
            looked.Add(found.Id);
            beliefs = Believe(visit);
        }

        path.Add(ActionList.FullService);
        visit.Do(catalogue.Check(ActionList.FullService)!);
        visit.Prove();
        return new Ending(false, Among(beliefs, visit), path);
    }

    private static double Cost(Attendance visit, Fault fault, Check? check) =>
        check is null ? visit.Tariff.Of(fault.Remedy) : (check.Minutes + 2) * visit.Tariff.PerMinute + check.Cost;

    private static Beliefs Believe(Attendance visit) => Diagnose.Infer(visit.Stove.Case, visit.Evidence, visit.Stove.Catalogue).Beliefs!;

    private static bool Among(Beliefs beliefs, Attendance visit) =>
        beliefs.Suspects.Where(s => s.Fault != Suspect.Unlisted).OrderByDescending(s => s.AsFound).Take(3).Any(s => visit.Original.Contains(s.Fault));
}
