// What does it cost, on average, to get the stove going from here by looking and mending in the best fixed order?
// V(w) = Σ_i c_i · P(not yet solved before i) + Σ_f P(f)·m_f + Σ_k w_k·h_k·u, the steps i in falling order of p_i/c_i.
// Symbols: w weights of the explanations; c_i cost of finding out about a fault (of cleaning, for dirt); m_f cost of its remedy,
//          spent only when it is there; p_i share of w that step i would solve; u cost of leaving unsolved;
//          h_k share of explanation k that none of the steps solves (1 for a cause that is not listed).
// Validity: any number of explanations of up to 64 different faults; an explanation is solved when all its faults are cured.
//           A step that costs more than what it saves of u is left out, and what it would have solved stays unsolved.
// Assumptions: each step finds its fault when it is there; one that has been looked for and is still open is only settled by its
//              remedy, then paid whether it is there or not; costs do not depend on the order; no further question is asked.
// Source: order by p/c: Kadane & Simon (1977); expected cost of repair: Heckerman, Breese & Rommelse, CACM 38(3), 1995.
// Worked: p = (.5, .3, .2), c = (10, 4, 1), remedies free: order 3-2-1, 1 + 0.8·4 + 0.5·10 = 9.2.
using System.Numerics;

namespace Emberwright.Diagnosis.Planning;

/// <summary>A step of the fixed order: it finds and cures a set of faults at a cost that is spent in any case.</summary>
/// <param name="Cost">Cost of the step, above 0.</param>
/// <param name="Mask">Faults it deals with, as bits.</param>
/// <param name="Needs">What must be prepared first, as bits; each preparation is paid once.</param>
/// <param name="Trying">Cost of its remedy, spent in any case once it has been looked for: what a look has left open only trying it settles.</param>
internal readonly record struct RepairStep(double Cost, ulong Mask, int Needs = 0, double Trying = 0);

/// <summary>Expected cost of the fixed order over a set of explanations.</summary>
internal sealed class RepairPlan
{
    private const double Found = 0.5;
    private const double Solved = 1e-4;

    private readonly ulong[] _faultsOf;
    private readonly double[] _hopeless;
    private readonly double[] _remedy;
    private readonly double _unsolved;
    private readonly double[] _preparations;
    private readonly int[][] _holding;
    private readonly double[][] _share;
    private readonly double[] _keys;
    private readonly int[] _order;
    private readonly ulong[] _left;

    /// <summary>Sets up the plan.</summary>
    /// <param name="faultsOf">Faults of each explanation, as bits.</param>
    /// <param name="hopeless">Share of each explanation, 0…1, that stays unsolved whatever is done.</param>
    /// <param name="remedy">Cost of the remedy of each fault, by bit.</param>
    /// <param name="steps">The steps.</param>
    /// <param name="unsolved">Cost of leaving with the cause not found.</param>
    /// <param name="preparations">Cost of each preparation (panels off, a fire), by bit.</param>
    public RepairPlan(ulong[] faultsOf, double[] hopeless, double[] remedy, IReadOnlyList<RepairStep> steps, double unsolved, params double[] preparations)
    {
        (_faultsOf, _hopeless, _remedy, Steps, _unsolved, _preparations) = (faultsOf, hopeless, remedy, [.. steps], unsolved, preparations);
        _holding = [.. Steps.Select(s => Enumerable.Range(0, faultsOf.Length).Where(k => (faultsOf[k] & s.Mask) != 0).ToArray())];
        _share = [.. Steps.Select((s, i) => _holding[i].Select(k => (1 - hopeless[k]) * BitOperations.PopCount(faultsOf[k] & s.Mask) / BitOperations.PopCount(faultsOf[k])).ToArray())];
        _keys = new double[Steps.Length];
        _order = new int[Steps.Length];
        _left = new ulong[faultsOf.Length];
    }

    /// <summary>The steps.</summary>
    public RepairStep[] Steps { get; }

    /// <summary>The steps in their order, as long as they save what they cost.</summary>
    /// <param name="weights">Weights of the explanations, summing to one.</param>
    /// <param name="known">Steps whose finding out is already paid for; may be empty.</param>
    /// <param name="prepared">What is prepared already, as bits.</param>
    public int[] Order(ReadOnlySpan<double> weights, ReadOnlySpan<bool> known, int prepared)
    {
        var worth = 0;
        var ranked = Rank(weights, 0, known, prepared);
        while (worth < ranked && (_unsolved <= 0 || -_keys[worth] * _unsolved > 1)) worth++;
        return _order[..worth];
    }

    /// <summary>Expected cost from here.</summary>
    /// <param name="weights">Weights of the explanations, summing to one.</param>
    /// <param name="cured">Faults cured already, as bits.</param>
    /// <param name="known">Steps whose finding out is already paid for; may be empty.</param>
    /// <param name="prepared">What is prepared already, as bits.</param>
    public double ExpectedCost(ReadOnlySpan<double> weights, ulong cured, ReadOnlySpan<bool> known, int prepared = 0)
    {
        var (total, open, tried) = (0.0, 0.0, 0UL);
        for (var s = 0; s < known.Length; s++)
        {
            if (known[s] && Steps[s].Trying > 0) tried |= Steps[s].Mask;
        }

        for (var k = 0; k < weights.Length; k++)
        {
            var left = _left[k] = _faultsOf[k] & ~cured;
            total += weights[k] * _hopeless[k] * _unsolved;
            open += left != 0 ? weights[k] : weights[k] * _hopeless[k];
            for (var rest = left & ~tried; rest != 0; rest &= rest - 1) total += weights[k] * _remedy[BitOperations.TrailingZeroCount(rest)];
        }

        var ranked = Rank(weights, cured, known, prepared);
        for (var i = 0; i < ranked && open > Solved; i++)
        {
            var s = _order[i];
            if (_unsolved > 0 && -_keys[i] * _unsolved < open) break;
            var (solves, finds) = (0.0, false);
            foreach (var k in _holding[s])
            {
                if ((_left[k] & Steps[s].Mask) == 0) continue;
                finds = true;
                _left[k] &= ~Steps[s].Mask;
                if (_left[k] == 0) solves += weights[k] * (1 - _hopeless[k]);
            }

            if (!finds) continue;
            total += CostOf(s, known, prepared) * open;
            if (!IsKnown(s, known)) prepared |= Steps[s].Needs;
            open -= solves;
        }

        for (var k = 0; k < weights.Length; k++)
        {
            if (_left[k] != 0) total += weights[k] * (1 - _hopeless[k]) * _unsolved;
        }

        return total;
    }

    /// <summary>Orders the steps that solve anything by what they solve for their cost, and says how many they are.</summary>
    private int Rank(ReadOnlySpan<double> weights, ulong cured, ReadOnlySpan<bool> known, int prepared)
    {
        var ranked = 0;
        for (var s = 0; s < Steps.Length; s++)
        {
            var solves = 0.0;
            var (holding, share) = (_holding[s], _share[s]);
            for (var j = 0; j < holding.Length; j++)
            {
                var k = holding[j];
                if (cured == 0)
                {
                    solves += weights[k] * share[j];
                    continue;
                }

                var left = _faultsOf[k] & ~cured;
                var hit = left & Steps[s].Mask;
                if (hit != 0) solves += weights[k] * (1 - _hopeless[k]) * BitOperations.PopCount(hit) / BitOperations.PopCount(left);
            }

            if (solves <= 0) continue;
            _keys[ranked] = -solves / CostOf(s, known, prepared);
            _order[ranked++] = s;
        }

        Array.Sort(_keys, _order, 0, ranked);
        return ranked;
    }

    private static bool IsKnown(int step, ReadOnlySpan<bool> known) => known.Length > 0 && known[step];

    private double CostOf(int step, ReadOnlySpan<bool> known, int prepared)
    {
        if (IsKnown(step, known)) return Math.Max(Found, Steps[step].Trying);
        var cost = Steps[step].Cost;
        for (var p = 0; p < _preparations.Length; p++) cost += ((Steps[step].Needs & ~prepared) >> p & 1) * _preparations[p];
        return cost;
    }
}
