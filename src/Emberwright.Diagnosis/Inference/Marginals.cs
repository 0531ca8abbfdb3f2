// Question:    how probable is each fault, as found and now, with all evidence and without any one piece of it?
// Equations:   P(f) = Σ_d w_d·P(f | d); without evidence i: P₋ᵢ(f) = Σ_d w_d·e^{−ln P(i|rest,d)}·P₋ᵢ(f | d) / Σ_d w_d·e^{−ln P(i|rest,d)};
//              factor of i = odds(P)/odds(P₋ᵢ).
// Symbols:     w_d normalised weights of the mixture's components; P(f | d) is 0 or 1 for a discrete fault, the
//              probability of being past its limit for fouling.
// Validity:    near each component's mode; the fits are not repeated.
// Assumptions: leaving one piece out does not call for hypotheses that had no weight with it.
// Source:      leave-one-out by reweighting: Gelfand, Dey & Chang (1992). From memory.
// Worked:      two hypotheses 1:1, one reading with likelihoods 4:1: factor 4 (tested).
namespace Emberwright.Diagnosis.Inference;

/// <summary>Marginal probabilities of faults from the mixture.</summary>
internal sealed class Marginals(CaseFile file, IReadOnlyList<Candidate> candidates, CandidateBuilder builder)
{
    private const double Least = 1e-7;

    /// <summary>Probability of a fault in an epoch.</summary>
    /// <param name="fault">Index into the case's faults; −1 for nothing, −2 for unlisted.</param>
    /// <param name="epoch">Epoch.</param>
    public double Probability(int fault, int epoch)
    {
        var sum = 0.0;
        foreach (var candidate in candidates)
            if (candidate.Weight > 0) sum += candidate.Weight * Given(candidate, fault, epoch, -1);
        return Math.Clamp(sum, 0, 1);
    }

    /// <summary>Factor of one piece of evidence on the odds of a fault.</summary>
    /// <param name="fault">As above.</param>
    /// <param name="epoch">Epoch.</param>
    /// <param name="evidence">Index of the evidence.</param>
    public double Factor(int fault, int epoch, int evidence)
    {
        var (with, all) = (0.0, 0.0);
        var full = 0.0;
        var most = candidates.Where(c => c.Weight > Least).Max(c => Math.Log(c.Weight) - c.LnGiven[evidence]);
        foreach (var candidate in candidates)
        {
            if (candidate.Weight <= Least) continue;
            var weight = Math.Exp(Math.Log(candidate.Weight) - candidate.LnGiven[evidence] - most);
            all += weight;
            with += weight * Given(candidate, fault, epoch, evidence);
            full += candidate.Weight * Given(candidate, fault, epoch, -1);
        }
        return Odds(full) / Odds(with / all);
    }

    private double Given(Candidate candidate, int fault, int epoch, int without)
    {
        if (fault == -2) return candidate.IsUnlisted ? 1 : 0;
        if (fault == -1)
        {
            if (candidate.IsUnlisted || file.Present(candidate.Hypothesis.Faults, epoch).Count > 0) return 0;
            var sound = 0.0;
            for (var m = 0; m < candidate.States.Masks.Length; m++)
                if (candidate.FouledIn(file, candidate.States.Masks[m], epoch) == 0) sound += candidate.Stated.Weights[m];
            return sound;
        }
        if (fault < file.FirstFouling)
            return Array.IndexOf(candidate.Hypothesis.Faults, fault) >= 0 && file.Plan.CuredIn(file.Faults[fault].Id) > epoch ? 1 : 0;
        return Fouled(candidate, fault - file.FirstFouling, epoch, without);
    }

    private double Fouled(Candidate candidate, int fouling, int epoch, int without)
    {
        var bit = candidate.States.Bit(fouling, epoch);
        var stated = without - file.Readings.Count - file.Conditionals.Count;
        var weights = without >= 0 && stated >= 0 ? candidate.Stated.WeightsWithout(candidate.States.Weights, stated) : candidate.Stated.Weights;
        var p = 0.0;
        for (var m = 0; m < weights.Length; m++)
            if ((candidate.States.Masks[m] >> bit & 1) != 0) p += weights[m];
        if (without < 0 || stated >= 0 || without == candidate.Doubted) return p;

        var (reading, margin) = without < file.Readings.Count ? (without, -1) : (-1, MarginOf(candidate, without - file.Readings.Count));
        if (reading < 0 && margin < 0) return p;
        var limit = file.Fouling[fouling].Fouling!.Limit;
        var odds = Odds(FoulingStates.Past(candidate.Mode, candidate.States.Seen(bit), limit, reading, margin)) / Odds(candidate.States.Marginal[bit]) * Odds(p);
        return odds / (1 + odds);
    }

    private int MarginOf(Candidate candidate, int conditional)
    {
        if (candidate.Bounds[conditional].Margin is null) return -1;
        var margin = 0;
        for (var k = 0; k < conditional; k++)
            if (candidate.Bounds[k].Margin is not null && file.Readings.Count + k != candidate.Doubted) margin++;
        return margin;
    }

    /// <summary>Evidence that can be left out, with its index.</summary>
    public IEnumerable<(int Index, Evidence Evidence)> Evidence => Enumerable.Range(0, builder.Count).Select(i => (i, builder.EvidenceAt(i)));

    private static double Odds(double p) => Math.Clamp(p, 1e-9, 1 - 1e-9) / (1 - Math.Clamp(p, 1e-9, 1 - 1e-9));
}
