using System.Globalization;
using System.Text;

namespace Emberwright.Trials.Visits;

/// <summary>What the planner's trials found, as Markdown.</summary>
internal static class VisitTable
{
    /// <summary>Name of the policy the others are measured against.</summary>
    public const string Ours = "planner";

    /// <summary>Writes the whole page.</summary>
    public static string Of(IReadOnlyList<VisitRow> rows)
    {
        var text = new StringBuilder();
        void Line(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
        Line($"# Visits to hidden stoves");
        Line($"");
        Line($"{rows.Count} hidden stoves with one to three faults ({string.Join(", ", rows.GroupBy(r => r.Pattern).Select(g => $"{g.Key} {g.Count()}"))}), each visited by every policy. The customer is vague. All pay by the same rules; a stove left uncured without a stop costs {VisitTrial.ComingAgain:0} and another trip. After every change each policy starts the stove and is told without error whether it now runs. Every step of the chart finds its fault whenever it is there; planner and greedy see only what a technician sees. {Header.Made}");
        Line($"");
        Goals(rows);
        Table(rows);
        if (rows.Count > 0)
        {
            Line($"## Cost against the others");
            Line($"");
            Line($"| pattern | stoves | of chart | of clean, then swap | of greedy | cured | good parts |");
            Line($"| --- | --- | --- | --- | --- | --- | --- |");
            foreach (var group in rows.GroupBy(r => r.Pattern).Append(rows.GroupBy(_ => "all").Single()))
            {
                var ours = Of(group, Ours);
                double Ratio(string other) => ours.Average(o => o.Cost) / Of(group, other).Average(o => o.Cost);
                Line($"| {group.Key} | {group.Count()} | {Ratio("chart"):0.00} | {Ratio("clean, then swap"):0.00} | {Ratio("greedy"):0.00} | {100 * ours.Average(o => o.Cured ? 1.0 : 0):0} % | {ours.Average(o => o.GoodParts):0.000} |");
            }

            Line($"");
            Line($"CPU time of one stove, all policies together: {rows.Average(r => r.Seconds):0.0} s (under load; rough).");
        }

        return text.ToString();

        void Goals(IReadOnlyList<VisitRow> some)
        {
            if (some.Count == 0) return;
            var ours = Of(some, Ours);
            double Ratio(string other) => ours.Average(o => o.Cost) / Of(some, other).Average(o => o.Cost);
            var three = ours.Count(o => o.AmongThree == true);
            Header.Goal(text, "cost at most 0.55 of the chart's", $"{Ratio("chart"):0.00} ± {Spread(ours, Of(some, "chart")):0.00}", Ratio("chart") <= 0.55);
            Header.Goal(text, "cost at most 0.85 of greedy's", $"{Ratio("greedy"):0.00} ± {Spread(ours, Of(some, "greedy")):0.00}", Ratio("greedy") <= 0.85);
            Header.Goal(text, "good parts replaced at most 0.05 a visit", $"{ours.Average(o => o.GoodParts):0.000}", ours.Average(o => o.GoodParts) <= 0.05);
            Header.Goal(text, "a true fault among the first three at the end in 95 %", $"{100.0 * three / ours.Length:0.0} % (95 % interval {Header.Within(three, ours.Length)})", 100 * three >= 95 * ours.Length);
            Header.Goal(text, "nobody cured while a safety stop stands", $"{ours.Count(o => o.Cured && o.Stopped)}", !ours.Any(o => o.Cured && o.Stopped));
            Line($"");
        }

        void Table(IReadOnlyList<VisitRow> some)
        {
            Line($"| policy | cured | out of use by a stop | left uncured | cured, another fault left | mean cost | of those cured | good parts replaced | checks | a true fault in the first three |");
            Line($"| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
            foreach (var policy in some.SelectMany(r => r.Outcomes).Select(o => o.Policy).Distinct())
            {
                var o = Of(some, policy);
                double Share(Func<Outcome, bool> which) => 100.0 * o.Count(which) / o.Length;
                var told = o.Where(x => x.AmongThree is not null).ToArray();
                Line($"| {policy} | {Share(x => x.Cured):0.0} % | {Share(x => x.Stopped):0.0} % | {Share(x => x is { Cured: false, Stopped: false }):0.0} % | {Share(x => x.Comeback):0.0} % | {o.Average(x => x.Cost):0} | {o.Where(x => x.Cured).Select(x => x.Cost).DefaultIfEmpty().Average():0} | {o.Average(x => x.GoodParts):0.000} | {o.Average(x => x.Checks):0.0} | {(told.Length == 0 ? "–" : FormattableString.Invariant($"{100.0 * told.Count(x => x.AmongThree == true) / told.Length:0.0} %"))} |");
            }

            Line($"");
        }
    }

    // Standard error of a ratio of means over the same stoves, to first order.
    private static double Spread(Outcome[] ours, Outcome[] theirs)
    {
        var (a, b) = (ours.Average(o => o.Cost), theirs.Average(o => o.Cost));
        var variance = ours.Zip(theirs).Sum(p => Math.Pow(p.First.Cost - (a / b * p.Second.Cost), 2)) / Math.Max(ours.Length - 1, 1);
        return Math.Sqrt(variance / ours.Length) / b;
    }

    private static Outcome[] Of(IEnumerable<VisitRow> rows, string policy) => [.. rows.Select(r => r.Outcomes.First(o => o.Policy == policy))];
}
