// In which order should attempts be made, and what does that cost on average?
// Order by p/c: attempt i before j when p_i/c_i ≥ p_j/c_j. Expected cost = Σ_i c_i·(1 − Σ_{j<i} p_j).
// Lower bound: Σ_f p_f·min{c_a : a cures f} (whoever has fault f pays at least for the cheapest attempt that cures it).
// Optimum: E(S) = min_a [c_a(S)·B(S) + E(S ∪ a)], B(S) probability of being still broken once the attempts of S are made.
// Value of a question: E[cost without] − Σ_o P(o)·E[cost | o]; worth asking while its price is below that.
// Symbols: p probability, c cost, B share still broken; a cover's opening cost is added to the first attempt behind it.
// Validity: one fault present, attempts cure for certain, costs constant. Order by p/c is optimal only when moreover each
//           attempt cures one fault, none stands behind a cover and nothing is asked; otherwise it is an upper bound.
//           The optimum runs over all subsets: up to 20 attempts.
// Assumptions: whether the device works is seen at once and for nothing.
// Source: Kadane & Simon, Annals of Statistics 5 (1977); Heckerman, Breese & Rommelse, CACM 38(3), 1995; Jensen et al.,
//         AI EDAM 15 (2001); Vomlelová, Int. J. Intell. Syst. 18 (2003); Ottosen & Jensen (2010). From memory.
// Worked: p = (.5, .3, .2), c = (10, 4, 1): order 3-2-1, cost 1 + .8·4 + .5·10 = 9.2.
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Planning;

/// <summary>The mathematics of making attempts one after another until a device works.</summary>
public static class Troubleshooting
{
    private const int MostAttempts = 20;

    /// <summary>Attempts in falling order of probability over cost, each taken once at the start.</summary>
    /// <param name="problem">The problem.</param>
    public static int[] ByProbabilityOverCost(TroubleshootingProblem problem) =>
        [.. Enumerable.Range(0, problem.Attempts.Count).OrderByDescending(a => (1 - problem.Broken(problem.Attempts[a].Cures) - Missing(problem)) / problem.Attempts[a].Cost)];

    /// <summary>Expected cost of making the attempts in a given order, skipping those that can no longer help.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="order">Attempts in order; those left out are never made.</param>
    public static double ExpectedCost(TroubleshootingProblem problem, IReadOnlyList<int> order)
    {
        var (total, cured, open) = (0.0, 0UL, 0UL);
        foreach (var a in order)
        {
            var attempt = problem.Attempts[a];
            var broken = problem.Broken(cured) + Missing(problem);
            if ((attempt.Cures & ~cured) == 0) continue;
            total += CostOf(problem, attempt, ref open) * broken;
            cured |= attempt.Cures;
        }

        return total;
    }

    /// <summary>
    /// The greedy order: always the attempt, or the set of attempts behind one cover, with the most probability still to be
    /// cured for its cost.
    /// </summary>
    /// <param name="problem">The problem.</param>
    public static int[] Greedy(TroubleshootingProblem problem)
    {
        var left = Enumerable.Range(0, problem.Attempts.Count).ToList();
        var order = new List<int>();
        var (cured, open) = (0UL, 0UL);
        while (left.Count > 0)
        {
            var batch = left.Select(a => new[] { a }).Concat(Bundles(problem, left, cured, open))
                .OrderByDescending(b => Efficiency(problem, b, cured, open)).First();
            foreach (var a in batch)
            {
                order.Add(a);
                left.Remove(a);
                cured |= problem.Attempts[a].Cures;
                if (problem.Attempts[a].Behind >= 0) open |= 1UL << problem.Attempts[a].Behind;
            }
        }

        return [.. order];
    }

    /// <summary>A cost that no order can go below.</summary>
    /// <param name="problem">The problem.</param>
    public static double LowerBound(TroubleshootingProblem problem) => problem.Probabilities
        .Select((p, f) => p == 0 ? 0 : p * problem.Attempts.Where(a => (a.Cures >> f & 1) != 0).Min(a => a.Cost))
        .Sum();

    /// <summary>The least expected cost and an order that reaches it, by dynamic programming over subsets.</summary>
    /// <param name="problem">The problem; at most 20 attempts.</param>
    /// <exception cref="InputException">The problem has more than 20 attempts.</exception>
    public static (double Cost, int[] Order) Optimum(TroubleshootingProblem problem)
    {
        var n = problem.Attempts.Count;
        InputException.Require(n, 0, MostAttempts, "number of attempts", "", "Use the greedy order for larger problems.");
        var least = new double[1 << n];
        var first = new int[1 << n];
        for (var made = (1 << n) - 2; made >= 0; made--)
        {
            var (cured, open) = (0UL, 0UL);
            for (var a = 0; a < n; a++)
            {
                if ((made >> a & 1) == 0) continue;
                cured |= problem.Attempts[a].Cures;
                if (problem.Attempts[a].Behind >= 0) open |= 1UL << problem.Attempts[a].Behind;
            }

            var broken = problem.Broken(cured);
            (least[made], first[made]) = (broken <= 0 ? 0 : double.PositiveInfinity, -1);
            for (var a = 0; a < n && broken > 0; a++)
            {
                if ((made >> a & 1) != 0) continue;
                var opened = open;
                var cost = CostOf(problem, problem.Attempts[a], ref opened) * (broken + Missing(problem)) + least[made | 1 << a];
                if (cost < least[made]) (least[made], first[made]) = (cost, a);
            }
        }

        var order = new List<int>();
        for (var made = 0; made < (1 << n) - 1 && first[made] >= 0; made |= 1 << first[made]) order.Add(first[made]);
        return (least[0], [.. order]);
    }

    /// <summary>What the answer to a question saves, before its own price: it is worth asking while it costs less.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="answers">P(answer | fault), one row of one value per fault for each answer; columns sum to 1.</param>
    /// <exception cref="InputException">A row has the wrong length, or the answers of a fault do not sum to 1.</exception>
    public static double ValueOfQuestion(TroubleshootingProblem problem, IReadOnlyList<IReadOnlyList<double>> answers)
    {
        var n = problem.Probabilities.Count;
        if (answers.Any(a => a.Count != n))
            throw new InputException("answers", $"a row has not {n} values", "Give one probability per fault in each row.");
        for (var f = 0; f < n; f++)
            InputException.Require(answers.Sum(a => a[f]), 1 - 1e-9, 1 + 1e-9, $"answers of fault {f}", "", "Let the probabilities of the answers sum to 1.");

        var asked = 0.0;
        foreach (var answer in answers)
        {
            var joint = problem.Probabilities.Select((p, f) => p * answer[f]).ToArray();
            var p = joint.Sum();
            if (p > 0) asked += p * Optimum(new TroubleshootingProblem([.. joint.Select(x => x / p)], problem.Attempts, problem.OpeningCosts)).Cost;
        }

        return Optimum(problem).Cost - asked;
    }

    private static double Missing(TroubleshootingProblem problem) => Math.Max(0, 1 - problem.Broken(0));

    private static double CostOf(TroubleshootingProblem problem, Attempt attempt, ref ulong open)
    {
        if (attempt.Behind < 0 || (open >> attempt.Behind & 1) != 0) return attempt.Cost;
        open |= 1UL << attempt.Behind;
        return attempt.Cost + problem.OpeningCosts[attempt.Behind];
    }

    private static IEnumerable<int[]> Bundles(TroubleshootingProblem problem, List<int> left, ulong cured, ulong open)
    {
        for (var cover = 0; cover < problem.OpeningCosts.Count; cover++)
        {
            var behind = left.Where(a => problem.Attempts[a].Behind == cover)
                .OrderByDescending(a => Efficiency(problem, [a], cured, open | 1UL << cover)).ToArray();
            for (var size = 2; size <= behind.Length; size++) yield return behind[..size];
        }
    }

    private static double Efficiency(TroubleshootingProblem problem, int[] batch, ulong cured, ulong open)
    {
        var (cost, now) = (0.0, cured);
        foreach (var a in batch)
        {
            cost += CostOf(problem, problem.Attempts[a], ref open);
            now |= problem.Attempts[a].Cures;
        }

        return (problem.Broken(cured) - problem.Broken(now)) / cost;
    }
}
