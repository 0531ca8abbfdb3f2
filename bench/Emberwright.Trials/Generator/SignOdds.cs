// How probable is each outcome of a sign on a stove whose faults are known?
// Equations: stated  P(o | F) ∝ usual(o)·e^ε(o)·Π_{f∈F} P_f(o)/usual(o), what f leaves unstated shared in proportion to the usual;
//            graded  P(o) = Φ((cut_o − q)/s) − Φ((cut_{o−1} − q)/s), then the sign's lapse; a fault that states the sign replaces it.
//            both    2 % lapse to any outcome.
// Symbols: F faults present, P_f stated probability, q true quantity, s blur, ε N(0, 0.25·k) of this stove's owner and eyes.
// Validity: usual > 0.
// Assumptions: as the catalogue's; ε is what the catalogue does not know (k mismatch).
// Source: logarithmic opinion pool: Genest & Zidek, Stat. Sci. 1 (1986) 114; ordered probit: McKelvey & Zavoina 1975. From memory.
// Worked: usual (.5, .5), one fault states the first .9, k = 0: 0.98·0.9 + 0.01 = 0.892.
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove.Faults;
using MathNet.Numerics;

namespace Emberwright.Trials.Generator;

/// <summary>Outcome probabilities on a stove whose faults are known.</summary>
internal static class SignOdds
{
    private const double Lapse = 0.02;
    private const double Least = 1e-3;
    private const double SoundOwnersSayDue = 0.85;
    private const double OwnEyes = 0.25;

    /// <summary>By the stated probabilities.</summary>
    /// <param name="sign">The sign.</param>
    /// <param name="faults">Faults present, fouling past its limit among them.</param>
    /// <param name="somethingWrong">True when something is wrong even if no listed fault is.</param>
    /// <param name="own">What this stove's owner and eyes add; null for nothing.</param>
    /// <param name="mismatch">k.</param>
    public static double[] Stated(Sign sign, IReadOnlyList<Fault> faults, bool somethingWrong, Chance? own, double mismatch)
    {
        var usual = sign.Outcomes.Select(o => Math.Max(o.Usual, Least)).ToArray();
        var total = usual.Sum();
        for (var o = 0; o < usual.Length; o++) usual[o] /= total;
        var weight = (double[])usual.Clone();
        if (faults.Count == 0 && !somethingWrong) Due(sign, weight);
        foreach (var fault in faults)
            if (By(fault, sign, usual) is { } p)
                for (var o = 0; o < weight.Length; o++) weight[o] *= p[o] / usual[o];
        if (own is not null)
            for (var o = 0; o < weight.Length; o++) weight[o] *= Math.Exp(own.Normal(0, OwnEyes * mismatch));
        return WithLapse(weight);
    }

    /// <summary>By the true quantity.</summary>
    public static double[] Graded(PhysicalMargin margin, double quantity)
    {
        var count = margin.Cuts.Count + 1;
        var p = new double[count];
        for (var o = 0; o < count; o++)
        {
            var above = o < count - 1 ? Below((margin.Cuts[o] - quantity) / margin.Blur) : 1;
            var below = o > 0 ? Below((margin.Cuts[o - 1] - quantity) / margin.Blur) : 0;
            p[o] = (1 - margin.Lapse) * Math.Max(above - below, 0) + margin.Lapse / count;
        }

        return p;
    }

    private static double[] WithLapse(double[] weight)
    {
        var sum = weight.Sum();
        return [.. weight.Select(w => (1 - Lapse) * w / sum + Lapse / weight.Length)];
    }

    private static void Due(Sign sign, double[] weight)
    {
        var due = sign.Id == Complaints.Sign ? sign.IndexOf(Complaints.Due) : -1;
        if (due < 0) return;
        var rest = 1 - weight[due];
        for (var o = 0; o < weight.Length; o++) weight[o] = o == due ? SoundOwnersSayDue : weight[o] * (1 - SoundOwnersSayDue) / rest;
    }

    private static double[]? By(Fault fault, Sign sign, double[] usual)
    {
        var stated = fault.Symptoms.Where(s => s.Sign == sign.Id && sign.Outcomes.Any(o => o.Id == s.Outcome)).ToArray();
        if (stated.Length == 0) return null;
        var p = new double[usual.Length];
        Array.Fill(p, double.NaN);
        foreach (var s in stated) p[sign.IndexOf(s.Outcome)] = Math.Max(s.Probability, Least);
        var left = Math.Max(1 - p.Where(double.IsFinite).Sum(), Least);
        var unstated = usual.Where((_, o) => double.IsNaN(p[o])).Sum();
        for (var o = 0; o < p.Length; o++)
            if (double.IsNaN(p[o])) p[o] = left * usual[o] / unstated;
        return p;
    }

    private static double Below(double z) => 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));
}
