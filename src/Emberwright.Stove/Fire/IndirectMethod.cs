// Question: which efficiency would a test house state from the same readings?
// Equations, per kg of fuel as fired (European standards of residential solid-fuel room heaters, EN 13240 and EN 14785):
//   Q_a = (t_f − t_r)·[c_d·C/(0.536·(CO + CO2)) + c_w·1.244·(9H + W)/100]   [kJ/kg],  q_a = Q_a/H_u
//   Q_b = 12644·CO·C/(0.536·(CO2 + CO)·100)                                    [kJ/kg],  q_b = Q_b/H_u
//   c_d = 3.6·{0.361 + 0.008τ + 0.034τ² + (0.085 + 0.19τ − 0.14τ²)·CO2/100 + (0.3τ − 0.2τ²)·(CO2/100)²}, τ = t_f/1000
//   c_w = 3.6·(0.414 + 0.038τ + 0.034τ²)                                       [kJ/(m³ K), dry gas and vapour]
// Symbols: t_f flue, t_r room, °C; C, H, W carbon, hydrogen, moisture, percent as fired; CO, CO2 percent of dry flue gas;
//   H_u net heating value, kJ/kg; 0.536 kg of carbon per m³ of CO2; 1.244 m³ of vapour per kg; 12644 kJ/m³ of CO.
// Validity: CO2 0.5 … 21 %, flue below 600 °C. Outside the caller's range checks refuse.
// Assumptions: loss by residue below the grate left out (0.2 to 0.5 points in the standards).
// Source: EN 13240:2001 and EN 14785:2006, clause on efficiency; coefficients from memory. The coefficient 0.3 of the last
//   term was weighed against 0.03: 0.3 gives CO2's own heat capacity at high temperature; the choice moves q_a by 0.015 points.
// Worked value: regression fuel of the tests, 180 °C, CO2 8 %, CO 0.02 %, room 20 °C → q_a 14.4 %, q_b 0.158 %.

namespace Emberwright.Stove.Fire;

/// <summary>The room-heater standards' indirect method: losses from CO2, CO and temperature by fixed polynomials.</summary>
public static class IndirectMethod
{
    /// <summary>Losses as shares of the net heating value.</summary>
    /// <param name="fuel">Fuel as fired.</param>
    /// <param name="netJPerKg">Net heating value as fired, J/kg.</param>
    /// <param name="carbonDioxideDry">CO2 in dry flue gas, volume share.</param>
    /// <param name="carbonMonoxideDry">CO in dry flue gas, volume share.</param>
    /// <param name="flueC">Flue gas temperature, °C.</param>
    /// <param name="roomC">Room temperature, °C.</param>
    public static FlueLoss Of(Fuel fuel, double netJPerKg, double carbonDioxideDry, double carbonMonoxideDry, double flueC, double roomC)
    {
        var asFired = 100 * (1 - fuel.Moisture);
        var carbon = asFired * fuel.Dry.Carbon;
        var hydrogen = asFired * fuel.Dry.Hydrogen;
        var moisture = 100 * fuel.Moisture;
        var co2 = 100 * carbonDioxideDry;
        var co = 100 * carbonMonoxideDry;
        var net = netJPerKg / 1000;
        var t = flueC / 1000;

        var dryGasM3PerKg = carbon / (0.536 * (co + co2));
        var vapourM3PerKg = 1.244 * (9 * hydrogen + moisture) / 100;
        var sensible = (flueC - roomC) * (DryHeatCapacity(t, co2 / 100) * dryGasM3PerKg + VapourHeatCapacity(t) * vapourM3PerKg);
        var unburnt = 12644 * co / 100 * dryGasM3PerKg;
        return new FlueLoss(sensible / net, unburnt / net);
    }

    private static double DryHeatCapacity(double t, double co2) =>
        3.6 * (0.361 + 0.008 * t + 0.034 * t * t + (0.085 + 0.19 * t - 0.14 * t * t) * co2 + (0.3 * t - 0.2 * t * t) * co2 * co2);

    private static double VapourHeatCapacity(double t) => 3.6 * (0.414 + 0.038 * t + 0.034 * t * t);
}
