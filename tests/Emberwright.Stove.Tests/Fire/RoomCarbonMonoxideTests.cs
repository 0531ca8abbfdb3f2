using CsCheck;
using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Fire;

public class RoomCarbonMonoxideTests
{
    [Theory]
    [InlineData(2, 0, null)]
    [InlineData(5, 4, null)]
    [InlineData(5, 0, "rise")]
    [InlineData(34.9, 34, null)]
    [InlineData(35, 34, "ventilate")]
    [InlineData(69, 69, "ventilate")]
    [InlineData(70, 70, "evacuate")]
    [InlineData(400, 0, "evacuate")]
    public void A_reading_calls_for_the_strictest_action(double room, double before, string? action) =>
        Assert.Equal(action, CarbonMonoxideLimits.ActionFor(room, before)?.Id);

    [Fact]
    public void Without_a_reading_before_everything_counts_as_a_rise() =>
        Assert.Equal("rise", CarbonMonoxideLimits.ActionFor(10)?.Id);

    [Fact]
    public void More_never_calls_for_less() => Gen.Select(Gen.Double[0, 500], Gen.Double[0, 500]).Sample((a, b) =>
    {
        var milder = CarbonMonoxideLimits.ActionFor(Math.Min(a, b))?.Ppm ?? 0;
        var stricter = CarbonMonoxideLimits.ActionFor(Math.Max(a, b))?.Ppm ?? 0;

        Assert.True(stricter >= milder);
    });

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    public void A_broken_reading_is_refused_not_waved_through(double room) =>
        Assert.Throws<InputException>(() => CarbonMonoxideLimits.ActionFor(room));

    [Fact]
    public void Every_stop_names_who_releases_it() =>
        Assert.All(CarbonMonoxideLimits.Actions, action => Assert.NotEqual(Release.None, action.Release));

    [Fact]
    public void Curve_is_a_U_with_its_floor_between_10_and_13_percent()
    {
        var curve = CarbonMonoxideCurve.PelletStove;
        var floor = Enumerable.Range(40, 151).MinBy(tenth => curve.Ppm(tenth / 1000.0)) / 10.0;

        Assert.InRange(floor, 10, 13);
        // Common practice, no source: high burn 80–400 ppm at 8–14 %, low burn 200–1500 ppm around 15–17.5 %.
        Assert.InRange(curve.Ppm(0.09), 80, 400);
        Assert.InRange(curve.Ppm(0.14), 80, 400);
        Assert.InRange(curve.Ppm(0.16), 200, 1500);
    }

    /// <summary>One width away the curve has grown by e, on its own side.</summary>
    [Fact]
    public void Curve_is_steeper_where_air_is_short()
    {
        var curve = CarbonMonoxideCurve.PelletStove;

        Assert.Equal(Math.E * curve.LeastPpm, curve.Ppm(0.105 - 0.022), 1e-6);
        Assert.Equal(Math.E * curve.LeastPpm, curve.Ppm(0.105 + 0.044), 1e-6);
    }

    [Fact]
    public void Curve_slope_is_its_difference() => Gen.Double[0.03, 0.2].Sample(oxygen =>
    {
        var curve = CarbonMonoxideCurve.PelletStove;
        curve.LogPpm(oxygen, out var slope);
        var difference = (curve.LogPpm(oxygen + 1e-7, out _) - curve.LogPpm(oxygen - 1e-7, out _)) / 2e-7;

        if (Math.Abs(oxygen - 0.04) > 1e-6 && Math.Abs(oxygen - 0.19) > 1e-6) Assert.Equal(difference, slope, 0.01);
    });
}
