using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// One fuel (C 50.50 H 6.10 O 42.89 N 0.10 S 0.01 ash 0.40 % dry, 7 % moisture) worked by hand apart from this program, with
/// dry air of 20.95 % O2 and the rest nitrogen. Ours counts argon and carbon dioxide of air, which moves the figures by up to
/// 0.2 % of themselves; that is the tolerance.
/// </summary>
public class RegressionFuelBalance
{
    private static readonly Fuel Fuel = new("regression", UltimateAnalysis.OfPercent(50.50, 6.10, 42.89, 0.10, 0.01, 0.40), 0.07);
    private static readonly Stoichiometry Burn = new(Fuel);

    // The hand balance left out the 0.036 % of the air itself.
    private const double AirsOwnCarbonDioxide = 0.036;

    [Fact]
    public void Air() => Near(5.628, Burn.DryAirKgPerKg);

    [Fact]
    public void Dry_flue_gas() => Near(4.320, Burn.FlueGasAt(1).DryNormalM3PerKg);

    [Fact]
    public void Highest_carbon_dioxide() => Near(20.29, 100 * Burn.CarbonDioxideMax);

    [Fact]
    public void Flue_gas_at_twice_the_air()
    {
        var gas = Burn.FlueGasAt(2);

        Near(10.52, 100 * gas.OxygenDry);
        Near(10.10 + AirsOwnCarbonDioxide, 100 * gas.CarbonDioxideDry);
        Assert.Equal(40.9, Saturation.DewPointK(gas, 101_325) - 273.15, 0.1);
        Assert.Equal(2, AirRatio.FromOxygen(Burn, 0.1052, Basis.Dry), 0.005);
        Assert.Equal(2, AirRatio.FromCarbonDioxide(Burn, (10.10 + AirsOwnCarbonDioxide) / 100, Basis.Dry), 0.005);
    }

    /// <summary>Enthalpy balance at 180 °C, CO2 8 %, CO 0.02 %, room 20 °C, LHV 17 538 kJ/kg: 14.42 %.</summary>
    [Fact]
    public void Loss_by_enthalpy()
    {
        var gas = Burn.FlueGasAt(AirRatio.FromCarbonDioxide(Burn, 0.08, Basis.Dry, 0.0002), 0.0002);

        Assert.Equal(14.42, 100 * FlueLoss.ByEnthalpy(gas, 17.538e6, 453.15, 293.15).Sensible, 0.05);
    }

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, 0.002 * expected);
}
