using Emberwright.Stove.Patterns;
using Emberwright.Stove.Vent;
using Xunit;

namespace Emberwright.Stove.Tests.Vent;

public class VentTests
{
    private static readonly double[] Nominal = new double[Enum.GetValues<Parameter>().Length];
    private static readonly VentRun Short = new(76, 0.6, 1.2, Tees: 1);

    /// <summary>2 ft + 4 ft/2 + 5 ft by hand; common practice, no source.</summary>
    [Fact]
    public void Equivalent_length_by_the_rule()
    {
        var rule = EquivalentLength.Of(new VentRun(76, 2 * 0.3048, 4 * 0.3048, Tees: 1), 0);

        Assert.Equal(9, rule.Feet, 1e-9);
        Assert.False(rule.AsksForFourInch);
    }

    [Theory]
    [InlineData(76, 5, 0, true)]
    [InlineData(76, 0.6, 1000, true)]
    [InlineData(102, 5, 1000, false)]
    public void Long_or_high_asks_for_four_inch(double diameter, double horizontal, double altitude, bool expected) =>
        Assert.Equal(expected, EquivalentLength.Of(new VentRun(diameter, horizontal, 1.2, Elbows90: 1, Tees: 1), altitude).AsksForFourInch);

    [Fact]
    public void The_patterns_own_vent_on_the_reference_day_has_no_margin_but_wind()
    {
        var check = VentCheck.Of(DamperInsert.Pattern, null, new Site(), 0);

        Assert.All(check.Cases, c => Assert.Equal(0, c.MarginPa, 1e-3));
    }

    [Fact]
    public void A_long_narrow_run_lacks_pressure_and_a_wide_one_has_it()
    {
        var narrow = VentCheck.Of(ThermocoupleFreestanding.Pattern, null, new Site(Vent: new VentRun(76, 6, 1, Elbows90: 4, Tees: 1)), 0);
        var wide = VentCheck.Of(ThermocoupleFreestanding.Pattern, null, new Site(Vent: new VentRun(102, 1, 5, Tees: 1)), 0);

        Assert.True(narrow.Cases[2].MarginPa < -10);
        Assert.True(wide.Cases[2].MarginPa > 5);
        Assert.True(narrow.Cases[2].State.PotAirRatio < wide.Cases[2].State.PotAirRatio);
    }

    [Fact]
    public void Altitude_takes_margin_away() =>
        Assert.True(VentCheck.Of(ThermocoupleFreestanding.Pattern, null, new Site(AltitudeM: 2000), 0).Cases[2].MarginPa < -10);

    [Fact]
    public void Design_wind_takes_its_pressure()
    {
        var cases = VentCheck.Of(DamperInsert.Pattern, null, new Site(), 10).Cases;
        var (calm, windy) = (cases[2], cases[5]);

        Assert.Equal(0.6 * 0.5 * 1.269 * 100, calm.AvailablePa - windy.AvailablePa, 0.1);
        Assert.True(windy.AirShare < calm.AirShare);
    }

    [Fact]
    public void A_cold_chimney_gives_less_than_a_hot_one()
    {
        var cases = VentCheck.Of(DamperInsert.Pattern, null, new Site(OutdoorC: -5), 0).Cases;

        Assert.Equal(Condition.FanOnly, cases[0].Condition);
        Assert.True(cases[0].Profile.Points[0].PressurePa > cases[2].Profile.Points[0].PressurePa);
        Assert.True(cases[0].Profile.PositiveLengthM > cases[2].Profile.PositiveLengthM);
    }

    [Fact]
    public void A_long_run_works_in_a_wider_vent_only()
    {
        var run = new VentRun(76, 6, 1, Elbows90: 4, Tees: 1);
        var site = new Site(Vent: run);

        Assert.False(VentCheck.Of(ThermocoupleFreestanding.Pattern, null, site, 0).Works);
        var smallest = VentCheck.SmallestDiameterMm(ThermocoupleFreestanding.Pattern, null, site, 0);
        Assert.InRange(smallest!.Value, 80, 153);
        Assert.True(VentCheck.Of(ThermocoupleFreestanding.Pattern, null, new Site(Vent: run with { DiameterMm = smallest.Value }), 0).Works);
    }

    [Fact]
    public void No_diameter_helps_where_the_blower_is_too_weak_for_the_height() =>
        Assert.Null(VentCheck.SmallestDiameterMm(ThermocoupleFreestanding.Pattern, null, new Site(AltitudeM: 4500), 0));

    [Fact]
    public void Termination_distances_say_where_they_come_from_and_name_each_place_once()
    {
        Assert.All(TerminationDistances.Usual, d => Assert.Equal("common practice, no source", d.Origin.Source));
        Assert.Distinct(TerminationDistances.Usual.Select(d => d.Id));
        Assert.Contains("take precedence", TerminationDistances.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void A_short_run_stands_under_pressure_behind_the_blower_and_a_tall_hot_chimney_does_not()
    {
        var through = VentProfile.Of(new VirtualStove(ThermocoupleFreestanding.Pattern, null, new Site(Vent: Short)).Solve(Nominal, Condition.FanOnly));
        var tall = VentProfile.Of(new VirtualStove(DamperInsert.Pattern, null, new Site()).Solve(Nominal, Condition.HighBurn));

        Assert.True(through.PositiveLengthM > 1);
        // Only under the cap, whose loss pushes back.
        Assert.InRange(tall.PositiveLengthM, 0, 1);
    }

    [Fact]
    public void The_profile_begins_and_ends_where_the_solved_stove_does()
    {
        var state = new VirtualStove(DamperInsert.Pattern, null, new Site()).Solve(Nominal, Condition.HighBurn);
        var profile = VentProfile.Of(state);

        Assert.Equal(state.TemperatureC("collar"), profile.Points[0].GasC, 1e-9);
        Assert.Equal(state.Value(Measure.Temperature, Places.VentOutlet), profile.Points[^1].GasC, 0.5);
        // At the outlet the terminal's loss is left, less the velocity head that counts as static there.
        var last = profile.Points[^1];
        Assert.InRange(last.PressurePa, 0, 4);
        Assert.Equal(5.5, last.HeightM, 1e-9);
    }

    [Fact]
    public void A_bare_run_in_the_cold_condenses_and_a_hot_one_does_not()
    {
        var cold = VentProfile.Of(new VirtualStove(DamperInsert.Pattern, null, new Site(OutdoorC: -25, Vent: new VentRun(102, 2, 8, Tees: 1))).Solve(Nominal, Condition.LowBurn));
        var hot = VentProfile.Of(new VirtualStove(ThermocoupleFreestanding.Pattern, null, new Site(Vent: Short)).Solve(Nominal, Condition.HighBurn));

        Assert.True(cold.CondensingLengthM > 2);
        Assert.Equal(0, hot.CondensingLengthM);
        Assert.InRange(hot.DewPointC, 35, 55);
    }

    /// <summary>Entry 0.5, one tee 1.3, a vertical cap 2.2: 4.0, added by hand; an elbow more makes 4.75.</summary>
    [Fact]
    public void Losses_of_a_run_are_the_sum_of_its_fittings()
    {
        Assert.Equal(4.0, VentDuct.Of(new VentRun(76, 0.3, 5.5, Tees: 1, Terminal: "vertical-cap")).Loss, 1e-9);
        Assert.Equal(4.75, VentDuct.Of(new VentRun(76, 0.3, 5.5, Elbows90: 1, Tees: 1, Terminal: "vertical-cap")).Loss, 1e-9);
    }
}
