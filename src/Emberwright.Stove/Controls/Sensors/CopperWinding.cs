// Question: which resistance has a copper winding when warm, and how warm is a winding of that resistance?
// Equation: R = R_ref·(1 + α(t − t_ref)), α = 0.00393/K at t_ref = 20 °C; for other t_ref α = 1/(234.5 + t_ref), the same line.
// Symbols: R Ω; t °C.
// Validity: −50 … 250 °C; straight within 1 % there.
// Source: IEC 60028 (annealed copper, 0.00393/K at 20 °C).
// Worked value: 1.21 Ω at 20 °C is 1.472 Ω at 75 °C.

namespace Emberwright.Stove.Controls.Sensors;

/// <summary>Resistance of copper windings against temperature: motors are measured warm, labels are cold.</summary>
public static class CopperWinding
{
    /// <summary>Temperature coefficient at 20 °C, 1/K.</summary>
    public const double PerK = 0.00393;

    /// <summary>Resistance at another temperature, Ω.</summary>
    /// <param name="ohms">Known resistance, Ω.</param>
    /// <param name="atC">Temperature of the known resistance, °C; −50 … 250.</param>
    /// <param name="toC">Temperature asked for, °C; −50 … 250.</param>
    /// <exception cref="InputException">A temperature outside its range.</exception>
    public static double Ohms(double ohms, double atC, double toC) => ohms * Relative(toC) / Relative(atC);

    /// <summary>Mean temperature of a winding from its resistance, °C.</summary>
    /// <param name="ohms">Resistance now, Ω; more than 0.</param>
    /// <param name="coldOhms">Resistance known, Ω; more than 0.</param>
    /// <param name="coldC">Temperature of the known resistance, °C; −50 … 250.</param>
    /// <exception cref="InputException">The resistances mean a temperature outside −50 … 250 °C: open or shorted turns.</exception>
    public static double Celsius(double ohms, double coldOhms, double coldC) => InputException.Require(
        20 + (ohms / coldOhms * Relative(coldC) - 1) / PerK, -50, 250, "winding temperature", "°C",
        "No copper winding gets there: check for open or shorted turns and for parts still connected in parallel.");

    private static double Relative(double celsius) =>
        1 + PerK * (InputException.Require(celsius, -50, 250, "winding temperature", "°C", "Give °C.") - 20);
}
