using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// Channiwala &amp; Parikh, Fuel 81 (2002) 1051–1063: a biomass of C 49.30 H 5.5 O 45.2 % gives 19.02 MJ/kg by the correlation
/// and 18.93 by the bomb. The first is arithmetic (rounding only), the second holds within the mean error of 1.45 %.
/// </summary>
public class ChanniwalaParikhHeatingValue
{
    private static readonly UltimateAnalysis Sample = UltimateAnalysis.OfPercent(49.30, 5.5, 45.2, 0, 0, 0);

    [Fact]
    public void The_correlation_gives_its_own_value() => Assert.Equal(19.02, HeatingValue.GrossDry(Sample) / 1e6, 0.005);

    [Fact]
    public void The_bomb_agrees_within_the_mean_error() => Assert.Equal(18.93, HeatingValue.GrossDry(Sample) / 1e6, 0.0145 * 18.93);

    /// <summary>Single coefficients, each alone against carbon; a swap of two would show here.</summary>
    [Theory]
    [InlineData(90, 10, 0, 0, 0, 0, 0.3491 * 90 + 1.1783 * 10)]
    [InlineData(60, 10, 30, 0, 0, 0, 0.3491 * 60 + 1.1783 * 10 - 0.1034 * 30)]
    [InlineData(85, 10, 0, 5, 0, 0, 0.3491 * 85 + 1.1783 * 10 - 0.0151 * 5)]
    [InlineData(80, 10, 0, 0, 10, 0, 0.3491 * 80 + 1.1783 * 10 + 0.1005 * 10)]
    [InlineData(60, 10, 0, 0, 0, 30, 0.3491 * 60 + 1.1783 * 10 - 0.0211 * 30)]
    public void Each_element_counts_as_published(double c, double h, double o, double n, double s, double ash, double expected) =>
        Assert.Equal(expected, HeatingValue.GrossDry(UltimateAnalysis.OfPercent(c, h, o, n, s, ash)) / 1e6, 1e-9);
}
