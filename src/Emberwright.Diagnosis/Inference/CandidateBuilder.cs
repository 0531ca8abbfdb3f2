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
    private const double ReadingWrong = 0.01;
    private const double WorthARefit = 3;

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
        Enumerable.Range(0, candidate.LnGain.Length).Where(i => candidate.LnGain[i] > WorthARefit).OrderByDescending(i => candidate.LnGain[i]);

    /// <summary>ln weight a candidate might have if its most doubtful piece of evidence were wrong, to first order.</summary>
    public double LnHoped(Candidate candidate) => candidate.LnWeight + Doubtful(candidate)
        .Select(i => candidate.LnGain[i] + Math.Log(Epsilon(i))).DefaultIfEmpty(0).Max();

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
        var lnGiven = new double[Count];
        var wrong = new double[Count];
        var ln = hypothesis.LnPrior + mode.LnEvidence + lnAdjustment + stated.LnProbability;

        for (var i = 0; i < n; i++)
        {
            var reading = file.Readings.Items[i];
            lnGiven[i] = mode.LnGiven(i);
            wrong[i] = mode.GainIfWrong(i, Noise.Gross(reading.Observable.Measure, reading.Value));
        }
        var margin = 0;
        for (var k = 0; k < c; k++)
        {
            var conditional = file.Conditionals[k];
            if (n + k == doubted)
            {
                lnGiven[n + k] = conditional.LnIfLapse;
                ln += conditional.LnIfLapse;
                continue;
            }
            var given = bounds[k].Margin is null ? bounds[k].LnProbability : mode.LnGivenMargin(margin++);
            if (unlisted)
            {
                // An unlisted cause may show itself in anything: half the time the evidence follows it, not the model.
                var mixed = Add(given, conditional.LnIfLapse) + Math.Log(0.5);
                ln += mixed - (bounds[k].Margin is null ? 0 : given);
                given = mixed;
            }
            else if (bounds[k].Margin is null)
            {
                ln += given;
            }
            lnGiven[n + k] = given;
            wrong[n + k] = conditional.LnIfLapse - given;
        }
        for (var s = 0; s < file.Stated.Count; s++) lnGiven[n + c + s] = stated.LnGiven[s];

        var lnGain = wrong[..(n + c)];
        if (doubted >= 0) lnGain[doubted] = 0;
        var sum = 1.0;
        for (var i = 0; i < n + c; i++)
        {
            var epsilon = Epsilon(i);
            if (i == doubted)
            {
                ln += Math.Log(epsilon);
                lnGiven[i] += Math.Log(epsilon);
                wrong[i] = 1;
                continue;
            }
            ln += Math.Log(1 - epsilon);
            var gain = Math.Exp(Math.Min(wrong[i], WorthARefit));
            lnGiven[i] += Math.Log(1 - epsilon + epsilon * gain);
            wrong[i] = doubted >= 0 || refitted is not null && refitted.Contains(i) ? 0 : epsilon / (1 - epsilon) * gain;
            sum += wrong[i];
        }
        for (var i = 0; i < n + c; i++)
            if (i != doubted) wrong[i] /= sum;

        return new Candidate
        {
            Hypothesis = hypothesis,
            Mode = mode,
            States = states,
            Stated = stated,
            Bounds = bounds,
            LnAdjustment = lnAdjustment,
            Doubted = doubted,
            LnGiven = lnGiven,
            Wrong = wrong,
            LnGain = lnGain,
            LnDoubt = Math.Log(sum),
            LnWeight = ln + Math.Log(sum),
        };
    }

    private double Epsilon(int index) => index < file.Readings.Count ? ReadingWrong : file.Conditionals[index - file.Readings.Count].Lapse;

    private static double Add(double a, double b) => Math.Max(a, b) + Math.Log(1 + Math.Exp(-Math.Abs(a - b)));
}
