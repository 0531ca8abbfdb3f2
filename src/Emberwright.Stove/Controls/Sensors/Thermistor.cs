// Question: which resistance does an NTC sensor have at a temperature, and the other way round?
// Equation: 1/T = a + b·ln R + c·(ln R)³; solved for R in closed form (one real root as b, c > 0).
// Symbols: T K; R Ω; a, b, c of the sensor.
// Validity: −40 … 250 °C, as long as the coefficients were fitted there. Outside an InputException.
// Source: Steinhart & Hart, Deep-Sea Research 15 (1968) 497–503. Coefficients of the common 10 kΩ curve: widespread, from
//   memory; they give its published table within 0.1 K from 0 to 70 °C.
// Worked value: common 10 kΩ curve: 25 °C is 10 000 Ω, 0 °C about 32 650 Ω.

namespace Emberwright.Stove.Controls.Sensors;

/// <summary>A thermistor with falling resistance (NTC) by the equation of Steinhart and Hart.</summary>
public sealed record Thermistor
{
    /// <summary>Lowest temperature, °C.</summary>
    public const double LeastC = -40;

    /// <summary>Highest temperature, °C.</summary>
    public const double MostC = 250;

    private readonly double a, b, c;

    private Thermistor(double a, double b, double c) => (this.a, this.b, this.c) = (a, b, c);

    /// <summary>The common curve of 10 kΩ at 25 °C.</summary>
    public static Thermistor TenKilohm { get; } = Of(1.129148e-3, 2.34125e-4, 8.76741e-8);

    /// <summary>From the sensor's coefficients, R in Ω and T in K.</summary>
    /// <exception cref="InputException">Coefficients with which resistance would not fall with temperature.</exception>
    public static Thermistor Of(double a, double b, double c) => b > 0 && c >= 0
        ? new(a, b, c)
        : throw new InputException("thermistor coefficients", $"b = {b:G6} must be above 0 and c = {c:G6} not below 0", "Check their order and powers of ten.");

    /// <summary>From its resistance at 25 °C and its β, good to a few kelvin some tens of kelvin away from 25 °C.</summary>
    /// <param name="ohmsAt25C">Resistance at 25 °C, Ω; 100 … 10e6.</param>
    /// <param name="betaK">β, K; 1000 … 7000.</param>
    /// <exception cref="InputException">A value outside its range.</exception>
    public static Thermistor FromBeta(double ohmsAt25C, double betaK)
    {
        InputException.Require(ohmsAt25C, 100, 10e6, "resistance at 25 °C", "Ω", "Take it from the sensor's label.");
        InputException.Require(betaK, 1000, 7000, "β", "K", "Take it from the sensor's label.");
        return new(1 / 298.15 - Math.Log(ohmsAt25C) / betaK, 1 / betaK, 0);
    }

    /// <summary>Resistance, Ω.</summary>
    /// <param name="celsius">Temperature, °C; −40 … 250.</param>
    /// <exception cref="InputException">Temperature outside its range.</exception>
    public double Ohms(double celsius)
    {
        InputException.Require(celsius, LeastC, MostC, "sensor temperature", "°C", "The sensor is described in this range only.");
        var k = 1 / (celsius + 273.15) - a;
        if (c == 0) return Math.Exp(k / b);
        // x³ + (b/c)x − k/c = 0
        var half = k / (2 * c);
        var root = Math.Sqrt(Math.Pow(b / (3 * c), 3) + half * half);
        return Math.Exp(Math.Cbrt(root + half) - Math.Cbrt(root - half));
    }

    /// <summary>Temperature, °C.</summary>
    /// <param name="ohms">Resistance, Ω.</param>
    /// <exception cref="InputException">The resistance means a temperature outside −40 … 250 °C.</exception>
    public double Celsius(double ohms)
    {
        InputException.Require(ohms, Ohms(MostC) * (1 - 1e-9), Ohms(LeastC) * (1 + 1e-9), "sensor resistance", "Ω",
            "Measure with the plug off the board; overload means a broken sensor, near 0 Ω a short.");
        var ln = Math.Log(ohms);
        return 1 / (a + ln * (b + c * ln * ln)) - 273.15;
    }
}
