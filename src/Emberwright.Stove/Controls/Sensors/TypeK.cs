// Question: which voltage does a type K thermocouple give, and which temperature does a voltage mean?
// Equation: E(t) = Σ cᵢtⁱ below 0 °C; E(t) = Σ cᵢtⁱ + a₀·exp(a₁(t − a₂)²) above;  meter reads E(hot) − E(cold).
// Symbols: E mV against a junction at 0 °C; t °C; cold: the junction at the board's terminals.
// Validity: −200 … 1372 °C. Outside an InputException. The inverse solves the same function by Newton's method.
// Assumptions: like wire up to the terminals; both terminals at one temperature.
// Source: NIST ITS-90 thermocouple database (NIST Monograph 175, 1993), type K.
// Worked values: 25 °C 1.000 mV, 100 °C 4.096 mV, 500 °C 20.644 mV, 1000 °C 41.276 mV.

namespace Emberwright.Stove.Controls.Sensors;

/// <summary>
/// Type K thermocouple by ITS-90, both ways, with its cold junction. With a fire a negative reading means that the two wires
/// are swapped; 0 mV means both ends are equally warm, or a short.
/// </summary>
public static class TypeK
{
    /// <summary>Lowest temperature, °C.</summary>
    public const double LeastC = -200;

    /// <summary>Highest temperature, °C.</summary>
    public const double MostC = 1372;

    private static readonly double[] Below =
    [
        0, 0.394501280250e-1, 0.236223735980e-4, -0.328589067840e-6, -0.499048287770e-8, -0.675090591730e-10,
        -0.574103274280e-12, -0.310888728940e-14, -0.104516093650e-16, -0.198892668780e-19, -0.163226974860e-22,
    ];

    private static readonly double[] Above =
    [
        -0.176004136860e-1, 0.389212049750e-1, 0.185587700320e-4, -0.994575928740e-7, 0.318409457190e-9,
        -0.560728448890e-12, 0.560750590590e-15, -0.320207200030e-18, 0.971511471520e-22, -0.121047212750e-25,
    ];

    /// <summary>Voltage at the board's terminals, mV.</summary>
    /// <param name="hotC">Tip of the thermocouple, °C; −200 … 1372.</param>
    /// <param name="coldC">Terminals at the board, °C; −200 … 1372.</param>
    /// <exception cref="InputException">A temperature outside its range.</exception>
    public static double Millivolts(double hotC, double coldC = 0) =>
        Reference(Within(hotC, "thermocouple tip"), out _) - Reference(Within(coldC, "thermocouple terminals"), out _);

    /// <summary>Temperature of the tip, °C.</summary>
    /// <param name="millivolts">Voltage at the board's terminals, mV.</param>
    /// <param name="coldC">Terminals at the board, °C; −200 … 1372.</param>
    /// <exception cref="InputException">The voltage means a temperature outside the range.</exception>
    public static double Celsius(double millivolts, double coldC = 0)
    {
        var cold = Reference(Within(coldC, "thermocouple terminals"), out _);
        InputException.Require(millivolts, Reference(LeastC, out _) - cold, Reference(MostC, out _) - cold, "thermocouple voltage", "mV",
            "Set the meter to DC millivolts; an open thermocouple reads anything.");
        var target = millivolts + cold;
        var celsius = Math.Clamp(target / 0.041, LeastC, MostC);
        for (var i = 0; i < 50; i++)
        {
            var step = (target - Reference(celsius, out var slope)) / slope;
            celsius = Math.Clamp(celsius + step, LeastC, MostC);
            if (Math.Abs(step) < 1e-10) break;
        }
        return celsius;
    }

    /// <summary>Seebeck coefficient at a temperature, mV/K.</summary>
    /// <param name="celsius">Temperature, °C; −200 … 1372.</param>
    /// <exception cref="InputException">Temperature outside its range.</exception>
    public static double MillivoltsPerK(double celsius)
    {
        Reference(Within(celsius, "temperature"), out var slope);
        return slope;
    }

    private static double Reference(double t, out double slope)
    {
        var c = t < 0 ? Below : Above;
        double value = 0;
        slope = 0;
        for (var i = c.Length - 1; i >= 0; i--)
        {
            slope = slope * t + value;
            value = value * t + c[i];
        }
        if (t < 0) return value;
        var away = t - 126.9686;
        var bump = 0.1185976 * Math.Exp(-0.1183432e-3 * away * away);
        slope += bump * 2 * -0.1183432e-3 * away;
        return value + bump;
    }

    private static double Within(double celsius, string field) =>
        InputException.Require(celsius, LeastC, MostC, field, "°C", "Type K is tabulated in this range only.");
}
