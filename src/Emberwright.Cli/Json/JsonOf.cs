using System.Text.Json;
using System.Text.Json.Serialization;
using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;

namespace Emberwright.Cli.Json;

/// <summary>Turns the engine's conclusions into the documents of docs/json.md.</summary>
internal static class JsonOf
{
    public static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = true,
    };

    public static string Text(Document document) => JsonSerializer.Serialize(document, document.GetType(), Options);

    public static JsonStove Stove(Findings findings) => new(findings.Case.Pattern.Id, findings.Case.Pattern.Name);

    public static IReadOnlyList<JsonProblem> Problems(Findings findings) =>
        [.. findings.Problems.Select(p => new JsonProblem(p.Line, p.Field, p.Value, p.Message, p.Remedy))];

    public static IReadOnlyList<JsonBand> Bands(Findings findings, UnitSystem units) =>
        [.. findings.Beliefs.Bands.Select(b => Band(b, units))];

    public static IReadOnlyList<JsonComparison> Comparisons(Findings findings, UnitSystem units) =>
        [.. findings.Beliefs.Comparisons.Select(c => Comparison(findings, c, units))];

    public static IReadOnlyList<JsonSuspect> Suspects(Findings findings) =>
        [.. findings.Beliefs.Suspects.Select(s => new JsonSuspect(
            s.Fault, s.Name, Rounded(s.Probability), Rounded(s.Prior), s.PriorOrigin,
            [.. s.Because.Select(b => new JsonBecause(b.Evidence, b.Words, Rounded(b.Factor)))]))];

    public static IReadOnlyList<JsonArea> Areas(Findings findings) =>
        [.. findings.Beliefs.Areas.Select(a => new JsonArea(
            Words.OfParameter(a.Parameter), a.Name, Interval(a.Parameter, a.AsFound), Interval(a.Parameter, a.Now)))];

    public static JsonDoubtful? Doubtful(Findings findings) => findings.Beliefs.Doubtful is { } d
        ? new JsonDoubtful(d.Evidence, d.Words, Rounded(d.Probability))
        : null;

    public static IReadOnlyList<JsonAlike> Alike(Findings findings) =>
        [.. findings.Beliefs.Alike.Select(a => new JsonAlike(a.Faults, a.Separator))];

    public static IReadOnlyList<JsonStop> Stops(Findings findings) =>
        [.. findings.Beliefs.Stops.Select(s => new JsonStop(s.Rule, s.Words, s.Evidence, s.ReleasedBy, s.Source))];

    public static JsonNextCheck? NextCheck(Findings findings) => findings.NextCheck.Best is { } best
        ? Check(best, [.. findings.NextCheck.Alternatives.Select(a => Check(a, null))])
        : null;

    public static JsonNextCheck Check(RecommendedCheck c, IReadOnlyList<JsonNextCheck>? alternatives) =>
        new(c.Check, c.Name, Rounded(c.Cost), Rounded(c.Minutes), c.Because, c.Cautions, alternatives);

    private static JsonBand Band(Band band, UnitSystem units)
    {
        var shown = new Shown(band.Observable.Measure, units);
        var isPort = Words.IsPort(band.Observable);
        return new JsonBand
        {
            Port = isPort ? band.Observable.Place : null,
            TestPoint = isPort ? null : band.Observable.Place,
            Quantity = MeasureUnits.Name(band.Observable.Measure),
            Condition = ConditionText.Format(band.Observable.Condition),
            Low = shown.Number(band.Low),
            Expected = shown.Number(band.Expected),
            High = shown.Number(band.High),
            Unit = shown.Symbol,
            Confidence = Rounded(band.Confidence),
            Origin = band.Origin,
        };
    }

    private static JsonComparison Comparison(Findings findings, Comparison comparison, UnitSystem units)
    {
        var band = Band(comparison.Band, units);
        return new JsonComparison
        {
            Port = band.Port,
            TestPoint = band.TestPoint,
            Quantity = band.Quantity,
            Condition = band.Condition,
            Low = band.Low,
            Expected = band.Expected,
            High = band.High,
            Unit = band.Unit,
            Confidence = band.Confidence,
            Origin = band.Origin,
            Entry = comparison.Evidence,
            Phase = Words.Phase(findings.PhaseOf(comparison)),
            Reading = new Shown(comparison.Band.Observable.Measure, units).Number(comparison.Reading),
            Verdict = Words.Verdict(comparison.Verdict).Replace(' ', '-'),
        };
    }

    private static JsonInterval Interval(Parameter parameter, Interval i) =>
        new(Rounded(i.Low), Rounded(i.Median), Rounded(i.High), RestrictionWords.Of(parameter, i.Median));

    public static double Rounded(double value) => Math.Round(value, 4);
}
