using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Planning;

/// <summary>A complaint that nothing past its limit accounts for is not solved, and what has been seen is not looked at again.</summary>
public class StandingComplaintTests
{
    private static readonly Catalogue Damper = Catalogue.For(PatternIds.Damper);

    private static SignEvidence Told(string outcome) => new("c", 0, Complaints.Sign, outcome);

    private static NextCheck Next(IReadOnlyList<Evidence> evidence, params (string, double)[] weights) =>
        new Planner(Damper, Tariff.Default).Next(new PlainPredictive(Damper, weights), new Situation(evidence, []));

    private static IEnumerable<string> Offered(NextCheck next) => next.Alternatives.Prepend(next.Best!).Select(c => c.Check);

    [Fact]
    public void Where_nothing_is_past_its_limit_and_it_still_stops_the_full_service_comes() =>
        Assert.Equal(ActionList.FullService, Next([Told(Complaints.StopsLater)], ("", 1)).Best!.Check);

    [Fact]
    public void After_the_full_service_no_area_is_cleaned_again()
    {
        var next = Next([Told(Complaints.StopsLater), new ActionEvidence("a", 1, ActionList.FullService)], ("", .3), ("ash-passages-full", .2), ("vent-fouled", .2), ("low-supply", .3));
        Assert.DoesNotContain(Offered(next), id => id.StartsWith("clean-", StringComparison.Ordinal) || id == ActionList.FullService);
    }

    [Fact]
    public void A_run_that_proves_it_ends_the_visit()
    {
        Evidence[] ran = [Told(Complaints.NoFeed), new ActionEvidence("a", 1, "cure-feed-jam"), new SignEvidence("r", 1, "runs-now", "runs")];
        Assert.Null(Next(ran, ("", .6), ("feed-motor-weak", .2), ("auger-bearing-worn", .2)).Best);
        Assert.NotNull(Next([.. ran.Take(2), new SignEvidence("r", 1, "runs-now", "same")], ("", .6), ("feed-motor-weak", .2), ("auger-bearing-worn", .2)).Best);
    }

    [Theory] // Clearing a feed jam changes nothing that the burn pot shows; cleaning the pot does.
    [InlineData("cure-feed-jam", true)]
    [InlineData("clean-burn-pot", false)]
    public void What_was_seen_holds_until_something_is_done_that_could_change_it(string done, bool holds)
    {
        var situation = new Situation([new SignEvidence("p", 0, "pot-holes", "open"), new ActionEvidence("a", 1, done)], []);
        Assert.Equal(holds, situation.Sees("pot-holes", Damper));
        Assert.False(situation.Sees("pot-holes"));
    }

    [Fact]
    public void Whether_it_runs_is_open_again_after_every_deed() =>
        Assert.False(new Situation([new SignEvidence("r", 0, "runs-now", "same"), new ActionEvidence("a", 1, "cure-feed-jam")], []).Sees("runs-now", Damper));

    [Fact]
    public void Filling_the_hopper_cures_an_empty_one_and_a_bridge()
    {
        var fill = Damper.Check("fill-hopper")!;
        Assert.Equal(fill.Cures.Order(StringComparer.Ordinal), Damper.Action(fill.Action!)!.Cures.Order(StringComparer.Ordinal));
    }

    [Fact] // A step of 10 that solves three quarters, 100 for the quarter that nothing solves: 10 + 25.
    public void What_no_step_solves_costs_as_much_as_leaving()
    {
        var plan = new RepairPlan([0b1], [.25], [0], [new(10, 0b1)], 100);
        Assert.Equal(35, plan.ExpectedCost([1], 0, []), 1e-12);
    }

    [Fact] // Not looked for yet: 4 + ½·20 + ½·10 = 19. Looked for and left open: first the other, 10, then ½·20 for trying: 20.
    public void What_a_look_has_left_open_is_paid_for_whether_it_is_there_or_not()
    {
        var plan = new RepairPlan([0b01, 0b10], [0, 0], [20, 0], [new(4, 0b01, Trying: 20), new(10, 0b10)], 0);
        Assert.Equal(19, plan.ExpectedCost([.5, .5], 0, [false, false]), 1e-12);
        Assert.Equal(20, plan.ExpectedCost([.5, .5], 0, [true, false]), 1e-12);
    }

    [Fact]
    public void On_the_telephone_nothing_idle_is_asked_once_the_cause_is_all_but_named()
    {
        var situation = new Situation([Told(Complaints.NoLight)], [], OnSite: false);
        var planner = new Planner(Damper, Tariff.Default);
        Assert.Null(planner.Next(new PlainPredictive(Damper, ("igniter-dead", .95), ("igniter-passage-ashed", .05)), situation).Best);
        Assert.NotNull(planner.Next(new PlainPredictive(Damper, ("igniter-dead", .4), ("pot-clogged", .3), ("hopper-bridging", .3)), situation).Best);
    }

    [Fact]
    public void Little_dirt_accounts_for_a_stop_where_much_fuel_was_burned_since_the_cleaning() =>
        Assert.True(Cures(PatternIds.Sealed, 2, Complaints.StopsProving) > Cures(PatternIds.Sealed, 0.1, Complaints.StopsProving));

    [Fact]
    public void Dirt_accounts_for_a_lazy_flame_rather_than_for_a_noise() =>
        Assert.True(Cures(PatternIds.Damper, 1, Complaints.LazyFlame) > Cures(PatternIds.Damper, 1, Complaints.Noise));

    private static double Cures(string pattern, double tonnes, string complaint)
    {
        var stove = new StoveCase(PatternLibrary.Find(pattern)!, null, new Stove.Site(), new History(TonnesSinceCleaning: tonnes));
        var posterior = Diagnose.Infer(stove, [Told(complaint)], Catalogue.For(pattern)).Posterior!;
        return posterior.ServiceCures(posterior.Explanations.ToList().FindIndex(e => e.Faults.Count == 0 && !e.Unlisted), complaint);
    }
}
