// Which results may a check have, and how probable is each under every explanation?
// Sign: its outcomes. One reading: ranges between cut points put where the explanations part, P = Φ((b − m)/s) − Φ((a − m)/s).
// Several readings or signs: a fixed set of S results drawn by the explanations' weights, each with its likelihoods.
// Symbols: m, s mean and standard deviation of the reading under an explanation; a, b ends of a range.
// Validity: any check with at least one predictable reading or sign.
// Assumptions: more than two readings are jointly normal under one explanation; one or two, and signs, are independent there.
// Source: common practice, no source; for the drawn set: importance sampling from the predictive mixture.
// Worked: two explanations at 0 ± 1 and 10 ± 1: one cut at 5, outcome tables (1, 0) and (0, 1) to 3e-7.
using Emberwright.Diagnosis.Checks;

namespace Emberwright.Diagnosis.Planning;

/// <summary>Results of one check: for each, its likelihood under every explanation, and how often the result stands for itself.</summary>
internal sealed class OutcomeTable
{
    private const int Most = 24;
    private const int Draws = 32;

    /// <summary>Up to so many readings are cut into ranges one by one; more are drawn together.</summary>
    private const int MostApart = 2;

    private OutcomeTable(List<double[]> likelihood, List<string> words, bool drawn)
    {
        (Likelihood, Words, Drawn) = (likelihood, words, drawn);
    }

    /// <summary>Likelihoods, result by result, explanation by explanation.</summary>
    public IReadOnlyList<double[]> Likelihood { get; }

    /// <summary>Each result in words; empty when the results are drawn.</summary>
    public IReadOnlyList<string> Words { get; }

    /// <summary>True when the results are drawn, each then counting one part in their number.</summary>
    public bool Drawn { get; }

    /// <summary>Tables the results of a check, or null when nothing it shows can be predicted.</summary>
    public static OutcomeTable? Of(Check check, Catalogue catalogue, IPredictive predictive)
    {
        var parts = Parts(check, catalogue, predictive);
        var joint = check.Reads.Count > MostApart ? JointReadings.Of(check.Reads, predictive) : null;
        if (parts.Count == 0 && joint is null) return null;
        var size = parts.Aggregate(1L, (n, p) => n * p.Count);
        return joint is null && size <= Most ? Product(parts) : Draw(check.Id, parts, joint, predictive);
    }

    /// <summary>The table of something that shows nothing new.</summary>
    /// <param name="explanations">Number of explanations.</param>
    public static OutcomeTable Nothing(int explanations) => new([[.. Enumerable.Repeat(1.0, explanations)]], ["nothing new"], false);

    private static List<Part> Parts(Check check, Catalogue catalogue, IPredictive predictive)
    {
        var parts = new List<Part>();
        var k = predictive.Explanations.Count;
        foreach (var id in check.Signs)
        {
            var sign = catalogue.Sign(id)!;
            var p = new double[k][];
            for (var e = 0; e < k; e++) predictive.Predict(e, id, p[e] = new double[sign.Outcomes.Count]);
            if (Tells(p)) parts.Add(new Part([.. sign.Outcomes.Select(o => o.Words)], p));
        }

        if (check.Reads.Count <= MostApart)
        {
            foreach (var read in check.Reads)
            {
                if (ReadingRanges.Of(read, predictive, check.Reads.Count == 1 ? 5 : 3) is { } ranges) parts.Add(ranges);
            }
        }

        return parts;
    }

    /// <summary>True when the explanations differ in what they make of it.</summary>
    private static bool Tells(double[][] byExplanation) =>
        byExplanation.Any(p => p.Zip(byExplanation[0]).Any(x => Math.Abs(x.First - x.Second) > 0.01));

    private static OutcomeTable Product(List<Part> parts)
    {
        List<double[]> table = [[]];
        List<string> words = [""];
        foreach (var part in parts)
        {
            var (next, said) = (new List<double[]>(), new List<string>());
            for (var r = 0; r < table.Count; r++)
            {
                for (var o = 0; o < part.Count; o++)
                {
                    next.Add([.. part.ByExplanation.Select((p, e) => (table[r].Length == 0 ? 1 : table[r][e]) * p[o])]);
                    said.Add(words[r].Length == 0 ? part.Words[o] : $"{words[r]}; {part.Words[o]}");
                }
            }

            (table, words) = (next, said);
        }

        return new OutcomeTable(table, words, false);
    }

    private static OutcomeTable Draw(string seed, List<Part> parts, JointReadings? joint, IPredictive predictive)
    {
        var k = predictive.Explanations.Count;
        var table = new List<double[]>(Draws);
        var spread = new Spread(seed);
        var (at, below) = (0, predictive.Explanations[0].Weight);
        for (var d = 0; d < Draws; d++)
        {
            while (at < k - 1 && (d + 0.5) / Draws > below) below += predictive.Explanations[++at].Weight;
            var likelihood = new double[k];
            Array.Fill(likelihood, 1);
            foreach (var part in parts)
            {
                var result = Pick(part.ByExplanation[at], spread.Next());
                for (var e = 0; e < k; e++) likelihood[e] *= part.ByExplanation[e][result];
            }

            joint?.Weigh(at, spread, likelihood);
            table.Add(likelihood);
        }

        return new OutcomeTable(table, [], true);
    }

    private static int Pick(double[] p, double u)
    {
        for (var o = 0; o < p.Length - 1; o++)
        {
            if ((u -= p[o]) < 0) return o;
        }

        return p.Length - 1;
    }

    /// <summary>One sign or reading of a check.</summary>
    /// <param name="Words">Its results in words.</param>
    /// <param name="ByExplanation">Probability of each result, explanation by explanation.</param>
    internal sealed record Part(IReadOnlyList<string> Words, double[][] ByExplanation)
    {
        /// <summary>Number of results.</summary>
        public int Count => Words.Count;
    }
}

/// <summary>A fixed, evenly spread sequence of numbers in 0…1, the same for the same check.</summary>
/// <remarks>Additive recurrence with the golden ratio.</remarks>
internal sealed class Spread(string seed)
{
    private double _u = seed.Aggregate(0.0, (h, c) => (h * 31 + c) % 1009) / 1009;

    /// <summary>The next number.</summary>
    public double Next() => _u = (_u + 0.6180339887498949) % 1;
}
