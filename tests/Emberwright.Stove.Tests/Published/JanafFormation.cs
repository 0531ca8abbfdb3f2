using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// NIST-JANAF Thermochemical Tables, 4th ed. (Chase 1998), enthalpies of formation at 298.15 K in kJ/mol: CO −110.527,
/// CO2 −393.522, H2O(g) −241.826, H2O(l) −285.830, SO2 −296.842 (as remembered, the last digit not vouched for). What the engine
/// burns and condenses follows from their differences, within 0.5 %.
/// </summary>
public class JanafFormation
{
    private const double CarbonMonoxide = -110.527, CarbonDioxide = -393.522, Vapour = -241.826, Liquid = -285.830, SulfurDioxide = -296.842;

    [Fact]
    public void Carbon_monoxide_burns_to_the_difference() =>
        Assert.Equal(CarbonMonoxide - CarbonDioxide, FlueLoss.CarbonMonoxideHeatJPerMol / 1000, 0.005 * 283);

    /// <summary>Between gross and net stands the latent heat of the water of combustion and of the fuel.</summary>
    [Fact]
    public void Gross_and_net_heating_value_differ_by_the_water_formed()
    {
        var fuel = Fuels.PelletsA1;
        var heat = HeatingValue.Of(fuel);
        var hydrogen = fuel.Dry.Hydrogen * (1 - fuel.Moisture);
        var water = (hydrogen / 2.016e-3 * 18.015e-3) + fuel.Moisture;

        Assert.Equal(water * (Vapour - Liquid) / 18.015e-3 * 1000, (heat.GrossDryJPerKg * (1 - fuel.Moisture)) - heat.NetJPerKg, 0.005 * water * 2.443e6);
    }

    /// <summary>
    /// Carbon and hydrogen of a fuel burnt from their elements give more heat than its heating value by the fuel's own formation;
    /// for wood that is a small share (elements of dry red oak: 0.4996 C, 0.0592 H against 19.4 MJ/kg gross).
    /// </summary>
    [Fact]
    public void Elements_bound_the_heating_value_of_wood()
    {
        var elements = (0.4996 / 12.011e-3 * -CarbonDioxide * 1000) + (0.0592 / 2.016e-3 * -Liquid * 1000);
        var oak = new Fuel("red oak", new UltimateAnalysis(0.4996, 0.0592, 0.4377, 0.0003, 0.0001, 0.0031), 0);

        Assert.InRange(HeatingValue.Of(oak).GrossDryJPerKg / elements, 0.7, 0.95);
        Assert.True(SulfurDioxide > CarbonDioxide);
    }
}
