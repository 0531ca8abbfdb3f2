using System.Globalization;
using System.Text.Json.Nodes;
using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>
/// Every figure the visit shows, by name, so that a signed report never changes with the engine: the seal keeps them,
/// and <see cref="SealedBeliefs"/> reads them back. Values are short JSON lists in each measure's own unit; numbers are
/// written so that they read back exactly. Numbered names keep their order when sorted.
/// </summary>
public static class SealedFigures
{
    internal const string Probability = "probability ";
    internal const string Because = "because ";
    internal const string Restriction = "restriction ";
    internal const string Band = "band ";
    internal const string Reading = "reading ";
    internal const string Doubtful = "doubtful";
    internal const string Alike = "not-told-apart ";
    internal const string Stop = "stop ";
    internal const string Note = "note ";
    internal const string Flue = "flue ";
    internal const string Predicted = "predicted ";
    internal const string NoListedCause = "no-listed-cause-fits";
    internal const string CannotTell = "cannot-tell";

    /// <summary>The figures; empty when nothing was computed.</summary>
    /// <param name="beliefs">What diagnosis concluded.</param>
    /// <param name="visit">The visit, for what is computed from its readings alone; null leaves that out.</param>
    public static IReadOnlyDictionary<string, string> Of(Beliefs? beliefs, Visit? visit = null)
    {
        var figures = new Dictionary<string, string>();
        if (visit is not null)
        {
            foreach (var (f, i) in Numbered(FlueGasOfVisit.Of(visit))) Write($"{Flue}{i} {f.Id}", N(f.Found), N(f.FoundUncertainty), N(f.Left), N(f.LeftUncertainty));
            foreach (var (p, i) in Numbered(Prediction.Of(visit, beliefs))) Write($"{Predicted}{i}", p.Place, ConditionText.Format(p.Condition), N(p.Pa), p.Words);
        }

        if (beliefs is null) return figures;
        void Write(string name, params JsonNode?[] values) => figures[name] = new JsonArray(values).ToJsonString();

        foreach (var (s, i) in Numbered(beliefs.Suspects))
        {
            Write($"{Probability}{i} {s.Fault}", s.Name, N(s.Prior), N(s.Probability), N(s.AsFound));
            foreach (var (b, k) in Numbered(s.Because)) Write($"{Because}{i} {k}", b.Evidence, b.Words, N(b.Factor));
        }

        foreach (var (a, i) in Numbered(beliefs.Areas))
            Write($"{Restriction}{i} {EnumWords.Of(a.Parameter)}", a.Name, N(a.AsFound.Low), N(a.AsFound.Median), N(a.AsFound.High), N(a.Now.Low), N(a.Now.Median), N(a.Now.High));
        foreach (var (b, i) in Numbered(beliefs.Bands)) Write($"{Band}{i}", [.. Fields(b)]);
        foreach (var (c, i) in Numbered(beliefs.Comparisons))
            Write($"{Reading}{i}", [c.Evidence, N(c.Reading), EnumWords.Of(c.Verdict), c.Epoch, .. Fields(c.Band)]);
        if (beliefs.Doubtful is { } d) Write(Doubtful, d.Evidence, d.Words, N(d.Probability));
        foreach (var (a, i) in Numbered(beliefs.Alike)) Write($"{Alike}{i}", [a.Separator, .. a.Faults.Select(f => (JsonNode)f)]);
        foreach (var (s, i) in Numbered(beliefs.Stops)) Write($"{Stop}{i}", s.Rule, s.Words, s.Evidence, s.ReleasedBy, s.Source);
        foreach (var (n, i) in Numbered(beliefs.Notes)) Write($"{Note}{i}", n);
        if (beliefs.NoListedCauseFits) Write(NoListedCause, true);
        if (beliefs.CannotTell) Write(CannotTell, true);
        return figures;
    }

    private static IEnumerable<JsonNode?> Fields(Band b) =>
    [
        MeasureUnits.Name(b.Observable.Measure), b.Observable.Place, ConditionText.Format(b.Observable.Condition),
        N(b.Low), N(b.Expected), N(b.High), N(b.Confidence), b.Origin,
    ];

    // JSON has no infinity and no "not a number": they are left empty.
    private static JsonNode? N(double value) => double.IsFinite(value) ? value : null;

    private static IEnumerable<(T Item, string Number)> Numbered<T>(IReadOnlyList<T> items) =>
        items.Select((item, i) => (item, (i + 1).ToString("000", CultureInfo.InvariantCulture)));
}
