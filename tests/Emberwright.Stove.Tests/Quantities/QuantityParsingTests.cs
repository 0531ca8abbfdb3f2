using Emberwright.Stove.Quantities;
using Xunit;

namespace Emberwright.Stove.Tests.Quantities;

public class QuantityParsingTests
{
    [Theory]
    [InlineData("-0.05 inWC", -0.05, "inWC")]
    [InlineData("−0.05 inWC", -0.05, "inWC")]
    [InlineData("– 0.05 in WC", -0.05, "inWC")]
    [InlineData("+4.5Pa", 4.5, "Pa")]
    [InlineData("29 pa", 29, "Pa")]
    [InlineData("312 degF", 312, "°F")]
    [InlineData("120 F", 120, "°F")]
    [InlineData("293.15 K", 293.15, "K")]
    [InlineData("50 cfm", 50, "CFM")]
    [InlineData(".5 kohm", 0.5, "kΩ")]
    [InlineData("2 MΩ", 2, "MΩ")]
    [InlineData("15.6 mV", 15.6, "mV")]
    [InlineData("1500 BTU/hr", 1500, "BTU/h")]
    [InlineData("3 in", 3, "in")]
    [InlineData("2 short tons", 2, "short ton")]
    [InlineData("11.8\u00A0%", 11.8, "%")]
    public void Reads_what_people_write(string text, double number, string symbol)
    {
        Assert.True(Quantity.TryParse(text, out var quantity, out var problem));
        Assert.Null(problem);
        Assert.Equal(number, quantity.Entered);
        Assert.Equal(symbol, quantity.Unit.Symbol);
    }

    [Theory]
    [InlineData("12,4 Pa", "comma", "decimal point")]
    [InlineData("1,200 rpm", "comma", "decimal point")]
    [InlineData("12.4", "unit is missing", "Pa")]
    [InlineData("Pa", "begin with a number", "-12.4 Pa")]
    [InlineData("", "Nothing", "number and its unit")]
    [InlineData("10 to 13 %", "not known", "Use")]
    [InlineData("3 bags", "not a unit", "kg or lb")]
    [InlineData("1 ton", "not a unit", "short ton")]
    [InlineData("200 mg/m3", "not a unit", "ppm")]
    [InlineData("5 Mbar", "not known", "Use")]
    [InlineData("5 MV", "not known", "Use")]
    [InlineData("1.2.3 Pa", "number", "Write")]
    [InlineData("--3 Pa", "number", "Write")]
    [InlineData("NaN Pa", "number", "Write")]
    [InlineData("1e5 Pa", "not known", "Use")]
    [InlineData("-300 degC", "outside", "Check")]
    [InlineData("120 %", "outside", "Check")]
    [InlineData("-5 ohm", "outside", "Check")]
    public void Refuses_with_a_remedy(string text, string message, string remedy)
    {
        Assert.False(Quantity.TryParse(text, out _, out var problem));
        Assert.NotNull(problem);
        Assert.Equal(text, problem.Value);
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Contains(remedy, problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Says_what_a_wrong_unit_measures()
    {
        Assert.False(Quantity.TryParse("12 V", Measure.Pressure, out _, out var problem));
        Assert.Equal("'V' measures voltage.", problem!.Message);
        Assert.StartsWith("Use one of Pa, inWC", problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_temperature_difference_has_no_zero_offset()
    {
        Assert.True(Quantity.TryParse("18 °F", Dimension.TemperatureDifference, out var difference, out _));
        Assert.True(Quantity.TryParse("18 °F", out var temperature, out _));
        Assert.Equal(10, difference.Si, 12);
        Assert.Equal(-7.7778, temperature.Si, 4);
    }

    [Theory]
    [InlineData("OL")]
    [InlineData("open")]
    public void An_open_circuit_is_an_infinite_resistance(string text)
    {
        Assert.True(Quantity.TryParse(text, Measure.Resistance, out var quantity, out _));
        Assert.Equal(double.PositiveInfinity, quantity.In(Measure.Resistance));
        Assert.False(Quantity.TryParse(text, Measure.Voltage, out _, out _));
    }

    [Fact]
    public void Carbon_monoxide_is_held_in_ppm_and_oxygen_in_percent()
    {
        Assert.True(Quantity.TryParse("0.02 %", Measure.CarbonMonoxide, out var co, out _));
        Assert.Equal(200, co.In(Measure.CarbonMonoxide), 9);
        Assert.True(Quantity.TryParse("11.8 %", Measure.Oxygen, out var o2, out _));
        Assert.Equal(11.8, o2.In(Measure.Oxygen));
    }

    [Fact]
    public void A_unit_of_another_dimension_is_an_error() =>
        Assert.Throws<ArgumentException>(() => new Quantity(1, Units.Pascal).In(Units.Volt));
}
