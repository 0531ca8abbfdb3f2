using Xunit;

namespace Emberwright.Cli.Tests;

/// <summary>
/// The invented visits: each reading is the virtual stove's with that fault, rounded as the gauge shows it, so the fault put in
/// must come out first, and nothing must come out of the healthy one.
/// </summary>
public class DemoVisitTests
{
    [Theory]
    [InlineData("hidden-ash-chamber", "ash-passages-full", 0.8)]
    [InlineData("sealed-stove-choked", "ash-passages-full", 0.8)]
    [InlineData("worn-door-rope", "door-gasket-leaking", 0.8)]
    [InlineData("nest-in-the-cap", "nest-in-cap", 0.5)]
    [InlineData("ash-passages-full", "ash-passages-full", 0.5)]
    [InlineData("vent-furred-with-corn-ash", "vent-fouled", 0.2)]
    [InlineData("boiler-stove-due", "nothing", 0.8)]
    public void The_fault_put_in_comes_out_first(string visit, string fault, double least)
    {
        var first = Run.Of("suspects", Run.Demo(visit), "--json").Json.GetProperty("suspects")[0];

        Assert.Equal(fault, first.GetProperty("fault").GetString());
        Assert.True(first.GetProperty("probability").GetDouble() > least);
    }

    [Fact]
    public void A_vent_that_pushes_back_is_known_as_an_area_though_not_by_what_blocks_it()
    {
        var areas = Run.Of("suspects", Run.Demo("vent-furred-with-corn-ash"), "--json").Json.GetProperty("areas").EnumerateArray();

        // Put in: 62 % of the vent.
        Assert.InRange(areas.Single(a => a.GetProperty("area").GetString() == "vent").GetProperty("asFound").GetProperty("median").GetDouble(), 0.5, 0.7);
    }
}
