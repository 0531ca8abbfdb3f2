// Question:    how probable is a standard normal deviate below z, also far out in the tail?
// Equations:   Φ(z) = ½ erfc(−z/√2);  λ(z) = φ(z)/Φ(z)  (inverse Mills ratio, d lnΦ/dz);
//              for z < −5: 1/λ(z) = 1/(x + 1/(x + 2/(x + 3/(x + …)))) with x = −z (Laplace's continued fraction).
// Symbols:     z standard deviate, 1.
// Validity:    every finite z; lnΦ and λ keep full relative accuracy to z = −1e8.
// Assumptions: none.
// Source:      Abramowitz & Stegun, Handbook of Mathematical Functions, 26.2.3, 26.2.14.
// Worked:      Φ(1) = 0.841344746 (ibid., table 26.1).
using MathNet.Numerics;

namespace Emberwright.Diagnosis.Inference;

/// <summary>The standard normal distribution, accurate in the far tail where probits of clear-cut observations live.</summary>
public static class Normal
{
    private const double LnSqrt2Pi = 0.91893853320467274178;

    /// <summary>φ(z), the density.</summary>
    public static double Density(double z) => Math.Exp(-0.5 * z * z - LnSqrt2Pi);

    /// <summary>ln of the density of N(mean, variance) at <paramref name="x"/>.</summary>
    public static double LnDensity(double x, double mean, double variance) =>
        -0.5 * (x - mean) * (x - mean) / variance - 0.5 * Math.Log(variance) - LnSqrt2Pi;

    /// <summary>Φ(z), the probability below z.</summary>
    public static double Below(double z) => 0.5 * SpecialFunctions.Erfc(-z * 0.70710678118654752440);

    /// <summary>lnΦ(z).</summary>
    public static double LnBelow(double z) => z > -5
        ? Math.Log(Below(z))
        : -0.5 * z * z - LnSqrt2Pi - Math.Log(TailRatio(-z));

    /// <summary>λ(z) = φ(z)/Φ(z), the derivative of lnΦ; near −z for very negative z.</summary>
    public static double Mills(double z) => z > -5 ? Density(z) / Below(z) : TailRatio(-z);

    /// <summary>Quantile: the z with Φ(z) = <paramref name="probability"/>, 0 &lt; probability &lt; 1.</summary>
    public static double Quantile(double probability) =>
        -1.41421356237309504880 * SpecialFunctions.ErfcInv(2 * Math.Clamp(probability, 1e-300, 1 - 1e-16));

    /// <summary>φ(x)/(1 − Φ(x)) for x ≥ 5 by Laplace's continued fraction.</summary>
    private static double TailRatio(double x)
    {
        var fraction = x;
        for (var k = 40; k >= 1; k--) fraction = x + k / fraction;
        return fraction;
    }
}
