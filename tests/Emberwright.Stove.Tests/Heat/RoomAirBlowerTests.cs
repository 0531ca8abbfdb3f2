using CsCheck;
using Emberwright.Stove.Air;
using Emberwright.Stove.Heat;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Heat;

/// <summary>The room-air blower's own network: solved again here by bisection, and what technicians know of it.</summary>
public class RoomAirBlowerTests
{
    private static readonly RoomAirBlower Blower = RoomAirBlower.Sized(0.08, 60);

    [Fact]
    public void Clean_it_moves_what_it_was_sized_for() => Assert.Equal(0.08, Blower.Run(1).FlowM3PerS, 1e-9);

    /// <summary>Pressure over the way equals the curve's, found by bisection on the equation instead of its closed form.</summary>
    [Fact]
    public void The_closed_form_solves_the_balance() =>
        Gen.Select(Gen.Double[0.2, 1.4], Gen.Double[0.05, 1], Gen.Double[0.3, 1], Gen.Double[0.1, 1]).Sample((speed, inlet, wheel, grille) =>
        {
            double low = 0, high = 1;
            for (var i = 0; i < 200; i++)
            {
                var q = (low + high) / 2;
                if (Needs(q, inlet, grille) < Blower.Curve.RisePa(q, speed, 1.2, wheel)) low = q;
                else high = q;
            }

            Assert.Equal(low, Blower.HeldFlowM3PerS(speed, new RoomAirDirt(inlet, wheel, grille)), 1e-9);
        });

    [Fact]
    public void Lint_wheel_and_grille_each_restrict_it_and_more_of_them_more()
    {
        Assert.Equal(0, Blower.Restriction(new RoomAirDirt(1, 1, 1)), 1e-12);
        Assert.InRange(Blower.Restriction(new RoomAirDirt(InletOpen: 0.5)), 0.05, 0.5);
        Assert.InRange(Blower.Restriction(new RoomAirDirt(WheelHead: 0.6)), 0.05, 0.5);
        Assert.InRange(Blower.Restriction(new RoomAirDirt(GrilleOpen: 0.3)), 0.1, 0.8);
        Gen.Select(Gen.Double[0.02, 0.95], Gen.Double[0.3, 1]).Sample((open, wheel) =>
            Blower.Restriction(new RoomAirDirt(open, wheel)) > Blower.Restriction(new RoomAirDirt(open + 0.04, wheel)));
    }

    /// <summary>A shaded-pole blower speeds up when its path is blocked; a regulated one holds its speed. Common practice, no source.</summary>
    [Fact]
    public void Blocked_an_unregulated_motor_runs_up_and_a_regulated_one_does_not()
    {
        var blocked = new RoomAirDirt(InletOpen: 0.2);

        Assert.InRange(Blower.Run(1, blocked).SpeedShare, 1.03, 1.2);
        Assert.Equal(1, (Blower with { IsRegulated = true }).Run(1, blocked).SpeedShare);
        Assert.True(Blower.Run(1, blocked).FlowM3PerS > (Blower with { IsRegulated = true }).Run(1, blocked).FlowM3PerS);
    }

    /// <summary>Fan laws: with every loss on the square of the flow and the curve's own terms, flow goes with speed.</summary>
    [Fact]
    public void Flow_goes_with_speed() => Gen.Double[0.3, 1.4].Sample(s =>
        Math.Abs(Blower.Run(s).FlowM3PerS - (s * Blower.Run(1).FlowM3PerS)) < 1e-9);

    /// <summary>Thin air: the blower moves the same volume, hence less mass, by the ratio of ambient pressures.</summary>
    [Fact]
    public void High_up_the_same_volume_takes_less_heat()
    {
        var nominal = new double[Enum.GetValues<Parameter>().Length];
        double Flow(double altitudeM) => new VirtualStove(DamperInsert.Pattern, null, new Site(altitudeM)).Solve(nominal, Condition.HighBurn).Value(Measure.Flow, Places.WarmAir);
        double Warm(double altitudeM) => new VirtualStove(DamperInsert.Pattern, null, new Site(altitudeM)).Solve(nominal, Condition.HighBurn).Value(Measure.Temperature, Places.WarmAir);

        Assert.Equal(Flow(0), Flow(2000), 1e-9);
        Assert.True(Warm(2000) > Warm(0) + 5);
    }

    [Theory]
    [InlineData(0.005)]
    [InlineData(1.2)]
    public void Nonsense_is_named(double open) =>
        Assert.Contains("inlet", Assert.Throws<InputException>(() => Blower.Run(1, new RoomAirDirt(InletOpen: open))).Message, StringComparison.Ordinal);

    private static double Needs(double q, double inlet, double grille)
    {
        double Hole(double area, double kelvin) => 1.2 * kelvin / 293.15 * Math.Pow(q / (0.6 * area), 2) / 2;
        return Hole(Blower.InletM2 * inlet, 293.15) + Hole(Blower.JacketM2, 293.15 + 17.5) + Hole(Blower.GrilleM2 * grille, 293.15 + 35);
    }
}
