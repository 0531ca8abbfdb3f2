// Question:    what do signs with stated probabilities add to a hypothesis, when fouling may be past its limits too?
// Equation:    P(signs | d, y) = Σ_m h(m)·Π_s P_s(o_s | d ∪ m);  h′(m) ∝ h(m)·Π_s P_s;
//              without sign s: Σ_m h(m)·Π_{t≠s} P_t.
// Symbols:     d discrete faults, m set of foulings past their limits, h its probability after readings (FoulingStates).
// Validity:    any number of signs.
// Assumptions: given the faults, signs are independent.
// Source:      total probability.
// Worked:      by hand in the tests.
namespace Emberwright.Diagnosis.Inference;

/// <summary>Stated signs against one hypothesis.</summary>
internal sealed class StatedLikelihood
{
    private double[]? _lnGiven;

    private StatedLikelihood(double ln, double[] prior, double[] weights, double[][] each)
    {
        LnProbability = ln;
        Prior = prior;
        Weights = weights;
        Each = each;
    }

    /// <summary>ln P(all stated signs | hypothesis, readings).</summary>
    public double LnProbability { get; }

    /// <summary>Weights of the fouling masks before the signs: after readings, times what foulings do to bring the supposed faults about.</summary>
    public double[] Prior { get; }

    /// <summary>Probabilities of the fouling masks after the signs.</summary>
    public double[] Weights { get; }

    /// <summary>ln P(sign | all other evidence), sign by sign.</summary>
    public double[] LnGiven => _lnGiven ??= [.. Each.Select(p => -Math.Log(Weights.Select((w, m) => w / p[m]).Sum()))];

    /// <summary>P of each sign under each mask.</summary>
    public double[][] Each { get; }

    /// <summary>Evaluates the signs.</summary>
    /// <param name="file">The case.</param>
    /// <param name="faults">Discrete faults supposed.</param>
    /// <param name="states">Fouling past its limits after readings.</param>
    /// <param name="unlisted">True for a cause that is not listed.</param>
    /// <param name="singles">The two singles of a pair, whose probabilities serve again where the other fault says nothing.</param>
    public static StatedLikelihood Of(CaseFile file, int[] faults, FoulingStates states, bool unlisted, (Candidate? First, Candidate? Second) singles = default)
    {
        var signs = file.Stated;
        var each = new double[signs.Count][];
        Span<int> present = stackalloc int[faults.Length];
        for (var s = 0; s < signs.Count; s++)
        {
            var (evidence, table, outcome) = signs[s];
            if (Again(file, signs[s], s, states, singles) is { } again)
            {
                each[s] = again;
                continue;
            }
            var count = 0;
            foreach (var fault in faults)
                if (file.CuredIn(fault) > evidence.Epoch) present[count++] = fault;
            var (sets, ofMask) = states.In(evidence.Epoch);
            var bySet = new double[sets.Length];
            for (var k = 0; k < sets.Length; k++)
                bySet[k] = table.Probability(outcome, present[..count], sets[k], file.FirstFouling, unlisted);
            var p = each[s] = new double[ofMask.Length];
            for (var m = 0; m < p.Length; m++) p[m] = bySet[ofMask[m]];
        }
        return Combine(WithCauses(file, faults, states), each);
    }

    /// <summary>
    /// Weights of the masks where fouling brings a supposed fault about (dirt overheats, the limit opens): each cause's
    /// factor, over its mean at the share of stoves fouled so far, so that the fault's own rate stays what it is.
    /// </summary>
    private static double[] WithCauses(CaseFile file, int[] faults, FoulingStates states)
    {
        var weights = states.Weights;
        foreach (var fault in faults)
        {
            foreach (var cause in file.Discrete[fault].CausedBy)
            {
                for (var f = 0; f < file.Fouling.Count; f++)
                {
                    if (file.Fouling[f].Id != cause.Fault || states.Bit(f, 0) is var bit && bit >= 64) continue;
                    var scale = 1 / (1 + Share(file, f) * (cause.Factor - 1));
                    weights = [.. weights.Select((w, m) => w * scale * ((states.Masks[m] >> bit & 1) != 0 ? cause.Factor : 1))];
                }
            }
        }
        return weights;
    }

    private static double Share(CaseFile file, int fouling)
    {
        const double Unknown = 0.15;
        var (parameter, limit) = file.Fouling[fouling].Fouling!;
        return PriorTable.Fouling.Contains(parameter) ? Math.Exp(limit / PriorTable.InUse(parameter, file.Stove)) : Unknown;
    }

    /// <summary>Probabilities of the masks after all signs but one.</summary>
    public double[] WeightsWithout(int sign)
    {
        var weights = new double[Prior.Length];
        var sum = 0.0;
        for (var m = 0; m < weights.Length; m++)
        {
            var w = Prior[m];
            for (var s = 0; s < Each.Length; s++)
                if (s != sign) w *= Each[s][m];
            sum += weights[m] = w;
        }
        for (var m = 0; m < weights.Length; m++) weights[m] /= sum;
        return weights;
    }

    private static double[]? Again(CaseFile file, StatedSign sign, int index, FoulingStates states, (Candidate? First, Candidate? Second) singles)
    {
        if (singles is not ({ } a, { } b)) return null;
        var (i, j) = (a.Hypothesis.Faults[0], b.Hypothesis.Faults[0]);
        if (file.CuredIn(i) <= sign.Evidence.Epoch || file.CuredIn(j) <= sign.Evidence.Epoch) return null;
        if (ReferenceEquals(a.States, states) && !sign.Table.Concerns(j)) return a.Stated.Each[index];
        if (ReferenceEquals(b.States, states) && !sign.Table.Concerns(i)) return b.Stated.Each[index];
        return null;
    }

    private static StatedLikelihood Combine(double[] prior, double[][] each)
    {
        var weights = (double[])prior.Clone();
        foreach (var p in each)
            for (var m = 0; m < weights.Length; m++) weights[m] *= p[m];
        var total = 0.0;
        foreach (var w in weights) total += w;
        for (var m = 0; m < weights.Length; m++) weights[m] /= total;
        return new StatedLikelihood(Math.Log(total), prior, weights, each);
    }
}
