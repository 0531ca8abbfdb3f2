// Question: how does carbon monoxide in the flue gas go with the air supply of a pellet fire?
// Equation (empirical): CO = CO_min·exp(((x − x_min)/w)²), x O2 of dry flue gas in percent, w_rich below x_min, w_lean above.
// Symbols: CO ppm, dry, undiluted; x_min 10.5 % O2; w_rich 2.2, w_lean 4.4 points of O2; CO_min 100 ppm.
// Validity: x 4 … 19 %; beyond, the value at the end is held and the slope is 0. The level is uncertain by a factor of 2.5
//   (one standard deviation) between stoves and days; only shape and side of the minimum carry meaning.
// Assumptions: too little air burns badly for want of oxygen, too much for want of temperature: a U with its minimum near
//   10 … 13 % O2 in small pellet stoves.
// Source: shape: Nussbaumer, Energy & Fuels 17 (2003) 1510–1521, CO against excess air ratio (from memory). Level and widths:
//   fitted by eye to common practice (high burn 80–400 ppm at 8–14 % O2, low burn 200–1500 ppm at 13–18 %), no source.
// Worked value: none published for this form.

namespace Emberwright.Stove.Fire;

/// <summary>Empirical U-shape of carbon monoxide against excess air. Its level is a rule of thumb, not a prediction.</summary>
/// <param name="LeastPpm">CO at the minimum, ppm dry.</param>
/// <param name="OxygenAtLeastPercent">O2 of the minimum, % dry.</param>
/// <param name="RichWidth">Width below the minimum, points of O2.</param>
/// <param name="LeanWidth">Width above the minimum, points of O2.</param>
public sealed record CarbonMonoxideCurve(double LeastPpm, double OxygenAtLeastPercent, double RichWidth, double LeanWidth)
{
    /// <summary>Lowest O2 the curve speaks of, % dry.</summary>
    public const double LeastOxygenPercent = 4;

    /// <summary>Highest O2 the curve speaks of, % dry.</summary>
    public const double MostOxygenPercent = 19;

    /// <summary>A standard deviation of ln CO between stoves and days: a factor of 2.5.</summary>
    public const double LogUncertainty = 0.92;

    /// <summary>A pellet stove in order.</summary>
    public static CarbonMonoxideCurve PelletStove { get; } = new(100, 10.5, 2.2, 4.4);

    /// <summary>ln of CO in ppm dry.</summary>
    /// <param name="oxygenDry">O2 in dry flue gas, volume share.</param>
    /// <param name="slope">Receives the change of ln CO per change of the O2 share.</param>
    public double LogPpm(double oxygenDry, out double slope)
    {
        var percent = 100 * oxygenDry;
        var inside = Math.Clamp(percent, LeastOxygenPercent, MostOxygenPercent);
        var width = inside < OxygenAtLeastPercent ? RichWidth : LeanWidth;
        var away = (inside - OxygenAtLeastPercent) / width;
        slope = percent == inside ? 100 * 2 * away / width : 0;
        return Math.Log(LeastPpm) + away * away;
    }

    /// <summary>CO, ppm dry.</summary>
    /// <param name="oxygenDry">O2 in dry flue gas, volume share.</param>
    public double Ppm(double oxygenDry) => Math.Exp(LogPpm(oxygenDry, out _));
}
