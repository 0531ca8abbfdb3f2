// Question:    which sets of three faults are worth working out, and are any?
// Equations:   ln w_ijk ≈ ln w_ij + ln w_ik + ln w_jk − ln w_i − ln w_j − ln w_k + ln w_0; a pair that was not worked out counts as
//              ln w_i + ln w_k − ln w_0. Where Σ of the estimates passes 1 % of Σ w, those within 7 nats of the heaviest component
//              are worth it, at most sixty.
// Symbols:     w unnormalised weights of no fault (0), one and two.
// Validity:    a screen: exact where no three faults act together on one piece of evidence beyond what pairs of them do.
// Assumptions: what three faults do together shows in what two of them do.
// Source:      log-linear model without three-way interaction: Bishop, Fienberg & Holland, Discrete Multivariate Analysis
//              (1975), 2.4. From memory.
// Worked:      three faults each of which alone explains one of three facts, e each: w_ij = w_0·e², estimate w_0·e³ (tested).
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Chooses sets of three faults.</summary>
internal static class Triples
{
    private const double WorthIt = 0.01;
    private const double Window = 7;
    private const int Most = 60;
    private const int Likeliest = 40;

    /// <summary>The sets worth working out, heaviest first, each with the heaviest pair among its three; none where pairs suffice.</summary>
    /// <param name="discrete">Discrete faults.</param>
    /// <param name="candidates">Their components.</param>
    public static IReadOnlyList<(int[] Faults, Candidate Pair)> Worth(IReadOnlyList<Fault> discrete, IReadOnlyList<Candidate> candidates)
    {
        var n = discrete.Count;
        var nothing = candidates.First(c => c.Hypothesis.Kind == HypothesisKind.Nothing).LnWeight;
        var single = new double[n];
        Array.Fill(single, double.NaN);
        var pairs = new Candidate?[n * n];
        var best = double.NegativeInfinity;
        foreach (var candidate in candidates)
        {
            best = Math.Max(best, candidate.LnWeight);
            var faults = candidate.Hypothesis.Faults;
            if (faults.Length == 1) single[faults[0]] = candidate.LnWeight;
            if (faults.Length == 2) pairs[faults[0] * n + faults[1]] = candidate;
        }
        var total = candidates.Sum(c => Math.Exp(c.LnWeight - best));

        // Whatever joins a set of three is among the likely ones, or gains most by joining one of them.
        var gain = Enumerable.Range(0, n).Select(f => (Fault: f, Ln: Gain(f))).Where(f => !double.IsNaN(f.Ln)).OrderByDescending(f => f.Ln).ThenBy(f => f.Fault)
            .Take(Likeliest).Select(f => f.Fault).Order().ToArray();
        double Gain(int f)
        {
            var most = single[f];
            for (var g = 0; g < n; g++)
                if (Pair(f, g) is { } pair && !double.IsNaN(single[f])) most = Math.Max(most, pair.LnWeight);
            return most;
        }
        Candidate? Pair(int a, int b) => pairs[Math.Min(a, b) * n + Math.Max(a, b)];
        double Ln(int a, int b) => Pair(a, b)?.LnWeight ?? single[a] + single[b] - nothing;

        var found = new List<(int[] Faults, double Ln)>();
        var left = 0.0;
        for (var x = 0; x < gain.Length; x++)
        {
            for (var y = x + 1; y < gain.Length; y++)
            {
                var (i, j) = (gain[x], gain[y]);
                if (discrete[i].Id == discrete[j].Id) continue;
                var two = Ln(i, j) - single[i] - single[j] + nothing;
                for (var z = y + 1; z < gain.Length; z++)
                {
                    var k = gain[z];
                    if (discrete[k].Id == discrete[i].Id || discrete[k].Id == discrete[j].Id) continue;
                    var ln = two + Ln(i, k) + Ln(j, k) - single[k];
                    left += Math.Exp(Math.Min(ln - best, 20));
                    if (ln > best - Window) found.Add(([i, j, k], ln));
                }
            }
        }
        if (left < WorthIt * total) return [];
        return
        [
            .. found.OrderByDescending(f => f.Ln).Take(Most)
                .Select(f => (f.Faults, Pair: Heaviest(f.Faults)))
                .Where(f => f.Pair is not null).Select(f => (f.Faults, f.Pair!)),
        ];

        Candidate? Heaviest(int[] f) => new[] { Pair(f[0], f[1]), Pair(f[0], f[2]), Pair(f[1], f[2]) }.OfType<Candidate>().MaxBy(c => c.LnWeight);
    }
}
