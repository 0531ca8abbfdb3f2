using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Air;

/// <summary>A blower with a speed sensor holds its speed and hides low voltage; a shaded-pole blower slows. Common practice, no source.</summary>
public class BlowerSpeedTests
{
    private static readonly double[] Nominal = new double[Enum.GetValues<Parameter>().Length];

    public static TheoryData<string> Ids() => [.. PatternLibrary.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Low_voltage_shows_only_where_no_sensor_holds_the_speed(string id)
    {
        var pattern = PatternLibrary.Find(id)!;
        double Ratio(double share) => new VirtualStove(pattern, null, new Site(SupplyV: share * pattern.SupplyV)).Solve(Nominal, Condition.FanOnly).BlowerSpeedRatio;

        if (pattern.HoldsBlowerSpeed)
            Assert.Equal(Ratio(1), Ratio(0.9), 1e-12);
        else
            Assert.True(Ratio(0.9) < 0.97 * Ratio(1));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_pattern_says_so_where_its_wiring_has_a_speed_sensor(string id)
    {
        var pattern = PatternLibrary.Find(id)!;

        Assert.Equal(pattern.Program.SpeedMissingS is not null, pattern.HoldsBlowerSpeed);
    }
}
