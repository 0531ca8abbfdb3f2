// Question:    how probable is each fault, as found and now, with all evidence and without any one piece of it?
// Equations:   P(f) = Σ_d w_d·P(f | d); without evidence i: P₋ᵢ(f) = Σ_d w_d·e^{−ln P(i|rest,d)}·P₋ᵢ(f | d) / Σ_d w_d·e^{−ln P(i|rest,d)};
//              factor of i = odds(P)/odds(P₋ᵢ).
// Symbols:     w_d normalised weights of the mixture's components; P(f | d) is 0 or 1 for a discrete fault, the
//              probability of being past its limit for fouling.
// Validity:    near each component's mode; the fits are not repeated.
// Assumptions: leaving one piece out does not call for hypotheses that had no weight with it.
// Source:      leave-one-out by reweighting: Gelfand, Dey & Chang (1992). From memory.
// Worked:      two hypotheses 1:1, one reading with likelihoods 4:1: factor 4 (tested).
using System.Numerics;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Marginal probabilities of faults from the mixture.</summary>
internal sealed class Marginals
{
    /// <summary>Index that stands for nothing wrong.</summary>
    public const int Nothing = -1;

    /// <summary>Index that stands for a cause not listed.</summary>
    public const int Unlisted = -2;

    private const double Least = 1e-5;
    private const double StandsIn = 0.5;
    private const double Heavy = 0.01;

    private readonly CaseFile _file;
    private readonly CandidateBuilder _builder;
    private readonly Candidate[] _heavy;
    private readonly HashSet<(Hypothesis, int)> _doubted;
    private readonly Dictionary<int, double[]> _byEpoch = [];
    private readonly Dictionary<(Mode, int, int), double> _oddsWithout = [];

    /// <summary>Sums the mixture up, as found and now.</summary>
    public Marginals(CaseFile file, IReadOnlyList<Candidate> candidates, CandidateBuilder builder)
    {
        _file = file;
        _builder = builder;
        // A fit that stands in for a pair, or was only extrapolated, does not say what each piece of evidence does under it.
        _heavy = Speaking([.. candidates.Where(c => c.Weight > 0 && Math.Abs(c.LnAdjustment) < StandsIn && (c.Mode.Reliable || c.Weight > Heavy))]);
        _doubted = [.. _heavy.Where(c => c.Doubted >= 0).Select(c => (c.Hypothesis, c.Doubted))];
        foreach (var epoch in new[] { 0, file.Plan.Now }.Distinct()) _byEpoch.Add(epoch, Sum(candidates, epoch));
    }

    /// <summary>Evidence that can be left out, with its index.</summary>
    public IEnumerable<(int Index, Evidence Evidence)> Evidence => Enumerable.Range(0, _builder.Count).Select(i => (i, _builder.EvidenceAt(i)));

    /// <summary>Probability of a fault as found or now.</summary>
    /// <param name="fault">Index into the case's faults, <see cref="Nothing"/> or <see cref="Unlisted"/>.</param>
    /// <param name="epoch">0 or the present epoch.</param>
    public double Probability(int fault, int epoch) => Math.Clamp(_byEpoch[epoch][fault + 2], 0, 1);

    /// <summary>Factor of one piece of evidence on the odds of a fault.</summary>
    /// <param name="fault">As above, not nothing.</param>
    /// <param name="epoch">0 or the present epoch.</param>
    /// <param name="evidence">Index of the evidence.</param>
    public double Factor(int fault, int epoch, int evidence)
    {
        var most = double.NegativeInfinity;
        foreach (var candidate in _heavy) most = Math.Max(most, Math.Log(candidate.Weight) - candidate.LnGiven(evidence));
        // Without this piece a hypothesis and its component that doubts the piece are the same; only one of them counts.
        // Both sides of the odds are summed, so that near certainty their ratio keeps its digits.
        var (with, against, full, rest) = (0.0, 0.0, 0.0, 0.0);
        foreach (var candidate in _heavy)
        {
            var twice = candidate.Doubted != evidence && _doubted.Contains((candidate.Hypothesis, evidence));
            var weight = twice ? 0 : candidate.Weight * Math.Exp(-candidate.LnGiven(evidence) - most);
            var (now, then) = fault >= _file.FirstFouling
                ? (Past(candidate, fault - _file.FirstFouling, epoch, candidate.Stated.Weights), PastWithout(candidate, fault - _file.FirstFouling, epoch, evidence))
                : Has(candidate, fault, epoch) ? (1.0, 1.0) : (0.0, 0.0);
            full += candidate.Weight * now;
            rest += candidate.Weight * Math.Max(1 - now, 0);
            with += weight * then;
            against += weight * Math.Max(1 - then, 0);
        }
        return Ratio(full, rest) / Ratio(with, against);
    }

    /// <summary>Those that have weight with all evidence, or would have it without one piece: what a certain conclusion was weighed against.</summary>
    private Candidate[] Speaking(Candidate[] candidates)
    {
        var least = Enumerable.Range(0, _builder.Count)
            .Select(i => candidates.Select(c => Math.Log(c.Weight) - c.LnGiven(i)).DefaultIfEmpty(0).Max() + Math.Log(Least))
            .ToArray();
        return
        [
            .. candidates.Where(c =>
            {
                if (c.Weight > Least) return true;
                var ln = Math.Log(c.Weight);
                for (var i = 0; i < least.Length; i++)
                    if (ln - c.LnGiven(i) > least[i]) return true;
                return false;
            }),
        ];
    }

    private double[] Sum(IReadOnlyList<Candidate> candidates, int epoch)
    {
        var sums = new double[_file.Faults.Count + 2];
        var past = new double[64];
        foreach (var candidate in candidates)
        {
            if (candidate.Weight < 1e-12) continue;
            if (candidate.IsUnlisted) sums[Unlisted + 2] += candidate.Weight;
            var any = candidate.IsUnlisted;
            foreach (var fault in candidate.Hypothesis.Faults)
            {
                if (_file.CuredIn(fault) <= epoch) continue;
                any = true;
                sums[_file.FirstOf(fault) + 2] += candidate.Weight;
            }

            ulong ofEpoch = 0;
            for (var f = 0; f < _file.Fouling.Count; f++) ofEpoch |= 1UL << candidate.States.Bit(f, epoch);
            Array.Clear(past);
            var sound = 0.0;
            for (var m = 0; m < candidate.States.Masks.Length; m++)
            {
                var mask = candidate.States.Masks[m] & ofEpoch;
                var weight = candidate.Stated.Weights[m];
                if (mask == 0) sound += weight;
                for (; mask != 0; mask &= mask - 1) past[BitOperations.TrailingZeroCount(mask)] += weight;
            }
            if (!any) sums[Nothing + 2] += candidate.Weight * sound;
            for (var f = 0; f < _file.Fouling.Count; f++)
                sums[_file.FirstFouling + f + 2] += candidate.Weight * past[candidate.States.Bit(f, epoch)];
        }
        return sums;
    }

    private bool Has(Candidate candidate, int fault, int epoch) => fault == Unlisted
        ? candidate.IsUnlisted
        : Array.Exists(candidate.Hypothesis.Faults, f => _file.FirstOf(f) == _file.FirstOf(fault) && _file.CuredIn(f) > epoch);

    private static double Past(Candidate candidate, int fouling, int epoch, double[] weights)
    {
        var bit = candidate.States.Bit(fouling, epoch);
        var p = 0.0;
        for (var m = 0; m < weights.Length; m++)
            if ((candidate.States.Masks[m] >> bit & 1) != 0) p += weights[m];
        return p;
    }

    private double PastWithout(Candidate candidate, int fouling, int epoch, int without)
    {
        var stated = without - _file.Readings.Count - _file.Conditionals.Count;
        if (stated >= 0) return Past(candidate, fouling, epoch, candidate.Stated.WeightsWithout(stated));
        var p = Past(candidate, fouling, epoch, candidate.Stated.Weights);
        if (without == candidate.Doubted) return p;
        var bit = candidate.States.Bit(fouling, epoch);
        if (!_oddsWithout.TryGetValue((candidate.Mode, bit, without), out var ratio))
        {
            ratio = OddsWithout(candidate, fouling, bit, without);
            _oddsWithout.Add((candidate.Mode, bit, without), ratio);
        }
        var odds = ratio * Odds(p);
        return odds / (1 + odds);
    }

    private double OddsWithout(Candidate candidate, int fouling, int bit, int without)
    {
        var (reading, margin) = without < _file.Readings.Count ? (without, -1) : (-1, MarginOf(candidate, without - _file.Readings.Count));
        if (reading < 0 && margin < 0) return 1;
        var limit = _file.Fouling[fouling].Fouling!.Limit;
        return Odds(FoulingStates.Past(candidate.Mode, candidate.States.Seen(bit), limit, reading, margin)) / Odds(candidate.States.Marginal[bit]);
    }

    private int MarginOf(Candidate candidate, int conditional)
    {
        bool Joins(int k) => candidate.Bounds[k].Margin is { } joins && (!candidate.IsUnlisted || ModeLibrary.ShowsDirt(joins));
        if (!Joins(conditional)) return -1;
        var margin = 0;
        for (var k = 0; k < conditional; k++)
            if (Joins(k) && _file.Readings.Count + k != candidate.Doubted) margin++;
        return margin;
    }

    private static double Ratio(double a, double b) => Math.Clamp(Math.Max(a, 1e-300) / Math.Max(b, 1e-300), 1e-12, 1e12);

    private static double Odds(double p) => Math.Clamp(p, 1e-9, 1 - 1e-9) / (1 - Math.Clamp(p, 1e-9, 1 - 1e-9));
}
