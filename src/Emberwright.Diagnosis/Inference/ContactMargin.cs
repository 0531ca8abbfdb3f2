// Question:    how probable is an electrical reading when it depends on whether contacts that follow the model stand open or closed?
// Equations:   all closed: Φ(z) = Π Φ(z_i), so z = Φ⁻¹(Π Φ(z_i)) and ∂z/∂z_i = λ(z_i)/λ(z);
//              P = Φ(z)·P(reading | closed) + Φ(−z)·P(reading | open);
//              −∂²lnP/∂z² = Σ w_i·λ_i(u_i + λ_i) − Var_w(slopes), cut off at 0, w the posterior of each position.
// Symbols:     z_i deviate of contact i (ContactRule), λ = φ/Φ, u = ±z.
// Validity:    at most two contacts in series.
// Assumptions: contacts follow what they sense, each with its own tolerance; stuck or bridged ones are faults of their own.
// Source:      probit mixture, elementary.
// Worked:      z = 0: P is the mean of the two (tested); two contacts at z = 0 each: both closed one time in four.
using System.Collections.Immutable;

namespace Emberwright.Diagnosis.Inference;

/// <summary>An electrical reading behind contacts that follow the model.</summary>
internal sealed class ContactMargin : IMargin
{
    private readonly ImmutableArray<ContactRule> _rules;
    private readonly double _lnIfClosed, _lnIfOpen;

    /// <summary>Sets up the reading.</summary>
    /// <param name="epoch">Epoch it was taken in.</param>
    /// <param name="rules">The contacts, at most two.</param>
    /// <param name="lnIfClosed">ln probability of the reading with all of them closed.</param>
    /// <param name="lnIfOpen">ln probability of the reading with one of them open.</param>
    public ContactMargin(int epoch, ImmutableArray<ContactRule> rules, double lnIfClosed, double lnIfOpen)
    {
        _rules = rules;
        Quantities = [.. rules.SelectMany(r => r.Quantities(epoch))];
        (_lnIfClosed, _lnIfOpen) = (lnIfClosed, lnIfOpen);
    }

    /// <inheritdoc />
    public IReadOnlyList<Quantity> Quantities { get; }

    /// <inheritdoc />
    public double Deviate(ReadOnlySpan<double> values, Span<double> slopes)
    {
        var first = _rules[0].Deviate(values, slopes);
        if (_rules.Length == 1) return first;
        var at = _rules[0].Size;
        var second = _rules[1].Deviate(values[at..], slopes[at..]);
        var z = Both(first, second);
        var mills = Normal.Mills(z);
        for (var k = 0; k < Quantities.Count; k++) slopes[k] *= Normal.Mills(k < at ? first : second) / mills;
        return z;
    }

    /// <inheritdoc />
    public MarginPoint At(double z)
    {
        var closed = _lnIfClosed + Normal.LnBelow(z);
        var open = _lnIfOpen + Normal.LnBelow(-z);
        var most = Math.Max(closed, open);
        var ln = most + Math.Log(Math.Exp(closed - most) + Math.Exp(open - most));
        var (wc, wo) = (Math.Exp(closed - ln), Math.Exp(open - ln));
        var (sc, so) = (Normal.Mills(z), -Normal.Mills(-z));
        var bend = wc * sc * (z + sc) + wo * so * (z + so) - wc * wo * (sc - so) * (sc - so);
        return new MarginPoint(ln, wc * sc + wo * so, Math.Max(0, bend));
    }

    /// <summary>The z below which a normal deviate lies as often as two independent ones lie below theirs, by Newton's method on lnΦ.</summary>
    internal static double Both(double first, double second)
    {
        // Both far past closing: what is missing from one is the sum of what is missing from each.
        if (Math.Min(first, second) > 5) return -Quantile(Normal.LnBelow(-first), Normal.LnBelow(-second));
        var wanted = Normal.LnBelow(first) + Normal.LnBelow(second);
        var z = Math.Min(first, second);
        for (var i = 0; i < 30; i++)
        {
            var step = (Normal.LnBelow(z) - wanted) / Normal.Mills(z);
            z -= step;
            if (Math.Abs(step) < 1e-12 * (1 + Math.Abs(z))) break;
        }
        return z;
    }

    private static double Quantile(double lnA, double lnB)
    {
        var wanted = Math.Max(lnA, lnB) + Math.Log(1 + Math.Exp(-Math.Abs(lnA - lnB)));
        var z = -5.0;
        for (var i = 0; i < 60; i++)
        {
            var step = (Normal.LnBelow(z) - wanted) / Normal.Mills(z);
            z -= step;
            if (Math.Abs(step) < 1e-12 * (1 + Math.Abs(z))) break;
        }
        return z;
    }
}
