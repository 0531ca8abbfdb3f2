using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>The sequence driven by the virtual stove's own pressures and temperatures (common practice, no source).</summary>
public class VirtualStoveSequenceTests
{
    private static BurnRun Run(params (Parameter Parameter, double Value)[] repair)
    {
        var parameters = new double[Enum.GetValues<Parameter>().Length];
        foreach (var (parameter, value) in repair) parameters[(int)parameter] = value;
        return BurnForecast.Run(new VirtualStove(DamperInsert.Pattern, null, new Site()), parameters, new BurnScenario(), 2 * 3600);
    }

    [Fact]
    public void The_clean_stove_lights_proves_within_22_minutes_and_burns_on_high()
    {
        var run = Run();
        Assert.Equal((BurnOutcome.Runs, BurnState.High), (run.Outcome, run.FinalState));
        var disc = DamperInsertWiring.Create().ComponentIndex("proof-disc");
        Assert.InRange(run.Samples.First(s => !s.Positions.IsOpen(disc)).TimeS, 10 * 60, 22 * 60);
        Assert.InRange(run.Samples[^1].Readings.ExhaustC, 140, 230);
    }

    public static TheoryData<string> Patterns() => [.. PatternLibrary.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Every_clean_pattern_lights_proves_and_burns_on_high_and_on_low(string pattern)
    {
        var stove = new VirtualStove(PatternLibrary.Find(pattern)!, null, new Site());
        var run = BurnForecast.Run(stove, new double[Enum.GetValues<Parameter>().Length], new BurnScenario(), 2 * 3600);
        Assert.Equal((BurnOutcome.Runs, BurnState.High, null), (run.Outcome, run.FinalState, run.Alarm));
        Assert.DoesNotContain(run.Events, e => e.Words.StartsWith("Feed stands", StringComparison.Ordinal));
        var low = BurnForecast.Run(stove, new double[Enum.GetValues<Parameter>().Length], new BurnScenario { High = false }, 2 * 3600);
        Assert.Equal((BurnOutcome.Runs, BurnState.Low, null), (low.Outcome, low.FinalState, low.Alarm));
        Assert.InRange(run.Events.First(e => e.Words == "Fire proved.").TimeS, 5 * 60, 30 * 60);
    }

    [Fact]
    public void Solid_ash_passages_keep_the_vacuum_switch_open() =>
        Assert.Equal(BurnOutcome.NoFeed, Run((Parameter.AshPassages, Math.Log(0.2))).Outcome);

    [Fact]
    public void A_hose_off_the_switch_means_no_feed() => Assert.Equal(BurnOutcome.NoFeed, Run((Parameter.SensedPressure, -4)).Outcome);

    [Fact]
    public void A_switch_drifted_to_twice_its_setting_stops_the_feed_or_the_fire() =>
        Assert.NotEqual(BurnOutcome.Runs, Run((Parameter.SwitchThreshold, Math.Log(2.5))).Outcome);

    [Fact]
    public void A_disc_that_senses_35_K_too_cold_lights_and_then_stops() =>
        Assert.Equal(BurnOutcome.LightsThenStops, Run((Parameter.ProofSensor, -35)).Outcome);

    [Fact]
    public void An_equilibrium_at_a_solved_condition_is_that_solution()
    {
        var stove = new VirtualStove(DamperInsert.Pattern, null, new Site());
        var parameters = new double[Enum.GetValues<Parameter>().Length];
        var steady = new VirtualSteadyStove(stove, parameters);
        var high = stove.Solve(parameters, Condition.HighBurn);
        var point = steady.At(1, 1, 1, false);
        Assert.Equal(high.Value(Measure.Pressure, Places.Firebox), point.SensePa, 1e-6);
        Assert.Equal(high.Value(Measure.Temperature, Places.Collar), point.ExhaustC, 1e-6);
        Assert.Equal(stove.Solve(parameters, Condition.FanOnly).Value(Measure.Pressure, Places.Firebox), steady.At(0, 1, 0, false).SensePa, 1e-6);
    }

    [Fact]
    public void A_controller_holds_its_pressure_over_the_whole_band_and_loses_it_only_where_the_blower_cannot()
    {
        var stove = new VirtualStove(SealedCombustion.Pattern, null, new Site());
        var control = SealedCombustion.Pattern.Control!;
        var steady = new VirtualSteadyStove(stove, new double[Enum.GetValues<Parameter>().Length]);
        var (low, high) = (SealedCombustion.Pattern.Levels[FireState.Low].FeedKgPerH, SealedCombustion.Pattern.Levels[FireState.High].FeedKgPerH);
        for (var t = 0.0; t <= 1; t += 0.1)
        {
            var burn = (low + t * (high - low)) / high;
            var wanted = control.SetPointPa[FireState.Low] + t * (control.SetPointPa[FireState.High] - control.SetPointPa[FireState.Low]);
            var share = Operations.LowCombustionShare + t * (1 - Operations.LowCombustionShare);
            Assert.Equal(wanted, steady.At(burn, share, 1, false).SensePa, 1.5);
            Assert.Equal(wanted, steady.At(burn, 1.02 * share, 1, false).SensePa, 1.5);
            Assert.True(steady.At(burn, 0.4 * share, 1, false).SensePa > wanted + 5, $"{t:0.0}: a blower at four tenths of its voltage cannot hold {wanted:0} Pa");
        }
    }
}
