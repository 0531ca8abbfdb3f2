// Question: how much heat does a kilogram of fuel as fired give?
// Equations: gross, dry: q = 0.3491 C + 1.1783 H + 0.1005 S − 0.1034 O − 0.0151 N − 0.0211 ash   [MJ/kg]
//   net, as fired, constant pressure: q_net = (q − 0.2122 H − 0.0008 (O + N))·(1 − 0.01 W) − 0.02443 W   [MJ/kg]
// Symbols: C … ash percent of dry mass; W moisture, percent as fired.
// Validity: C ≤ 92.25, 0.43 ≤ H ≤ 25.15, O ≤ 50, N ≤ 5.6, S ≤ 94.08, ash ≤ 71.4 % dry. Outside an InputException asks for
//   a laboratory's value.
// Sources: Channiwala & Parikh, Fuel 81 (2002) 1051–1063 (gross; mean absolute error 1.45 %); ISO 18125:2017 (net from gross;
//   its coefficients from memory).
// Worked value: C 49.30 H 5.5 O 45.2 → 19.02 MJ/kg gross, against 18.93 quoted.

namespace Emberwright.Stove.Fire;

/// <summary>Heating value of a fuel: gross per dry mass (vapour condensed) and net per mass as fired (vapour not condensed).</summary>
/// <param name="GrossDryJPerKg">Gross, dry, J/kg.</param>
/// <param name="NetJPerKg">Net, as fired, J/kg; the one efficiency is reckoned from in room-heater standards.</param>
/// <param name="RelativeUncertainty">Standard uncertainty relative to the gross value: 0.018 computed (1.45 % mean absolute error × 1.25), 0.005 measured.</param>
public readonly record struct HeatingValue(double GrossDryJPerKg, double NetJPerKg, double RelativeUncertainty)
{
    /// <summary>Heating value of a fuel: the laboratory's when it has one, else computed from its analysis.</summary>
    /// <exception cref="InputException">The analysis is outside the correlation's range and no measured value is given.</exception>
    public static HeatingValue Of(Fuel fuel)
    {
        var gross = fuel.GrossDryJPerKg ?? GrossDry(fuel.Dry);
        return new HeatingValue(gross, Net(gross, fuel.Dry, fuel.Moisture), fuel.GrossDryJPerKg is null ? 0.018 : 0.005);
    }

    /// <summary>Gross heating value per dry mass by the correlation, J/kg.</summary>
    /// <exception cref="InputException">The analysis is outside the correlation's range.</exception>
    public static double GrossDry(UltimateAnalysis dry)
    {
        const string remedy = "Outside the correlation; give a gross heating value from a laboratory.";
        var c = InputException.Require(100 * dry.Carbon, 0, 92.25, "carbon", "% dry", remedy);
        var h = InputException.Require(100 * dry.Hydrogen, 0.43, 25.15, "hydrogen", "% dry", remedy);
        var o = InputException.Require(100 * dry.Oxygen, 0, 50, "oxygen in fuel", "% dry", remedy);
        var n = InputException.Require(100 * dry.Nitrogen, 0, 5.6, "nitrogen", "% dry", remedy);
        var s = 100 * dry.Sulfur;
        var ash = 100 * dry.Ash;
        return 1e6 * (0.3491 * c + 1.1783 * h + 0.1005 * s - 0.1034 * o - 0.0151 * n - 0.0211 * ash);
    }

    /// <summary>Net heating value as fired, J/kg, from the gross one per dry mass.</summary>
    /// <param name="grossDryJPerKg">Gross, dry, J/kg.</param>
    /// <param name="dry">Dry analysis.</param>
    /// <param name="moisture">Water, share as fired.</param>
    public static double Net(double grossDryJPerKg, UltimateAnalysis dry, double moisture) =>
        (grossDryJPerKg - 21.22e6 * dry.Hydrogen - 0.08e6 * (dry.Oxygen + dry.Nitrogen)) * (1 - moisture) - 2.443e6 * moisture;

    /// <summary>Gross heating value per dry mass that a net one as fired means, J/kg; the inverse of <see cref="Net"/>.</summary>
    /// <param name="netJPerKg">Net, as fired, J/kg.</param>
    /// <param name="dry">Dry analysis.</param>
    /// <param name="moisture">Water, share as fired; below 1.</param>
    public static double GrossFromNet(double netJPerKg, UltimateAnalysis dry, double moisture) =>
        (netJPerKg + 2.443e6 * moisture) / (1 - moisture) + 21.22e6 * dry.Hydrogen + 0.08e6 * (dry.Oxygen + dry.Nitrogen);
}
