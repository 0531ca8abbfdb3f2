using Emberwright.Stove.Air;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// ASHRAE Handbook Fundamentals, duct design: 350 × 200 mm, 0.5 m³/s, roughness 0.09 mm, density 1.2 kg/m³ gives D_h 254.5 mm,
/// 7.14 m/s, Re 120 727, f 0.0191, 2.3 Pa/m (f printed to three digits).
/// </summary>
public class AshraeRectangularDuct
{
    [Fact]
    public void Friction_of_a_rectangular_duct()
    {
        var diameter = 4 * 0.35 * 0.2 / (2 * (0.35 + 0.2));
        var velocity = 0.5 / (0.35 * 0.2);
        var factor = Friction.Factor(120_727, 0.09e-3 / diameter);

        Assert.Equal(0.2545, diameter, 1e-4);
        Assert.Equal(7.14, velocity, 0.005);
        Assert.Equal(0.0191, factor, 1.5e-4);
        Assert.Equal(2.3, factor / diameter * 1.2 * velocity * velocity / 2, 0.05);
    }
}
