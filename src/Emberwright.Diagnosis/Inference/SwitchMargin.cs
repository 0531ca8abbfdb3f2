// Question:    how probable is an electrical reading when it depends on whether the vacuum switch stands open or closed?
// Equations:   z = (v − T·e^θ)/s;  P = Φ(z)·P(reading | closed) + Φ(−z)·P(reading | open);
//              −∂²lnP/∂z² = Σ w_i·λ_i(u_i + λ_i) − Var_w(slopes), cut off at 0, w the posterior of each position.
// Symbols:     v vacuum at the switch, Pa below room; T vacuum at which it acts, Pa; θ its ln drift; s blur, Pa
//              (how far it may stand between opening and closing, and flutter); u = ±z.
// Validity:    s > 0.
// Assumptions: the switch follows its vacuum; stuck or bridged switches are faults of their own.
// Source:      probit mixture, elementary.
// Worked:      v = T, equal blur: P is the mean of the two (tested).
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>An electrical reading behind a vacuum switch.</summary>
internal sealed class SwitchMargin : IMargin
{
    private readonly double _actsPa, _blurPa, _lnIfClosed, _lnIfOpen;

    /// <summary>Sets up the reading.</summary>
    /// <param name="epoch">Epoch it was taken in.</param>
    /// <param name="condition">Condition it was taken in.</param>
    /// <param name="actsPa">Vacuum at which the switch acts, Pa below room.</param>
    /// <param name="lnIfClosed">ln probability of the reading with the switch closed.</param>
    /// <param name="lnIfOpen">ln probability of the reading with the switch open.</param>
    public SwitchMargin(int epoch, Condition condition, double actsPa, double lnIfClosed, double lnIfOpen)
    {
        Quantities =
        [
            Quantity.Of(epoch, new Observable(Measure.Pressure, Places.SwitchHose, condition)),
            Quantity.Of(epoch, Parameter.SwitchThreshold),
        ];
        _actsPa = actsPa;
        _blurPa = Math.Max(1, 0.12 * actsPa);
        (_lnIfClosed, _lnIfOpen) = (lnIfClosed, lnIfOpen);
    }

    /// <inheritdoc />
    public IReadOnlyList<Quantity> Quantities { get; }

    /// <inheritdoc />
    public double Deviate(ReadOnlySpan<double> values, Span<double> slopes)
    {
        var acts = _actsPa * Math.Exp(Math.Min(values[1], 5));
        slopes[0] = -1 / _blurPa;
        slopes[1] = -acts / _blurPa;
        return (-values[0] - acts) / _blurPa;
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
}
