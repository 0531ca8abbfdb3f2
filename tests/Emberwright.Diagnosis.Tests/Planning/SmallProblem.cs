using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;

namespace Emberwright.Diagnosis.Tests.Planning;

/// <summary>
/// A problem small enough to be solved exactly: one of a few faults is present; attempts cure for certain and are seen to
/// help at once; questions have two answers. The planner's own looking ahead runs on it, and dynamic programming over
/// everything that can be known and done gives the best policy there is.
/// </summary>
internal sealed class SmallProblem : IBoard
{
    private readonly double[] _probabilities;
    private readonly (double Cost, ulong Cures)[] _attempts;
    private readonly (double Cost, double[] Yes)[] _questions;
    private readonly RepairPlan _plan;

    public SmallProblem(double[] probabilities, (double Cost, ulong Cures)[] attempts, (double Cost, double[] Yes)[] questions)
    {
        (_probabilities, _attempts, _questions) = (probabilities, attempts, questions);
        _plan = new RepairPlan(
            [.. probabilities.Select((_, f) => 1UL << f)], new double[probabilities.Length], new double[probabilities.Length],
            [.. attempts.Select(a => new RepairStep(a.Cost, a.Cures))], 0);
    }

    public Stand Start => new(_probabilities, 0, [], 0);

    public double CostOf(Option option, Stand stand) => option.Cost;

    public double Remaining(Stand stand) => stand.Weights.Sum() < 1e-12 ? 0 : _plan.ExpectedCost(stand.Weights, stand.Cured, []);

    public IEnumerable<(double Probability, Stand After, int Result)> Results(Option option, Stand stand)
    {
        if (option.Id[0] == 'a')
        {
            var left = stand.Weights.Select((w, f) => (option.Cures >> f & 1) != 0 ? 0 : w).ToArray();
            var open = left.Sum();
            yield return (1 - open, new Stand(new double[left.Length], stand.Cured, [], 0), 0);
            if (open > 1e-12) yield return (open, new Stand([.. left.Select(w => w / open)], stand.Cured | option.Cures, [], 0), 1);
            yield break;
        }

        var yes = _questions[option.Id[1] - '0'].Yes;
        for (var r = 0; r < 2; r++)
        {
            var joint = stand.Weights.Select((w, f) => w * (r == 0 ? yes[f] : 1 - yes[f])).ToArray();
            var p = joint.Sum();
            if (p > 1e-12) yield return (p, new Stand([.. joint.Select(w => w / p)], stand.Cured, [], 0), r);
        }
    }

    /// <summary>Nobody who has a fault can pay less than for the cheapest attempt that cures it.</summary>
    public double Bound => _probabilities.Select((p, f) => p * _attempts.Where(a => (a.Cures >> f & 1) != 0).Min(a => a.Cost)).Sum();

    /// <summary>Expected cost of the best policy, by recursion over everything that can be asked and tried.</summary>
    public double Optimum => Best(Start, 0);

    /// <summary>Expected cost when the planner chooses each step anew, looking so many steps ahead.</summary>
    public double Policy(int depth) => Follow(Start, 0, depth);

    private double Best(Stand stand, int asked)
    {
        if (stand.Weights.Sum() < 1e-12) return 0;
        return Open(stand, asked).Min(o => o.Cost + Results(o, stand).Sum(r => r.Probability * Best(r.After, asked | Asked(o))));
    }

    private double Follow(Stand stand, int asked, int depth)
    {
        if (stand.Weights.Sum() < 1e-12) return 0;
        var here = new From(this, stand);
        List<Option> options = [.. Open(stand, asked).Select(o => o with { Total = o.Cost + Results(o, stand).Sum(r => r.Probability * Remaining(r.After)) })];
        IReadOnlyList<Option> weighed = depth == 1 ? options : new Lookahead(here).Over(options, o => o.Total).OfType<IReadOnlyList<Option>>().Last();
        var chosen = weighed.OrderBy(o => depth > 1 && !o.IsDeep).ThenBy(o => o.Total).ThenBy(o => o.Id, StringComparer.Ordinal).First();
        return chosen.Cost + Results(chosen, stand).Sum(r => r.Probability * Follow(r.After, asked | Asked(chosen), depth));
    }

    private IEnumerable<Option> Open(Stand stand, int asked)
    {
        for (var a = 0; a < _attempts.Length; a++)
        {
            if (stand.Weights.Where((_, f) => (_attempts[a].Cures >> f & 1) != 0).Sum() > 1e-12) yield return Make($"a{a}", _attempts[a].Cost, _attempts[a].Cures);
        }

        for (var q = 0; q < _questions.Length; q++)
        {
            if ((asked >> q & 1) == 0) yield return Make($"q{q}", _questions[q].Cost, 0);
        }
    }

    private static int Asked(Option option) => option.Id[0] == 'q' ? 1 << option.Id[1] - '0' : 0;

    private static Option Make(string id, double cost, ulong cures) => new(id, id, cost, 0, 0, CheckNeeds.None, [], null, null, null, false, null, cures, null);

    /// <summary>The same problem, seen from where things stand now.</summary>
    private sealed class From(SmallProblem problem, Stand start) : IBoard
    {
        public Stand Start => start;

        public double CostOf(Option option, Stand stand) => problem.CostOf(option, stand);

        public IEnumerable<(double Probability, Stand After, int Result)> Results(Option option, Stand stand) => problem.Results(option, stand);

        public double Remaining(Stand stand) => problem.Remaining(stand);
    }
}
