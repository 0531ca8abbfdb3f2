using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>Handbook values of air and water for wood.</summary>
public class WoodStoichiometry
{
    /// <summary>
    /// Handbook of Energy Engineering Calculations: 1.493 lb of O2 per lb of dry wood makes 6.443 lb of dry air.
    /// It counts 23.17 % of oxygen by mass; ours (20.946 % by volume) is 23.14 %, so 0.2 % is allowed.
    /// </summary>
    [Fact]
    public void Air_for_a_known_oxygen_demand()
    {
        var airPerOxygen = CombustionAir.DryMole.MassKg / (CombustionAir.OxygenShare * MolarMass.Oxygen);

        Assert.Equal(6.443, 1.493 * airPerOxygen, 0.002 * 6.443);
    }

    /// <summary>
    /// Wood as CH1.4O0.6: 6.307 kg of dry air per kg, worked by hand from CH1.4O0.6 + 1.05 O2 and air of 28.965 g/mol with
    /// 20.946 % O2. Only rounding of the quoted figure differs.
    /// </summary>
    [Fact]
    public void Air_for_wood_as_a_formula() =>
        Assert.Equal(6.307, new Stoichiometry(Formula.Wood).DryAirKgPerKg, 0.001);

    /// <summary>The same by its reaction: 1 mol of CO2 and 0.7 mol of H2O from 23.022 g.</summary>
    [Fact]
    public void Products_of_wood_as_a_formula()
    {
        var flue = new Stoichiometry(Formula.Wood).StoichiometricFlue;
        var air = new Stoichiometry(Formula.Wood).StoichiometricAir;

        Assert.Equal(0.7, flue.Water / (flue.CarbonDioxide - air.CarbonDioxide), 1e-12);
        Assert.Equal(1000 / 23.0216, flue.CarbonDioxide - air.CarbonDioxide, 1e-3);
    }

    /// <summary>
    /// Shelton, The Woodburner's Encyclopedia: a pound of wood at 20 % moisture (wet basis) gives about 0.63 lb of water
    /// in all, from 6 % hydrogen: 0.2 + 0.8·0.06·9 = 0.63.
    /// </summary>
    [Fact]
    public void Water_of_a_pound_of_moist_wood()
    {
        var wood = new Fuel("wood", UltimateAnalysis.OfPercent(50, 6, 43.5, 0, 0, 0.5), 0.20);

        Assert.Equal(0.63, new Stoichiometry(wood).StoichiometricFlue.Water * MolarMass.Water, 0.005);
    }

    private static class Formula
    {
        private const double Mass = 12.011 + 1.4 * 1.008 + 0.6 * 15.999;

        public static Fuel Wood { get; } = new("CH1.4O0.6",
            new UltimateAnalysis(12.011 / Mass, 1.4 * 1.008 / Mass, 0.6 * 15.999 / Mass, 0, 0, 0), 0);
    }
}
