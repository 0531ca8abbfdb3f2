using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>What a damper-regulated insert does, sound and at fault, as a technician knows it (common practice, no source).</summary>
public class DamperInsertSequenceTests
{
    private static readonly Wiring Wiring = DamperInsertWiring.Create();
    private static readonly BurnProgram Program = DamperInsertProgram.Create();

    private static BurnRun Run(BurnScenario scenario, ISteadyStove? stove = null, double hours = 2) =>
        BurnSequence.Run(Wiring, Program, new LaggedDrivers(stove ?? new PlainSteadyStove(), SequenceLags.Ordinary), scenario, hours * 3600);

    private static BurnScenario With(string component, ComponentState state, double factor = 1, double? leakOhm = null) =>
        new() { Changes = [new CircuitChange(component, state, factor, LeakOhm: leakOhm)] };

    [Fact]
    public void A_sound_stove_lights_proves_and_burns()
    {
        var run = Run(new BurnScenario());
        Assert.Equal(BurnOutcome.Runs, run.Outcome);
        Assert.Equal(BurnState.High, run.FinalState);
        Assert.Null(run.Alarm);
        var lights = run.Events.First(e => e.Words == "Fire lights.").TimeS;
        Assert.InRange(lights, 3 * 60, 10 * 60);
        var disc = run.Samples.First(s => !s.Positions.IsOpen(Wiring.ComponentIndex(ComponentIds.ProofDisc))).TimeS;
        Assert.InRange(disc, 10 * 60, 22 * 60);
    }

    [Fact]
    public void When_heat_is_no_longer_wanted_it_burns_out_and_stands_by_with_blowers_running_on()
    {
        var run = Run(new BurnScenario { WantedUntilS = 3600 });
        Assert.Equal(BurnState.Standby, run.FinalState);
        Assert.Equal(BurnOutcome.Runs, run.Outcome);
        Assert.All(run.Samples.Where(s => s.State == BurnState.Shutdown), s => Assert.Equal(0, s.Running.FeedShare));
        Assert.All(run.Samples.Where(s => s.State == BurnState.Shutdown), s => Assert.True(s.Running.CombustionShare > 0.9));
    }

    [Theory]
    [InlineData(ComponentIds.HighLimitDisc)]
    [InlineData(ComponentIds.LidSwitch)]
    [InlineData(ComponentIds.VacuumSwitch)]
    [InlineData(ComponentIds.FeedMotor)]
    [InlineData(ComponentIds.FeedOutput)]
    [InlineData(ComponentIds.FeedConnector)]
    public void An_open_part_of_the_feed_chain_means_no_fuel(string part)
    {
        var run = Run(With(part, ComponentState.Open));
        Assert.Equal(BurnOutcome.NoFeed, run.Outcome);
        Assert.Equal(BurnState.LockedOut, run.FinalState);
        Assert.Equal(Alarms.NoFire, run.Alarm);
    }

    [Fact]
    public void A_proof_disc_stuck_open_lights_and_stops_when_the_bridge_opens()
    {
        var run = Run(With(ComponentIds.ProofDisc, ComponentState.Open));
        Assert.Equal(BurnOutcome.LightsThenStops, run.Outcome);
        Assert.Equal(BurnState.LockedOut, run.FinalState);
        Assert.Equal(22 * 60, run.Events.First(e => e.State == BurnState.Shutdown).TimeS, 90.0);
    }

    [Fact]
    public void A_proof_disc_stuck_closed_never_lets_the_blowers_stop()
    {
        var run = Run(With(ComponentIds.ProofDisc, ComponentState.Shorted) with { WantedUntilS = 3600 }, hours: 6);
        Assert.Equal(BurnState.Shutdown, run.FinalState);
    }

    [Theory]
    [InlineData(ComponentState.Open)]
    [InlineData(ComponentState.Drifted)]
    public void A_dead_or_weak_igniter_feeds_but_never_lights(ComponentState state) =>
        Assert.Equal(BurnOutcome.NeverLights, Run(With(ComponentIds.Igniter, state, 3)).Outcome);

    [Fact]
    public void A_seized_combustion_blower_means_no_vacuum_and_no_feed() =>
        Assert.Equal(BurnOutcome.NoFeed, Run(With(ComponentIds.CombustionBlower, ComponentState.Stalled)).Outcome);

    [Fact]
    public void A_blown_fuse_is_a_dead_stove() =>
        Assert.Equal(BurnOutcome.Dead, Run(With(ComponentIds.Fuse, ComponentState.Open)).Outcome);

    [Fact]
    public void An_igniter_shorted_to_earth_blows_the_fuse_when_it_is_first_called()
    {
        var run = Run(With(ComponentIds.Igniter, ComponentState.LeakingToEarth, leakOhm: 1));
        Assert.True(run.FuseBlown);
        Assert.Equal((BurnOutcome.Dead, BurnState.NoPower), (run.Outcome, run.FinalState));
        Assert.True(run.Events.First(e => e.Words == "The fuse goes.").TimeS >= Program.PurgeS);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(0.4)]
    public void A_hose_off_or_choked_passages_hold_the_vacuum_switch_open(double share)
    {
        Assert.Equal(BurnOutcome.NoFeed, Run(new BurnScenario { HoseShare = share }).Outcome);
        Assert.Equal(BurnOutcome.NoFeed, Run(new BurnScenario(), new PlainSteadyStove { VacuumShare = share }).Outcome);
    }

    [Fact]
    public void Vacuum_between_cold_and_hot_needs_lights_and_then_stops()
    {
        // Cold 29 × 0.45 = 13 Pa closes the switch; on high 19 × 0.45 = 8.6 Pa lets it go.
        var run = Run(new BurnScenario(), new PlainSteadyStove { VacuumShare = 0.45 });
        Assert.True(run.Lit);
        Assert.Contains(run.Events, e => e.Words == "Feed stands although the board calls for it.");
    }

    [Fact]
    public void A_dead_room_air_blower_trips_the_high_limit_which_stays_tripped_until_its_button_is_pressed()
    {
        var run = Run(With(ComponentIds.RoomAirBlower, ComponentState.Open), hours: 4);
        Assert.Equal(BurnOutcome.StopsLater, run.Outcome);
        Assert.Equal([ComponentIds.HighLimitDisc], run.Tripped);

        var repairedOnly = new BurnScenario { Tripped = run.Tripped };
        Assert.Equal(BurnOutcome.NoFeed, Run(repairedOnly).Outcome);
        Assert.Equal(BurnOutcome.Runs, Run(repairedOnly with { ButtonsPressed = run.Tripped }).Outcome);
    }

    [Fact]
    public void An_open_thermostat_never_starts_in_automatic_but_runs_in_manual()
    {
        var chewed = With(ComponentIds.ThermostatCable, ComponentState.Open);
        Assert.Equal(BurnOutcome.NeverStarts, Run(chewed with { Automatic = true }).Outcome);
        Assert.Equal(BurnOutcome.Runs, Run(chewed).Outcome);
        Assert.Equal(BurnOutcome.Runs, Run(new BurnScenario { Automatic = true }).Outcome);
    }

    [Fact]
    public void An_empty_hopper_is_no_feed_though_the_motor_turns() =>
        Assert.Equal(BurnOutcome.NoFeed, Run(new BurnScenario { FuelArrives = 0 }).Outcome);

    [Fact]
    public void A_feed_output_stuck_on_still_stops_at_any_interlock_but_never_at_the_board()
    {
        var stuck = With(ComponentIds.FeedOutput, ComponentState.Shorted);
        var run = Run(stuck with { WantedUntilS = 3600 }, hours: 1.1);
        Assert.Contains(run.Samples, s => s.State == BurnState.Shutdown && s.Running.FeedShare > 0);
        Assert.Equal(BurnOutcome.NoFeed, Run(stuck with { HeldOpen = [ComponentIds.LidSwitch] }).Outcome);
    }

    [Fact]
    public void The_course_does_not_depend_on_when_it_is_looked_at()
    {
        var one = Run(new BurnScenario());
        var two = Run(new BurnScenario());
        Assert.Equal(one.Events, two.Events);
    }
}
