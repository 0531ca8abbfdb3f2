// What does it cost, on average, to get the stove going from here by looking and mending in the best fixed order?
// V(w) = Σ_i c_i · P(not yet solved before i) + Σ_f P(f)·m_f + P(unlisted)·u, the steps i in falling order of p_i/c_i.
// Symbols: w weights of the explanations; c_i cost of finding out about a fault (of cleaning, for dirt); m_f cost of its remedy,
//          spent only when it is there; p_i share of w that step i would solve; u cost of leaving unsolved.
// Validity: any number of explanations of up to 64 different faults; an explanation is solved when all its faults are cured.
//           A step that costs more than what it saves of u is left out, and what it would have solved stays unsolved.
// Assumptions: each step finds its fault when it is there; costs do not depend on the order; no further question is asked
//              (so V is an upper bound for a planner that does ask).
// Source: order by p/c: Kadane & Simon (1977); expected cost of repair: Heckerman, Breese & Rommelse, CACM 38(3), 1995.
// Worked: p = (.5, .3, .2), c = (10, 4, 1), remedies free: order 3-2-1, 1 + 0.8·4 + 0.5·10 = 9.2.
using System.Numerics;

namespace Emberwright.Diagnosis.Planning;

/// <summary>A step of the fixed order: it finds and cures a set of faults at a cost that is spent in any case.</summary>
/// <param name="Cost">Cost of the step, above 0.</param>
/// <param name="Mask">Faults it deals with, as bits.</param>
/// <param name="Needs">What must be prepared first, as bits; each preparation is paid once.</param>
internal readonly record struct RepairStep(double Cost, ulong Mask, int Needs = 0);

/// <summary>Expected cost of the fixed order over a set of explanations.</summary>
internal sealed class RepairPlan
{
    private readonly ulong[] _faultsOf;
    private readonly bool[] _unlisted;
    private readonly double[] _remedy;
    private readonly double _unsolved;
    private readonly double[] _preparations;
    private readonly double[] _ratio;
    private readonly double[] _keys;
    private readonly int[] _order;

    /// <summary>Sets up the plan.</summary>
    /// <param name="faultsOf">Faults of each explanation, as bits.</param>
    /// <param name="unlisted">Whether each explanation holds an unlisted cause.</param>
    /// <param name="remedy">Cost of the remedy of each fault, by bit.</param>
    /// <param name="steps">The steps.</param>
    /// <param name="unsolved">Cost of leaving with the cause not found.</param>
    /// <param name="preparations">Cost of each preparation (panels off, a fire), by bit.</param>
    public RepairPlan(ulong[] faultsOf, bool[] unlisted, double[] remedy, IReadOnlyList<RepairStep> steps, double unsolved, params double[] preparations)
    {
        (_faultsOf, _unlisted, _remedy, Steps, _unsolved, _preparations) = (faultsOf, unlisted, remedy, [.. steps], unsolved, preparations);
        _ratio = new double[Steps.Length];
        _keys = new double[Steps.Length];
        _order = new int[Steps.Length];
    }

    /// <summary>The steps.</summary>
    public RepairStep[] Steps { get; }

    /// <summary>Expected cost from here.</summary>
    /// <param name="weights">Weights of the explanations, summing to one.</param>
    /// <param name="cured">Faults cured already, as bits.</param>
    /// <param name="known">Steps whose finding out is already paid for, as bits by step; may be empty.</param>
    /// <param name="prepared">What is prepared already, as bits.</param>
    public double ExpectedCost(ReadOnlySpan<double> weights, ulong cured, ReadOnlySpan<bool> known, int prepared = 0)
    {
        var total = 0.0;
        var open = 0.0;
        for (var k = 0; k < weights.Length; k++)
        {
            var left = _faultsOf[k] & ~cured;
            if (_unlisted[k]) total += weights[k] * _unsolved;
            if (left != 0 || _unlisted[k]) open += weights[k];
            for (var rest = left; rest != 0; rest &= rest - 1) total += weights[k] * _remedy[BitOperations.TrailingZeroCount(rest)];
        }

        Rank(weights, cured, known, prepared);
        for (var i = 0; i < _order.Length && open > 1e-4; i++)
        {
            var s = _order[i];
            if (_ratio[s] >= 0) break;
            if ((Steps[s].Mask & ~cured) == 0) continue;
            if (_unsolved > 0 && -_ratio[s] * _unsolved < open) break;
            total += CostOf(s, known, prepared) * open;
            if (!IsKnown(s, known)) prepared |= Steps[s].Needs;
            cured |= Steps[s].Mask;
            open = 0;
            for (var k = 0; k < weights.Length; k++)
            {
                if ((_faultsOf[k] & ~cured) != 0 || _unlisted[k]) open += weights[k];
            }
        }

        for (var k = 0; k < weights.Length; k++)
        {
            if ((_faultsOf[k] & ~cured) != 0 && !_unlisted[k]) total += weights[k] * _unsolved;
        }

        return total;
    }

    private void Rank(ReadOnlySpan<double> weights, ulong cured, ReadOnlySpan<bool> known, int prepared)
    {
        for (var s = 0; s < Steps.Length; s++)
        {
            var solves = 0.0;
            for (var k = 0; k < weights.Length; k++)
            {
                var left = _faultsOf[k] & ~cured;
                var hit = left & Steps[s].Mask;
                if (hit != 0) solves += hit == left ? weights[k] : weights[k] * BitOperations.PopCount(hit) / BitOperations.PopCount(left);
            }

            _ratio[s] = -solves / CostOf(s, known, prepared);
            _order[s] = s;
        }

        _ratio.CopyTo(_keys, 0);
        Array.Sort(_keys, _order);
    }

    private static bool IsKnown(int step, ReadOnlySpan<bool> known) => known.Length > 0 && known[step];

    private double CostOf(int step, ReadOnlySpan<bool> known, int prepared)
    {
        if (IsKnown(step, known)) return 0.5;
        var cost = Steps[step].Cost;
        for (var p = 0; p < _preparations.Length; p++) cost += ((Steps[step].Needs & ~prepared) >> p & 1) * _preparations[p];
        return cost;
    }
}
