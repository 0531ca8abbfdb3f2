using System.Diagnostics;
using Emberwright.Diagnosis.Planning;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Emberwright.Trials.Generator;

namespace Emberwright.Trials.Visits;

/// <summary>Sends every policy to the same hidden stove.</summary>
internal static class VisitTrial
{
    private const int MostFaults = 3;

    /// <summary>Cost of coming again to a stove that was left uncured, beside the trip.</summary>
    public const double ComingAgain = 200;

    private static readonly IReadOnlyList<(string Name, Func<Attendance, Ending> Go)> Policies =
    [
        ("planner", PlannerPolicy.Go), ("chart", ChartPolicy.Go), ("clean, then swap", CleanThenSwapPolicy.Go), ("greedy", GreedyPolicy.Go),
    ];

    /// <summary>Runs one stove: one to three faults, none of them unlisted, that somebody complains of.</summary>
    /// <param name="pattern">Pattern.</param>
    /// <param name="seed">Seed of the trial.</param>
    /// <param name="index">Number of the stove.</param>
    /// <param name="only">Name of one policy; null sends all.</param>
    public static VisitRow Run(Pattern pattern, int seed, int index, string? only = null)
    {
        var watch = Stopwatch.StartNew();
        var stove = Draw(pattern, seed, index);
        var complaint = new Examination(stove).Complaint();
        string[] truth = [.. stove.Faults.Select(f => f.Id)];
        var outcomes = Policies.Where(p => only is null || p.Name == only).Select(p => One(p.Name, p.Go, new Attendance(stove.Copy(), Tariff.Default))).ToArray();
        return new VisitRow(pattern.Id, seed, index, truth, complaint, outcomes, Math.Round(watch.Elapsed.TotalSeconds, 3));
    }

    private static HiddenStove Draw(Pattern pattern, int seed, int index)
    {
        for (var attempt = 0; ; attempt++)
        {
            var stove = HiddenStove.Draw(pattern, seed, index, 1, attempt);
            var visit = new Attendance(stove, Tariff.Default);
            if (!stove.Unlisted && stove.Faults.Count is >= 1 and <= MostFaults && visit.Complaint != Complaints.Due && !visit.Works) return stove;
        }
    }

    private static Outcome One(string name, Func<Attendance, Ending> go, Attendance visit)
    {
        var ending = go(visit);
        var works = visit.Works;
        var cured = works && !ending.Stopped;
        if (!cured && !ending.Stopped) visit.Leave(ComingAgain + Tariff.Default.SecondTrip);
        return new Outcome(name, cured, ending.Stopped, cured && visit.KeepsAFault, Math.Round(visit.Cost, 2), visit.GoodPartsReplaced, visit.Checks, ending.AmongThree, ending.Path);
    }
}

/// <summary>How a policy left a stove.</summary>
/// <param name="Stopped">True when a safety stop stands.</param>
/// <param name="AmongThree">True when a fault that was there is among the first three suspects; null for a policy without beliefs.</param>
/// <param name="Path">What was done.</param>
internal sealed record Ending(bool Stopped, bool? AmongThree, IReadOnlyList<string> Path);
