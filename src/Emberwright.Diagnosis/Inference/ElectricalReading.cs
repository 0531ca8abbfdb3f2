using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// A volt, amp or ohm reading: predicted by the circuit with the faults' components changed, once with the vacuum switch
/// closed and once with it open; where the two differ, the vacuum decides.
/// </summary>
internal sealed class ElectricalReading : IConditional
{
    /// <summary>Differences of ln probability below this are not worth a fit of their own.</summary>
    private const double Alike = 0.05;

    private readonly ReadingEvidence _reading;
    private readonly ElectricalReadings _circuit;
    private readonly double _actsPa;
    private readonly Dictionary<string, Bound> _bounds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Bound> _behind = new(StringComparer.Ordinal);

    /// <summary>Binds one reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="circuit">The circuit and meter.</param>
    /// <param name="actsPa">Vacuum at which the switch acts, Pa below room.</param>
    /// <param name="supplyV">Rated mains voltage, V.</param>
    public ElectricalReading(ReadingEvidence reading, ElectricalReadings circuit, double actsPa, double supplyV)
    {
        _reading = reading;
        _circuit = circuit;
        _actsPa = actsPa;
        LnIfLapse = MeterScatter.LnIfLapse(reading.Observable, supplyV);
    }

    /// <inheritdoc />
    public Evidence Evidence => _reading;

    /// <inheritdoc />
    public double LnIfLapse { get; }

    /// <inheritdoc />
    public double Lapse => 0.02;

    /// <inheritdoc />
    public bool Concerns(Fault fault) => fault.Circuit.Any(c => _circuit.Wiring.HasComponent(c.Component));

    /// <inheritdoc />
    public Bound Under(IReadOnlyList<Fault> present)
    {
        CircuitChange[] changes = [.. present.SelectMany(f => f.Circuit).Where(c => _circuit.Wiring.HasComponent(c.Component)).DistinctBy(c => c.Component)];
        var key = string.Join('+', changes.Select(c => $"{c.Component}:{(int)c.State}:{c.Factor}"));
        if (_bounds.TryGetValue(key, out var bound)) return bound;
        var observable = _reading.Observable;
        var closed = MeterScatter.LnDensity(observable, _reading.Value, _circuit.Predict(observable, [], changes));
        var open = _circuit.Wiring.HasComponent(ComponentIds.VacuumSwitch)
            ? MeterScatter.LnDensity(observable, _reading.Value, _circuit.Predict(observable, [ComponentIds.VacuumSwitch], changes))
            : closed;
        bound = Math.Abs(closed - open) < Alike ? new Bound(key, null, closed) : Behind(closed, open);
        _bounds.Add(key, bound);
        return bound;
    }

    /// <summary>The reading behind the switch; faults that hardly change it share one margin, so that they share fits.</summary>
    private Bound Behind(double closed, double open)
    {
        var key = FormattableString.Invariant($"{Math.Round(Math.Max(closed, -200) / Alike):0}/{Math.Round(Math.Max(open, -200) / Alike):0}");
        if (_behind.TryGetValue(key, out var bound)) return bound;
        bound = new Bound(key, new SwitchMargin(_reading.Epoch, _reading.Observable.Condition, _actsPa, closed, open), 0);
        _behind.Add(key, bound);
        return bound;
    }
}
