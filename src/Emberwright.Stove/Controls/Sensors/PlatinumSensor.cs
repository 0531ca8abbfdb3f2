// Question: which resistance does a platinum sensor have at a temperature, and the other way round?
// Equation: R = R₀(1 + At + Bt²) from 0 °C up; R = R₀(1 + At + Bt² + C(t − 100)t³) below.
// Symbols: R Ω; R₀ at 0 °C; t °C; A 3.9083e-3 /K, B −5.775e-7 /K², C −4.183e-12 /K⁴.
// Validity: −200 … 850 °C. Outside an InputException. Class B is within ±(0.30 + 0.005|t|) K, class A ±(0.15 + 0.002|t|) K.
// Source: IEC 60751:2022.
// Worked value: R₀ 1000 Ω at 150 °C is 1573.25 Ω.

namespace Emberwright.Stove.Controls.Sensors;

/// <summary>An industrial platinum resistance sensor by IEC 60751.</summary>
/// <param name="ZeroOhm">Resistance at 0 °C, Ω: 100, 500 or 1000.</param>
public readonly record struct PlatinumSensor(double ZeroOhm)
{
    /// <summary>100 Ω at 0 °C.</summary>
    public static PlatinumSensor Pt100 { get; } = new(100);

    /// <summary>1000 Ω at 0 °C.</summary>
    public static PlatinumSensor Pt1000 { get; } = new(1000);

    private const double A = 3.9083e-3, B = -5.775e-7, C = -4.183e-12;

    /// <summary>Resistance, Ω.</summary>
    /// <param name="celsius">Temperature, °C; −200 … 850.</param>
    /// <exception cref="InputException">Temperature outside its range.</exception>
    public double Ohms(double celsius) =>
        ZeroOhm * Ratio(InputException.Require(celsius, -200, 850, "sensor temperature", "°C", "Platinum sensors are tabulated in this range only."));

    /// <summary>Temperature, °C.</summary>
    /// <param name="ohms">Resistance with its leads' taken off, Ω.</param>
    /// <exception cref="InputException">The resistance means a temperature outside −200 … 850 °C.</exception>
    public double Celsius(double ohms)
    {
        InputException.Require(ohms, ZeroOhm * Ratio(-200), ZeroOhm * Ratio(850), "sensor resistance", "Ω",
            "Measure with the plug off the board; overload means a broken sensor, near 0 Ω a short.");
        var ratio = ohms / ZeroOhm;
        var celsius = (-A + Math.Sqrt(A * A - 4 * B * (1 - ratio))) / (2 * B);
        if (celsius >= 0) return celsius;
        for (var i = 0; i < 50; i++)
        {
            var step = (ratio - Ratio(celsius)) / Slope(celsius);
            celsius += step;
            if (Math.Abs(step) < 1e-11) break;
        }
        return celsius;
    }

    /// <summary>Tolerance of class B, K: half width, either side.</summary>
    public static double ClassBToleranceK(double celsius) => 0.30 + 0.005 * Math.Abs(celsius);

    private static double Ratio(double t) => 1 + t * (A + t * B) + (t < 0 ? C * (t - 100) * t * t * t : 0);

    private static double Slope(double t) => A + 2 * B * t + (t < 0 ? C * (4 * t - 300) * t * t : 0);
}
