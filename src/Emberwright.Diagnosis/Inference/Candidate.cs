namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// One component of the posterior mixture: a hypothesis with its fit, and perhaps one piece of evidence taken as wrong.
/// </summary>
internal sealed class Candidate
{
    /// <summary>The hypothesis.</summary>
    public required Hypothesis Hypothesis { get; init; }

    /// <summary>Fit of the unknowns.</summary>
    public required Mode Mode { get; init; }

    /// <summary>Fouling past its limits, after readings.</summary>
    public required FoulingStates States { get; init; }

    /// <summary>Stated signs, and fouling after them.</summary>
    public required StatedLikelihood Stated { get; init; }

    /// <summary>Meter readings and graded signs under this hypothesis.</summary>
    public required Bound[] Bounds { get; init; }

    /// <summary>Adjustment of the fit's evidence where it stands in for a pair that was not fitted.</summary>
    public double LnAdjustment { get; init; }

    /// <summary>Index of the evidence taken as wrong, or −1.</summary>
    public int Doubted { get; init; } = -1;

    /// <summary>For each piece of evidence: ln P(it | all other evidence).</summary>
    public required double[] LnGiven { get; init; }

    /// <summary>For each piece of evidence: probability that it is wrong, given this hypothesis and all evidence.</summary>
    public required double[] Wrong { get; init; }

    /// <summary>For each reading and margin: ln P(it | it is wrong, the rest) − ln P(it | the rest), to first order.</summary>
    public required double[] LnGain { get; init; }

    /// <summary>ln of the factor by which allowing for a wrong piece of evidence raises the weight.</summary>
    public required double LnDoubt { get; init; }

    /// <summary>ln of the unnormalised weight.</summary>
    public required double LnWeight { get; init; }

    /// <summary>Normalised weight; set when the mixture is complete.</summary>
    public double Weight { get; set; }

    /// <summary>True for the cause that is not listed.</summary>
    public bool IsUnlisted => Hypothesis.Kind == HypothesisKind.Unlisted;

    /// <summary>Fouling faults past their limits in an epoch, a bit for each, out of a mask over all epochs.</summary>
    public ulong FouledIn(CaseFile file, ulong mask, int epoch)
    {
        ulong fouled = 0;
        for (var f = 0; f < file.Fouling.Count; f++)
        {
            var bit = States.Bit(f, epoch);
            if (bit < 64 && (mask >> bit & 1) != 0) fouled |= 1UL << f;
        }
        return fouled;
    }
}
