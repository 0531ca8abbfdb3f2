using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>Readings of invented service calls, against what their stated cause predicts.</summary>
public class CallReadingsTests
{
    private static double Read(string pattern, Measure measure, string place, Condition condition, string[] open, params CircuitChange[] changes) =>
        new ElectricalReadings(WiringLibrary.For(pattern), Meter.Ordinary).Predict(new Observable(measure, place, condition), open, changes);

    [Fact]
    public void Choked_ash_passages_show_the_supply_across_the_vacuum_switch() =>
        Assert.Equal(120, Read("damper-insert", Measure.Voltage, "vacuum-switch", Condition.FanOnly, ["vacuum-switch"]), 3.0);

    [Fact]
    public void A_tripped_limit_shows_the_supply_across_itself_and_nothing_across_the_vacuum_switch()
    {
        Assert.Equal(121, Read("damper-insert", Measure.Voltage, "high-limit-disc", Condition.FanOnly, ["high-limit-disc"]), 3.0);
        Assert.Equal(0, Read("damper-insert", Measure.Voltage, "vacuum-switch", Condition.FanOnly, ["high-limit-disc"]), 0.5);
    }

    [Fact]
    public void A_lid_switch_not_reached_shows_119_V_and_the_others_nothing()
    {
        Assert.Equal(119, Read("thermocouple-freestanding", Measure.Voltage, "lid-switch", Condition.FanOnly, ["lid-switch"]), 2.5);
        Assert.Equal(0, Read("thermocouple-freestanding", Measure.Voltage, "vacuum-switch", Condition.FanOnly, ["lid-switch"]), 0.5);
        Assert.Equal(0, Read("thermocouple-freestanding", Measure.Voltage, "high-limit-disc", Condition.FanOnly, ["lid-switch"]), 0.5);
    }

    [Fact]
    public void A_jam_reads_120_V_620_mA_and_an_unchanged_winding()
    {
        CircuitChange jam = new("feed-motor", ComponentState.Stalled);
        Assert.Equal(120, Read("thermocouple-freestanding", Measure.Voltage, "feed-motor", Condition.FanOnly, [], jam), 3.0);
        Assert.Equal(0.62, Read("thermocouple-freestanding", Measure.Current, "feed-motor", Condition.FanOnly, [], jam), 0.02);
        Assert.Equal(51, Read("thermocouple-freestanding", Measure.Resistance, "feed-motor", Condition.BlowerOff, [], jam), 2.0);
        Assert.Equal(0.38, Read("thermocouple-freestanding", Measure.Current, "feed-motor", Condition.FanOnly, []), 0.03);
    }

    [Fact]
    public void A_thin_extension_lead_drops_the_supply_only_under_load()
    {
        // 0.4 Ω of house wiring grown tenfold, as on a coiled thin lead.
        CircuitChange lead = new("supply", ComponentState.Drifted, 10);
        Assert.Equal(120, Read("thermocouple-freestanding", Measure.Voltage, "supply", Condition.BlowerOff, [], lead), 0.5);
        Assert.InRange(Read("thermocouple-freestanding", Measure.Voltage, "supply", Condition.FanOnly, [], lead), 98, 107);
    }

    [Fact]
    public void A_weak_thermocouple_and_an_open_thermostat_pair_read_as_told()
    {
        var healthy = Read("thermocouple-freestanding", Measure.Voltage, "thermocouple", Condition.HighBurn, []);
        Assert.InRange(healthy, 0.012, 0.022);
        Assert.True(double.IsPositiveInfinity(Read("thermocouple-freestanding", Measure.Resistance, "thermostat-cable", Condition.BlowerOff, [], new CircuitChange("thermostat-cable", ComponentState.Open))));
        Assert.Equal(3, Read("thermocouple-freestanding", Measure.Resistance, "thermocouple", Condition.BlowerOff, []), 0.01);
    }

    [Fact]
    public void An_exhaust_probe_100_ohm_low_reads_978_ohm_at_20_degrees() =>
        Assert.Equal(978, Read("underfed", Measure.Resistance, "exhaust-probe", Condition.BlowerOff, [], new CircuitChange("exhaust-probe", ComponentState.Drifted, 1, -100)), 1.0);

    [Fact]
    public void A_pressure_sensor_26_Pa_off_reads_2_71_V_with_its_hose_off()
    {
        Assert.Equal(5.00, Read("sealed-combustion", Measure.Voltage, "sensor-supply", Condition.BlowerOff, []), 0.05);
        Assert.Equal(2.50, Read("sealed-combustion", Measure.Voltage, "pressure-sensor", Condition.BlowerOff, []), 0.01);
        CircuitChange drift = new("pressure-sensor", ComponentState.Drifted, 1, 26 * 0.008);
        Assert.Equal(2.71, Read("sealed-combustion", Measure.Voltage, "pressure-sensor", Condition.BlowerOff, [], drift), 0.01);
    }

    [Fact]
    public void A_seized_pump_reads_231_V_and_410_mA()
    {
        CircuitChange seized = new("circulating-pump", ComponentState.Stalled);
        Assert.Equal(231, Read("hydronic", Measure.Voltage, "circulating-pump", Condition.HighBurn, [], seized), 4.0);
        Assert.Equal(0.41, Read("hydronic", Measure.Current, "circulating-pump", Condition.HighBurn, [], seized), 0.01);
    }

    [Fact]
    public void A_jammed_agitator_reads_119_V_and_850_mA_a_free_one_360_mA()
    {
        CircuitChange jam = new("agitator-motor", ComponentState.Stalled);
        Assert.Equal(119, Read("multi-fuel-agitator", Measure.Voltage, "agitator-motor", Condition.HighBurn, [], jam), 2.0);
        Assert.Equal(0.85, Read("multi-fuel-agitator", Measure.Current, "agitator-motor", Condition.HighBurn, [], jam), 0.02);
        Assert.Equal(0.36, Read("multi-fuel-agitator", Measure.Current, "agitator-motor", Condition.HighBurn, []), 0.02);
    }
}
