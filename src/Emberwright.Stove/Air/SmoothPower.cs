// How does a loss rise with flow, smoothly through zero?
//   F(q) = q·(q² + ε²)^((m−1)/2)   ≈ sign(q)·|q|^m for |q| ≫ ε
// q mass flow, kg/s; m exponent, 1 … 2; ε a flow far below any that matters, kg/s.
// F is odd, infinitely differentiable and F′ > 0 everywhere, so Newton's method cannot cycle at flow reversal;
// a straight patch through the origin has a kink in its slope and lets it.
// Error of F against |q|^m: (m−1)/2·(ε/q)², below 2e-6 for flows above 1000 ε.
// Source: common practice in pipe-network solvers, no source.
// Worked value: m 2, q 0.003, ε 3e-6 → 9.0000045e-6.
namespace Emberwright.Stove.Air;

/// <summary>A power law of flow without a kink at zero.</summary>
internal static class SmoothPower
{
    /// <summary>Flow below which the law turns linear, kg/s.</summary>
    public const double EpsilonKgPerS = 3e-6;

    /// <summary>F(q) and F′(q).</summary>
    public static double Of(double q, double exponent, out double slope)
    {
        var s = (q * q) + (EpsilonKgPerS * EpsilonKgPerS);
        var power = exponent == 2 ? Math.Sqrt(s) : Math.Pow(s, (exponent - 1) / 2);
        slope = power * (1 + ((exponent - 1) * q * q / s));
        return q * power;
    }

    /// <summary>√(q² + ε²) and its slope: the size of a flow.</summary>
    public static double Size(double q, out double slope)
    {
        var size = Math.Sqrt((q * q) + (EpsilonKgPerS * EpsilonKgPerS));
        slope = q / size;
        return size;
    }
}
