using System.Collections.Immutable;
using Emberwright.Diagnosis;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;
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
            ObservableName.Capital(Say.Term(suspect.Name)), suspect.AsFound,
            [.. suspect.Because.Where(b => b.Factor is > Telling or < 1 / Telling).Take(MostReasons).Select(b => Say.Of("figures.odds", Reason(visit, beliefs!, b, units), Factor(b.Factor)))],
            visit.Epoch > 0 ? suspect.Probability : null);

    // A reading in the report's own units; whatever else speaks for or against as diagnosis says it.
    private static string Reason(Visit visit, Beliefs beliefs, Because because, UnitSystem units)
    {
        if (visit.Readings.FirstOrDefault(r => r.Id == because.Evidence) is not { } reading) return ObservableName.Capital(Say.Term(because.Words.TrimEnd('.')));
        string Value(double si) => QuantityFormat.Format(si, reading.Body.Measure, units, reading.Body.Measure == Measure.Pressure ? 1 : null, reading.Body.Measure == Measure.Pressure);
        var said = string.Join(", ", ObservableName.Of(reading.Body.Observable), ConditionWords.Of(reading.Body.Condition), Value(reading.Body.Si));
        return beliefs.Bands.FirstOrDefault(b => b.Observable == reading.Body.Observable) is { } band ? Say.Of("figures.where-to-is-healthy", said, Value(band.Low), Value(band.High)) : said;
    }

    public static IEnumerable<string> Notes(Beliefs? beliefs)
    {
        if (beliefs is null) yield break;
        foreach (var alike in beliefs.Alike)
        {
            var names = alike.Faults.Select(id => beliefs.Suspects.FirstOrDefault(s => s.Fault == id)?.Name ?? FaultList.All.FirstOrDefault(f => f.Id == id)?.Name ?? id);
            yield return Say.Of("figures.not-told-apart", string.Join("; ", names.Select(Say.Term)));
        }
        if (beliefs.Doubtful is { } doubtful) yield return Say.Term(doubtful.Words);
        foreach (var note in beliefs.Notes) yield return Say.Term(note);
    }

    public static ProofRow Proof(ProofBody proof) => new(
        ProofWords.Of(proof.Proof), proof.Took is { } took ? $"{ProofWords.Of(proof.Outcome)}, {took}" : ProofWords.Of(proof.Outcome),
        proof.Outcome switch { ProofOutcome.Passed => true, ProofOutcome.Failed => false, ProofOutcome.NotFitted => null });

    public static string Part(PartBody part) =>
        $"{ObservableName.Capital(Say.Term(part.Use ?? "fitted"))}: {string.Join(", ", new[] { part.Part, part.Number, PartWords(part), part.Tag }.Where(w => !string.IsNullOrEmpty(w)))}.";

    /// <summary>State and source of a part, "new, from the van"; empty when neither is stated.</summary>
    public static string PartWords(PartBody part) => string.Join(", ", new[]
    {
        part.Condition is { } condition ? Say.Term(EnumWords.Of(condition)) : "",
        part.From switch { PartSource.Van => Say.Of("figures.from-the-van"), PartSource.Ordered => Say.Of("figures.ordered-for-this-job"), PartSource.Customer => Say.Of("figures.the-customers-own"), null => "" },
    }.Where(w => w.Length > 0));

    /// <summary>Time stated for a piece of work.</summary>
    public static string Labour(LabourBody labour) => $"{CatalogueWords.ActionName(labour.Work)}: {labour.Time}.";

    public static string Instrument(InstrumentBody instrument, DateOnly? day) =>
        PlainWords.Sentence(string.Join(", ", new[]
        {
            ObservableName.Capital(instrument.Name),
            instrument.CalibratedUntil is not { } until ? Say.Of("figures.calibration-not-recorded") : until < day ? Say.Of("figures.calibration-had-run-out-on", Say.Day(until)) : Say.Of("figures.calibration-holds-until", Say.Day(until)),
            instrument.ZeroedOutdoors ? Say.Of("figures.zeroed-outdoors-today") : "",
        }.Where(words => words.Length > 0)));

    private static ReadingRow Row(Visit visit, Beliefs? beliefs, Observable observable, Reading[] readings)
    {
        var found = readings.LastOrDefault(r => r.Phase == Phase.AsFound);
        var left = readings.LastOrDefault(r => r.Phase == Phase.AsLeft);
        var band = beliefs?.Comparisons.FirstOrDefault(c => c.Band.Observable == observable)?.Band ?? beliefs?.Bands.FirstOrDefault(b => b.Observable == observable);
        var explained = left is null ? null : visit.Of<ExplanationBody>().LastOrDefault(e => e.Body.Entry == left.Id || e.Body.Entry is null && e.Body.Place == observable.Place)?.Body;
        return new ReadingRow(ObservableName.Of(observable), ObservableName.Capital(ConditionWords.Of(observable.Condition)), observable.Measure)
        {
            Found = found?.Body.Si,
            FoundVerdict = Word(beliefs, found),
            Left = left?.Body.Si,
            LeftVerdict = Word(beliefs, left),
            Low = band?.Low,
            High = band?.High,
            Confidence = band?.Confidence,
            Origin = band is null ? null : Say.Term(band.Origin),
            Explanation = explained is { Cause: { } cause, Consequence: { } consequence } ? $"{ExplanationWords.Of(cause)}; {ExplanationWords.Of(consequence)}" : null,
        };
    }

    private static string? Word(Beliefs? beliefs, Reading? reading) =>
        reading is not null && beliefs?.Comparisons.FirstOrDefault(c => c.Evidence == reading.Id) is { } comparison
            ? VerdictWord.Of(comparison.Verdict, reading.Body.Measure)
            : null;

    private static string Factor(double factor) => factor >= 10 ? factor.ToString("0") : factor >= 0.1 ? factor.ToString("0.0") : factor.ToString("0.00");
}
