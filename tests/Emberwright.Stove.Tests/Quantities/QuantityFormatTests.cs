using CsCheck;
using Emberwright.Stove.Quantities;
using Xunit;

namespace Emberwright.Stove.Tests.Quantities;

public class QuantityFormatTests
{
    [Theory]
    [InlineData(-29.4, Measure.Pressure, UnitSystem.Si, null, "−29 Pa")]
    [InlineData(-29.4, Measure.Pressure, UnitSystem.Si, 0.1, "−29.4 Pa")]
    [InlineData(-29.4, Measure.Pressure, UnitSystem.Us, null, "−0.12 inWC")]
    [InlineData(-29.4, Measure.Pressure, UnitSystem.Us, 0.1, "−0.1180 inWC")]
    [InlineData(-0.3, Measure.Pressure, UnitSystem.Si, null, "0 Pa")]
    [InlineData(155.6, Measure.Temperature, UnitSystem.Us, null, "312 °F")]
    [InlineData(163.4, Measure.Temperature, UnitSystem.Si, 10.0, "160 °C")]
    [InlineData(11.84, Measure.Oxygen, UnitSystem.Us, null, "11.8 %")]
    [InlineData(190.4, Measure.CarbonMonoxide, UnitSystem.Si, null, "190 ppm")]
    [InlineData(0.0156, Measure.Voltage, UnitSystem.Si, 0.0001, "0.0156 V")]
    [InlineData(1.7, Measure.Feed, UnitSystem.Us, null, "3.7 lb/h")]
    [InlineData(1800, Measure.Duration, UnitSystem.Us, null, "30 min")]
    [InlineData(double.PositiveInfinity, Measure.Resistance, UnitSystem.Si, null, "open")]
    public void Writes_to_the_instruments_resolution(double value, Measure measure, UnitSystem system, double? resolution, string expected) =>
        Assert.Equal(expected, QuantityFormat.Format(value, measure, system, resolution));

    [Fact]
    public void A_plus_is_written_when_asked_for() =>
        Assert.Equal("+4.5 Pa", QuantityFormat.Format(4.5, Measure.Pressure, UnitSystem.Si, 0.1, plus: true));

    [Fact]
    public void A_step_of_zero_is_an_error() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityFormat.Number(1, 0));

    [Fact]
    public void What_is_written_reads_back_exactly() =>
        Gen.Select(Gen.Double[0, 100], Gen.Int[0, Units.All.Count - 1]).Sample((value, index) =>
        {
            var quantity = new Quantity(value, Units.All[index]);
            return Quantity.TryParse(quantity.ToString(), quantity.Dimension, out var back, out _)
                && back.Entered.Equals(quantity.Entered) && back.Si.Equals(quantity.Si);
        });

    [Fact]
    public void Tiny_and_huge_numbers_read_back_without_an_exponent() =>
        Gen.Double.Where(double.IsFinite).Sample(value =>
            Quantity.TryParse(new Quantity(value, Units.Pascal).ToString(), out var back, out _) && back.Entered.Equals(value));

    [Fact]
    public void Rounding_stays_within_one_step() =>
        Gen.Select(Gen.Double[-5000, 5000], Gen.Int[-2, 1].Select(n => Math.Pow(10, n))).Sample((value, step) =>
        {
            var text = QuantityFormat.Number(value, step).Replace(QuantityFormat.Minus, '-');
            return Math.Abs(double.Parse(text) - value) <= step / 2 + 1e-9;
        });
}
