using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// IBPSA Modelica library, Airflow.Multizone one-way flow comparison: orifice 0.01 m², C_d 0.6 at 293.15 K passes 0.00931, 0.0294
/// and 0.0658 kg/s at 1, 10 and 50 Pa; effective leakage area 0.01 m² at 10 Pa and m 0.65 passes 0.00659, 0.0294 and
/// 0.0838 kg/s (C_d 0.6 as for the orifice, three digits printed). A stove of one link between room and terminal is held
/// at the pressure by the house.
/// </summary>
public class ModelicaOpenings
{
    [Theory]
    [InlineData(1, 0.00931)]
    [InlineData(10, 0.0294)]
    [InlineData(50, 0.0658)]
    public void Orifice(double pascal, double kgPerS) =>
        Assert.Equal(kgPerS, FlowAt(pascal, new Opening("hole", Boundary.Room, "box", 0.01, 0.6, Origin.Memory)), 0.005 * kgPerS);

    [Theory]
    [InlineData(1, 0.00659)]
    [InlineData(10, 0.0294)]
    [InlineData(50, 0.0838)]
    public void Leakage_area(double pascal, double kgPerS)
    {
        const double density = 101_325 / (287.053 * 293.15);
        var coefficient = 0.6 * 0.01 * Math.Sqrt(2 * 10 / density) / Math.Pow(10, 0.65);

        Assert.Equal(kgPerS, FlowAt(pascal, new Crack("hole", Boundary.Room, "box", coefficient, 0.65, Origin.Memory)), 0.005 * kgPerS);
    }

    /// <summary>A box with the hole on one side and a very wide open vent on the other, room and outdoors equally warm.</summary>
    private static double FlowAt(double pascal, Link hole)
    {
        var pattern = DamperInsert.Pattern with
        {
            Air = new Topology(
                [new Node("box", 0)],
                [hole, new Opening("wide", "box", Boundary.Terminal, 100, 0.6, Origin.Memory)],
                "box", "box"),
            Ports = [new Port(Places.Firebox, "box", "box", 0)],
        };
        var stove = new VirtualStove(pattern, null, new Site(OutdoorC: 20, RoomC: 20, HousePa: pascal));
        return stove.Solve(new double[Enum.GetValues<Parameter>().Length], Condition.BlowerOff).MassFlowKgPerS("hole");
    }
}
