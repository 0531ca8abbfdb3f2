using Emberwright.Stove.Controls.Sensors;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>IEC 60028, annealed copper 0.00393/K at 20 °C: 1.21 Ω at 20 °C is 1.472 Ω at 75 °C (rounded to 1 mΩ).</summary>
public class CopperTemperatureCoefficient
{
    [Fact]
    public void Warm_winding() => Assert.Equal(1.472, CopperWinding.Ohms(1.21, 20, 75), 0.0006);

    /// <summary>The older rule R₂/R₁ = (234.5 + t₂)/(234.5 + t₁), the same line within rounding of its constant.</summary>
    [Theory]
    [InlineData(20, 75)]
    [InlineData(25, 110)]
    [InlineData(0, 60)]
    public void Rule_of_234_5(double cold, double warm) =>
        Assert.Equal((234.5 + warm) / (234.5 + cold), CopperWinding.Ohms(1, cold, warm), 0.0005);
}
