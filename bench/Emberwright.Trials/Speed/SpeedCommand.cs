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
        Console.WriteLine();
        Console.WriteLine("| one more piece | cases | at once, ms | of it the middle half, ms | from nothing, ms |");
        Console.WriteLine("|---|---|---|---|---|");
        var pieces = hidden.SelectMany(Increments).GroupBy(i => i.Kind).OrderBy(g => g.Key, StringComparer.Ordinal);
        foreach (var kind in pieces)
        {
            double[] ms = [.. kind.Select(i => i.Ms).Order()];
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {kind.Key} | {ms.Length} | {ms.Average():0.0} | {ms[ms.Length / 4]:0.0} … {ms[ms.Length * 3 / 4]:0.0} | {kind.Average(i => i.Anew):0.0} |"));
        }
        return 0;
    }

    /// <summary>The last pieces of the richest evidence, each added to all before it.</summary>
    private static IEnumerable<(string Kind, double Ms, double Anew)> Increments(HiddenStove stove)
    {
        var all = EvidenceLadder.Of(stove).Last().Evidence;
        Evidence[] order = [.. all.Where(e => e is ReadingEvidence r && !IsElectrical(r)).Concat(all.Where(e => e is ReadingEvidence r && IsElectrical(r))), .. all.Where(e => e is SignEvidence)];
        for (var k = order.Length - 8; k < order.Length; k++)
        {
            var (best, anew) = (double.PositiveInfinity, double.PositiveInfinity);
            for (var repeat = 0; repeat < 2; repeat++)
            {
                var workings = new Workings();
                Diagnose.Infer(stove.Case, order[..k], stove.Catalogue, workings);
                var began = OwnTime.Ms;
                Diagnose.Infer(stove.Case, order[..(k + 1)], stove.Catalogue, workings);
                best = Math.Min(best, OwnTime.Ms - began);
                began = OwnTime.Ms;
                Diagnose.Infer(stove.Case, order[..(k + 1)], stove.Catalogue);
                anew = Math.Min(anew, OwnTime.Ms - began);
            }
            var kind = order[k] is ReadingEvidence ? "meter reading" : stove.Catalogue.Sign(((SignEvidence)order[k]).Sign)!.Margin is null ? "answer" : "answer that joins the fit";
            yield return (kind, best, anew);
        }
    }

    private static bool IsElectrical(ReadingEvidence reading) => reading.Observable.Measure is Emberwright.Stove.Measure.Voltage or Emberwright.Stove.Measure.Resistance;

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
