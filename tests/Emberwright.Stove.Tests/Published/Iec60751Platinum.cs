using Emberwright.Stove.Controls.Sensors;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>IEC 60751, table of R₀ = 100 Ω, rounded to 0.01 Ω; half of that is the tolerance. The 150 °C row is that of 1000 Ω.</summary>
public class Iec60751Platinum
{
    [Theory]
    [InlineData(-200, 18.52)]
    [InlineData(-100, 60.26)]
    [InlineData(-50, 80.31)]
    [InlineData(0, 100.00)]
    [InlineData(100, 138.51)]
    [InlineData(200, 175.86)]
    [InlineData(400, 247.09)]
    [InlineData(600, 313.71)]
    public void Resistance_of_the_table(double celsius, double ohms) =>
        Assert.Equal(ohms, PlatinumSensor.Pt100.Ohms(celsius), 0.00501);

    [Theory]
    [InlineData(60.26, -100)]
    [InlineData(138.51, 100)]
    [InlineData(247.09, 400)]
    public void Temperature_of_the_table(double ohms, double celsius) =>
        Assert.Equal(celsius, PlatinumSensor.Pt100.Celsius(ohms), 0.015);

    [Fact]
    public void Thousand_ohms_at_150_C() => Assert.Equal(1573.25, PlatinumSensor.Pt1000.Ohms(150), 0.005);

    /// <summary>Class B at 100 °C: ±0.80 K.</summary>
    [Fact]
    public void Class_B() => Assert.Equal(0.8, PlatinumSensor.ClassBToleranceK(100), 1e-12);
}
