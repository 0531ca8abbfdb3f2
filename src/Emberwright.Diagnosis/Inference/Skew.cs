// Question:    what does the evidence gain or lose when a restriction's stand-in prior N(μ, s²) is replaced by Exp(τ)?
// Equations:   with Σ = H⁻¹: 1/v = 1/Σ_aa − 1/s², m = v(ĉ_a/Σ_aa − μ/s²);
//              S_a = τ⁻¹·exp(−m/τ + v/2τ²)·Φ((m − v/τ)/√v) / N(m; μ, v + s²);
//              the stand-in is N(τ, τ²) at first. Where the evidence puts x* = m − v/τ far from ĉ_a, the linear answer is not to
//              be trusted that far; then the fit is repeated with N(0, τ·x*), whose slope at x* is the exponential's, 1/τ.
//              then x | evidence is N(m − v/τ, v) cut off at 0, so P(x > L) = Φ((m − v/τ − L)/√v)/Φ((m − v/τ)/√v).
// Symbols:     x restriction, τ its prior mean, ĉ its fitted value, N(m, v) what the evidence alone says of it, L a limit.
// Validity:    Σ_aa < s²; where the evidence says nothing (Σ_aa → s²) S = 1 and P(x > L) = exp(−L/τ).
// Assumptions: the evidence alone is normal in x.
// Source:      one moment-free step of expectation propagation, Minka (2001); the integrals are elementary. Matching slopes
//              at the mode: Tierney & Kadane (1986).
// Worked:      no evidence, τ = 0.22, L = 0.511: P = exp(−2.32) = 0.098.
namespace Emberwright.Diagnosis.Inference;

/// <summary>Puts the exponential prior of a restriction right after a fit with its normal stand-in.</summary>
/// <param name="LnFactor">ln S.</param>
/// <param name="Mean">Mean of the normal that is cut off at 0; NaN when the evidence says nothing.</param>
/// <param name="Variance">Its variance.</param>
/// <param name="Tau">Prior mean of the restriction.</param>
internal readonly record struct Skew(double LnFactor, double Mean, double Variance, double Tau)
{
    private const double FarTaus = 2;
    private const double FarSigmas = 1.5;

    /// <summary>From the fitted value and variance of a restriction, fitted with the first stand-in.</summary>
    public static Skew Of(double fitted, double variance, double tau) => Of(fitted, variance, tau, tau, tau * tau);

    /// <summary>From the fitted value and variance of a restriction.</summary>
    /// <param name="fitted">Fitted value.</param>
    /// <param name="variance">Its variance.</param>
    /// <param name="tau">Mean of its exponential prior.</param>
    /// <param name="standIn">Mean of the normal that stood in for it.</param>
    /// <param name="spread">Variance of that normal.</param>
    public static Skew Of(double fitted, double variance, double tau, double standIn, double spread)
    {
        var gained = 1 / variance - 1 / spread;
        if (!(gained > 1e-6 / spread)) return new Skew(0, double.NaN, double.NaN, tau);
        var v = 1 / gained;
        var m = v * (fitted / variance - standIn / spread);
        var mean = m - v / tau;
        var ln = -Math.Log(tau) - m / tau + v / (2 * tau * tau) + Normal.LnBelow(mean / Math.Sqrt(v)) - Normal.LnDensity(m, standIn, v + spread);
        return new Skew(ln, mean, v, tau);
    }

    /// <summary>True when the evidence puts the restriction so far from where it was fitted that the fit must be repeated nearer.</summary>
    public bool IsFarFrom(double fitted, double variance) => Mean > FarTaus * Tau && Mean - fitted > FarSigmas * Math.Sqrt(variance);

    /// <summary>P(restriction &gt; limit), limit as −ln of the share left.</summary>
    public double Beyond(double limit)
    {
        if (limit <= 0) return 1;
        if (double.IsNaN(Mean)) return Math.Exp(-limit / Tau);
        var sd = Math.Sqrt(Variance);
        return Math.Exp(Math.Min(0, Normal.LnBelow((Mean - limit) / sd) - Normal.LnBelow(Mean / sd)));
    }

    /// <summary>Mean and variance of the restriction given that it lies beyond a limit, or within it.</summary>
    /// <param name="limit">The limit, −ln of the share left; positive.</param>
    /// <param name="beyond">True for beyond, false for between 0 and the limit.</param>
    public (double Mean, double Variance) Given(double limit, bool beyond)
    {
        if (!double.IsNaN(Mean)) return Between(Mean, Variance, beyond ? limit : 0, beyond ? double.PositiveInfinity : limit);
        if (beyond) return (limit + Tau, Tau * Tau);
        var e = Math.Exp(-limit / Tau);
        var mean = Tau - limit * e / (1 - e);
        return (mean, Math.Max(Tau * Tau - limit * limit * e / ((1 - e) * (1 - e)), 1e-12));
    }

    /// <summary>Mean and variance of a normal cut off on both sides.</summary>
    public static (double Mean, double Variance) Between(double mean, double variance, double low, double high)
    {
        var sd = Math.Sqrt(variance);
        var (a, b) = ((low - mean) / sd, (high - mean) / sd);
        // Far in a tail the density falls exponentially from the nearer bound.
        if (a > 5) return (low + sd / a, variance / (a * a));
        if (b < -5) return (high + sd / b, variance / (b * b));
        var mass = Math.Max(Normal.Below(b) - Normal.Below(a), 1e-300);
        var (fa, fb) = (double.IsInfinity(a) ? 0 : Normal.Density(a), double.IsInfinity(b) ? 0 : Normal.Density(b));
        var shift = (fa - fb) / mass;
        var inner = ((double.IsInfinity(a) ? 0 : a * fa) - (double.IsInfinity(b) ? 0 : b * fb)) / mass;
        return (mean + sd * shift, Math.Max(variance * (1 + inner - shift * shift), 1e-12 * variance));
    }
}
