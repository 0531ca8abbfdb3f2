// How far does what is read lie from what is?
// Equations: pressure   (1 + g)·p + offset of the gauge + offset of the port + N(0, 1) + wind's drift at the port;
//            O2         + N(0, 0.4·k) of the place + N(0, 0.3);      temperature + N(0, 8·k) of the place + N(0, 4);
//            CO         ·e^N(0, 0.5·√k);                              feed ·e^N(0, 0.05);
//            volts, amps ·e^N(0, 0.012), + N(0, 1 V) or N(0, 0.02 A); ohms ·e^N(0, 0.1) of the part, + N(0, 0.3).
// Symbols: g ~ N(0, 0.02), gauge offset ~ N(0, 0.7) Pa, port offset ~ N(0, 1·k) Pa, k mismatch; wind drift 0.8 Pa at the collar,
//          0.3 Pa at the blower inlet, 0.5 Pa elsewhere.
// Validity: field instruments.
// Assumptions: one gauge a visit; an offset of a port stays; of 100 readings one is misread by up to ± 100 %.
// Source: from memory, no source.
// Worked: k = 0, g = 0, no offsets: a reading of −20 Pa scatters with 1.1 Pa at the firebox.
using Emberwright.Stove;

namespace Emberwright.Trials.Generator;

/// <summary>Instruments of one visit, with their errors.</summary>
/// <param name="key">Key of the stove.</param>
/// <param name="mismatch">k.</param>
internal sealed class Instruments(string key, double mismatch)
{
    private const double Misread = 0.01;
    private readonly double _scale = Chance.Of(key, "gauge scale").Normal(0, 0.02);
    private readonly double _zeroPa = Chance.Of(key, "gauge zero").Normal(0, 0.7);

    /// <summary>What the instrument shows.</summary>
    /// <param name="observable">What is read.</param>
    /// <param name="value">What is.</param>
    /// <param name="chance">Random numbers of this reading.</param>
    public double Show(Observable observable, double value, Chance chance)
    {
        var shown = Plain(observable, value, chance);
        return chance.Happens(Misread) && double.IsFinite(shown) ? shown * chance.Between(0, 2) : shown;
    }

    private double Plain(Observable observable, double value, Chance chance)
    {
        var place = Chance.Of(key, "place", observable.Measure, observable.Place);
        return observable.Measure switch
        {
            Measure.Pressure => (1 + _scale) * value + _zeroPa + place.Normal(0, mismatch) + chance.Normal() + chance.Normal(0, Drift(observable.Place)),
            Measure.Oxygen or Measure.CarbonDioxide => Math.Clamp(value + place.Normal(0, 0.4 * mismatch) + chance.Normal(0, 0.3), 0, 20.9),
            Measure.Temperature => value + place.Normal(0, 8 * mismatch) + chance.Normal(0, 4),
            Measure.CarbonMonoxide => value * Math.Exp(place.Normal(0, 0.5 * Math.Sqrt(mismatch)) + chance.Normal(0, 0.15)),
            Measure.Feed => value * Math.Exp(chance.Normal(0, 0.05)),
            Measure.Speed => value * Math.Exp(place.Normal(0, 0.03)) + chance.Normal(0, 20),
            Measure.Voltage => value * Math.Exp(chance.Normal(0, 0.012)) + chance.Normal(0, Math.Min(1, 0.05 * Math.Abs(value))),
            Measure.Current => Math.Max(value * Math.Exp(place.Normal(0, 0.08) + chance.Normal(0, 0.03)) + chance.Normal(0, 0.02), 0),
            Measure.Resistance => double.IsFinite(value) ? Math.Max(value * Math.Exp(place.Normal(0, 0.1)) + chance.Normal(0, 0.3), 0) : value,
            Measure.Duration or Measure.Flow or Measure.Capacitance => value * Math.Exp(chance.Normal(0, 0.05)),
        };
    }

    private static double Drift(string place) => place switch
    {
        Places.Collar => 0.8,
        Places.BlowerInlet => 0.3,
        _ => 0.5,
    };
}
