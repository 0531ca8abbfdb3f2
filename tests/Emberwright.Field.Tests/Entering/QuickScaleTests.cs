using Emberwright.Field.Entering;
using Xunit;

namespace Emberwright.Field.Tests.Entering;

public class QuickScaleTests
{
    [Theory]
    [InlineData(-0.13, -0.07, 0.01)]
    [InlineData(-33, -17, 1)]
    [InlineData(0.01, 0.05, 0.01)]
    [InlineData(140, 171, 1)]
    [InlineData(-0.26, -0.17, 0.01)]
    public void The_numbers_cover_the_band_reach_past_both_ends_and_are_few(double low, double high, double step)
    {
        var (values, between) = QuickScale.Around(low, high, step);
        Assert.InRange(values.Count, 4, 12);
        Assert.True(values[0] < low && values[^1] > high);
        Assert.True(between >= step);
        Assert.All(values.Zip(values.Skip(1)), pair => Assert.Equal(between, pair.Second - pair.First, 9));
    }

    [Fact]
    public void Steps_are_round() =>
        Assert.All(new[] { 0.3, 1, 3, 9, 40, 170, 900 }, width =>
        {
            var step = QuickScale.Around(0, width, 0.1).Step;
            var lead = step / Math.Pow(10, Math.Floor(Math.Log10(step) + 1e-9));
            Assert.Contains(Math.Round(lead, 6), new[] { 1.0, 2, 5 });
        });
}
