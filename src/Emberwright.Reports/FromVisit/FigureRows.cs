using System.Collections.Immutable;
using Emberwright.Diagnosis;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>The rows of the figures page.</summary>
internal static class FigureRows
{
    private const double Listed = 0.03;
    private const int MostSuspects = 4;
    private const int MostReasons = 2;

    public static IEnumerable<ReadingRow> Readings(Visit visit, Beliefs? beliefs) =>
        visit.Readings.GroupBy(r => r.Body.Observable).Select(same => Row(visit, beliefs, same.Key, [.. same]));

    public static IEnumerable<SuspectRow> Suspects(Beliefs? beliefs, bool worked) =>
        from suspect in (beliefs?.Suspects ?? []).Where(s => s.AsFound >= Listed).OrderByDescending(s => s.AsFound).Take(MostSuspects)
        select new SuspectRow(
            suspect.Name, suspect.AsFound,
            [.. suspect.Because.Take(MostReasons).Select(b => $"{b.Words}: odds × {Factor(b.Factor)}.")],
            worked ? suspect.Probability : null);

    public static IEnumerable<string> Notes(Beliefs? beliefs)
    {
        if (beliefs is null) yield break;
        foreach (var alike in beliefs.Alike)
        {
            var names = alike.Faults.Select(id => beliefs.Suspects.FirstOrDefault(s => s.Fault == id)?.Name ?? FaultList.All.FirstOrDefault(f => f.Id == id)?.Name ?? id);
            yield return $"Not told apart: {string.Join("; ", names)}.";
        }
        if (beliefs.Doubtful is { } doubtful) yield return doubtful.Words;
        foreach (var note in beliefs.Notes) yield return note;
    }

    public static ProofRow Proof(ProofBody proof) => new(
        ProofWords.Of(proof.Proof), proof.Took is { } took ? $"{ProofWords.Of(proof.Outcome)}, {took}" : ProofWords.Of(proof.Outcome),
        proof.Outcome switch { ProofOutcome.Passed => true, ProofOutcome.Failed => false, ProofOutcome.NotFitted => null });

    public static string Part(PartBody part) =>
        $"{ObservableName.Capital(part.Use ?? "fitted")}: {string.Join(", ", new[] { part.Part, part.Number, part.Tag }.Where(w => !string.IsNullOrEmpty(w)))}.";

    public static string Instrument(InstrumentBody instrument, DateOnly? day) =>
        ObservableName.Capital(instrument.Name)
        + (instrument.CalibratedUntil is { } until ? until < day ? $", calibration had run out on {until:d MMMM yyyy}" : $", calibration holds until {until:d MMMM yyyy}" : ", calibration not recorded")
        + (instrument.ZeroedOutdoors ? ", zeroed outdoors today." : ".");

    private static ReadingRow Row(Visit visit, Beliefs? beliefs, Observable observable, Reading[] readings)
    {
        var found = readings.LastOrDefault(r => r.Phase == Phase.AsFound);
        var left = readings.LastOrDefault(r => r.Phase == Phase.AsLeft);
        var band = beliefs?.Comparisons.FirstOrDefault(c => c.Band.Observable == observable)?.Band ?? beliefs?.Bands.FirstOrDefault(b => b.Observable == observable);
        var explained = left is null ? null : visit.Of<ExplanationBody>().LastOrDefault(e => e.Body.Entry == left.Id || e.Body.Entry is null && e.Body.Place == observable.Place)?.Body;
        return new ReadingRow(ObservableName.Of(observable), ObservableName.Capital(ConditionText.Say(observable.Condition)), observable.Measure)
        {
            Found = found?.Body.Si,
            FoundVerdict = Word(beliefs, found),
            Left = left?.Body.Si,
            LeftVerdict = Word(beliefs, left),
            Low = band?.Low,
            High = band?.High,
            Confidence = band?.Confidence,
            Origin = band?.Origin,
            Explanation = explained is { Cause: { } cause, Consequence: { } consequence } ? $"{ExplanationWords.Of(cause)}; {ExplanationWords.Of(consequence)}" : null,
        };
    }

    private static string? Word(Beliefs? beliefs, Reading? reading) =>
        reading is not null && beliefs?.Comparisons.FirstOrDefault(c => c.Evidence == reading.Id) is { } comparison
            ? VerdictWord.Of(comparison.Verdict, reading.Body.Measure)
            : null;

    private static string Factor(double factor) => factor >= 10 ? factor.ToString("0") : factor >= 0.1 ? factor.ToString("0.0") : factor.ToString("0.00");
}
