using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>Readings a technician takes on the feed's chain; expectations are circuit sense (common practice, no source).</summary>
public class DamperInsertReadingsTests
{
    private static readonly Wiring Wiring = DamperInsertWiring.Create();
    private static readonly ElectricalReadings Readings = new(Wiring, Meter.Ordinary);

    private static double Volts(string place, string[] open, params CircuitChange[] changes) =>
        Readings.Predict(new Observable(Measure.Voltage, place, Condition.FanOnly), open, changes);

    [Theory]
    [InlineData(ComponentIds.HighLimitDisc)]
    [InlineData(ComponentIds.LidSwitch)]
    [InlineData(ComponentIds.VacuumSwitch)]
    public void An_open_switch_shows_the_supply_and_a_closed_one_nothing(string open)
    {
        foreach (var id in Wiring.FeedChain)
        {
            var expected = id == open ? Volts(ComponentIds.Supply, [open]) : 0;
            Assert.Equal(expected, Volts(id, [open]), 0.2);
        }
        Assert.Equal(0, Volts(ComponentIds.FeedMotor, [open]), 0.1);
    }

    [Fact]
    public void The_socket_sags_a_little_under_the_load_of_a_start() =>
        Assert.InRange(Volts(ComponentIds.Supply, []), 117, 119.5);

    [Fact]
    public void Two_open_switches_show_the_supply_cleanly_across_neither()
    {
        string[] open = [ComponentIds.HighLimitDisc, ComponentIds.VacuumSwitch];
        Assert.InRange(Volts(ComponentIds.HighLimitDisc, open), 5, 110);
        Assert.InRange(Volts(ComponentIds.VacuumSwitch, open), 5, 110);
    }

    [Fact]
    public void The_proof_disc_shows_nothing_while_the_board_bridges_it_and_the_supply_afterwards()
    {
        Assert.Equal(0, Volts(ComponentIds.ProofDisc, []), 0.1);
        var late = Wiring.In(Operation.High);
        late = late with { Positions = late.Positions.Opened(Wiring.Bit(ComponentIds.ProofDisc)) };
        Assert.Equal(119, Readings.Predict(Measure.Voltage, ComponentIds.ProofDisc, late, []), 1.0);
    }

    [Fact]
    public void Volts_at_a_motor_with_an_open_winding_are_the_supply()
    {
        CircuitChange[] dead = [new(ComponentIds.FeedMotor, ComponentState.Open)];
        Assert.Equal(Volts(ComponentIds.Supply, [], dead), Volts(ComponentIds.FeedMotor, [], dead), 0.2);
    }

    [Fact]
    public void A_jammed_motor_draws_more_than_a_free_one_though_its_winding_reads_the_same()
    {
        CircuitChange[] jam = [new(ComponentIds.FeedMotor, ComponentState.Stalled)];
        var current = new Observable(Measure.Current, ComponentIds.FeedMotor, Condition.FanOnly);
        Assert.Equal(0.30, Readings.Predict(current, [], []), 0.005);
        Assert.Equal(0.50, Readings.Predict(current, [], jam), 0.01);
        var winding = new Observable(Measure.Resistance, ComponentIds.FeedMotor, Condition.BlowerOff);
        Assert.Equal(92, Readings.Predict(winding, [], jam), 0.001);
    }

    [Fact]
    public void A_blown_fuse_leaves_the_whole_board_dead()
    {
        CircuitChange[] blown = [new(ComponentIds.Fuse, ComponentState.Open)];
        Assert.Equal(120, Volts(ComponentIds.Fuse, [], blown), 0.5);
        Assert.Equal(0, Volts("tp1", [], blown), 0.5);
    }

    [Fact]
    public void An_igniter_shorted_to_earth_blows_the_fuse()
    {
        CircuitChange[] leak = [new(ComponentIds.Igniter, ComponentState.LeakingToEarth, LeakOhm: 0.5)];
        var solved = SolvedWiring.Alternating(Wiring, Wiring.In(Operation.Igniting), leak);
        Assert.True(solved.FuseBlown);
        Assert.False(SolvedWiring.Alternating(Wiring, Wiring.In(Operation.Off), leak).FuseBlown);
    }

    [Fact]
    public void The_igniter_of_300_W_at_120_V_is_48_ohm_hot_and_seven_percent_lower_cold()
    {
        var igniter = (Igniter)Wiring[ComponentIds.Igniter];
        Assert.Equal(48, igniter.HotOhm, 1e-9);
        Assert.Equal(48 / 1.071, Readings.Predict(new Observable(Measure.Resistance, ComponentIds.Igniter, Condition.BlowerOff), [], []), 1e-6);
        Assert.Equal(2.5, Readings.Predict(new Observable(Measure.Current, ComponentIds.Igniter, Condition.FanOnly), [], []), 0.04);
    }

    [Fact]
    public void The_thermostat_loop_shows_its_voltage_when_the_cable_is_broken()
    {
        CircuitChange[] chewed = [new(ComponentIds.ThermostatCable, ComponentState.Open)];
        Assert.Equal(24, Volts("thermostat-terminal", [], chewed), 0.1);
        Assert.Equal(0, Volts("thermostat-terminal", []), 0.1);
        Assert.True(double.IsPositiveInfinity(Readings.Predict(
            new Observable(Measure.Resistance, ComponentIds.ThermostatCable, Condition.BlowerOff), [], chewed)));
    }

    [Fact]
    public void Ohms_are_refused_with_the_plug_in()
    {
        var reading = Meter.Ordinary.Across(Wiring, Wiring.In(Operation.Off), [], MeterFunction.Ohms, ComponentIds.FeedMotor);
        Assert.True(reading.Refused);
        Assert.True(double.IsNaN(reading.Value));
        Assert.Contains("plug", reading.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void A_prediction_takes_less_than_20_microseconds()
    {
        var observable = new Observable(Measure.Voltage, ComponentIds.VacuumSwitch, Condition.FanOnly);
        string[] open = [ComponentIds.VacuumSwitch];
        for (var i = 0; i < 20_000; i++) Readings.Predict(observable, open, []);
        var best = double.PositiveInfinity;
        for (var round = 0; round < 10; round++)
        {
            var watch = System.Diagnostics.Stopwatch.StartNew();
            for (var i = 0; i < 1000; i++) Readings.Predict(observable, open, []);
            best = Math.Min(best, watch.Elapsed.TotalMicroseconds / 1000);
        }
        TestContext.Current.TestOutputHelper?.WriteLine($"{best:0.0} µs");
        Assert.True(best < 20, $"{best:0.0} µs");
    }
}
