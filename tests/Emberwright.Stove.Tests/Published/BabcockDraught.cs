using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// Babcock &amp; Wilcox, Steam: theoretical draught 0.52·H·P·(1/T − 1/T₁) in inH2O gives 0.67 for 100 ft, 14.7 psi, 521 and 961 °R.
/// Its 0.52 is rounded; ours computes g·H·(ρ − ρ₁), so 1.5 % is allowed. The second value is g·H·Δρ by hand.
/// </summary>
public class BabcockDraught
{
    private const double PaPerInchOfWater = 249.089;

    [Fact]
    public void A_hundred_feet_of_hot_gas()
    {
        const double pressurePa = 14.7 * 6894.757;
        var draught = Atmosphere.GravityMPerS2 * 100 * 0.3048
            * (Atmosphere.DensityKgPerM3(pressurePa, 521 / 1.8) - Atmosphere.DensityKgPerM3(pressurePa, 961 / 1.8));

        Assert.Equal(0.67, draught / PaPerInchOfWater, 0.01);
    }

    [Fact]
    public void Five_metres_by_hand() => Assert.Equal(24.5, Atmosphere.GravityMPerS2 * 5 * (1.25 - 0.75), 0.05);

    /// <summary>A stove with its blower off and a warm room draws what the column of room air in its vent lifts, whatever the path.</summary>
    [Fact]
    public void A_stove_counts_buoyancy_once()
    {
        var run = new VentRun(76, 0.3, 5, Tees: 1);
        var site = new Site(OutdoorC: -20, RoomC: 20, Vent: run);
        var pattern = DamperInsert.Pattern;
        var parameters = new double[Enum.GetValues<Parameter>().Length];
        foreach (var leak in new[] { Parameter.DoorLeak, Parameter.AshDoorLeak, Parameter.LidLeak, Parameter.ExhaustLeak, Parameter.BlowerGasketLeak, Parameter.VentLeak })
            parameters[(int)leak] = -10;
        parameters[(int)Parameter.Vent] = 4;
        parameters[(int)Parameter.BurnPot] = -9;
        var state = new VirtualStove(pattern, null, site).Solve(parameters, Condition.BlowerOff);

        // With almost no flow the vent is cold and draws nothing: the collar reads the room's own lightness against outdoors.
        var pressure = Atmosphere.PressurePa(0);
        var perMetre = Atmosphere.GravityMPerS2 * (Atmosphere.DensityKgPerM3(pressure, 253.15) - Atmosphere.DensityKgPerM3(pressure, 293.15));
        var expected = -perMetre * 0.25;
        Assert.Equal(expected, state.Value(Measure.Pressure, Places.Collar), 0.25);
    }
}
