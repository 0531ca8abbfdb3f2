using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Practice;

/// <summary>Two ways through the same stove, cost by cost.</summary>
/// <param name="Hidden">What was hidden.</param>
/// <param name="Left">What the learner left wrong.</param>
/// <param name="Rows">One row a sort of cost.</param>
/// <param name="Yours">The learner's bill.</param>
/// <param name="Planners">The planner's bill.</param>
/// <param name="Remarks">What made the difference, in plain sentences.</param>
public sealed record PracticeReview(
    IReadOnlyList<Fault> Hidden, IReadOnlyList<Fault> Left, IReadOnlyList<PracticeRow> Rows, double Yours, double Planners, IReadOnlyList<string> Remarks)
{
    /// <summary>Compares a learner's way with the planner's.</summary>
    /// <param name="learner">The learner's visit.</param>
    /// <param name="planner">The planner's visit of the same stove.</param>
    public static PracticeReview Of(PracticeVisit learner, PracticeVisit planner)
    {
        ArgumentNullException.ThrowIfNull(learner);
        ArgumentNullException.ThrowIfNull(planner);
        PracticeRow[] rows =
        [
            Row("Asking and looking", s => s.Kind == PracticeStepKind.Look ? s.Time : 0),
            Row("Measuring and trying", s => s.Kind == PracticeStepKind.Measure ? s.Time : 0),
            Row("Cleaning", s => s.Kind == PracticeStepKind.Clean ? s.Time : 0),
            Row("Fitting and adjusting", s => s.Kind is PracticeStepKind.Part or PracticeStepKind.Adjust ? s.Time : 0),
            Row("Making safe", s => s.Kind == PracticeStepKind.Safe ? s.Time : 0),
            Row("Parts that were needed", s => s.GoodPart ? 0 : s.Parts),
            Row("Good parts replaced", s => s.GoodPart ? s.Parts : 0),
            Row("Second trips", s => s.Trip),
            Row("Fires lit where they must not be", s => s.Harm),
            new("Left unsolved", learner.Cost - learner.Steps.Sum(s => s.Cost), planner.Cost - planner.Steps.Sum(s => s.Cost)),
        ];
        return new(learner.Hidden, learner.Left, [.. rows.Where(r => r.Yours != 0 || r.Planners != 0)], learner.Cost, planner.Cost, [.. RemarksOn(learner)]);

        PracticeRow Row(string name, Func<PracticeStep, double> cost) => new(name, learner.Steps.Sum(cost), planner.Steps.Sum(cost));
    }

    private static IEnumerable<string> RemarksOn(PracticeVisit learner)
    {
        foreach (var step in learner.Steps.Where(s => s.GoodPart)) yield return $"{step.Name}: the old part was good. Measure it before it is replaced.";
        if (learner.Steps.Any(s => s.Harm > 0)) yield return "A fire was lit over a fault that can let exhaust or fire out; a cold check would have shown it.";
        var seen = learner.Steps.SelectMany(s => s.Cured).ToHashSet();
        foreach (var fault in learner.Hidden.Where(f => !seen.Contains(f))) yield return $"{fault.Name} was not put right. {fault.Remedy.Words}";
        foreach (var step in learner.Steps.Where(s => s.Shown.Count == 0 && s.Kind is PracticeStepKind.Look or PracticeStepKind.Measure))
            yield return $"{step.Name}: it needed a fire, and this stove had none.";
    }
}

/// <summary>One sort of cost in both ways.</summary>
/// <param name="Name">What it was spent on.</param>
/// <param name="Yours">The learner's.</param>
/// <param name="Planners">The planner's.</param>
public sealed record PracticeRow(string Name, double Yours, double Planners);
