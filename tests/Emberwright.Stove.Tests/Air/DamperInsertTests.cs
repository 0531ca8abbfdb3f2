using Xunit;
using static Emberwright.Stove.Tests.Air.Stoves;

namespace Emberwright.Stove.Tests.Air;

/// <summary>
/// How a clean and a faulty damper-regulated insert read. Magnitudes: common practice, no source, hence the wide tolerances;
/// what each test holds is the direction.
/// </summary>
public class DamperInsertTests
{
    private static readonly VirtualStove Stove = Insert();
    private static readonly StoveSolution Cold = Stove.Solve(Condition.FanOnly);
    private static readonly StoveSolution High = Stove.Solve(Condition.HighBurn);
    private static readonly StoveSolution Low = Stove.Solve(Condition.LowBurn);

    [Fact]
    public void Clean_and_cold_with_the_fan_only()
    {
        Assert.Equal(-29, Cold.Pa(Places.Firebox), 4.0);
        Assert.Equal(-60, Cold.Pa(Places.BlowerInlet), 4.0);
        Assert.Equal(4.5, Cold.Pa(Places.Collar), 3.0);
    }

    [Fact]
    public void Clean_on_high()
    {
        Assert.Equal(-19, High.Pa(Places.Firebox), 4.0);
        Assert.Equal(-63, High.Pa(Places.BlowerInlet), 4.0);
        Assert.Equal(-13, High.Pa(Places.Collar), 4.0);
        Assert.Equal(11.7, High.Oxygen(), 0.8);
        Assert.Equal(163, High.ExhaustC(), 12.0);
    }

    [Fact]
    public void Clean_on_low()
    {
        Assert.Equal(14.8, Low.Oxygen(), 0.8);
        Assert.Equal(80, Low.ExhaustC(), 10.0);
    }

    [Fact]
    public void Ash_passages_choked_weaken_the_firebox_and_strengthen_the_blower_inlet()
    {
        var state = Stove.Solve(Condition.FanOnly, (Parameter.AshPassages, Closed(0.7)));

        Assert.Equal(-7, state.Pa(Places.Firebox), 2.0);
        Assert.Equal(-74, state.Pa(Places.BlowerInlet), 4.0);
        Assert.Equal(-2, state.Pa(Places.Collar), 3.0);
    }

    [Fact]
    public void Exchanger_choked_and_insulated_runs_hot_and_rich()
    {
        var state = Stove.Solve(Condition.HighBurn, (Parameter.Exchanger, Closed(0.5)), (Parameter.Insulation, Math.Log(0.6)));

        Assert.True(state.Pa(Places.Firebox) > High.Pa(Places.Firebox) + 5);
        Assert.True(state.Pa(Places.BlowerInlet) < High.Pa(Places.BlowerInlet) - 3);
        Assert.True(state.PotAirRatio < High.PotAirRatio - 0.4);
        Assert.True(state.ExhaustC() > High.ExhaustC() + 70);
    }

    [Fact]
    public void Exchanger_choked_alone_does_not_run_hot() =>
        Assert.InRange(Stove.Solve(Condition.HighBurn, (Parameter.Exchanger, Closed(0.5))).ExhaustC(), 90, 190);

    [Fact]
    public void Fouled_wheel_weakens_both()
    {
        var state = Stove.Solve(Condition.HighBurn, (Parameter.Wheel, Math.Log(0.8)));

        Assert.True(state.Pa(Places.Firebox) > High.Pa(Places.Firebox) + 2);
        Assert.True(state.Pa(Places.BlowerInlet) > High.Pa(Places.BlowerInlet) + 7);
    }

    [Fact]
    public void Vent_blocked_raises_the_collar_and_weakens_the_rest()
    {
        var state = Stove.Solve(Condition.HighBurn, (Parameter.Vent, Closed(0.75)));

        Assert.True(state.Pa(Places.Collar) > 20);
        Assert.True(state.Pa(Places.Firebox) > High.Pa(Places.Firebox) + 5);
        Assert.True(state.Pa(Places.BlowerInlet) > High.Pa(Places.BlowerInlet) + 10);
    }

    [Fact]
    public void Intake_half_blocked_strengthens_the_firebox_while_the_pot_starves()
    {
        var state = Stove.Solve(Condition.HighBurn, (Parameter.Intake, Closed(0.5)));

        Assert.True(state.Pa(Places.Firebox) < High.Pa(Places.Firebox) - 5);
        Assert.True(state.Pa(Places.BlowerInlet) < High.Pa(Places.BlowerInlet));
        Assert.True(state.PotAirRatio < 0.93 * High.PotAirRatio);
    }

    [Fact]
    public void Burn_pot_holes_clogged_strengthen_the_firebox_too() =>
        Assert.True(Stove.Solve(Condition.HighBurn, (Parameter.BurnPot, Closed(0.4))).Pa(Places.Firebox) < High.Pa(Places.Firebox) - 5);

    [Fact]
    public void Leaking_door_weakens_the_firebox_leans_the_flue_gas_and_takes_air_from_the_pot()
    {
        var state = Stove.Solve(Condition.HighBurn, (Parameter.DoorLeak, Math.Log(10)));

        Assert.True(state.Pa(Places.Firebox) > High.Pa(Places.Firebox) + 3);
        Assert.True(state.Pa(Places.BlowerInlet) > High.Pa(Places.BlowerInlet));
        Assert.True(state.FlueAirRatio > High.FlueAirRatio);
        Assert.True(state.PotAirRatio < 0.92 * High.PotAirRatio);
    }

    [Fact]
    public void Leaking_door_and_clogged_pot_cancel_in_pressure_and_oxygen_but_not_at_the_pot()
    {
        var state = Stove.Solve(Condition.FanOnly, (Parameter.DoorLeak, Math.Log(14)), (Parameter.BurnPot, Closed(0.33)));
        var hot = Stove.Solve(Condition.HighBurn, (Parameter.DoorLeak, Math.Log(14)), (Parameter.BurnPot, Closed(0.33)));
        var stopped = Stove.Solve(Condition.IntakeStopped, (Parameter.DoorLeak, Math.Log(14)), (Parameter.BurnPot, Closed(0.33)));

        Assert.Equal(Cold.Pa(Places.Firebox), state.Pa(Places.Firebox), 5.0);
        Assert.Equal(High.Oxygen(), hot.Oxygen(), 1.0);
        Assert.True(hot.PotAirRatio < 0.75 * High.PotAirRatio);
        Assert.True(hot.Value(Measure.CarbonMonoxide, Places.Flue) > 3 * High.Value(Measure.CarbonMonoxide, Places.Flue));
        Assert.True(stopped.Pa(Places.Firebox) > Stove.Solve(Condition.IntakeStopped).Pa(Places.Firebox) + 15);
    }

    [Fact]
    public void Altitude_looks_like_a_weak_blower()
    {
        var state = Insert(new Site(AltitudeM: 3000)).Solve(Condition.HighBurn);

        Assert.InRange(state.Pa(Places.Firebox) / High.Pa(Places.Firebox), 0.5, 0.85);
        Assert.InRange(state.Pa(Places.BlowerInlet) / High.Pa(Places.BlowerInlet), 0.6, 0.85);
        Assert.InRange(state.PotAirRatio / High.PotAirRatio, 0.5, 0.85);
    }

    [Theory]
    [InlineData(Parameter.Wind, 20)]
    [InlineData(Parameter.House, -20)]
    public void Wind_and_a_tight_house_look_like_a_blocked_vent(Parameter parameter, double pa)
    {
        var state = Stove.Solve(Condition.HighBurn, (parameter, pa));

        Assert.True(state.Pa(Places.Collar) > High.Pa(Places.Collar) + 5);
        Assert.True(state.Pa(Places.Firebox) > High.Pa(Places.Firebox) + 2);
        Assert.True(state.Pa(Places.BlowerInlet) > High.Pa(Places.BlowerInlet) + 4);
    }

    [Fact]
    public void Cracked_exchanger_draws_room_air_in_after_the_fire()
    {
        var state = Stove.Solve(Condition.HighBurn, (Parameter.ExhaustLeak, Math.Log(10)));

        Assert.True(state.FlueAirRatio > High.FlueAirRatio);
        Assert.True(state.ExhaustC() < High.ExhaustC());
        Assert.True(state.MassFlowKgPerS("exhaust-covers") > 0);
    }

    [Fact]
    public void Dead_room_air_blower_runs_the_exhaust_hot() =>
        Assert.True(Stove.Solve(Condition.HighBurn, (Parameter.RoomAir, Math.Log(0.1))).ExhaustC() > High.ExhaustC() + 60);

    [Fact]
    public void Insulating_deposit_runs_hot_enough_to_act_on() =>
        Assert.True(Stove.Solve(Condition.HighBurn, (Parameter.Insulation, Math.Log(0.55))).ExhaustC() > 250);

    [Fact]
    public void Blower_off_leaves_the_chimneys_draught()
    {
        var state = Stove.Solve(Condition.BlowerOff);

        Assert.InRange(state.Pa(Places.Collar), -6, -0.5);
        Assert.InRange(state.Pa(Places.Firebox), -4, -0.1);
    }

    [Fact]
    public void Door_open_leaves_the_firebox_at_room_pressure() =>
        Assert.Equal(0, Stove.Solve(Condition.DoorOpen).Pa(Places.Firebox), 0.3);

    [Fact]
    public void Intake_stopped_shows_the_wheel()
    {
        var clean = Stove.Solve(Condition.IntakeStopped);
        var fouled = Stove.Solve(Condition.IntakeStopped, (Parameter.Wheel, Math.Log(0.8)));

        Assert.True(clean.Pa(Places.Firebox) < 1.1 * Cold.Pa(Places.BlowerInlet));
        Assert.Equal(0.8, fouled.Pa(Places.Firebox) / clean.Pa(Places.Firebox), 0.03);
    }

    [Fact]
    public void Fire_without_blower_on_high_starves() =>
        Assert.Contains(
            Stove.Solve(new Condition(FireState.High, BlowerState.Off, OpeningState.Closed)).Status,
            new[] { SolveStatus.FireStarved, SolveStatus.NoSteadyFire });

    [Fact]
    public void Wind_that_reverses_the_draught_leaves_no_steady_fire()
    {
        var state = Stove.Solve(Condition.HighBurn, (Parameter.Wind, 150));

        Assert.Equal(SolveStatus.NoSteadyFire, state.Status);
        Assert.True(state.MassFlowKgPerS("vent") < 0);
    }
}
