using Emberwright.Stove.Heat;
using Xunit;

namespace Emberwright.Stove.Tests.Heat;

public class DiscTests
{
    private static readonly Disc Proof = new(49, 4, 12, ClosesOnRise: true);
    private static readonly Disc Limit = new(93, 4, 14, ClosesOnRise: false);

    /// <summary>Standard normal table: Φ(0) = 0.5, Φ(2) = 0.97725, Φ(−1) = 0.15866.</summary>
    [Theory]
    [InlineData(49, 0.5)]
    [InlineData(53, 0.97725)]
    [InlineData(47, 0.15866)]
    public void Acts_within_its_tolerance(double surface, double expected) => Assert.Equal(expected, Proof.HasActedRising(surface), 1e-5);

    [Fact]
    public void Goes_back_only_below_its_differential()
    {
        Assert.True(Proof.IsClosed(45, rising: false) > 0.99);
        Assert.True(Proof.IsClosed(45, rising: true) < 0.05);
        Assert.True(Proof.IsClosed(30, rising: false) < 0.01);
    }

    [Fact]
    public void A_limit_opens_on_rise()
    {
        Assert.True(Limit.IsClosed(70, rising: true) > 0.999);
        Assert.True(Limit.IsClosed(99, rising: true) < 0.01);
    }
}
