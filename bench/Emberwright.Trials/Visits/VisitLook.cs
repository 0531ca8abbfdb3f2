using System.Globalization;
using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Planning;

namespace Emberwright.Trials.Visits;

/// <summary>Looks into the planner's visits step by step: what was believed, what was recommended, what it cost.</summary>
internal static class VisitLook
{
    private const int Suspects = 6;

    /// <summary>Writes the planner's visits to the stoves asked for.</summary>
    public static int Run(Options options)
    {
        PlannerPolicy.Trace = Step;
        foreach (var pattern in options.Patterns)
        {
            var row = VisitTrial.Run(pattern, options.Seed, options.Stoves, only: VisitTable.Ours);
            Say($"{pattern.Id} {options.Stoves}: {row.Complaint}; there: {string.Join(", ", row.Truth)}");
            foreach (var o in row.Outcomes) Say($"{o.Policy}: cost {o.Cost:0}, {o.Checks} checks, cured {o.Cured}, stopped {o.Stopped}, good parts {o.GoodParts}: {string.Join(' ', o.Path)}");
        }

        return 0;
    }

    private static void Step(Beliefs beliefs, NextCheck next)
    {
        Say($"  believed: {string.Join(", ", beliefs.Suspects.OrderByDescending(s => s.Probability).Take(Suspects).Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Fault} {s.Probability:0.000}")))}");
        foreach (var check in new[] { next.Best }.Concat(next.Alternatives).OfType<RecommendedCheck>())
            Say($"    {check.Check} ({check.Cost:0.0}, in all {check.ExpectedTotal:0.0}) {check.Because}");
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    private static void Say(string line) => Console.WriteLine(line);
}
