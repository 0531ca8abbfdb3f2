using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Air;

/// <summary>What a gauge shows of the solved pressures, worked out here by hand: static, against the room at the tapping's height.</summary>
public class GaugeTests
{
    private static readonly double[] Nominal = new double[Enum.GetValues<Parameter>().Length];

    /// <summary>Total less ρw²/2 in the 76 mm collar, w = ṁ/(ρA); at 20 °C all round the room's column is outdoors' own.</summary>
    [Fact]
    public void A_tapping_in_the_stream_reads_static_pressure()
    {
        var state = new VirtualStove(DamperInsert.Pattern, null, new Site(OutdoorC: 20, RoomC: 20)).Solve(Nominal, Condition.FanOnly);
        var density = 101_325 / (287.053 * 293.15);
        var area = Math.PI * 0.076 * 0.076 / 4;
        var velocity = state.MassFlowKgPerS("vent") / (density * area);

        Assert.True(density * velocity * velocity / 2 > 1);
        Assert.Equal(state.TotalPressurePa("collar") - (density * velocity * velocity / 2), state.Value(Measure.Pressure, Places.Collar), 0.01);
        Assert.Equal(state.TotalPressurePa("firebox"), state.Value(Measure.Pressure, Places.Firebox), 1e-6);
    }

    /// <summary>
    /// −20 °C outdoors, 20 °C in: the room's own column stands (ρ_out − ρ_room)·g·z = 1.868 Pa per metre above outdoors, and a gauge at
    /// 0.4 m reads that much more vacuum than the node stands below outdoor air.
    /// </summary>
    [Fact]
    public void The_rooms_own_column_counts_once()
    {
        var state = new VirtualStove(DamperInsert.Pattern, null, new Site(OutdoorC: -20, RoomC: 20)).Solve(Nominal, Condition.FanOnly);
        var column = 101_325 / 287.053 * ((1 / 253.15) - (1 / 293.15)) * 9.80665;

        Assert.Equal(1.866, column, 0.01);
        Assert.Equal(state.TotalPressurePa("firebox") - (0.4 * column), state.Value(Measure.Pressure, Places.Firebox), 1e-6);
    }

    /// <summary>Blower off, warm house in the cold: the vent's warm column draws, so the firebox stands below the room and flow goes out.</summary>
    [Fact]
    public void A_warm_column_draws_up_the_vent()
    {
        var cold = new VirtualStove(DamperInsert.Pattern, null, new Site(OutdoorC: -20, RoomC: 20)).Solve(Nominal, Condition.BlowerOff);
        var hot = new VirtualStove(DamperInsert.Pattern, null, new Site(OutdoorC: 38, RoomC: 20)).Solve(Nominal, Condition.BlowerOff);

        Assert.True(cold.MassFlowKgPerS("vent") > 5e-4);
        Assert.True(cold.Value(Measure.Pressure, Places.Firebox) < -1);
        Assert.True(hot.MassFlowKgPerS("vent") < 0);
    }
}
