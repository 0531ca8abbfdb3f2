using System.Globalization;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Evidence and expectations in words, in SI units; screens may say the numbers in other units.</summary>
internal static class Wording
{
    /// <summary>A piece of evidence in words, with what was expected where there is a band.</summary>
    public static string Of(Evidence evidence, Catalogue catalogue, Band? band) => evidence switch
    {
        ReadingEvidence r => band is null
            ? $"{Place(r.Observable)} {Number(r.Observable.Measure, r.Value)}"
            : $"{Place(r.Observable)} {Number(r.Observable.Measure, r.Value)}, healthy {Number(r.Observable.Measure, band.Low)} to {Number(r.Observable.Measure, band.High)}",
        SignEvidence s when catalogue.Sign(s.Sign) is { } sign && sign.Outcomes.FirstOrDefault(o => o.Id == s.Outcome) is { } outcome => $"{sign.Question} {outcome.Words}",
        SignEvidence s => $"{s.Sign}: {s.Outcome}",
        CodeEvidence c => $"alarm code {c.Code}",
        CounterEvidence c => $"counter {c.Counter.Replace('-', ' ')} {c.Value.ToString(CultureInfo.InvariantCulture)}",
        ParameterEvidence p => $"setting {p.Parameter} {p.Value}",
        ActionEvidence a => catalogue.Action(a.Action)?.Name ?? a.Action,
        _ => evidence.Id,
    };

    /// <summary>A value with its unit, rounded as instruments show it.</summary>
    public static string Number(Measure measure, double value)
    {
        if (double.IsInfinity(value)) return "open";
        var (format, unit) = measure switch
        {
            Measure.Pressure => (Math.Abs(value) < 10 ? "0.0" : "0", "Pa"),
            Measure.Temperature => ("0", "°C"),
            Measure.Oxygen or Measure.CarbonDioxide => ("0.0", "%"),
            Measure.CarbonMonoxide => ("0", "ppm"),
            Measure.Voltage => (Math.Abs(value) < 10 ? "0.0" : "0", "V"),
            Measure.Resistance => (Math.Abs(value) < 100 ? "0.0" : "0", "Ω"),
            Measure.Current => ("0.00", "A"),
            Measure.Speed => ("0", "1/min"),
            Measure.Feed => ("0.00", "kg/h"),
            Measure.Duration => ("0", "s"),
            Measure.Flow => ("0.0000", "m³/s"),
            Measure.Capacitance => ("0.00", "µF"),
        };
        return $"{(measure == Measure.Capacitance ? 1e6 * value : value).ToString(format, CultureInfo.InvariantCulture).Replace('-', '−')} {unit}";
    }

    /// <summary>Where and in which condition something is read.</summary>
    public static string Place(Observable observable) =>
        $"{observable.Place.Replace('-', ' ')} ({ConditionText.Say(observable.Condition)})";
}
