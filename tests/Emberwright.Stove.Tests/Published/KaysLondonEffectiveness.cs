using Emberwright.Stove.Heat;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// Consistent with Kays &amp; London, Compact Heat Exchangers, table of counterflow effectiveness (remembered, not read; printed to
/// three digits), and with its exact limits.
/// </summary>
public class KaysLondonEffectiveness
{
    [Theory]
    [InlineData(1, 0, 0.632)]
    [InlineData(1, 1, 0.500)]
    [InlineData(3, 1, 0.750)]
    [InlineData(3, 0.5, 0.875)]
    [InlineData(2, 0.25, 0.824)]
    public void Counterflow(double transferUnits, double capacityRatio, double expected) =>
        Assert.Equal(expected, CounterflowEffectiveness.Of(transferUnits, capacityRatio), 1.5e-3);

    /// <summary>The gas cannot give more than the other stream can take.</summary>
    [Fact]
    public void With_a_tiny_other_stream_it_tends_to_one_over_R() =>
        Assert.Equal(0.1, CounterflowEffectiveness.Of(50, 10), 1e-9);
}
