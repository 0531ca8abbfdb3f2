using Emberwright.Diagnosis.Planning;
using Emberwright.Diagnosis.Rates;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Rates;

/// <summary>A firm's own rates, and what is learned from counts of its visits. Expected figures are worked by hand.</summary>
public class RatesTests
{
    private static readonly PatternRates Two = new(
        DamperInsert.Id,
        new Dictionary<string, Rate> { ["igniter-dead"] = new(8, "memory"), ["feed-jam"] = new(92, "memory") },
        new Dictionary<Parameter, Rate> { [Parameter.AshPassages] = new(0.25, "memory") });

    [Fact]
    public void Counts_are_added_to_what_was_believed()
    {
        // α = 60·8/100 = 4.8; 100·(4.8 + 20)/(60 + 60) = 20.667.
        var after = Learning.After(Two, new ClosedVisits(DamperInsert.Id, 60, new Dictionary<string, int> { ["igniter-dead"] = 20 }, []));
        Assert.Equal(20.6667, after.Faults["igniter-dead"].Value, 1e-4);
        Assert.StartsWith("based on 60 of your visits", after.Faults["igniter-dead"].Origin, StringComparison.Ordinal);
        Assert.Equal(Two.Fouling[Parameter.AshPassages], after.Fouling[Parameter.AshPassages]);
    }

    [Fact]
    public void Fouling_per_tonne_follows_the_pairs()
    {
        // (5·0.25 + (−ln 0.5)/1 + (−ln 0.5)/2)/(6 + 2 − 1) = (1.25 + 0.6931 + 0.3466)/7 = 0.32710.
        var after = Learning.After(Two, new ClosedVisits(DamperInsert.Id, 0, new Dictionary<string, int>(),
            [new(Parameter.AshPassages, 0.5, 1), new(Parameter.AshPassages, 0.5, 2), new(Parameter.AshPassages, 0.5, 0.01)]));
        Assert.Equal(0.32710, after.Fouling[Parameter.AshPassages].Value, 1e-4);
        Assert.StartsWith("based on 2 of your visits", after.Fouling[Parameter.AshPassages].Origin, StringComparison.Ordinal);
        Assert.Equal(Two.Faults["feed-jam"], after.Faults["feed-jam"]);
    }

    [Fact]
    public void Learning_in_two_batches_is_learning_in_one_up_to_the_weight_of_what_was_believed()
    {
        var nothing = new ClosedVisits(DamperInsert.Id, 0, new Dictionary<string, int>(), []);
        Assert.Same(Two, Learning.After(Two, nothing));
        Assert.Throws<ArgumentException>(() => Learning.After(Two, nothing with { Visits = 3, Found = new Dictionary<string, int> { ["feed-jam"] = 4 } }));
        Assert.Throws<ArgumentException>(() => Learning.After(Two, nothing with { Pattern = Underfed.Id }));
    }

    [Fact]
    public void Every_number_has_its_origin()
    {
        foreach (var pattern in PatternIds.All)
        {
            var rates = PatternRates.Of(pattern);
            Assert.All(rates.Faults.Values.Concat(rates.Fouling.Values), r => Assert.True(r.Value > 0 && r.Origin.Length > 0));
        }
    }

    [Fact]
    public void A_firms_own_rate_moves_the_prior_and_says_where_it_comes_from()
    {
        var stove = new StoveCase(DamperInsert.Pattern, null, new Site(OutdoorC: 0), new History());
        var own = RatesFile.Read("""
            {"format": "emberwright-priors", "version": 1, "patterns": {"damper-insert": {
              "faults": {"igniter-dead": {"ratePercent": 24, "origin": "our calls of two seasons"}},
              "fouling": {"ash-passages": {"perTonne": 0.5}}}}}
            """)[DamperInsert.Id];
        Suspect Of(StoveCase of, string fault) => Diagnose.Run(of, [], Catalogue.For(DamperInsert.Id)).Suspects.Single(s => s.Fault == fault);
        var (before, after) = (Of(stove, "igniter-dead"), Of(stove with { Rates = own }, "igniter-dead"));
        Assert.InRange(after.Prior / before.Prior, 2.2, 3);
        Assert.Equal("our calls of two seasons", after.PriorOrigin);
        var fed = stove with { History = new History(TonnesSinceCleaning: 2) };
        Assert.True(Of(fed with { Rates = own }, "ash-passages-full").Prior > 1.5 * Of(fed, "ash-passages-full").Prior);
    }

    [Theory]
    [InlineData("{", "not JSON")]
    [InlineData("{\"format\": \"x\"}", "format")]
    [InlineData("{\"format\": \"emberwright-priors\", \"patterns\": {\"pyre\": {}}}", "pyre")]
    [InlineData("{\"format\": \"emberwright-priors\", \"patterns\": {\"underfed\": {\"faults\": {\"gremlin\": {\"ratePercent\": 1}}}}}", "gremlin")]
    [InlineData("{\"format\": \"emberwright-priors\", \"patterns\": {\"underfed\": {\"faults\": {\"feed-jam\": {\"ratePercent\": 500}}}}}", "500")]
    [InlineData("{\"format\": \"emberwright-priors\", \"patterns\": {\"underfed\": {\"fouling\": {\"vent\": {\"perTonne\": \"much\"}}}}}", "perTonne")]
    [InlineData("{\"format\": \"emberwright-priors\", \"patterns\": {\"underfed\": {\"minutes\": {\"knit\": {\"minutes\": 5}}}}}", "knit")]
    [InlineData("{\"format\": \"emberwright-priors\", \"patterns\": {\"underfed\": {\"minutes\": {\"clean-vent\": {\"minutes\": 700}}}}}", "700")]
    public void What_makes_no_sense_is_named(string json, string named) =>
        Assert.Contains(named, Assert.Throws<InputException>(() => RatesFile.Read(json)).Message, StringComparison.Ordinal);

    [Fact]
    public void Own_minutes_take_the_place_of_the_catalogues_and_the_planner_goes_by_them()
    {
        var own = RatesFile.Read("""{"format": "emberwright-priors", "version": 1, "patterns": {"damper-insert": {"minutes": {"clean-vent": {"minutes": 99}}}}}""")[DamperInsert.Id];
        var (usual, timed) = (Catalogue.For(DamperInsert.Id), Catalogue.For(DamperInsert.Id).Timed(own.Minutes));
        Assert.Equal(99, timed.Action("clean-vent")!.Minutes);
        Assert.All(timed.Checks.Where(c => c.Action == "clean-vent"), c => Assert.Equal(99, c.Minutes));
        Assert.Equal(usual.Checks.Where(c => c.Action != "clean-vent").Select(c => c.Minutes), timed.Checks.Where(c => c.Action != "clean-vent").Select(c => c.Minutes));

        var posterior = Diagnose.Infer(new StoveCase(DamperInsert.Pattern, null, new Site(OutdoorC: 0), new History(8, 2)), [], usual).Posterior!;
        RecommendedCheck Best(Catalogue catalogue) => new Planner(catalogue, Tariff.Default).Next(posterior, new Situation([], []), 0).Best!;
        var before = Best(usual);
        var minutes = usual.Check(before.Check)?.Minutes ?? usual.Action(before.Check)!.Minutes;
        var after = Best(usual.Timed(new Dictionary<string, Rate> { [before.Check] = new(minutes / 2, "ours") }));
        Assert.Equal((before.Check, before.Minutes - minutes / 2), (after.Check, after.Minutes));
        Assert.Equal(before.Cost - minutes / 2 * Tariff.Default.PerMinute, after.Cost, 1e-9);
    }

    [Fact]
    public void Age_and_weather_move_what_wears_and_what_freezes()
    {
        double Prior(string fault, double age, double outdoor) => Diagnose
            .Run(new StoveCase(DamperInsert.Pattern, null, new Site(OutdoorC: outdoor), new History(AgeYears: age)), [], Catalogue.For(DamperInsert.Id))
            .Suspects.Where(s => s.Fault == fault).Select(s => s.Prior).FirstOrDefault();
        Assert.True(Prior("feed-motor-dead", 14, 0) > 1.3 * Prior("feed-motor-dead", 6, 0));
        Assert.True(Prior("terminal-snowed-in", 8, -5) > 3 * Prior("terminal-snowed-in", 8, 12));
    }

    /// <summary>
    /// Common practice, no source: where no fuel is fed and fuel has been burned since the last service, doing all four areas
    /// brings the stove back in about eight calls of ten and the feed motor is the part in about one of ten; after a recent
    /// proper service neither holds.
    /// </summary>
    [Theory]
    [InlineData(DamperInsert.Id)]
    [InlineData(ThermocoupleFreestanding.Id)]
    public void Cleaning_brings_back_most_stoves_that_do_not_feed_but_not_after_a_recent_service(string id)
    {
        var catalogue = Catalogue.For(id);
        var cures = catalogue.Action("full-service")!.Cures;
        (double Back, double Motor) At(double tonnes)
        {
            var told = Diagnose.Infer(
                new StoveCase(PatternLibrary.Find(id)!, null, new Site(OutdoorC: 0), new History(8, tonnes)), [new SignEvidence("c", 0, Complaints.Sign, Complaints.NoFeed)], catalogue);
            return (told.Posterior!.Explanations.Where(e => e.Faults.Count > 0 && e.Faults.All(cures.Contains)).Sum(e => e.Weight),
                told.Beliefs!.Suspects.Single(s => s.Fault == "feed-motor-dead").Probability);
        }
        var (long_, recent) = (At(2.8), At(0.02));
        Assert.InRange(long_.Back, 0.6, 0.92);
        Assert.InRange(long_.Motor, 0.01, 0.12);
        Assert.InRange(recent.Back, 0.05, 0.3);
    }
}
