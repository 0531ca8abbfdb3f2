// Question: which share of the fuel's heat leaves through the flue?
// Equations: sensible q_a = (H(λ, T_f) − H(λ, T_r))/q_net;  unburnt q_b = n_CO·ΔH_CO/q_net;  η = 1 − q_a − q_b.
// Symbols: H heat of the flue gas of 1 kg of fuel, J/kg; T_f flue, T_r room, K; q_net net heating value, J/kg;
//   n_CO mol of CO per kg of fuel; ΔH_CO = 282 980 J/mol.
// Validity: flue 0 … 600 °C, room −30 … 50 °C. Flue colder than room gives a negative loss, which is real: heat comes back.
// Assumptions: vapour leaves uncondensed; air comes in at room temperature; ash takes no heat or fuel along.
// Source: energy balance; NIST Shomate enthalpies; ΔH_CO from CODATA enthalpies of formation (−393.51, −110.53 kJ/mol).
// Worked value: see the regression fuel in the tests: 180 °C, CO2 8 % → 14.4 %.

namespace Emberwright.Stove.Fire;

/// <summary>Losses through the flue as shares of the net heating value, and what is left.</summary>
/// <param name="Sensible">Hot flue gas, q_a.</param>
/// <param name="Unburnt">Carbon monoxide not burnt, q_b.</param>
public readonly record struct FlueLoss(double Sensible, double Unburnt)
{
    /// <summary>Heat of burning CO, J/mol.</summary>
    public const double CarbonMonoxideHeatJPerMol = 282_980;

    /// <summary>Efficiency by losses, η = 1 − q_a − q_b; losses through the walls heat the room and count as useful.</summary>
    public double Efficiency => 1 - Sensible - Unburnt;

    /// <summary>Losses from the enthalpies of the flue gas.</summary>
    /// <param name="gas">Flue gas.</param>
    /// <param name="netJPerKg">Net heating value as fired, J/kg.</param>
    /// <param name="flueK">Flue gas temperature, K.</param>
    /// <param name="roomK">Room temperature, K.</param>
    public static FlueLoss ByEnthalpy(FlueGas gas, double netJPerKg, double flueK, double roomK)
    {
        var heat = new HeatContent(gas.PerKgFuel);
        return new FlueLoss(
            (heat.At(flueK) - heat.At(roomK)) / netJPerKg,
            gas.PerKgFuel.CarbonMonoxide * CarbonMonoxideHeatJPerMol / netJPerKg);
    }
}
