using CsCheck;
using Emberwright.Stove.Patterns;
using Xunit;
using static Emberwright.Stove.Tests.Air.Stoves;

namespace Emberwright.Stove.Tests.Air;

/// <summary>
/// Twenty thousand stoves nobody would keep: blockages up to 99 %, leaks a hundredfold, blowers off, gales, tight houses, high
/// places, any condition. Each must be solved, from a cold start and from a hot one, and to the same answer where the stove is in
/// use: with the blower off, or burning with the door open, a draught may stand either way, and no one answer is claimed.
/// </summary>
public class RobustnessTests
{
    private static readonly Gen<double> Passage = Gen.Frequency((3, Gen.Double[-0.6, 0.2]), (1, Gen.Double[Math.Log(0.01), 0]));
    private static readonly Gen<double> Leak = Gen.Frequency((3, Gen.Double[-1, 1]), (1, Gen.Double[0, Math.Log(100)]));

    private static readonly Gen<(int Pattern, Site Site, Condition Condition, double[] Values)> AnyStove =
        from pattern in Gen.Int[0, PatternLibrary.All.Count - 1]
        from altitude in Gen.Double[-100, 3500]
        from outdoor in Gen.Double[-35, 38]
        from wind in Gen.Double[0, 20]
        from outside in Gen.Bool
        from diameter in Gen.OneOf(76.0, 80.0, 102.0)
        from horizontal in Gen.Double[0.2, 4]
        from vertical in Gen.Double[0, 9]
        from lining in Gen.OneOf("rigid", "flexible", "masonry")
        from fire in Gen.Enum<FireState>()
        from blower in Gen.Frequency((3, Gen.Const(BlowerState.On)), (1, Gen.Const(BlowerState.Off)))
        from opening in Gen.Enum<OpeningState>()
        from passages in Passage.Array[5]
        from leaks in Leak.Array[6]
        from wheel in Gen.Double[-0.7, 0.05]
        from speed in Gen.Double[-0.6, 0.1]
        from insulation in Gen.Double[-1.5, 0.2]
        from feed in Gen.Double[-0.6, 0.5]
        from roomAir in Gen.Double[-3, 0.1]
        from moisture in Gen.Double[-0.04, 0.15]
        from gust in Gen.Double[-40, 60]
        from house in Gen.Double[-30, 10]
        from supply in Gen.Double[-0.25, 0.1]
        select (pattern,
            new Site(altitude, outdoor, 20, wind, null, new VentRun(diameter, horizontal, vertical, 1, 0, 1, Lining: lining), outside),
            new Condition(fire, blower, opening),
            Values(
                (Parameter.Intake, passages[0]), (Parameter.BurnPot, passages[1]), (Parameter.Exchanger, passages[2]),
                (Parameter.AshPassages, passages[3]), (Parameter.Vent, passages[4]), (Parameter.Wheel, wheel),
                (Parameter.BlowerSpeed, speed), (Parameter.DoorLeak, leaks[0]), (Parameter.AshDoorLeak, leaks[1]),
                (Parameter.LidLeak, leaks[2]), (Parameter.ExhaustLeak, leaks[3]), (Parameter.BlowerGasketLeak, leaks[4]),
                (Parameter.VentLeak, leaks[5]), (Parameter.Insulation, insulation), (Parameter.Feed, feed),
                (Parameter.RoomAir, roomAir), (Parameter.Moisture, moisture), (Parameter.Wind, gust),
                (Parameter.House, house), (Parameter.Supply, supply)));

    [Fact]
    public void Twenty_thousand_stoves_are_solved_alike_from_cold_and_hot() => AnyStove.Sample(
        stove =>
        {
            var pattern = PatternLibrary.All[stove.Pattern];
            var virtualStove = new VirtualStove(pattern, null, stove.Site);
            var cold = virtualStove.Solve(stove.Values, stove.Condition);
            Assert.NotEqual(SolveStatus.NotConverged, cold.Status);
            Assert.True(cold.MassResidualKgPerS < 1e-9 && cold.PressureResidualPa < 1e-6, $"{cold.Status} {cold.WorstResidual}");

            var hotCondition = stove.Condition with { Fire = stove.Condition.Fire == FireState.Cold ? FireState.Cold : FireState.High };
            var hotStart = virtualStove.Solve(Values((Parameter.Feed, 0.4), (Parameter.Intake, -0.3)), hotCondition);
            var hot = virtualStove.Solve(stove.Values, stove.Condition, hotStart);
            Assert.NotEqual(SolveStatus.NotConverged, hot.Status);
            Assert.True(hot.MassResidualKgPerS < 1e-9 && hot.PressureResidualPa < 1e-6, $"{hot.Status} {hot.WorstResidual}");
            var mayStandEitherWay = stove.Condition.Blower == BlowerState.Off || cold.Status == SolveStatus.NoSteadyFire
                || (stove.Condition.Opening != OpeningState.Closed && stove.Condition.Fire != FireState.Cold);
            if (mayStandEitherWay)
                return;
            foreach (var port in pattern.Ports)
                Assert.Equal(cold.Pa(port.Id), hot.Pa(port.Id), 1e-3);
            Assert.Equal(cold.ExhaustC(), hot.ExhaustC(), 1e-2);
        },
        iter: 20_000,
        threads: 2);

    /// <summary>The wind holds nine metres of vent nearly still: only the path from a pulled terminal leads to such a state.</summary>
    [Fact]
    public void A_draught_held_still_by_the_wind_is_found()
    {
        var site = new Site(1816, -32.664082448954275, 20, 10.16452893149879, null, new VentRun(80, 0.897017593527722, 9, 1, 0, 1), OutsideAir: false);
        var stove = new VirtualStove(PatternLibrary.All[0], null, site);
        var state = stove.Solve(
            Values((Parameter.BurnPot, -3), (Parameter.Exchanger, -0.15166883306929468), (Parameter.BlowerSpeed, -0.1306115016336729), (Parameter.Feed, -0.46153846153846156),
                (Parameter.Wind, 36.50616210741921), (Parameter.Supply, -0.19892723789534428)),
            new Condition(FireState.Shutdown, BlowerState.On, OpeningState.DoorOpen));
        Assert.NotEqual(SolveStatus.NotConverged, state.Status);
        Assert.True(state.MassResidualKgPerS < 1e-9 && state.PressureResidualPa < 1e-6, state.WorstResidual);
    }
}
