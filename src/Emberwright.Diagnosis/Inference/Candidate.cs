namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// One component of the posterior mixture: a hypothesis with its fit, and perhaps one piece of evidence taken as wrong.
/// Evidence is counted readings first, then meter readings and graded signs, then stated signs.
/// </summary>
internal sealed class Candidate
{
    /// <summary>Probability that a reading is grossly wrong.</summary>
    public const double ReadingWrong = 0.01;

    /// <summary>ln of the gain, from taking a piece of evidence as wrong, that is worth a fit of its own; more is not believed without one.</summary>
    public const double WorthARefit = 3;

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

    /// <summary>For each meter reading and graded sign: ln P(it | all other evidence), were it not wrong.</summary>
    public required double[] LnPlain { get; init; }

    /// <summary>For each meter reading and graded sign: how ln P would rise if it were wrong.</summary>
    public required double[] LnLapse { get; init; }

    /// <summary>Probability that each meter reading and graded sign is wrong.</summary>
    public required double[] Lapses { get; init; }

    /// <summary>Adjustment of the fit's evidence where it stands in for a pair that was not fitted.</summary>
    public double LnAdjustment { get; init; }

    /// <summary>Index of the evidence taken as wrong, or −1.</summary>
    public int Doubted { get; init; } = -1;

    /// <summary>Evidence whose being wrong has a component of its own.</summary>
    public IReadOnlySet<int>? Refitted { get; init; }

    /// <summary>ln of the factor by which allowing for a wrong piece of evidence raises the weight.</summary>
    public required double LnDoubt { get; init; }

    /// <summary>ln of the unnormalised weight.</summary>
    public required double LnWeight { get; init; }

    /// <summary>Normalised weight; set when the mixture is complete.</summary>
    public double Weight { get; set; }

    /// <summary>True for the cause that is not listed.</summary>
    public bool IsUnlisted => Hypothesis.Kind == HypothesisKind.Unlisted;

    private int Readings => Mode.Problem.Readings.Count;

    /// <summary>For a piece of evidence: ln P(it | all other evidence).</summary>
    public double LnGiven(int evidence)
    {
        var c = evidence - Readings;
        if (c >= LnPlain.Length) return Stated.LnGiven[c - LnPlain.Length];
        var epsilon = Epsilon(evidence);
        var plain = c < 0 ? Mode.LnGiven(evidence) : LnPlain[c];
        return evidence == Doubted ? plain + Math.Log(epsilon) : plain + Math.Log(1 - epsilon + epsilon * Math.Exp(Math.Min(LnGain(evidence), WorthARefit)));
    }

    /// <summary>For a reading or margin: ln P(it | it is wrong, the rest) − ln P(it | the rest), to first order.</summary>
    public double LnGain(int evidence) => evidence == Doubted ? 0 : evidence < Readings ? Mode.GainIfWrong(evidence) : LnLapse[evidence - Readings];

    /// <summary>For a reading or margin: probability that it is wrong, given this hypothesis and all evidence.</summary>
    public double Wrong(int evidence) =>
        evidence == Doubted ? 1 : IsHeld(evidence) ? 0 : Share(Epsilon(evidence), LnGain(evidence)) / Math.Exp(LnDoubt);

    /// <summary>Probability that a reading or margin has nothing to do with the stove.</summary>
    public double Epsilon(int evidence) => evidence < Readings ? ReadingWrong : Lapses[evidence - Readings];

    /// <summary>Number of readings and margins, each of which may be wrong.</summary>
    public int MayBeWrong => Readings + LnLapse.Length;

    /// <summary>ε/(1 − ε)·e^g, with g not above what is believed without a fit.</summary>
    public static double Share(double epsilon, double lnGain) => epsilon / (1 - epsilon) * Math.Exp(Math.Min(lnGain, WorthARefit));

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

    // At most one piece is wrong: where one is doubted already no other is, and what has a component of its own is sound here.
    private bool IsHeld(int evidence) => Doubted >= 0 || Refitted is not null && Refitted.Contains(evidence);
}
