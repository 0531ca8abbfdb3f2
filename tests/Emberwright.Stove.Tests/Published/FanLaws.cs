using Emberwright.Stove.Air;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// Crane TP-410, example 7.33: 126 ft at 400 gpm and 3500 rpm become 29.7257 ft at 194.2857 gpm and 1700 rpm. Any curve through
/// the first point must pass through the second.
/// </summary>
public class FanLaws
{
    [Theory]
    [InlineData(0)]
    [InlineData(0.05)]
    public void Head_and_flow_follow_speed(double linear)
    {
        const double ratio = 1700.0 / 3500;
        var quadratic = 2e-4;
        var curve = new FanCurve(126 + (linear * 400) + (quadratic * 400 * 400), linear, quadratic, 1);

        Assert.Equal(126, curve.RisePa(400, 1, 1), 1e-9);
        Assert.Equal(194.2857, 400 * ratio, 1e-4);
        Assert.Equal(29.7257, curve.RisePa(400 * ratio, ratio, 1), 1e-4);
    }

    /// <summary>Pressure rises with density at the same volume flow (fan law).</summary>
    [Fact]
    public void Pressure_follows_density()
    {
        var curve = new FanCurve(80, 1750, 53_000);

        Assert.Equal(0.75 * curve.RisePa(0.007, 1, 1.2), curve.RisePa(0.007, 1, 0.9), 1e-12);
    }
}
