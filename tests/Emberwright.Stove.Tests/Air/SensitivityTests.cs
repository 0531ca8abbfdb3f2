using Xunit;
using static Emberwright.Stove.Tests.Air.Stoves;

namespace Emberwright.Stove.Tests.Air;

/// <summary>
/// Slopes by the implicit-function theorem against central differences of whole solves (two step widths, extrapolated),
/// on stoves away from nominal.
/// </summary>
public class SensitivityTests
{
    private static readonly (Measure Measure, string Place)[] Readable =
    [
        (Measure.Pressure, Places.Firebox), (Measure.Pressure, Places.BlowerInlet), (Measure.Pressure, Places.Collar),
        (Measure.Pressure, Places.SwitchHose), (Measure.Pressure, Places.House),
        (Measure.Oxygen, Places.Flue), (Measure.CarbonDioxide, Places.Flue), (Measure.CarbonMonoxide, Places.Flue),
        (Measure.Temperature, Places.Collar), (Measure.Temperature, Places.VentOutlet), (Measure.Temperature, Places.WarmAir),
        (Measure.Temperature, Places.Firebox), (Measure.Feed, Places.Feed), (Measure.Flow, Places.Intake),
        (Measure.Flow, Places.BurnPot), (Measure.Flow, Places.WarmAir),
    ];

    public static TheoryData<string> Patterns() => [.. Emberwright.Stove.Patterns.PatternLibrary.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Slopes_agree_with_differences(string id)
    {
        var stove = new VirtualStove(Emberwright.Stove.Patterns.PatternLibrary.Find(id)!, null, new Site(AltitudeM: 600, OutdoorC: -3));
        Condition[] conditions =
        [
            Condition.FanOnly, Condition.BlowerOff, Condition.DoorOpen, Condition.IntakeStopped, Condition.HighBurn, Condition.LowBurn,
            new(FireState.Igniting, BlowerState.On, OpeningState.Closed), new(FireState.Shutdown, BlowerState.On, OpeningState.Closed),
        ];
        var random = new Random(20);
        foreach (var condition in conditions)
        {
            var at = Somewhere(random);
            var state = stove.Solve(at, condition);
            Assert.Equal(SolveStatus.Converged, state.Status);
            foreach (var (measure, place) in Readable)
            {
                if (!state.Knows(measure, place))
                    continue;
                var slopes = new double[Parameters];
                state.Sensitivity(measure, place, slopes);
                for (var k = 0; k < Parameters; k++)
                {
                    var expected = Difference(stove, at, condition, measure, place, k);
                    var allowed = (1e-5 * Math.Abs(expected)) + Floor(measure, state.Value(measure, place));
                    Assert.True(Math.Abs(expected - slopes[k]) <= allowed,
                        $"{id} {condition} {measure} at {place} by {(Parameter)k}: differences {expected:R}, slope {slopes[k]:R}");
                }
            }
        }
    }

    [Fact]
    public void A_restriction_on_the_path_moves_what_it_should()
    {
        var slopes = new double[Parameters];
        Insert().Solve(Condition.FanOnly).Sensitivity(Measure.Pressure, Places.Firebox, slopes);

        Assert.True(slopes[(int)Parameter.AshPassages] < 0);
        Assert.True(slopes[(int)Parameter.Intake] > 0);
        Assert.True(slopes[(int)Parameter.Wheel] < 0);
        Assert.Equal(0, slopes[(int)Parameter.Feed]);
    }

    private static double[] Somewhere(Random random)
    {
        var values = new double[Parameters];
        for (var k = 0; k < Parameters; k++)
        {
            values[k] = (Parameter)k switch
            {
                Parameter.Wind or Parameter.House => 3 * (random.NextDouble() - 0.5),
                Parameter.Moisture => 0.03 * random.NextDouble(),
                Parameter.Supply => 0.1 * (random.NextDouble() - 0.5),
                _ => 0.5 * (random.NextDouble() - 0.5),
            };
        }

        return values;
    }

    private static double Difference(VirtualStove stove, double[] at, Condition condition, Measure measure, string place, int parameter)
    {
        double Slope(double h)
        {
            var up = (double[])at.Clone();
            var down = (double[])at.Clone();
            up[parameter] += h;
            down[parameter] -= h;
            return (stove.Solve(up, condition).Value(measure, place) - stove.Solve(down, condition).Value(measure, place)) / (2 * h);
        }

        const double step = 2e-4;
        return ((4 * Slope(step)) - Slope(2 * step)) / 3;
    }

    /// <summary>What the solver's tolerances leave in a difference of two solves.</summary>
    private static double Floor(Measure measure, double value) => measure switch
    {
        Measure.Pressure or Measure.Temperature => 1e-5,
        Measure.CarbonMonoxide => 1e-6 * Math.Max(100, value),
        Measure.Flow => 1e-11,
        _ => 3e-6,
    };
}
