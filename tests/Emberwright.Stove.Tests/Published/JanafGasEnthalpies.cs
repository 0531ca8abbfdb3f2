using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// NIST-JANAF Thermochemical Tables, 4th ed. (Chase 1998): cp and H(T) − H(298.15 K) at 1 bar.
/// The Shomate fits follow the tables within 0.1 % of cp and 0.02 kJ/mol (their rounding and the fit's own residual).
/// O2 500, H2O 1000 and CO2 600 K were read from the tables; the N2, CO and Ar rows are consistent with
/// the tables as remembered.
/// </summary>
public class JanafGasEnthalpies
{
    [Theory]
    [InlineData(Gas.Oxygen, 500, 31.091, 6.084)]
    [InlineData(Gas.Water, 1000, 41.268, 26.000)]
    [InlineData(Gas.CarbonDioxide, 600, 47.321, 12.907)]
    [InlineData(Gas.Nitrogen, 500, 29.580, 5.911)]
    [InlineData(Gas.Nitrogen, 1000, 32.697, 21.463)]
    [InlineData(Gas.CarbonMonoxide, 1000, 33.183, 21.690)]
    [InlineData(Gas.Argon, 1000, 20.786, 14.589)]
    public void One_mole_holds_the_tabulated_heat(Gas gas, double kelvin, double capacity, double kiloJoule)
    {
        var heat = new HeatContent(One(gas)).At(kelvin, out var slope);

        Assert.Equal(kiloJoule, heat / 1000, 0.02);
        Assert.Equal(capacity, slope, 0.001 * capacity);
    }

    [Theory]
    [InlineData(Gas.Oxygen, 29.376)]
    [InlineData(Gas.Nitrogen, 29.124)]
    [InlineData(Gas.CarbonDioxide, 37.129)]
    [InlineData(Gas.Water, 33.590)]
    [InlineData(Gas.CarbonMonoxide, 29.142)]
    [InlineData(Gas.SulfurDioxide, 39.878)]
    public void Capacity_at_25_C_is_the_tabulated_one(Gas gas, double capacity) =>
        Assert.Equal(capacity, new HeatContent(One(gas)).HeatCapacityAt(298.15), 0.001 * capacity);

    private static GasMix One(Gas gas) => gas switch
    {
        Gas.CarbonDioxide => new(CarbonDioxide: 1),
        Gas.Water => new(Water: 1),
        Gas.SulfurDioxide => new(SulfurDioxide: 1),
        Gas.Nitrogen => new(Nitrogen: 1),
        Gas.Oxygen => new(Oxygen: 1),
        Gas.Argon => new(Argon: 1),
        Gas.CarbonMonoxide => new(CarbonMonoxide: 1),
    };
}
