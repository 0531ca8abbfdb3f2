using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// Worked conversions: 87 ppm at 5 % O2 is 114 ppm air-free (gas-appliance testing usage, 20.9 %); 200 ppm at 10 % O2 is
/// 250 mg/m³ and 181.8 mg/m³ at 13 % O2 (emission standards, 21 %). Tolerance is the rounding of the quoted values, which for
/// the last took 250 where 249.9 stands.
/// </summary>
public class CarbonMonoxideConversions
{
    [Fact]
    public void Air_free() => Assert.Equal(114, CarbonMonoxide.AirFree(87, 0.05), 0.5);

    [Fact]
    public void Milligrams() => Assert.Equal(250, CarbonMonoxide.NormalMgPerM3(200), 0.2);

    [Fact]
    public void At_thirteen_percent() => Assert.Equal(181.8, CarbonMonoxide.AtThirteenPercent(250, 0.10), 0.05);

    /// <summary>WHO, Guidelines for indoor air quality (2010): 1 ppm = 1.145 mg/m³ at 25 °C and 1013 hPa.</summary>
    [Fact]
    public void Milligrams_in_room_air() => Assert.Equal(1.145, CarbonMonoxide.MgPerM3(1, 298.15, 101_325), 0.0005);
}
