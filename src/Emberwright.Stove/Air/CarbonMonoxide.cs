// How much carbon monoxide does the burn pot give at its air ratio?
//   rich, λ < λ₀    CO = CO₀·exp(a_r·x²),              x = ln(λ/λ₀)
//   lean, λ ≥ λ₀    CO = CO₀·exp(a_l·x²/(1 + x²/w²))   so that a dying fire levels off near 5000 ppm
//   both limited to CO_max by 1/(1/CO + 1/CO_max)
// CO in dry gas leaving the pot, ppm; λ air ratio of the pot, –; λ₀ 2.2 (about 11.5 % O2), CO₀ 150 ppm, a_r 12, a_l 5.5,
// w 0.8, CO_max 50 000 ppm. Leaks after the pot dilute it.
// EMPIRICAL: only the U-shape with its minimum near 10–13 % O2 is known; level and steepness are chosen so that a high burn
// reads 80–400 ppm, a lean low burn 200–1500 ppm and a pot with a third less air over 1000 ppm. From memory, no source.
// Valid as an order of magnitude for λ 1 … 5; a reading differs from it by a factor of two on a healthy stove.
// Worked value: λ 2.2 → 149.6 ppm.
namespace Emberwright.Stove.Air;

/// <summary>Empirical carbon monoxide of a pellet burn pot over its air ratio.</summary>
public static class CarbonMonoxide
{
    private const double BestRatio = 2.2;
    private const double LeastPpm = 150;
    private const double MostPpm = 50_000;
    private const double Rich = 12;
    private const double Lean = 5.5;
    private const double LeanReach = 0.8;

    /// <summary>CO in dry gas from the pot, ppm.</summary>
    /// <param name="airRatio">λ of the pot, –; &gt; 0.</param>
    /// <param name="logSlope">d ln CO / d ln λ.</param>
    public static double Ppm(double airRatio, out double logSlope)
    {
        var x = Math.Log(Math.Max(airRatio, 0.05) / BestRatio);
        var fade = x < 0 ? 1 : 1 / (1 + (x * x / (LeanReach * LeanReach)));
        var a = x < 0 ? Rich : Lean;
        var free = LeastPpm * Math.Exp(a * x * x * fade);
        var limit = 1 / (1 + (free / MostPpm));
        logSlope = airRatio > 0.05 ? 2 * a * x * fade * fade * limit : 0;
        return free * limit;
    }
}
