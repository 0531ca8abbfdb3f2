using CsCheck;
using Emberwright.Stove.Controls.Sensors;
using Xunit;

namespace Emberwright.Stove.Tests.Controls.Sensors;

public class SensorTests
{
    [Fact]
    public void Thermocouple_round_trips_with_any_cold_junction() =>
        Gen.Select(Gen.Double[-200, 1372], Gen.Double[-40, 120]).Sample((hot, cold) =>
            Assert.Equal(hot, TypeK.Celsius(TypeK.Millivolts(hot, cold), cold), 1e-6));

    [Fact]
    public void Thermocouple_slope_is_its_difference() => Gen.Double[-199, 1371].Where(t => Math.Abs(t) > 0.1).Sample(t =>
        Assert.Equal((TypeK.Millivolts(t + 0.01) - TypeK.Millivolts(t - 0.01)) / 0.02, TypeK.MillivoltsPerK(t), 1e-6));

    [Fact]
    public void Cold_junction_is_taken_off_and_swapped_wires_read_negative()
    {
        // 8 to 24 mV with a fire: common practice, no source; 250 °C at a board of 40 °C lies within.
        Assert.InRange(TypeK.Millivolts(250, 40), 8, 24);
        Assert.True(TypeK.Millivolts(250, 40) < TypeK.Millivolts(250));
        Assert.Equal(0, TypeK.Millivolts(40, 40), 1e-12);
        Assert.Equal(-TypeK.Millivolts(250, 40), TypeK.Millivolts(40, 250), 1e-12);
    }

    [Fact]
    public void Platinum_round_trips() => Gen.Select(Gen.Double[-200, 850], Gen.OneOf(Gen.Const(100.0), Gen.Const(500.0), Gen.Const(1000.0))).Sample((t, zero) =>
    {
        var sensor = new PlatinumSensor(zero);
        Assert.Equal(t, sensor.Celsius(sensor.Ohms(t)), 1e-6);
    });

    [Fact]
    public void Thermistor_round_trips_and_falls() => Gen.Select(Gen.Double[-40, 249], Gen.Double[2500, 4500], Gen.Double[1e3, 1e5]).Sample((t, beta, ohms) =>
    {
        foreach (var sensor in new[] { Thermistor.TenKilohm, Thermistor.FromBeta(ohms, beta) })
        {
            Assert.Equal(t, sensor.Celsius(sensor.Ohms(t)), 1e-6);
            Assert.True(sensor.Ohms(t + 1) < sensor.Ohms(t));
        }
        Assert.Equal(ohms, Thermistor.FromBeta(ohms, beta).Ohms(25), 1e-6 * ohms);
    });

    [Fact]
    public void Beta_is_what_it_says() =>
        Assert.Equal(3950, Math.Log(Thermistor.FromBeta(1e4, 3950).Ohms(25) / Thermistor.FromBeta(1e4, 3950).Ohms(85)) / (1 / 298.15 - 1 / 358.15), 1e-6);

    [Fact]
    public void Pressure_signal_round_trips_in_either_direction_and_with_its_supply() =>
        Gen.Select(Gen.Double[0, 1], Gen.Bool, Gen.Double[4.5, 5.5]).Sample((share, falling, supply) =>
        {
            var signal = falling ? new PressureSignal(0, 4.5, -250, 0.5, 5) : new PressureSignal(0, 0.5, 250, 4.5, 5);
            var pressure = signal.ZeroPa + share * (signal.FullPa - signal.ZeroPa);

            Assert.Equal(pressure, signal.Pascal(signal.Volts(pressure, supply), supply), 1e-9);
        });

    [Fact]
    public void Pressure_signal_by_hand()
    {
        var signal = new PressureSignal(0, 0.5, 250, 4.5, ratedSupplyV: 5);

        Assert.Equal(125, signal.Pascal(2.5), 1e-12);
        Assert.Equal(2.25, signal.Volts(125, supplyV: 4.5), 1e-12);
        Assert.Equal(4.5, signal.Volts(400), 1e-12);
        Assert.Equal("pressure sensor voltage", Assert.Throws<InputException>(() => signal.Pascal(0)).Field);
    }

    [Fact]
    public void Copper_round_trips() => Gen.Select(Gen.Double[-40, 240], Gen.Double[0, 40], Gen.Double[1, 600]).Sample((warm, cold, ohms) =>
        Assert.Equal(warm, CopperWinding.Celsius(CopperWinding.Ohms(ohms, cold, warm), ohms, cold), 1e-6));

    [Fact]
    public void What_no_sound_sensor_gives_is_refused()
    {
        Assert.Throws<InputException>(() => TypeK.Celsius(80));
        Assert.Throws<InputException>(() => TypeK.Millivolts(double.NaN));
        Assert.Throws<InputException>(() => PlatinumSensor.Pt1000.Celsius(0));
        Assert.Throws<InputException>(() => PlatinumSensor.Pt1000.Celsius(double.PositiveInfinity));
        Assert.Throws<InputException>(() => Thermistor.TenKilohm.Celsius(double.PositiveInfinity));
        Assert.Throws<InputException>(() => Thermistor.Of(1e-3, -2e-4, 1e-7));
        Assert.Throws<InputException>(() => CopperWinding.Celsius(1e6, 10, 20));
    }
}
