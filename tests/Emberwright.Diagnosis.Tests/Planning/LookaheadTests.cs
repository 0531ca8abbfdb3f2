using CsCheck;
using Emberwright.Diagnosis.Planning;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Planning;

/// <summary>The planner's choice against the best policy there is, found by dynamic programming.</summary>
public class LookaheadTests(ITestOutputHelper output)
{
    private const int Problems = 500;
    private const double Rounding = 1e-9;

    private static readonly Gen<SmallProblem> Any =
        from faults in Gen.Double[0.02, 1].Array[3, 4]
        from own in Gen.Double[0.5, 20].Array[faults.Length]
        from wide in Gen.Select(Gen.Double[2, 30], Gen.Int[1, (1 << faults.Length) - 1]).Array[0, 1]
        from questions in Gen.Select(Gen.Double[0.1, 4], Gen.Double[0.02, 0.98].Array[faults.Length]).Array[0, 3]
        let sum = faults.Sum()
        select new SmallProblem(
            [.. faults.Select(p => p / sum)],
            [.. own.Select((c, f) => (c, 1UL << f)), .. wide.Select(w => (w.Item1, (ulong)w.Item2))],
            [.. questions]);

    private static readonly Gen<SmallProblem> WithoutQuestions =
        from faults in Gen.Double[0.02, 1].Array[2, 5]
        from own in Gen.Double[0.5, 20].Array[faults.Length]
        let sum = faults.Sum()
        select new SmallProblem([.. faults.Select(p => p / sum)], [.. own.Select((c, f) => (c, 1UL << f))], []);

    [Fact]
    public void Bound_is_at_most_the_optimum_and_the_optimum_at_most_any_policy() => Any.Sample(problem =>
    {
        var optimum = problem.Optimum;
        return problem.Bound <= optimum + Rounding && optimum <= problem.Policy(1) + Rounding && optimum <= problem.Policy(2) + Rounding;
    }, iter: 100, threads: 1);

    [Fact]
    public void With_one_attempt_per_fault_and_no_question_the_planner_is_exactly_optimal() => WithoutQuestions.Sample(
        problem => Math.Abs(problem.Policy(1) - problem.Optimum) < Rounding && Math.Abs(problem.Policy(2) - problem.Optimum) < Rounding, iter: 100, threads: 1);

    [Fact]
    public void Two_steps_ahead_cost_at_most_two_in_a_hundred_more_than_the_optimum()
    {
        var (one, two) = (new List<double>(), new List<double>());
        var pcg = new PCG(17, 4_711);
        for (var n = 0; n < Problems; n++)
        {
            var problem = Any.Generate(pcg, null, out _);
            var optimum = problem.Optimum;
            one.Add(problem.Policy(1) / optimum);
            two.Add(problem.Policy(2) / optimum);
        }

        output.WriteLine($"{Problems} problems. One step ahead: mean {one.Average():F4}, worst {one.Max():F3}. Two steps: mean {two.Average():F4}, worst {two.Max():F3}.");
        Assert.True(two.Average() <= 1.02, $"mean {two.Average():F4}, worst {two.Max():F3}");
        Assert.True(two.Average() <= one.Average() + Rounding);
        Assert.All(two, ratio => Assert.InRange(ratio, 1 - Rounding, 1.5));
    }

    [Fact]
    public void Looking_further_ahead_never_raises_a_total_and_gives_the_same_each_time()
    {
        var catalogue = Catalogue.For(PatternIds.Damper);
        var predictive = new PlainPredictive(catalogue, ("lid-switch-open", .3), ("high-limit-tripped", .2), ("vacuum-switch-open", .15), ("feed-motor-dead", .15), ("feed-jam", .1), ("hopper-empty", .1));
        var situation = new Situation([new SignEvidence("c", 0, Complaints.Sign, Complaints.NoFeed)], []);
        var planner = new Planner(catalogue, Tariff.Default);
        var plans = planner.Improving(predictive, situation).ToList();

        Assert.Equal(planner.Next(predictive, situation).Best, plans[0].Best);
        Assert.True(plans.Count > 8);
        Assert.True(plans[^1].Best!.ExpectedTotal <= plans[0].Best!.ExpectedTotal + Rounding);
        Assert.Equal(plans[^1].Best!.Because, planner.Improving(predictive, situation).Last().Best!.Because);
    }
}
