using System.Diagnostics;
using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Trials.Generator;

namespace Emberwright.Trials.Calibration;

/// <summary>Asks diagnosis about one hidden stove, with little evidence and with much.</summary>
internal static class CalibrationTrial
{
    private static readonly IReadOnlyList<Parameter> Areas =
        [Parameter.Intake, Parameter.BurnPot, Parameter.Exchanger, Parameter.AshPassages, Parameter.Vent, Parameter.Wheel, Parameter.RoomAir];

    /// <summary>Runs one stove through all rungs.</summary>
    public static CalibrationRow Run(Pattern pattern, int seed, int index, double mismatch)
    {
        var stove = HiddenStove.Draw(pattern, seed, index, mismatch);
        string[] truth = [.. stove.Faults.Select(f => f.Id), .. stove.Unlisted ? [Suspect.Unlisted] : Array.Empty<string>()];
        if (truth.Length == 0) truth = [Suspect.Nothing];
        return new CalibrationRow(pattern.Id, seed, index, mismatch, truth, [.. EvidenceLadder.Of(stove).Select(r => Say(stove, r.Rung, r.Evidence))]);
    }

    private static Statement Say(HiddenStove stove, Rung rung, IReadOnlyList<Evidence> evidence)
    {
        var watch = Stopwatch.StartNew();
        var beliefs = Diagnose.Infer(stove.Case, evidence, stove.Catalogue).Beliefs!;
        var took = watch.Elapsed.TotalMilliseconds;
        return new Statement(
            rung,
            beliefs.Suspects.ToDictionary(s => s.Fault, s => Math.Round(s.Probability, 4)),
            beliefs.NoListedCauseFits,
            beliefs.CannotTell,
            [
                .. from area in beliefs.Areas
                   where Areas.Contains(area.Parameter)
                   let left = Math.Exp(Math.Min(stove.Left(area.Parameter), 0))
                   select new AreaStatement(area.Parameter.ToString(), Math.Round(area.AsFound.Low, 4), Math.Round(area.AsFound.High, 4), Math.Round(1 - left, 4)),
            ],
            Math.Round(took, 1));
    }
}
