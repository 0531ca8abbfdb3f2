using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// Velocity pressure of wind: ½·1.225·10² = 61.25 Pa (standard air, by hand). Cp 0.6 on a windward wall at normal incidence
/// (Swami &amp; Chandra, as in the EnergyPlus Engineering Reference) is what the vent check withstands.
/// </summary>
public class WindPressure
{
    [Fact]
    public void Ten_metres_per_second_on_a_hood()
    {
        var parameters = new double[Enum.GetValues<Parameter>().Length];
        var run = new VentRun(76, 0.5, 1, Tees: 1, Terminal: "horizontal-hood");
        var calm = new VirtualStove(DamperInsert.Pattern, null, new Site(OutdoorC: 15, Vent: run));
        var windy = new VirtualStove(DamperInsert.Pattern, null, new Site(OutdoorC: 15, Vent: run, WindMPerS: 10));
        parameters[(int)Parameter.Wind] = 0.3 * 61.25;

        Assert.Equal(
            calm.Solve(parameters, Condition.FanOnly).Value(Measure.Pressure, Places.Collar),
            windy.Solve(new double[parameters.Length], Condition.FanOnly).Value(Measure.Pressure, Places.Collar), 0.02);
    }
}
