using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Planning;

public class PlannerTests
{
    private static readonly Catalogue Damper = Catalogue.For(PatternIds.Damper);
    private static readonly (string, double)[] NoFeed =
    [
        ("lid-switch-open", .3), ("high-limit-tripped", .2), ("vacuum-switch-open", .15), ("feed-motor-dead", .15), ("feed-jam", .1), ("hopper-empty", .1),
    ];

    private static SignEvidence Sign(string sign, string outcome) => new(sign, 0, sign, outcome);

    private static NextCheck Next(Catalogue catalogue, Situation situation, params (string, double)[] weights) =>
        new Planner(catalogue, Tariff.Default).Next(new PlainPredictive(catalogue, weights), situation);

    private static IEnumerable<RecommendedCheck> All(NextCheck next) => next.Best is { } best ? [best, .. next.Alternatives] : next.Alternatives;

    public static TheoryData<string> Patterns => [.. PatternIds.All];

    [Theory, MemberData(nameof(Patterns))]
    public void No_part_is_replaced_before_it_is_measured(string pattern)
    {
        var catalogue = Catalogue.For(pattern);
        foreach (var fault in catalogue.Faults.Where(f => f.Remedy.Kind == RemedyKind.Replace))
        {
            var next = Next(catalogue, new Situation([Sign(Complaints.Sign, Complaints.NoFeed)], []), (fault.Id, .97), ("", .03));
            Assert.DoesNotContain(All(next), c => catalogue.Action(c.Check)?.Kind == RemedyKind.Replace);
        }
    }

    [Fact]
    public void A_part_that_is_measured_and_found_bad_is_replaced()
    {
        var open = new ReadingEvidence("r", 0, new(Stove.Measure.Resistance, "feed-motor", Stove.Condition.BlowerOff), double.PositiveInfinity);
        var next = Next(Damper, new Situation([Sign(Complaints.Sign, Complaints.NoFeed), open], []), ("feed-motor-dead", .97), ("feed-jam", .03));
        Assert.Equal("replace-feed-motor", next.Best!.Check);
    }

    [Fact]
    public void A_safety_stop_comes_first()
    {
        var stop = new StandingStop("room-co", "Stop, ventilate, everyone out.", "e1", "a technician with a new measurement", "common practice, no source");
        var next = Next(Damper, new Situation([], [stop]), NoFeed);
        Assert.Equal(stop.Words, next.Best!.Name);
        Assert.All(next.Alternatives, c => Assert.False(Damper.Check(c.Check)?.Needs.HasFlag(CheckNeeds.Burning) ?? false));
        Assert.Empty(Next(Damper, new Situation([], [stop], OnSite: false), NoFeed).Alternatives);
    }

    [Theory, MemberData(nameof(Patterns))]
    public void On_the_telephone_only_what_needs_nobody_there_is_offered(string pattern)
    {
        var catalogue = Catalogue.For(pattern);
        var next = Next(catalogue, new Situation([Sign(Complaints.Sign, Complaints.NoFeed)], [], OnSite: false), ("feed-motor-dead", .4), ("hopper-bridging", .3), ("fuse-blown", .3));
        Assert.NotNull(next.Best);
        Assert.All(All(next), c => Assert.Equal(CheckNeeds.None, catalogue.Check(c.Check)!.Needs));
    }

    [Fact]
    public void Work_behind_panels_waits_until_the_stove_is_made_safe()
    {
        var next = Next(Damper, new Situation([Sign(Complaints.Sign, Complaints.NoLight)], [], MadeSafe: false), ("igniter-passage-ashed", .95), ("", .05));
        Assert.Equal(Planner.MakeSafe, next.Best!.Check);
        Assert.Contains(Cautions.MakeSafe, next.Best.Cautions);
    }

    [Fact]
    public void A_limit_is_not_reset_before_its_cause_has_been_looked_for()
    {
        Assert.DoesNotContain(
            All(Next(Damper, new Situation([Sign(Complaints.Sign, Complaints.NoFeed)], []), ("high-limit-tripped", .97), ("room-blower-dirty", .03))),
            c => c.Check is "reset-high-limit" or "cure-high-limit-tripped");
        var looked = Next(Damper, new Situation([Sign(Complaints.Sign, Complaints.NoFeed), Sign("room-air-look", "clean")], []), ("high-limit-tripped", .97), ("", .03));
        Assert.Contains(All(looked), c => c.Check is "reset-high-limit" or "cure-high-limit-tripped");
        Assert.Contains(Cautions.FindWhy, All(looked).First(c => c.Check is "reset-high-limit" or "cure-high-limit-tripped").Cautions);
    }

    [Fact]
    public void What_is_known_is_not_asked_again()
    {
        var first = Next(Damper, new Situation([Sign(Complaints.Sign, Complaints.NoFeed)], []), NoFeed).Best!;
        var check = Damper.Check(first.Check)!;
        Evidence[] known =
        [
            Sign(Complaints.Sign, Complaints.NoFeed),
            .. check.Signs.Select(s => Sign(s, Damper.Sign(s)!.Outcomes[0].Id)),
            .. check.Reads.Select((r, i) => new ReadingEvidence($"r{i}", 0, r, 0)),
        ];
        Assert.NotEqual(first.Check, Next(Damper, new Situation(known, []), NoFeed).Best!.Check);
    }

    [Fact]
    public void Between_two_switches_in_series_the_meter_decides_and_the_reason_says_so()
    {
        var next = Next(Damper, new Situation([Sign(Complaints.Sign, Complaints.NoFeed), Sign("onset", "sudden")], []), ("lid-switch-open", .5), ("high-limit-bad", .5));
        Assert.Contains(All(next), c => c.Check is "lid-switch-voltage" or "high-limit-voltage" or "lid-plunger");
        Assert.Contains("lid switch open (50 %)", next.Best!.Because, StringComparison.Ordinal);
        Assert.Contains("high-limit disc bad (50 %)", next.Best.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void After_a_deed_one_sees_first_whether_it_runs()
    {
        Evidence[] done = [Sign(Complaints.Sign, Complaints.NoFeed), new ActionEvidence("a", 1, "cure-feed-jam")];
        Assert.Equal("test-run", Next(Damper, new Situation(done, []), ("", .6), ("feed-motor-weak", .2), ("auger-bearing-worn", .2)).Best!.Check);
    }

    [Fact]
    public void The_same_question_has_the_same_answer()
    {
        var situation = new Situation([Sign(Complaints.Sign, Complaints.NoFeed)], []);
        Assert.Equal(Next(Damper, situation, NoFeed).Best!.Because, Next(Damper, situation, NoFeed).Best!.Because);
    }

    [Fact] // 1 + .8·4 + .5·10, remedies free; the order is found from the steps given in any order.
    public void The_fixed_order_of_three_faults_costs_9_2()
    {
        var plan = new RepairPlan([0b001, 0b010, 0b100], [0, 0, 0], [0, 0, 0], [new(10, 0b001), new(4, 0b010), new(1, 0b100)], 0);
        Assert.Equal(9.2, plan.ExpectedCost([.5, .3, .2], 0, []), 1e-12);
    }

    [Fact] // remedies 50, 20, 30 are spent only on what is there: 9.2 + .5·50 + .3·20 + .2·30
    public void Remedies_are_paid_only_for_what_is_there()
    {
        var plan = new RepairPlan([0b001, 0b010, 0b100], [0, 0, 0], [50, 20, 30], [new(10, 0b001), new(4, 0b010), new(1, 0b100)], 0);
        Assert.Equal(46.2, plan.ExpectedCost([.5, .3, .2], 0, []), 1e-12);
    }
}
