// Source: the worked examples of decision-theoretic troubleshooting as remembered, not read:
//   order by p/c: Kadane & Simon, Annals of Statistics 5 (1977); Heckerman, Breese & Rommelse, CACM 38(3) (1995)
//   dependent attempts and cost clusters: Vomlelová (2003), Ottosen & Jensen (2010), Langseth & Jensen (2001)
// Values are exact arithmetic on the stated figures; tolerance 1e-12 covers rounding only. Each is redone by hand beside it.
using Emberwright.Diagnosis.Planning;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Published;

public class TroubleshootingLiteratureTests
{
    private static readonly TroubleshootingProblem Three = TroubleshootingProblem.OneToOne([.5, .3, .2], [10, 4, 1]);

    // Two attempts overlap with a third that looks best at first: faults .1/.4/.4/.1.
    private static readonly TroubleshootingProblem Overlapping =
        new([.1, .4, .4, .1], [new(2, 0b0011), new(3, 0b0110), new(2, 0b1100)]);

    // A cover (2) hides two attempts of .35 at 1 each; .3 at 2 lies outside.
    private static readonly TroubleshootingProblem Covered =
        new([.3, .35, .35], [new(2, 0b001), new(1, 0b010, 0), new(1, 0b100, 0)], [2]);

    [Fact]
    public void Order_by_probability_over_cost_of_the_three_faults_is_3_2_1() =>
        Assert.Equal([2, 1, 0], Troubleshooting.ByProbabilityOverCost(Three));

    [Fact] // 1 + .8·4 + .5·10
    public void Its_expected_cost_is_9_2() => Assert.Equal(9.2, Troubleshooting.ExpectedCost(Three, [2, 1, 0]), 1e-12);

    [Fact] // 10 + .5·4 + .2·1
    public void The_order_1_2_3_costs_12_2() => Assert.Equal(12.2, Troubleshooting.ExpectedCost(Three, [0, 1, 2]), 1e-12);

    [Fact]
    public void For_one_attempt_per_fault_the_optimum_is_the_order_by_p_over_c() =>
        Assert.Equal(9.2, Troubleshooting.Optimum(Three).Cost, 1e-12);

    [Fact] // 3 + .2·2 + .1·2
    public void Overlapping_attempts_cost_3_6_greedily() =>
        Assert.Equal(3.6, Troubleshooting.ExpectedCost(Overlapping, Troubleshooting.Greedy(Overlapping)), 1e-12);

    [Fact] // 2 + .5·2
    public void Overlapping_attempts_cost_3_0_at_best() => Assert.Equal(3.0, Troubleshooting.Optimum(Overlapping).Cost, 1e-12);

    [Fact] // .1·2 + .4·2 + .4·2 + .1·2
    public void Overlapping_attempts_are_bounded_by_2_0() => Assert.Equal(2.0, Troubleshooting.LowerBound(Overlapping), 1e-12);

    [Fact] // (2 + 1) + .65·1 + .3·2; outside first would be 2 + .7·3 + .35·1 = 4.45
    public void Behind_a_cover_the_best_costs_4_25()
    {
        Assert.Equal(4.25, Troubleshooting.Optimum(Covered).Cost, 1e-12);
        Assert.Equal(4.25, Troubleshooting.ExpectedCost(Covered, Troubleshooting.Greedy(Covered)), 1e-12);
        Assert.Equal(4.45, Troubleshooting.ExpectedCost(Covered, [0, 1, 2]), 1e-12);
    }

    [Fact] // without: 10 + .5·10 = 15; with a perfect answer: 10
    public void A_perfect_question_between_two_equal_faults_is_worth_asking_below_5() =>
        Assert.Equal(5, Troubleshooting.ValueOfQuestion(TroubleshootingProblem.OneToOne([.5, .5], [10, 10]), [[1, 0], [0, 1]]), 1e-12);
}
