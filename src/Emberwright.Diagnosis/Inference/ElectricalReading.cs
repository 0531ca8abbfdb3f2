using System.Collections.Immutable;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// A meter reading: predicted by the circuit with the faults' components changed, once as a sound stove's contacts stand and once
/// with each contact open that follows the model; where the two differ, the vacuum or the temperature it senses decides.
/// </summary>
internal sealed class ElectricalReading : IConditional
{
    /// <summary>Differences of ln probability below this are not worth a fit of their own.</summary>
    private const double Alike = 0.05;

    /// <summary>Contacts whose opening changes ln probability by as much, within this, show the same.</summary>
    private const double SameShown = 0.7;

    private const int Most = 2;
    private const double Least = -1000;

    private readonly ReadingEvidence _reading;
    private readonly ElectricalReadings _circuit;
    private readonly ImmutableArray<ContactRule> _rules;
    private readonly Dictionary<string, Bound> _bounds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Bound> _behind = new(StringComparer.Ordinal);

    /// <summary>Binds one reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="circuit">The circuit and meter.</param>
    /// <param name="rules">The contacts that follow the model in its condition.</param>
    /// <param name="supplyV">Rated mains voltage, V.</param>
    public ElectricalReading(ReadingEvidence reading, ElectricalReadings circuit, ImmutableArray<ContactRule> rules, double supplyV)
    {
        _reading = reading;
        _circuit = circuit;
        _rules = rules;
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
        var open = _rules
            .Select(rule => (Rule: rule, Ln: MeterScatter.LnDensity(observable, _reading.Value, _circuit.Predict(observable, [rule.Contact], changes))))
            .OrderByDescending(c => Math.Abs(c.Ln - closed)).ToArray();
        // Contacts that would all show the same stand in series: the first open one decides, and which it is cannot be seen here.
        var deciding = open.Where(c => Math.Abs(c.Ln - closed) >= Alike && Math.Abs(c.Ln - open[0].Ln) < SameShown).Take(Most).ToArray();
        bound = deciding.Length == 0 ? new Bound(key, null, closed) : Behind([.. deciding.Select(c => c.Rule)], closed, deciding[0].Ln);
        _bounds.Add(key, bound);
        return bound;
    }

    /// <summary>The reading behind its contacts; faults that hardly change it share one margin, so that they share fits.</summary>
    private Bound Behind(ImmutableArray<ContactRule> rules, double closed, double open)
    {
        // Rounded, so that it does not matter which of them comes first.
        (closed, open) = (Rounded(closed), Rounded(open));
        var key = FormattableString.Invariant($"{string.Join('+', rules.Select(r => r.Contact))}:{closed:0.00}/{open:0.00}");
        if (_behind.TryGetValue(key, out var bound)) return bound;
        bound = new Bound(key, new ContactMargin(_reading.Epoch, rules, closed, open), 0);
        _behind.Add(key, bound);
        return bound;
    }

    private static double Rounded(double ln) => Math.Round(Math.Max(ln, Least) / Alike) * Alike;
}
