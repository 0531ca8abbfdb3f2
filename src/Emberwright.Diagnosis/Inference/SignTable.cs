// Question:    how probable is an answer or observation when several faults are present, some of which change it?
// Equation:    P(o | F) ∝ usual(o)·Π_{f in F} P_f(o)/usual(o); what a fault leaves unstated is shared in proportion to the
//              usual; then P ← (1 − ε)P + ε/K so that nothing is ever impossible.
// Symbols:     o outcome of K, F faults present, ε = 0.02.
// Validity:    0 < usual < 1; stated probabilities of one fault sum to at most 1.
// Assumptions: faults act on the answer independently (a logarithmic pool). A customer whose stove has nothing wrong
//              complains of nothing 85 times in 100.
// Source:      logarithmic opinion pool: Genest & Zidek, Stat. Sci. 1 (1986) 114. From memory.
// Worked:      usual (.5, .5), one fault states the first .9: P = 0.98·0.9 + 0.01 = 0.892.
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Probabilities of one sign's outcomes under any set of faults.</summary>
internal sealed class SignTable
{
    private const double Lapse = 0.02;
    internal const double SoundComplainsOfNothing = 0.85;
    private const double Least = 1e-3;

    private readonly double[] _usual;
    private readonly double[] _sound;
    private readonly double[]?[] _ratio;
    private readonly Dictionary<ulong, double[]> _fouled = [];

    /// <summary>Sets up the table.</summary>
    /// <param name="sign">The sign.</param>
    /// <param name="faults">All faults, discrete and fouling; sets of faults are given by index into it.</param>
    public SignTable(Sign sign, IReadOnlyList<Fault> faults)
    {
        Sign = sign;
        var total = sign.Outcomes.Sum(o => Math.Max(o.Usual, Least));
        _usual = [.. sign.Outcomes.Select(o => Math.Max(o.Usual, Least) / total)];
        _sound = Sound();
        _ratio = [.. faults.Select(Ratio)];
    }

    /// <summary>The sign.</summary>
    public Sign Sign { get; }

    /// <summary>True when a fault says something about this sign.</summary>
    public bool Concerns(int fault) => _ratio[fault] is not null;

    /// <summary>P(outcome | these faults and no others).</summary>
    /// <param name="outcome">Index of the outcome.</param>
    /// <param name="discrete">Indices of the discrete faults present.</param>
    /// <param name="fouled">Foulings past their limits, a bit for each, counted from <paramref name="firstFouling"/>.</param>
    /// <param name="firstFouling">Index of the first fouling fault.</param>
    /// <param name="somethingWrong">True when something is wrong even if no fault of the list is present.</param>
    public double Probability(int outcome, ReadOnlySpan<int> discrete, ulong fouled = 0, int firstFouling = 0, bool somethingWrong = false)
    {
        var k = _usual.Length;
        Span<double> weight = stackalloc double[k];
        (discrete.IsEmpty && fouled == 0 && !somethingWrong ? _sound : WithFouling(fouled, firstFouling)).CopyTo(weight);
        foreach (var fault in discrete)
        {
            if (_ratio[fault] is not { } ratio) continue;
            for (var o = 0; o < weight.Length; o++) weight[o] *= ratio[o];
        }
        var sum = 0.0;
        foreach (var w in weight) sum += w;
        return (1 - Lapse) * weight[outcome] / sum + Lapse / k;
    }

    /// <summary>Unnormalised weights under a set of foulings, kept for the next hypothesis.</summary>
    private double[] WithFouling(ulong fouled, int firstFouling)
    {
        if (fouled == 0) return _usual;
        if (_fouled.TryGetValue(fouled, out var weights)) return weights;
        weights = (double[])_usual.Clone();
        for (var f = 0; fouled >> f != 0; f++)
        {
            if ((fouled >> f & 1) == 0 || _ratio[firstFouling + f] is not { } ratio) continue;
            for (var o = 0; o < weights.Length; o++) weights[o] *= ratio[o];
        }
        _fouled.Add(fouled, weights);
        return weights;
    }

    private double[] Sound()
    {
        var due = Sign.Id == Complaints.Sign ? Sign.Outcomes.ToList().FindIndex(o => o.Id == Complaints.Due) : -1;
        if (due < 0) return _usual;
        var rest = 1 - _usual[due];
        return [.. _usual.Select((u, o) => o == due ? SoundComplainsOfNothing : u * (1 - SoundComplainsOfNothing) / rest)];
    }

    private double[]? Ratio(Fault fault)
    {
        var stated = fault.Symptoms.Where(s => s.Sign == Sign.Id).ToArray();
        if (stated.Length == 0) return null;
        var p = new double[_usual.Length];
        Array.Fill(p, double.NaN);
        foreach (var symptom in stated)
        {
            p[Sign.IndexOf(symptom.Outcome)] = Math.Max(symptom.Probability, Least);
        }
        var left = Math.Max(1 - p.Where(double.IsFinite).Sum(), Least);
        var unstated = _usual.Where((_, o) => double.IsNaN(p[o])).Sum();
        for (var o = 0; o < p.Length; o++)
            p[o] = (double.IsNaN(p[o]) ? left * _usual[o] / unstated : p[o]) / _usual[o];
        return p;
    }
}
