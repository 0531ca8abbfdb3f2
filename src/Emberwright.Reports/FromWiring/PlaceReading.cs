using System.Collections.Immutable;
using Emberwright.Reports.FromVisit;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.FromWiring;

/// <summary>One place of a circuit to put the meter on, in one state: how, what should stand there, and what a value means.</summary>
/// <param name="path">The circuit.</param>
/// <param name="operation">What the controls are doing.</param>
/// <param name="place">Test point or part of the path.</param>
public sealed class PlaceReading(LoadPath path, Operation operation, string place)
{
    private const double Enough = 0.8;
    private const double Nothing = 0.2;
    private const double TooMuch = 1.1;

    private readonly ElectricalReadings _circuit = new(path.Wiring, Stove.Controls.Meter.Ordinary);
    private readonly WiringComponent? _part = path.Parts.FirstOrDefault(p => p.Id == place);

    /// <summary>The place in the trade's words.</summary>
    public string Name => _part?.Name ?? Point.Name;

    /// <summary>What is read here; null where nothing can be read in this state (a test point with the plug out, the reference itself).</summary>
    public Measure? Measure
    {
        get
        {
            if (operation != Operation.Unplugged) return place == path.Load.To ? null : Stove.Measure.Voltage;
            return _part is RunCapacitor ? Stove.Measure.Capacitance : _circuit.All().Contains((Stove.Measure.Resistance, place)) ? Stove.Measure.Resistance : null;
        }
    }

    /// <summary>Unit the value is typed in.</summary>
    public Unit Unit => Measure switch
    {
        Stove.Measure.Resistance => Units.Ohm,
        Stove.Measure.Capacitance => Units.Microfarad,
        _ => path.Load is Thermocouple ? Units.Millivolt : Units.Volt,
    };

    /// <summary>How knob and leads stand.</summary>
    public string How => Measure switch
    {
        null => place == path.Load.To ? "The reference of every voltage here: the other lead stays on it."
            : "With the plug out read the parts, each with a lead off. Between points the rest of the circuit lies beside them.",
        Stove.Measure.Resistance => "Ohms, plug out, a lead of the part off.",
        Stove.Measure.Capacitance => "Capacitance, plug out, discharged, a lead off.",
        _ => (path.Load is Thermocouple ? "Millivolts DC" : path.Circuit == SupplyCircuit.Mains ? "Volts AC" : "Volts DC")
            + (_part is null ? path.Circuit == SupplyCircuit.Mains ? ", other lead on neutral." : ", other lead on board common." : ", a lead on either side of it."),
    };

    /// <summary>What can hurt here.</summary>
    public string Caution => Measure switch
    {
        null or Stove.Measure.Resistance => "Plug out and proved dead first: ohms on a live circuit damage the meter and can injure.",
        Stove.Measure.Capacitance => Stove.Faults.Cautions.Discharge,
        _ => Stove.Faults.Cautions.Live,
    };

    /// <summary>What a sound stove shows, in the measure's own unit; null where nothing is read. Positive infinity is open.</summary>
    public double? Expected => Measure is { } measure
        ? _circuit.Predict(measure, place, path.Wiring.In(operation), [])
        : null;

    /// <summary>What a value means, beside what was read elsewhere on the circuit.</summary>
    /// <param name="value">The value in the measure's own unit (V, Ω, F); positive infinity is open.</param>
    /// <param name="readings">What else was read in this state.</param>
    public string Meaning(double value, IReadOnlyDictionary<(Measure Measure, string Place), double> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (Measure is not { } measure || Expected is not { } expected) return How;
        if (measure != Stove.Measure.Voltage) return Alone(value, expected);
        if (path.Load is Thermocouple) return Fire(value);
        var (share, wanted) = (Math.Abs(value) / path.SupplyV, Math.Abs(expected) / path.SupplyV);
        if (share > TooMuch) return "More than the supply can give: look at the meter's knob and range.";
        if (_part is not null && OpenParts.IsLoad(_part)) return AtLoad(share, wanted);
        if (share is > Nothing and < Enough && Math.Abs(share - wanted) > 0.1)
            return "Neither supply nor nothing: a ghost on an open lead, or a poor contact above. Read again on low impedance.";
        if (share > Nothing == wanted > Nothing) return "As it should be.";
        var opens = Opens(value, readings);
        if (opens.Length == 1) return $"Open: {opens[0]}.";
        return opens.Length > 1 ? $"One of these is open: {string.Join(", ", opens)}. Read at the points between."
            : share > Nothing ? "Volts where none should stand: an output stuck on, or a lead to the wrong terminal."
            : "Nothing where the supply should stand: read further up. It means something only while the board calls.";
    }

    private TestPoint Point => path.Wiring.TestPoints[path.Wiring.PointIndex(place)];

    private string[] Opens(double value, IReadOnlyDictionary<(Measure Measure, string Place), double> readings)
    {
        var with = new Dictionary<(Measure, string), double>(readings.ToDictionary(r => r.Key, r => r.Value)) { [(Stove.Measure.Voltage, place)] = value };
        var opens = new OpenParts(path, (id, _) => _circuit.Predict(Stove.Measure.Voltage, id, path.Wiring.In(operation), []), operation, ImmutableArray<Stove.Faults.CircuitChange>.Empty, with);
        bool Is(WiringComponent part, Pictures.Wiring.PartState state) => !opens.Resting(part.Id) && opens[part.Id] == state;
        var open = path.Parts.Where(p => Is(p, Pictures.Wiring.PartState.Open)).Select(p => p.Name.ToLowerInvariant()).ToArray();
        return open.Length > 0 ? open : [.. path.Parts.Where(p => Is(p, Pictures.Wiring.PartState.Unknown)).Select(p => p.Name.ToLowerInvariant())];
    }

    private string AtLoad(double share, double wanted) => (share > Enough, wanted > Enough) switch
    {
        (true, true) => $"The {path.Load.Name.ToLowerInvariant()} has its voltage. If it stands still, it is itself at fault or held fast.",
        (true, false) => "Volts with nothing called: an output stuck on.",
        (false, true) when share < Nothing => "No voltage while it is called: something above it is open. Read upwards.",
        (false, true) => "Less than the supply: a poor contact above, or a supply that sags. Read again at the board.",
        (false, false) => "As it should be: nothing is called.",
    };

    private static string Fire(double volts) => volts switch
    {
        <= -0.001 => "Below nought: its leads are changed over. On type K red is negative.",
        < 0.001 => "Nothing: cold, or broken. With a lively flame for ten minutes it is broken.",
        < 0.008 => "Too little to prove a fire: dirty, slid back, or the fire is weak.",
        _ => "Enough to prove a fire.",
    };

    private string Alone(double value, double expected)
    {
        if (double.IsInfinity(expected)) return double.IsInfinity(value) || value > 1e6 ? "Open, as it should be at rest." : "Closed where it should stand open at rest: stuck or bridged.";
        if (double.IsInfinity(value) || value > 1e6 && expected < 1e5) return $"Open: the {Name.ToLowerInvariant()} or its lead.";
        var function = Measure == Stove.Measure.Capacitance ? MeterFunction.Capacitance : MeterFunction.Ohms;
        var sound = Stove.Controls.Meter.Ordinary.Across(path.Wiring, path.Wiring.In(Operation.Unplugged), [], function, place);
        if (Math.Abs(value - expected) <= Math.Max(sound.Tolerance, Measure == Stove.Measure.Capacitance ? 0 : 2)) return "As it should be.";
        return value < expected ? $"Lower than a sound one: {(Measure == Stove.Measure.Capacitance ? "worn" : "turns shorted, or another path beside it; take a lead off")}."
            : "Higher than a sound one: a poor contact or a worn part.";
    }
}
