// Question:    what weight has a hypothesis in the posterior, allowing for one piece of evidence to be plainly wrong?
// Equations:   ln w = ln P(d) + ln P(readings, margins | d) + Σ ln P(plain evidence | d) + ln P(stated signs | d) + ln S;
//              S = Π(1 − ε_i)·(1 + Σ ε_i/(1 − ε_i)·e^{g_i}), g_i = ln P(i | it is wrong, rest) − ln P(i | rest);
//              P(i wrong | d, y) = its term's share of S. Where g_i > 3 and d matters, the fit is repeated with i taken
//              as wrong and becomes a component of its own; until then g_i counts as 3 at most, for it is a first-order
//              figure and a poor fit would otherwise borrow more from a supposed mistake than the mistake is worth.
// Symbols:     ε_i probability that evidence i has nothing to do with the stove (0.01 for readings).
// Validity:    at most one wrong piece at a time.
// Assumptions: what is wrong is off by a wide normal (readings) or evenly spread over the outcomes (signs).
// Source:      contamination model: Box & Tiao, Biometrika 55 (1968) 119. From memory.
// Worked:      no evidence: ln w = ln P(d) (tested).
namespace Emberwright.Diagnosis.Inference;

/// <summary>Turns hypotheses with their fits into components of the posterior.</summary>
internal sealed class CandidateBuilder(CaseFile file, ModeLibrary library)
{
    private readonly double[] _lapses = [.. file.Conditionals.Select(c => c.Lapse)];
    private readonly double _lnSound = file.Readings.Count * Math.Log(1 - Candidate.ReadingWrong) + file.Conditionals.Sum(c => Math.Log(1 - c.Lapse));

    /// <summary>Number of pieces of evidence: readings, then meter readings and graded signs, then stated signs.</summary>
    public int Count => file.Readings.Count + file.Conditionals.Count + file.Stated.Count;

    /// <summary>The evidence behind an index.</summary>
    public Evidence EvidenceAt(int index)
    {
        if (index < file.Readings.Count) return file.Readings.Items[index];
        index -= file.Readings.Count;
        return index < file.Conditionals.Count ? file.Conditionals[index].Evidence : file.Stated[index - file.Conditionals.Count].Evidence;
    }

    /// <summary>Builds the component of a hypothesis with its fit.</summary>
    /// <param name="hypothesis">The hypothesis.</param>
    /// <param name="mode">Its fit.</param>
    /// <param name="lnAdjustment">Added to the fit's evidence where the fit stands in for another.</param>
    /// <param name="refitted">Evidence whose being wrong has a component of its own.</param>
    /// <param name="singles">The two singles of a pair.</param>
    public Candidate Build(
        Hypothesis hypothesis, Mode mode, double lnAdjustment = 0, IReadOnlySet<int>? refitted = null, (Candidate?, Candidate?) singles = default) =>
        Build(hypothesis, mode, lnAdjustment, refitted, -1, singles);

    /// <summary>Indices of evidence that deserves a fit without it under this candidate.</summary>
    public static IEnumerable<int> Doubtful(Candidate candidate) =>
        Enumerable.Range(0, candidate.MayBeWrong).Where(i => candidate.LnGain(i) > Candidate.WorthARefit).OrderByDescending(candidate.LnGain);

    /// <summary>ln weight a candidate might have if its most doubtful piece of evidence were wrong, to first order.</summary>
    public static double LnHoped(Candidate candidate)
    {
        var most = double.NegativeInfinity;
        for (var i = 0; i < candidate.MayBeWrong; i++)
        {
            var gain = candidate.LnGain(i);
            if (gain > Candidate.WorthARefit) most = Math.Max(most, gain + Math.Log(candidate.Epsilon(i)));
        }
        return candidate.LnWeight + (double.IsNegativeInfinity(most) ? 0 : most);
    }

    /// <summary>The component in which one piece of evidence is wrong; null when the stove has no solution there.</summary>
    public Candidate? BuildWithout(Candidate candidate, int index)
    {
        var faults = candidate.Hypothesis.Faults;
        Mode? mode;
        if (index < file.Readings.Count)
        {
            mode = library.WithoutReading(faults, index, candidate.Mode);
        }
        else
        {
            var c = index - file.Readings.Count;
            mode = candidate.Bounds[c].Margin is null ? candidate.Mode : library.WithoutConditional(faults, file.Conditionals[c], candidate.Mode);
        }
        return mode is null ? null : Build(candidate.Hypothesis, mode, ReferenceEquals(mode, candidate.Mode) ? candidate.LnAdjustment : 0, null, index, default);
    }

    private Candidate Build(
        Hypothesis hypothesis, Mode mode, double lnAdjustment, IReadOnlySet<int>? refitted, int doubted, (Candidate?, Candidate?) singles)
    {
        var unlisted = hypothesis.Kind == HypothesisKind.Unlisted;
        var states = library.States(mode);
        var stated = StatedLikelihood.Of(file, hypothesis.Faults, states, unlisted, singles);
        var bounds = library.Bounds(hypothesis.Faults);
        var n = file.Readings.Count;
        var c = file.Conditionals.Count;
        var plain = c == 0 ? [] : new double[c];
        var lapse = c == 0 ? [] : new double[c];
        var ln = hypothesis.LnPrior + mode.LnEvidence + lnAdjustment + stated.LnProbability + _lnSound;
        var sum = 1.0;
        if (doubted < 0) sum += mode.DoubtInReadings(refitted);
        var margin = 0;
        for (var k = 0; k < c; k++)
        {
            var conditional = file.Conditionals[k];
            if (n + k == doubted)
            {
                plain[k] = conditional.LnIfLapse;
                ln += conditional.LnIfLapse;
                continue;
            }
            var given = bounds[k].Margin is not { } joins ? bounds[k].LnProbability
                : unlisted && !ModeLibrary.ShowsDirt(joins) ? mode.LnForeseen(joins)
                : mode.LnGivenMargin(margin++);
            if (unlisted && !(bounds[k].Margin is { } dirt && ModeLibrary.ShowsDirt(dirt)))
            {
                // An unlisted cause may show itself in anything: half the time the evidence follows it, not the model.
                given = double.IsNaN(given) ? conditional.LnIfLapse : Add(given, conditional.LnIfLapse) + Math.Log(0.5);
                ln += given;
            }
            else if (bounds[k].Margin is null)
            {
                ln += given;
            }
            plain[k] = given;
            lapse[k] = conditional.LnIfLapse - given;
            if (doubted < 0 && (refitted is null || !refitted.Contains(n + k))) sum += Candidate.Share(_lapses[k], lapse[k]);
        }
        if (doubted >= 0)
        {
            var epsilon = doubted < n ? Candidate.ReadingWrong : _lapses[doubted - n];
            ln += Math.Log(epsilon) - Math.Log(1 - epsilon);
        }

        return new Candidate
        {
            Hypothesis = hypothesis,
            Mode = mode,
            States = states,
            Stated = stated,
            Bounds = bounds,
            LnPlain = plain,
            LnLapse = lapse,
            Lapses = _lapses,
            LnAdjustment = lnAdjustment,
            Doubted = doubted,
            Refitted = refitted,
            LnDoubt = Math.Log(sum),
            LnWeight = ln + Math.Log(sum),
        };
    }

    private static double Add(double a, double b) => Math.Max(a, b) + Math.Log(1 + Math.Exp(-Math.Abs(a - b)));
}
