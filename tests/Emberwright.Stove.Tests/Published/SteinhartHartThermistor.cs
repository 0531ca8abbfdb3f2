using Emberwright.Stove.Controls.Sensors;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// The common 10 kΩ curve (32 650 Ω at 0 °C, 10 000 Ω at 25 °C, 3603 Ω at 50 °C, 1752 Ω at 70 °C), consistent with its table
/// as remembered. The coefficients were fitted to it; within 0.1 K.
/// </summary>
public class SteinhartHartThermistor
{
    [Theory]
    [InlineData(32_650, 0)]
    [InlineData(10_000, 25)]
    [InlineData(3_603, 50)]
    [InlineData(1_752, 70)]
    public void Temperature_of_the_table(double ohms, double celsius) =>
        Assert.Equal(celsius, Thermistor.TenKilohm.Celsius(ohms), 0.1);
}
