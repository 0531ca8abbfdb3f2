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

    // What moves the odds by less says nothing to a reader; our own choice.
    private const double Telling = 1.1;

    public static IEnumerable<ReadingRow> Readings(Visit visit, Beliefs? beliefs) =>
        visit.Readings.GroupBy(r => r.Body.Observable).Select(same => Row(visit, beliefs, same.Key, [.. same]));

    public static IEnumerable<SuspectRow> Suspects(Visit visit, Beliefs? beliefs, UnitSystem units) =>
        from suspect in (beliefs?.Suspects ?? []).Where(s => s.AsFound >= Listed).OrderByDescending(s => s.AsFound).Take(MostSuspects)
        select new SuspectRow(
            ObservableName.Capital(suspect.Name), suspect.AsFound,
            [.. suspect.Because.Where(b => b.Factor is > Telling or < 1 / Telling).Take(MostReasons).Select(b => $"{Reason(visit, beliefs!, b, units)}: odds × {Factor(b.Factor)}.")],
            visit.Epoch > 0 ? suspect.Probability : null);

    // A reading in the report's own units; whatever else speaks for or against as diagnosis says it.
    private static string Reason(Visit visit, Beliefs beliefs, Because because, UnitSystem units)
    {
        if (visit.Readings.FirstOrDefault(r => r.Id == because.Evidence) is not { } reading) return ObservableName.Capital(because.Words.TrimEnd('.'));
        string Value(double si) => QuantityFormat.Format(si, reading.Body.Measure, units, reading.Body.Measure == Measure.Pressure ? 1 : null, reading.Body.Measure == Measure.Pressure);
        var said = $"{ObservableName.Of(reading.Body.Observable)}, {ConditionText.Say(reading.Body.Condition)}, {Value(reading.Body.Si)}";
        return beliefs.Bands.FirstOrDefault(b => b.Observable == reading.Body.Observable) is { } band ? $"{said} where {Value(band.Low)} to {Value(band.High)} is healthy" : said;
    }

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
