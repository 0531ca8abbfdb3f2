using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// Consistent with the indirect method of EN 13240 and EN 14785 as remembered, not read: 180 °C, CO2 8 %, CO 0.02 %, room
/// 20 °C, H_u 17 538 kJ/kg gives q_a 14.37, q_b 0.158, η 85.47 %. One coefficient was remembered in two ways (0.3 and
/// 0.03) that differ by 0.015 points; so 0.03 is allowed.
/// </summary>
public class RoomHeaterIndirectMethod
{
    private static readonly Fuel Fuel = new("regression", UltimateAnalysis.OfPercent(50.50, 6.10, 42.89, 0.10, 0.01, 0.40), 0.07);

    [Fact]
    public void Losses_and_efficiency()
    {
        var loss = IndirectMethod.Of(Fuel, 17.538e6, 0.08, 0.0002, 180, 20);

        Assert.Equal(14.37, 100 * loss.Sensible, 0.03);
        Assert.Equal(0.158, 100 * loss.Unburnt, 0.001);
        Assert.Equal(85.47, 100 * loss.Efficiency, 0.03);
    }

    /// <summary>The polynomials are fits to gas tables, so both methods must agree within half a point where stoves run.</summary>
    [Theory]
    [InlineData(0.12, 250)]
    [InlineData(0.08, 180)]
    [InlineData(0.05, 120)]
    public void Agrees_with_enthalpies(double carbonDioxide, double flueC)
    {
        var burn = new Stoichiometry(Fuel);
        var gas = burn.FlueGasAt(AirRatio.FromCarbonDioxide(burn, carbonDioxide, Basis.Dry));
        var enthalpy = FlueLoss.ByEnthalpy(gas, 17.538e6, flueC + 273.15, 293.15);

        Assert.Equal(enthalpy.Sensible, IndirectMethod.Of(Fuel, 17.538e6, carbonDioxide, 0, flueC, 20).Sensible, 0.005);
    }
}
