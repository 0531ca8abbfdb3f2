using Emberwright.Stove.Air;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>U.S. Standard Atmosphere, 1976, table I by geometric height; printed to five digits.</summary>
public class StandardAtmosphere1976
{
    [Theory]
    [InlineData(0, 101_325, 1.2250)]
    [InlineData(2000, 79_501, 1.0066)]
    [InlineData(3000, 70_121, 0.90925)]
    public void Pressure_and_density(double altitudeM, double pressurePa, double densityKgPerM3)
    {
        var pressure = Atmosphere.PressurePa(altitudeM);

        Assert.Equal(pressurePa, pressure, 2.0);
        Assert.Equal(densityKgPerM3, Atmosphere.DensityKgPerM3(pressure, Atmosphere.TemperatureK(altitudeM)), 5e-5);
    }
}
