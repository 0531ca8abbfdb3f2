// Question:    how probable is a graded judgement (yes/no; clear, streaked, black) given the quantity it judges?
// Equations:   P(k) = Φ(b − z) − Φ(a − z), z = q/s, a = cut_{k−1}/s, b = cut_k/s, cut₀ = −∞, cut_K = +∞.
//              For an end outcome −ln P has the curvature λ(u)(u + λ(u)), λ the inverse Mills ratio, u the signed distance
//              to its cut; for an inner one the exact second derivative, positive since the normal density is log-concave.
// Symbols:     q quantity in its unit, cut_k rising cut points in the same unit, s blur in the same unit.
// Validity:    s > 0; every q, far tails included.
// Assumptions: the judge compares q with fixed cut points and a normal error.
// Source:      McKelvey & Zavoina, J. Math. Sociology 4 (1975) 103. From memory.
// Worked:      one cut at 0, s = 1, q = 1: P(first) = Φ(−1) = 0.158655.
namespace Emberwright.Diagnosis.Inference;

/// <summary>An outcome of a graded judgement of one quantity.</summary>
internal sealed class OrderedProbit : IMargin
{
    private readonly double _lower, _upper, _blur;

    /// <summary>Sets up one outcome.</summary>
    /// <param name="quantity">What is judged.</param>
    /// <param name="lower">Cut point below the outcome, −∞ for the first.</param>
    /// <param name="upper">Cut point above it, +∞ for the last.</param>
    /// <param name="blur">Standard deviation of the judgement.</param>
    public OrderedProbit(Quantity quantity, double lower, double upper, double blur)
    {
        Quantities = [quantity];
        (_lower, _upper, _blur) = (lower / blur, upper / blur, blur);
    }

    /// <inheritdoc />
    public IReadOnlyList<Quantity> Quantities { get; }

    /// <inheritdoc />
    public double Deviate(ReadOnlySpan<double> values, Span<double> slopes)
    {
        slopes[0] = 1 / _blur;
        return values[0] / _blur;
    }

    /// <inheritdoc />
    public MarginPoint At(double z)
    {
        var a = _lower - z;
        var b = _upper - z;
        if (double.IsNegativeInfinity(a)) return End(b, -1);
        if (double.IsPositiveInfinity(b)) return End(-a, 1);

        // Work from the nearer tail so that the difference keeps its accuracy.
        var (near, far) = a > 0 ? (-a, -b) : (b, a);
        var lnNear = Normal.LnBelow(near);
        var ln = lnNear + Math.Log(Math.Max(1 - Math.Exp(Normal.LnBelow(far) - lnNear), 1e-300));
        var fa = Math.Exp(Normal.LnDensity(a, 0, 1) - ln);
        var fb = Math.Exp(Normal.LnDensity(b, 0, 1) - ln);
        return new MarginPoint(ln, fa - fb, Math.Max(0, (fa - fb) * (fa - fb) + b * fb - a * fa));
    }

    private static MarginPoint End(double u, int sign)
    {
        var lambda = Normal.Mills(u);
        return new MarginPoint(Normal.LnBelow(u), sign * lambda, Math.Max(0, lambda * (u + lambda)));
    }
}
