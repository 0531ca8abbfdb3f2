using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>What a meter shows and when it must not be used (common practice, no source; values by Ohm's law).</summary>
public class MeterTests
{
    private static readonly Wiring Wiring = DamperInsertWiring.Create();
    private static readonly Meter Meter = Meter.Ordinary;
    private static readonly ControlState Unplugged = Wiring.In(Operation.Unplugged);

    [Theory]
    [InlineData(MeterFunction.Ohms)]
    [InlineData(MeterFunction.OhmsToEarth)]
    [InlineData(MeterFunction.Continuity)]
    public void Anything_in_ohms_is_refused_with_the_plug_in(MeterFunction function)
    {
        foreach (var operation in Enum.GetValues<Operation>().Where(o => o != Operation.Unplugged))
        {
            Assert.True(Meter.Between(Wiring, Wiring.In(operation), [], function, "tp1", "tp2").Refused);
            Assert.True(Meter.Across(Wiring, Wiring.In(operation), [], function, ComponentIds.Igniter).Refused);
        }
        Assert.False(Meter.Between(Wiring, Unplugged, [], function, "tp1", "tp2").Refused);
    }

    [Fact]
    public void A_capacitor_is_read_unplugged_and_discharged_and_a_worn_one_reads_below_its_label()
    {
        var wiring = WiringLibrary.For(PatternIds.Sealed);
        var unplugged = wiring.In(Operation.Unplugged);
        MeterReading Read(params CircuitChange[] changes) => Meter.Across(wiring, unplugged, changes, MeterFunction.Capacitance, ComponentIds.RunCapacitor);
        Assert.Equal(1.5e-6, Read().Value, 1e-12);
        Assert.Contains("discharge", Read().Caution, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(0.75e-6, Read(new CircuitChange(ComponentIds.RunCapacitor, ComponentState.Drifted, 0.5)).Value, 1e-12);
        Assert.Equal(0, Read(new CircuitChange(ComponentIds.RunCapacitor, ComponentState.Open)).Value);
        Assert.True(double.IsPositiveInfinity(Read(new CircuitChange(ComponentIds.RunCapacitor, ComponentState.Shorted)).Value));
        Assert.True(Meter.Across(wiring, wiring.In(Operation.Off), [], MeterFunction.Capacitance, ComponentIds.RunCapacitor).Refused);
        Assert.Throws<CircuitException>(() => Meter.Across(wiring, unplugged, [], MeterFunction.Capacitance, ComponentIds.Igniter));
    }

    [Fact]
    public void A_closed_contact_sounds_and_an_open_one_shows_overload()
    {
        Assert.True(Meter.Between(Wiring, Unplugged, [], MeterFunction.Continuity, "tp1", "tp2").Sounds);
        Assert.True(Meter.Across(Wiring, Unplugged, [], MeterFunction.Continuity, ComponentIds.LidSwitch).Sounds);
        var vacuum = Meter.Across(Wiring, Unplugged, [], MeterFunction.Ohms, ComponentIds.VacuumSwitch);
        Assert.True(double.IsPositiveInfinity(vacuum.Value));
        Assert.False(vacuum.Sounds);
    }

    [Fact]
    public void Resistances_in_series_add_between_test_points()
    {
        var closed = Unplugged with { Positions = default };
        var reading = Meter.Between(Wiring, closed, [], MeterFunction.Ohms, "tp1", Points.Neutral);
        Assert.Equal(92 + 4 * 0.05, reading.Value, 0.01);
    }

    [Fact]
    public void A_leak_shows_in_ohms_to_earth_and_only_there()
    {
        CircuitChange[] leak = [new(ComponentIds.Igniter, ComponentState.LeakingToEarth, LeakOhm: 50e3)];
        Assert.Equal(50e3, Meter.Across(Wiring, Unplugged, leak, MeterFunction.OhmsToEarth, ComponentIds.Igniter).Value, 100.0);
        Assert.Equal(50e3, Meter.Between(Wiring, Unplugged, leak, MeterFunction.OhmsToEarth, "igniter-live", Points.Earth).Value, 100.0);
        Assert.Equal(44.8, Meter.Across(Wiring, Unplugged, leak, MeterFunction.Ohms, ComponentIds.Igniter).Value, 0.05);
        Assert.True(double.IsPositiveInfinity(Meter.Across(Wiring, Unplugged, [], MeterFunction.OhmsToEarth, ComponentIds.Igniter).Value));
    }

    [Fact]
    public void A_ghost_on_an_open_lead_vanishes_on_low_impedance()
    {
        CircuitChange[] cut = [new(ComponentIds.FeedConnector, ComponentState.Open), new(ComponentIds.FeedMotor, ComponentState.Open)];
        var state = Wiring.In(Operation.High);
        var ghost = Meter.Between(Wiring, state, cut, MeterFunction.AcVolts, "tp5", Points.Neutral);
        Assert.InRange(ghost.Value, 3, 100);
        Assert.Contains("Ghost", ghost.Note, StringComparison.Ordinal);
        Assert.InRange(Meter.Between(Wiring, state, cut, MeterFunction.AcVoltsLowImpedance, "tp5", Points.Neutral).Value, 0, 0.1);
    }

    [Fact]
    public void A_triac_that_is_off_leaks_nearly_the_supply_into_a_meter_but_nothing_into_its_load()
    {
        var off = Wiring.In(Operation.FanOnly);
        CircuitChange[] unloaded = [new(ComponentIds.FeedConnector, ComponentState.Open)];
        Assert.InRange(Meter.Between(Wiring, off, unloaded, MeterFunction.AcVolts, "feed-out", Points.Neutral).Value, 100, 121);
        var closed = off with { Positions = off.Positions.Closed(Wiring.Bit(ComponentIds.ProofDisc)) };
        Assert.InRange(Meter.Between(Wiring, closed, [], MeterFunction.AcVolts, "feed-out", Points.Neutral).Value, 0, 1);
    }

    [Fact]
    public void Live_readings_carry_a_caution_and_dead_ones_say_that_they_are_dead()
    {
        var reading = Meter.Across(Wiring, Wiring.In(Operation.Igniting), [], MeterFunction.AcVolts, ComponentIds.VacuumSwitch);
        Assert.Contains("one hand", reading.Caution, StringComparison.Ordinal);
        Assert.Contains("proved dead", Meter.Across(Wiring, Unplugged, [], MeterFunction.Ohms, ComponentIds.FeedMotor).Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Amps_are_read_on_a_component_only() =>
        Assert.Contains("component", Assert.Throws<CircuitException>(() =>
            Meter.Between(Wiring, Wiring.In(Operation.High), [], MeterFunction.AcAmps, "tp1", "tp2")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_motor_is_not_a_resistor()
    {
        foreach (var wiring in WiringLibrary.All)
            foreach (var motor in wiring.Components.OfType<Motor>())
            {
                var running = motor.RatedV / motor.RunningA;
                Assert.True(running > 1.5 * motor.WindingOhm, $"{wiring.Pattern} {motor.Id}");
            }
    }

    [Theory]
    [InlineData("tp9", "no test point 'tp9'")]
    public void An_unknown_point_is_named_with_those_there_are(string point, string expected) =>
        Assert.Contains(expected, Assert.Throws<CircuitException>(() =>
            Meter.Between(Wiring, Unplugged, [], MeterFunction.Ohms, point, "tp1")).Message, StringComparison.Ordinal);
}
