using System.Globalization;
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Planning;

/// <summary>Cuts what one reading may show into the few ranges between which the explanations part.</summary>
internal static class ReadingRanges
{
    /// <summary>Stands for an open circuit, Ω.</summary>
    internal const double Open = 1e7;

    /// <summary>The ranges with their probabilities under every explanation, or null when nothing is predicted or nothing parts.</summary>
    public static OutcomeTable.Part? Of(Observable observable, IPredictive predictive, int mostCuts)
    {
        var k = predictive.Explanations.Count;
        var mean = new double[k];
        var sd = new double[k];
        Span<double> m = stackalloc double[1];
        Span<double> v = stackalloc double[1];
        for (var e = 0; e < k; e++)
        {
            predictive.Predict(e, [observable], m, v);
            if (double.IsNaN(m[0])) return null;
            (mean[e], sd[e]) = Finite(m[0], v[0]);
        }

        var cuts = Cuts(mean, sd, predictive, mostCuts);
        if (cuts.Count == 0) return null;
        return new OutcomeTable.Part(Words(observable, cuts), [.. mean.Select((x, e) => Shares(x, sd[e], cuts))]);
    }

    /// <summary>An open circuit as a large finite number.</summary>
    internal static (double Mean, double Sd) Finite(double mean, double variance) =>
        Math.Abs(mean) >= Open ? (Math.CopySign(Open, mean), 1) : (mean, Math.Sqrt(Math.Max(variance, 1e-18)));

    private static List<double> Cuts(double[] mean, double[] sd, IPredictive predictive, int most)
    {
        var order = Enumerable.Range(0, mean.Length).OrderBy(e => mean[e]).ToArray();
        var gaps = new List<(double Worth, double Cut)>();
        var below = 0.0;
        for (var i = 0; i + 1 < order.Length; i++)
        {
            var (a, b) = (order[i], order[i + 1]);
            below += predictive.Explanations[a].Weight;
            var apart = (mean[b] - mean[a]) / (sd[a] + sd[b]);
            var cut = (mean[a] * sd[b] + mean[b] * sd[a]) / (sd[a] + sd[b]);
            if (mean[b] >= Open && mean[a] < Open) cut = Math.Max(2 * mean[a], Open / 10);
            gaps.Add((Math.Min(apart, 4) * below * (1 - below) + 1e-3 * Math.Min(apart, 4), cut));
        }

        return [.. gaps.Where(g => g.Worth > 1e-3).OrderByDescending(g => g.Worth).Take(most).Select(g => g.Cut).Distinct().Order()];
    }

    private static double[] Shares(double mean, double sd, List<double> cuts)
    {
        var p = new double[cuts.Count + 1];
        var before = 0.0;
        for (var c = 0; c < cuts.Count; c++)
        {
            var upTo = Normal.Below((cuts[c] - mean) / sd);
            p[c] = Math.Max(upTo - before, 1e-4);
            before = upTo;
        }

        p[^1] = Math.Max(1 - before, 1e-4);
        return p;
    }

    private static string[] Words(Observable observable, List<double> cuts)
    {
        var words = new string[cuts.Count + 1];
        for (var c = 0; c <= cuts.Count; c++)
        {
            words[c] = c == 0 ? $"below {Say(observable, cuts[0])}"
                : c == cuts.Count ? $"above {Say(observable, cuts[^1])}"
                : $"{Say(observable, cuts[c - 1])} to {Say(observable, cuts[c])}";
        }

        return words;
    }

    private static string Say(Observable observable, double value)
    {
        var unit = observable.Measure switch
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
            Measure.Capacitance => "µF",
        };
        return string.Create(CultureInfo.InvariantCulture, $"{Rounded(observable.Measure == Measure.Capacitance ? 1e6 * value : value):0.######} {unit}");
    }

    private static double Rounded(double value)
    {
        if (value == 0) return 0;
        var scale = Math.Pow(10, 1 - Math.Floor(Math.Log10(Math.Abs(value))));
        return Math.Round(value * scale) / scale;
    }
}
