using CsCheck;
using Emberwright.Diagnosis.Planning;
using Emberwright.Stove;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Planning;

public class TroubleshootingPropertyTests
{
    private const double Rounding = 1e-9;

    private static readonly Gen<TroubleshootingProblem> Problems =
        from faults in Gen.Double[0.01, 1].Array[2, 6]
        from attempts in Gen.Select(Gen.Double[0.1, 20], Gen.Int[1, (1 << faults.Length) - 1], Gen.Int[-1, 1]).Array[1, 5]
        from opening in Gen.Double[0, 10].Array[2]
        let sum = faults.Sum()
        select new TroubleshootingProblem(
            [.. faults.Select(p => p / sum)],
            [
                .. attempts.Select(a => new Attempt(a.Item1, (ulong)a.Item2, a.Item3)),
                new Attempt(25, (1UL << faults.Length) - 1),
            ],
            opening);

    [Fact]
    public void Bound_is_at_most_the_optimum_and_the_optimum_at_most_any_policy() => Problems.Sample(problem =>
    {
        var (optimum, order) = Troubleshooting.Optimum(problem);
        var greedy = Troubleshooting.ExpectedCost(problem, Troubleshooting.Greedy(problem));
        var fixedOrder = Troubleshooting.ExpectedCost(problem, Troubleshooting.ByProbabilityOverCost(problem));
        return Troubleshooting.LowerBound(problem) <= optimum + Rounding
            && optimum <= greedy + Rounding
            && optimum <= fixedOrder + Rounding
            && Math.Abs(optimum - Troubleshooting.ExpectedCost(problem, order)) < Rounding;
    });

    [Fact]
    public void The_optimum_is_the_best_of_all_permutations() => Problems.Sample(problem =>
        Math.Abs(Troubleshooting.Optimum(problem).Cost
            - Permutations([.. Enumerable.Range(0, problem.Attempts.Count)]).Min(o => Troubleshooting.ExpectedCost(problem, o))) < Rounding);

    [Fact]
    public void With_one_attempt_per_fault_no_permutation_beats_the_order_by_p_over_c() =>
        Gen.Select(Gen.Double[0.01, 1], Gen.Double[0.1, 20]).Array[1, 6].Sample(pairs =>
        {
            var sum = pairs.Sum(p => p.Item1);
            var problem = TroubleshootingProblem.OneToOne([.. pairs.Select(p => p.Item1 / sum)], [.. pairs.Select(p => p.Item2)]);
            var ours = Troubleshooting.ExpectedCost(problem, Troubleshooting.ByProbabilityOverCost(problem));
            return Permutations([.. Enumerable.Range(0, pairs.Length)]).All(o => ours <= Troubleshooting.ExpectedCost(problem, o) + Rounding);
        });

    [Fact]
    public void An_answer_never_has_a_negative_value_and_never_more_than_a_perfect_one() =>
        Gen.Select(Problems, Gen.Double[0, 1].Array[6]).Sample((problem, answer) =>
        {
            var n = problem.Probabilities.Count;
            var value = Troubleshooting.ValueOfQuestion(problem, [answer[..n], [.. answer[..n].Select(p => 1 - p)]]);
            var perfect = Troubleshooting.ValueOfQuestion(problem, [.. Enumerable.Range(0, n).Select(f => (IReadOnlyList<double>)[.. Enumerable.Range(0, n).Select(g => g == f ? 1.0 : 0)])]);
            return value >= -Rounding && value <= perfect + Rounding;
        });

    [Fact]
    public void Impossible_problems_are_refused_with_the_field_named()
    {
        Assert.Contains("probability", Assert.Throws<InputException>(() => TroubleshootingProblem.OneToOne([1.2], [1])).Message, StringComparison.Ordinal);
        Assert.Contains("cost", Assert.Throws<InputException>(() => TroubleshootingProblem.OneToOne([.5], [0])).Message, StringComparison.Ordinal);
        Assert.Contains("attempts", Assert.Throws<InputException>(() => new TroubleshootingProblem([.5, .5], [new(1, 0b01)])).Message, StringComparison.Ordinal);
        Assert.Contains("sum of probabilities", Assert.Throws<InputException>(() => TroubleshootingProblem.OneToOne([.9, .9], [1, 1])).Message, StringComparison.Ordinal);
    }

    private static IEnumerable<int[]> Permutations(int[] items) => items.Length <= 1
        ? [items]
        : items.SelectMany(first => Permutations([.. items.Where(i => i != first)]).Select(rest => (int[])[first, .. rest]));
}
