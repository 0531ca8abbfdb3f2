using System.Text.Json.Nodes;
using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>
/// What was concluded when the visit was sealed, read back from the seal's figures. A figure whose form is not known
/// is passed over; the seal itself keeps it.
/// </summary>
public static class SealedBeliefs
{
    /// <summary>The flue gas figures sealed with the visit.</summary>
    /// <param name="figures">The seal's figures, by name.</param>
    public static IReadOnlyList<FlueFigure> FlueGas(IReadOnlyDictionary<string, string> figures) =>
        Named(figures, SealedFigures.Flue, (name, v) => new FlueFigure(name[4..], Number(v, 0), Number(v, 1), Number(v, 2), Number(v, 3)));

    /// <summary>The pressures supposed when the visit was sealed.</summary>
    /// <param name="figures">The seal's figures, by name.</param>
    public static IReadOnlyList<Predicted> Predicted(IReadOnlyDictionary<string, string> figures) =>
        Named(figures, SealedFigures.Predicted, (_, v) => ConditionText.Parse(Text(v, 1)) is { } condition ? new Predicted(Text(v, 0), condition, Number(v, 2), Text(v, 3)) : null);

    private static T[] Named<T>(IReadOnlyDictionary<string, string> figures, string prefix, Func<string, JsonArray, T?> read) where T : class =>
        [.. figures.Where(f => f.Key.StartsWith(prefix, StringComparison.Ordinal)).OrderBy(f => f.Key, StringComparer.Ordinal)
            .Select(f => Values(f.Value) is { } values ? Try(() => read(f.Key[prefix.Length..], values)) : null).OfType<T>()];

    /// <summary>The beliefs; null when the seal holds no probability, restriction or band.</summary>
    /// <param name="figures">The seal's figures, by name.</param>
    public static Beliefs? Of(IReadOnlyDictionary<string, string> figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        var sorted = figures.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => (Name: f.Key, Values: Values(f.Value))).Where(f => f.Values is not null).ToArray();
        T[] All<T>(string prefix, Func<string, JsonArray, T?> read) where T : class =>
            [.. sorted.Where(f => f.Name.StartsWith(prefix, StringComparison.Ordinal)).Select(f => Try(() => read(f.Name[prefix.Length..], f.Values!))).OfType<T>()];

        var reasons = All(SealedFigures.Because, (name, v) => Tuple.Create(name[..3], new Because(Text(v, 0), Text(v, 1), Number(v, 2))));
        var suspects = All(SealedFigures.Probability, (name, v) => new Suspect(
            name[4..], Text(v, 0), Number(v, 1), Number(v, 2), [.. reasons.Where(r => r.Item1 == name[..3]).Select(r => r.Item2)], Number(v, 3)));
        var areas = All(SealedFigures.Restriction, (name, v) => EnumWords.Find<Parameter>(name[4..]) is { } parameter
            ? new RestrictionEstimate(parameter, Text(v, 0), new(Number(v, 1), Number(v, 2), Number(v, 3)), new(Number(v, 4), Number(v, 5), Number(v, 6)))
            : null);
        var bands = All(SealedFigures.Band, (_, v) => BandOf(v, 0));
        var comparisons = All(SealedFigures.Reading, (_, v) => EnumWords.Find<Verdict>(Text(v, 2)) is { } verdict && BandOf(v, 4) is { } band
            ? new Comparison(Text(v, 0), Number(v, 1), band, verdict, (int)Number(v, 3))
            : null);
        if (suspects.Length + areas.Length + bands.Length == 0) return null;
        return new Beliefs(
            suspects, areas, bands, comparisons,
            All(SealedFigures.Doubtful, (_, v) => new DoubtfulReading(Text(v, 0), Text(v, 1), Number(v, 2))).FirstOrDefault(),
            All(SealedFigures.Alike, (_, v) => new AlikeSet([.. v.Skip(1).Select(f => f?.GetValue<string>() ?? "")], v[0]?.GetValue<string>())),
            sorted.Any(f => f.Name == SealedFigures.NoListedCause),
            sorted.Any(f => f.Name == SealedFigures.CannotTell),
            All(SealedFigures.Stop, (_, v) => new StandingStop(Text(v, 0), Text(v, 1), Text(v, 2), Text(v, 3), Text(v, 4))),
            All(SealedFigures.Note, (_, v) => Text(v, 0)));
    }

    private static Band? BandOf(JsonArray v, int at) =>
        MeasureUnits.ByName(Text(v, at)) is { } measure && ConditionText.Parse(Text(v, at + 2)) is { } condition
            ? new Band(new Observable(measure, Text(v, at + 1), condition), Number(v, at + 3), Number(v, at + 4), Number(v, at + 5), Number(v, at + 6), Text(v, at + 7))
            : null;

    private static JsonArray? Values(string figure) => Try(() => JsonNode.Parse(figure) as JsonArray);

    private static string Text(JsonArray values, int at) =>
        values[at]?.GetValue<string>() ?? throw new FormatException($"The sealed figure lacks its text {at}.");

    private static double Number(JsonArray values, int at) => values[at]?.GetValue<double>() ?? double.NaN;

    private static T? Try<T>(Func<T?> read) where T : class
    {
        try
        {
            return read();
        }
        catch (Exception e) when (e is System.Text.Json.JsonException or InvalidOperationException or FormatException or ArgumentOutOfRangeException)
        {
            return null;
        }
    }
}
