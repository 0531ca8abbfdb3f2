using CsCheck;
using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Fire;

public class FuelTests
{
    [Fact]
    public void Analysis_that_does_not_sum_is_refused()
    {
        var refused = Assert.Throws<InputException>(() => UltimateAnalysis.OfPercent(50, 6, 40, 0, 0, 1));

        Assert.Equal("sum of the analysis", refused.Field);
    }

    [Fact]
    public void Rounded_analysis_is_scaled_to_one()
    {
        var dry = UltimateAnalysis.OfPercent(50, 6, 43.5, 0.1, 0, 0.9);

        Assert.Equal(1, dry.Carbon + dry.Hydrogen + dry.Oxygen + dry.Nitrogen + dry.Sulfur + dry.Ash, 1e-15);
        Assert.Equal(50 / 100.5, dry.Carbon, 1e-15);
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(0.7)]
    [InlineData(double.NaN)]
    public void Impossible_moisture_is_refused(double moisture) =>
        Assert.Equal("moisture", Assert.Throws<InputException>(() => Fuels.PelletsA1.WithMoisture(moisture)).Field);

    [Fact]
    public void Net_and_gross_invert_each_other() => Gen.Select(Gen.Double[10e6, 25e6], Gen.Double[0, 0.5]).Sample((gross, moisture) =>
    {
        var dry = Fuels.RedOak.Dry;

        Assert.Equal(gross, HeatingValue.GrossFromNet(HeatingValue.Net(gross, dry, moisture), dry, moisture), 1e-6 * gross);
    });

    /// <summary>
    /// What the standard's net value takes off the gross one is the heat of vaporisation at 25 °C, 2.442 MJ/kg, of all the water
    /// (tables of steam). It differs by the work of constant pressure against constant volume only, below 0.5 %.
    /// </summary>
    [Fact]
    public void Net_leaves_out_the_vapours_latent_heat() => StoichiometryTests.Any.Sample(s =>
    {
        var heat = HeatingValue.Of(s.Fuel);
        var water = (s.StoichiometricFlue.Water - s.StoichiometricAir.Water) * MolarMass.Water;
        var gross = heat.GrossDryJPerKg * (1 - s.Fuel.Moisture);

        Assert.Equal(gross - 2.442e6 * water, heat.NetJPerKg, 0.005 * heat.NetJPerKg);
    });

    [Fact]
    public void Wetter_fuel_gives_less_heat_and_a_higher_dew_point() => Gen.Double[0, 0.4].Sample(moisture =>
    {
        var drier = Fuels.PelletsA1.WithMoisture(moisture);
        var wetter = Fuels.PelletsA1.WithMoisture(moisture + 0.05);

        Assert.True(HeatingValue.Of(wetter).NetJPerKg < HeatingValue.Of(drier).NetJPerKg);
        Assert.True(Saturation.DewPointK(new Stoichiometry(wetter).FlueGasAt(2), 101_325)
            > Saturation.DewPointK(new Stoichiometry(drier).FlueGasAt(2), 101_325));
    });

    [Fact]
    public void A_measured_heating_value_takes_the_place_of_the_computed_one()
    {
        var heat = HeatingValue.Of(Fuels.RedOak.WithGross(19.5e6));

        Assert.Equal(19.5e6, heat.GrossDryJPerKg);
        Assert.True(heat.RelativeUncertainty < HeatingValue.Of(Fuels.RedOak).RelativeUncertainty);
    }

    [Fact]
    public void Every_fuel_of_the_list_can_be_burned_and_named() => Assert.All(Fuels.ById, pair =>
    {
        Assert.InRange(HeatingValue.Of(pair.Value).NetJPerKg, 13e6, 20e6);
        Assert.Same(pair.Value, Fuels.Named(pair.Key));
        Assert.InRange(new Stoichiometry(pair.Value).CarbonDioxideMax, 0.19, 0.21);
    });

    [Fact]
    public void An_unknown_fuel_lists_the_known() =>
        Assert.Contains("pellets-a1", Assert.Throws<InputException>(() => Fuels.Named("coal")).Message, StringComparison.Ordinal);

    [Fact]
    public void Rates_from_scales_and_from_turns()
    {
        Assert.Equal(1.7, FuelRate.Weighed(0.425, 900), 1e-12);
        Assert.Equal(1.44, FuelRate.FromAuger(0.012, 4, 0.5), 1e-12);
        Assert.Throws<InputException>(() => FuelRate.Weighed(0.4, 5));
        Assert.Throws<InputException>(() => FuelRate.FromAuger(0.012, 4, 1.2));
        Assert.Equal(2 * FuelRate.ResidueKgPerTonne(Fuels.PelletsA1), FuelRate.ResidueKgPerTonne(Fuels.PelletsA1, 0.5), 1e-12);
    }

    [Fact]
    public void Corrected_carbon_monoxide_is_the_same_however_diluted() =>
        Gen.Select(StoichiometryTests.Any, Gen.Double[1.1, 5], Gen.Double[1.1, 5]).Sample((s, one, other) =>
        {
            // The same mol of CO per kg of fuel in two dilutions: O2 by balance counts air of 20.946 %, the conventions 21 and
            // 20.9, so they agree within 3 % up to 17 % O2.
            double Ppm(double ratio) => 1e6 * 0.01 / s.FlueGasAt(ratio).PerKgFuel.DryMol;
            var (a, b) = (s.OxygenDry(one, out _), s.OxygenDry(other, out _));

            var thirteen = CarbonMonoxide.AtThirteenPercent(Ppm(one), a);
            Assert.Equal(thirteen, CarbonMonoxide.AtThirteenPercent(Ppm(other), b), 0.03 * thirteen);
            var free = CarbonMonoxide.AirFree(Ppm(one), a);
            Assert.Equal(free, CarbonMonoxide.AirFree(Ppm(other), b), 0.03 * free);
        });

    [Fact]
    public void Vapour_saturates_at_the_dew_point_at_any_altitude() =>
        Gen.Select(StoichiometryTests.Any, Gen.Double[1, 5], Gen.Double[60_000, 105_000]).Sample((s, ratio, pressure) =>
        {
            var gas = s.FlueGasAt(ratio);

            Assert.Equal(gas.WaterWet * pressure, Saturation.PressurePa(Saturation.DewPointK(gas, pressure)), 1e-6 * pressure);
        });

    /// <summary>The conventions' own oxygen of air, 20.9 and 21 %: factors by hand at 10 % O2.</summary>
    [Fact]
    public void Each_convention_keeps_its_own_oxygen_of_air()
    {
        Assert.Equal(100 * 20.9 / 10.9, CarbonMonoxide.AirFree(100, 0.10), 1e-9);
        Assert.Equal(100 * 8 / 11.0, CarbonMonoxide.AtThirteenPercent(100, 0.10), 1e-9);
        Assert.Equal(100, CarbonMonoxide.AtThirteenPercent(100, 0.13), 1e-9);
    }

    [Fact]
    public void Milligrams_and_ppm_invert_each_other() => Gen.Select(Gen.Double[1, 5000], Gen.Double[250, 330], Gen.Double[60e3, 105e3]).Sample((ppm, kelvin, pascal) =>
    {
        Assert.Equal(ppm, CarbonMonoxide.PpmFromNormal(CarbonMonoxide.NormalMgPerM3(ppm)), 1e-9 * ppm);
        Assert.Equal(ppm, CarbonMonoxide.PpmFromMgPerM3(CarbonMonoxide.MgPerM3(ppm, kelvin, pascal), kelvin, pascal), 1e-9 * ppm);
    });

    [Fact]
    public void A_value_at_the_limit_keeps_the_grade()
    {
        var a1 = PelletGrade.A1;
        var atLimit = new PelletSample(a1.MoistureMost, a1.AshMost, a1.NetLeastJPerKg, a1.BulkDensityLeast, a1.FinesMost, a1.DurabilityLeast);

        Assert.Same(a1, PelletGrade.BestFor(atLimit));
        Assert.Same(PelletGrade.A2, PelletGrade.BestFor(atLimit with { Ash = 0.0071 }));
        Assert.Same(PelletGrade.B, PelletGrade.BestFor(atLimit with { Nitrogen = 0.006 }));
        Assert.Equal(["bulk density", "fines"], a1.Breaches(atLimit with { BulkDensityKgPerM3 = 590, Fines = 0.02 }).Select(b => b.Property));
    }
}
