using System.Globalization;
using Emberwright.Diagnosis;
using Emberwright.Stove.Patterns;
using Emberwright.Trials.Calibration;
using Emberwright.Trials.Generator;

namespace Emberwright.Trials.Speed;

/// <summary>
/// What a conclusion costs: the least of several runs for each hidden stove and rung of evidence, on one core, as a Markdown table.
/// </summary>
internal static class SpeedCommand
{
    private const int Repeats = 5;

    /// <summary>Measures and prints.</summary>
    /// <param name="stoves">Hidden stoves of each pattern.</param>
    public static int Run(int stoves)
    {
        var hidden = PatternLibrary.All.SelectMany(p => Enumerable.Range(0, stoves).Select(i => HiddenStove.Draw(p, 1, i, 1))).ToArray();
        for (var warm = 0; warm < 3; warm++)
            foreach (var stove in hidden.Where((_, k) => k % stoves == 0))
                foreach (var (_, evidence) in EvidenceLadder.Of(stove)) Of(stove, evidence, 2);
        Console.WriteLine("| evidence | pieces | in slices, ms | singles | first words | pairs | doubts | last words | at once, ms |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|");
        foreach (var rung in Enum.GetValues<Rung>())
        {
            var rows = hidden.Select(s => Of(s, EvidenceLadder.Of(s).Single(r => r.Rung == rung).Evidence, Repeats)).ToArray();
            string Mean(Func<(int Pieces, double[] Stages, double Brief), double> of) => rows.Average(of).ToString("0.0", CultureInfo.InvariantCulture);
            Console.WriteLine($"| {rung} | {Mean(r => r.Pieces)} | {Mean(r => r.Stages.Sum())} | {string.Join(" | ", Enumerable.Range(0, 5).Select(k => Mean(r => r.Stages[k])))} | {Mean(r => r.Brief)} |");
        }
        return 0;
    }

    private static (int Pieces, double[] Stages, double Brief) Of(HiddenStove stove, IReadOnlyList<Evidence> evidence, int repeats)
    {
        var best = Enumerable.Repeat(1e9, 5).ToArray();
        var brief = double.PositiveInfinity;
        for (var repeat = 0; repeat < repeats; repeat++)
        {
            var stages = new double[5];
            var stage = 0;
            var began = OwnTime.Ms;
            var singles = 0;
            foreach (var slice in Diagnose.Steps(stove.Case, evidence, stove.Catalogue))
            {
                // The first words come in slices of the singles' stage that do no more singles.
                var next = slice.Stage switch
                {
                    DiagnosisStage.Singles => slice.Done > singles ? 0 : 1,
                    DiagnosisStage.Pairs => 2,
                    DiagnosisStage.Doubts => 3,
                    _ => 4,
                };
                singles = slice.Stage == DiagnosisStage.Singles ? slice.Done : singles;
                if (next == stage) continue;
                var now = OwnTime.Ms;
                stages[stage] += now - began;
                (began, stage) = (now, next);
            }
            stages[stage] += OwnTime.Ms - began;
            if (stages.Sum() < best.Sum()) best = stages;
            began = OwnTime.Ms;
            Diagnose.Infer(stove.Case, evidence, stove.Catalogue);
            brief = Math.Min(brief, OwnTime.Ms - began);
        }
        return (evidence.Count, best, brief);
    }
}
