using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// IAPWS R7-97(2012), program-verification tables 35 and 36. The formula is exact there to nine figures; tolerance is their
/// rounding. Below 0 °C: supercooled water by Murphy &amp; Koop, Q. J. R. Meteorol. Soc. 131 (2005), equation 10,
/// consistent within 0.1 %.
/// </summary>
public class IapwsSaturation
{
    [Theory]
    [InlineData(300, 0.353658941e-2)]
    [InlineData(500, 0.263889776e1)]
    [InlineData(600, 0.123443146e2)]
    public void Pressure_of_temperature(double kelvin, double megapascal) =>
        Assert.Equal(megapascal, Saturation.PressurePa(kelvin) / 1e6, 1e-8 * megapascal);

    [Theory]
    [InlineData(0.1, 372.755919)]
    [InlineData(1, 453.035632)]
    [InlineData(10, 584.149488)]
    public void Temperature_of_pressure(double megapascal, double kelvin) =>
        Assert.Equal(kelvin, Saturation.TemperatureK(1e6 * megapascal), 1e-6);

    [Theory]
    [InlineData(263.15)]
    [InlineData(253.15)]
    [InlineData(243.15)]
    public void Supercooled_water_is_followed(double kelvin)
    {
        var murphyKoop = Math.Exp(54.842763 - 6763.22 / kelvin - 4.210 * Math.Log(kelvin) + 0.000367 * kelvin
            + Math.Tanh(0.0415 * (kelvin - 218.8)) * (53.878 - 1331.22 / kelvin - 9.44523 * Math.Log(kelvin) + 0.014025 * kelvin));

        Assert.Equal(murphyKoop, Saturation.PressurePa(kelvin), 0.001 * murphyKoop);
    }
}
