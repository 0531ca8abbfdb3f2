using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// ASHRAE Handbook of Fundamentals, thermodynamic properties of moist air at 101.325 kPa, humidity ratio at saturation
/// (as remembered). The table counts the real gas's enhancement of 0.4 to 0.5 %, ours is ideal; so 0.6 % is allowed.
/// </summary>
public class HumidityOfSaturatedAir
{
    [Theory]
    [InlineData(10, 0.007661)]
    [InlineData(20, 0.014758)]
    [InlineData(30, 0.027329)]
    [InlineData(40, 0.049141)]
    public void Humidity_ratio_of_the_table(double celsius, double kgPerKg) =>
        Assert.Equal(kgPerKg, Saturation.HumidityKgPerKg(1, celsius + 273.15, 101_325), 0.006 * kgPerKg);
}
