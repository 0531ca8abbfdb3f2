using System.Globalization;
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Planning;

/// <summary>Cuts what one reading may show into the few ranges between which the explanations part.</summary>
internal static class ReadingRanges
{
    private const double Least = 1e-4;

    /// <summary>The ranges with their probabilities under every explanation, or null when nothing is predicted or nothing parts.</summary>
    /// <param name="observable">What would be read.</param>
    /// <param name="predictive">What predicts it.</param>
    /// <param name="mostCuts">Most cut points.</param>
    public static OutcomeTable.Part? Of(Observable observable, IPredictive predictive, int mostCuts)
    {
        var k = predictive.Explanations.Count;
        var shown = new IReadOnlyList<Predicted>[k];
        for (var e = 0; e < k; e++)
        {
            shown[e] = predictive.Predict(e, observable);
            if (shown[e].Count == 0) return null;
        }

        var cuts = Cuts(shown, predictive, mostCuts);
        return cuts.Count == 0 ? null : new OutcomeTable.Part(Words(observable, cuts), [.. shown.Select(s => Shares(s, cuts))]);
    }

    private static List<double> Cuts(IReadOnlyList<Predicted>[] shown, IPredictive predictive, int most)
    {
        var parts = shown.SelectMany((s, e) => s.Select(p => p with { Weight = p.Weight * predictive.Explanations[e].Weight })).OrderBy(p => p.Mean).ToArray();
        var gaps = new List<(double Worth, double Cut)>();
        var below = 0.0;
        for (var i = 0; i + 1 < parts.Length; i++)
        {
            var (a, b) = (parts[i], parts[i + 1]);
            below += a.Weight;
            var apart = Math.Min((b.Mean - a.Mean) / (a.Sd + b.Sd), 4);
            gaps.Add((apart * (Math.Max(below * (1 - below), 0) + 1e-3), (a.Mean * b.Sd + b.Mean * a.Sd) / (a.Sd + b.Sd)));
        }

        return [.. gaps.Where(g => g.Worth > 1e-3).OrderByDescending(g => g.Worth).Take(most).Select(g => g.Cut).Distinct().Order()];
    }

    private static double[] Shares(IReadOnlyList<Predicted> shown, List<double> cuts)
    {
        var p = new double[cuts.Count + 1];
        var before = 0.0;
        for (var c = 0; c < cuts.Count; c++)
        {
            var upTo = shown.Sum(s => s.Weight * Normal.Below((cuts[c] - s.Mean) / s.Sd));
            p[c] = Math.Max(upTo - before, Least);
            before = upTo;
        }

        p[^1] = Math.Max(1 - before, Least);
        return p;
    }

    private static string[] Words(Observable observable, List<double> cuts)
    {
        var words = new string[cuts.Count + 1];
        for (var c = 0; c <= cuts.Count; c++)
        {
            words[c] = c == 0 ? $"below {Say(observable.Measure, cuts[0])}"
                : c == cuts.Count ? $"above {Say(observable.Measure, cuts[^1])}"
                : $"{Say(observable.Measure, cuts[c - 1])} to {Say(observable.Measure, cuts[c])}";
        }

        return words;
    }

    private static string Say(Measure measure, double value)
    {
        var plain = measure is Measure.CarbonMonoxide or Measure.Resistance ? Math.Exp(value) : value;
        var unit = measure switch
        {
            Measure.Pressure => "Pa",
            Measure.Temperature => "°C",
            Measure.Oxygen or Measure.CarbonDioxide => "%",
            Measure.CarbonMonoxide => "ppm",
            Measure.Voltage => "V",
            Measure.Resistance => "Ω",
            Measure.Current => "A",
            Measure.Speed => "1/min",
            Measure.Feed => "kg/h",
            Measure.Duration => "s",
            Measure.Flow => "m³/s",
        };
        return string.Create(CultureInfo.InvariantCulture, $"{Rounded(plain):0.######} {unit}");
    }

    private static double Rounded(double value)
    {
        if (value == 0) return 0;
        var scale = Math.Pow(10, 1 - Math.Floor(Math.Log10(Math.Abs(value))));
        return Math.Round(value * scale) / scale;
    }
}
