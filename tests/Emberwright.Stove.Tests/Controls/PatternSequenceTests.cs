using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>What each pattern's board ends in, sound and at fault (common practice, no source).</summary>
public class PatternSequenceTests
{
    private static readonly SequenceLags Lags = SequenceLags.Ordinary with { WaterS = 900 };

    public static TheoryData<string> Patterns() => [.. WiringLibrary.All.Select(w => w.Pattern)];

    private static BurnRun Run(string pattern, BurnScenario scenario, double hours = 2, PlainSteadyStove? stove = null) =>
        BurnSequence.Run(WiringLibrary.For(pattern), ProgramLibrary.For(pattern),
            new LaggedDrivers(stove ?? new PlainSteadyStove { VacuumShare = pattern == "underfed" ? 2.5 : 1, HeatsWater = pattern == "hydronic" }, Lags), scenario, hours * 3600);

    private static BurnScenario With(string component, ComponentState state, double factor = 1, double offset = 0) =>
        new() { Changes = [new CircuitChange(component, state, factor, offset)] };

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_sound_stove_runs_and_stops_when_asked(string pattern)
    {
        var run = Run(pattern, new BurnScenario());
        Assert.Equal((BurnOutcome.Runs, BurnState.High, null), (run.Outcome, run.FinalState, run.Alarm));
        var ended = Run(pattern, new BurnScenario { WantedUntilS = 3600 }, 4);
        Assert.Equal((BurnOutcome.Runs, BurnState.Standby), (ended.Outcome, ended.FinalState));
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Any_interlock_open_means_no_feed(string pattern)
    {
        foreach (var contact in WiringLibrary.For(pattern).FeedChain)
        {
            if (contact == ComponentIds.ProofDisc) continue;
            var run = Run(pattern, With(contact, ComponentState.Open));
            Assert.Equal(BurnOutcome.NoFeed, run.Outcome);
            Assert.Equal(BurnState.LockedOut, run.FinalState);
        }
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_tripped_contact_with_a_button_stays_open_until_it_is_pressed(string pattern)
    {
        foreach (var contact in WiringLibrary.For(pattern).Components.OfType<Interlock>().Where(c => c.Reset == ResetKind.Manual))
        {
            var tripped = new BurnScenario { Tripped = [contact.Id] };
            Assert.Equal(BurnOutcome.NoFeed, Run(pattern, tripped).Outcome);
            Assert.Equal([contact.Id], Run(pattern, tripped).Tripped);
            Assert.Equal(BurnOutcome.Runs, Run(pattern, tripped with { ButtonsPressed = [contact.Id] }).Outcome);
        }
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_dead_board_output_or_plug_stops_its_load(string pattern)
    {
        Assert.Equal(BurnOutcome.NoFeed, Run(pattern, With(ComponentIds.FeedOutput, ComponentState.Open)).Outcome);
        Assert.Equal(BurnOutcome.NeverLights, Run(pattern, With(ComponentIds.IgniterConnector, ComponentState.Open)).Outcome);
        Assert.Equal(BurnOutcome.Dead, Run(pattern, new BurnScenario { SupplyV = 0 }).Outcome);
        var board = Run(pattern, With(ComponentIds.Board, ComponentState.Open));
        Assert.Equal(BurnOutcome.Dead, board.Outcome);
    }

    [Fact]
    public void A_dirty_or_displaced_thermocouple_lights_burns_a_quarter_of_an_hour_and_stops_with_no_fire()
    {
        var run = Run("thermocouple-freestanding", new BurnScenario { ProofOffsetK = -220 });
        Assert.Equal((BurnOutcome.LightsThenStops, Alarms.NoFire), (run.Outcome, run.Alarm));
        Assert.Equal(15 * 60, run.Events.First(e => e.State == BurnState.Shutdown).TimeS, 60.0);
    }

    [Theory]
    [InlineData(ComponentState.Open, 1)]
    [InlineData(ComponentState.Drifted, -1)]
    public void An_open_or_reversed_thermocouple_proves_no_fire(ComponentState state, double factor) =>
        Assert.Equal(Alarms.NoFire, Run("thermocouple-freestanding", With(ComponentIds.Thermocouple, state, factor)).Alarm);

    [Fact]
    public void A_seized_combustion_blower_shows_low_draught_where_the_board_watches_the_switch() =>
        Assert.Equal(Alarms.LowDraught, Run("thermocouple-freestanding", With(ComponentIds.CombustionBlower, ComponentState.Stalled)).Alarm);

    [Theory]
    [InlineData("underfed")]
    [InlineData("sealed-combustion")]
    [InlineData("hydronic")]
    public void A_broken_probe_or_speed_sensor_has_its_own_alarm(string pattern)
    {
        Assert.Equal(Alarms.Sensor, Run(pattern, With(ComponentIds.ExhaustProbe, ComponentState.Open)).Alarm);
        Assert.Equal(Alarms.Sensor, Run(pattern, With(ComponentIds.ExhaustProbe, ComponentState.Shorted)).Alarm);
        Assert.Equal(Alarms.BlowerSpeed, Run(pattern, With(ComponentIds.SpeedSensor, ComponentState.Open)).Alarm);
        Assert.Equal(Alarms.BlowerSpeed, Run(pattern, With(ComponentIds.CombustionBlower, ComponentState.Stalled)).Alarm);
    }

    [Fact]
    public void A_pressure_sensor_26_Pa_off_or_with_its_hoses_swapped_shows_low_draught_after_every_start()
    {
        var drifted = Run("sealed-combustion", new BurnScenario { SensorZeroPa = 26 });
        Assert.Equal(Alarms.LowDraught, drifted.Alarm);
        Assert.InRange(drifted.Events.First(e => e.State == BurnState.Shutdown).TimeS, 180, 360);
        Assert.Equal(Alarms.LowDraught, Run("sealed-combustion", With(ComponentIds.PressureSensor, ComponentState.Drifted, -1)).Alarm);
    }

    [Fact]
    public void A_run_capacitor_that_is_open_keeps_the_blower_from_starting() =>
        Assert.Equal(Alarms.BlowerSpeed, Run("sealed-combustion", With(ComponentIds.RunCapacitor, ComponentState.Open)).Alarm);

    [Fact]
    public void A_seized_circulating_pump_ends_in_over_temperature() =>
        Assert.Equal((BurnOutcome.StopsLater, Alarms.OverTemperature), Stop(Run("hydronic", With(ComponentIds.CirculatingPump, ComponentState.Stalled))));

    [Fact]
    public void An_open_door_is_named_where_the_board_watches_it() =>
        Assert.Equal(Alarms.Door, Run("sealed-combustion", new BurnScenario { HeldOpen = [ComponentIds.DoorSwitch] }).Alarm);

    [Fact]
    public void A_jammed_agitator_draws_more_and_stands_but_the_feed_goes_on()
    {
        var run = Run("multi-fuel-agitator", With(ComponentIds.AgitatorMotor, ComponentState.Stalled));
        Assert.All(run.Samples, s => Assert.False(s.Running.AgitatorTurns));
        Assert.True(run.FedS > 600);
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Every_alarm_that_can_show_has_words(string pattern)
    {
        var program = ProgramLibrary.For(pattern);
        foreach (var part in WiringLibrary.For(pattern).Components)
        {
            var run = Run(pattern, With(part.Id, ComponentState.Open), 1);
            if (run.Alarm is { } alarm) Assert.Contains(program.Codes, c => c.Id == alarm);
        }
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Every_component_of_the_fault_catalogue_is_in_the_wiring_of_its_patterns(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        foreach (var fault in FaultList.On(pattern))
            foreach (var change in fault.Circuit)
            {
                Assert.True(wiring.HasComponent(change.Component), $"{fault.Id}: {change.Component}");
                SolvedWiring.Alternating(wiring, wiring.In(Operation.Igniting), [change]);
            }
    }

    private static (BurnOutcome, string?) Stop(BurnRun run) => (run.Outcome, run.Alarm);
}
