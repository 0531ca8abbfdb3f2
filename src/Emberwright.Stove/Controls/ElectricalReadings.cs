using Emberwright.Stove.Faults;

namespace Emberwright.Stove.Controls;

/// <summary>
/// What every electrical reading on a wiring should be. A reading's place is a component (volts across it, its current,
/// its resistance alone with the plug out) or a test point (volts to neutral or to board common).
/// </summary>
/// Volts and amps of a circulating pump are read while it is called, on a cold stove in its test mode.
/// <param name="wiring">The circuit.</param>
/// <param name="meter">The meter it is read with.</param>
public sealed class ElectricalReadings(Wiring wiring, Meter meter)
{
    private readonly System.Numerics.Complex _input = meter.InputImpedanceOhm(wiring.Netlist.AngularFrequency, lowImpedance: false);

    /// <summary>The circuit.</summary>
    public Wiring Wiring => wiring;

    /// <summary>True when this reading can be predicted from the circuit.</summary>
    /// <param name="measure">Kind of quantity.</param>
    /// <param name="place">Component or test point.</param>
    public bool Knows(Measure measure, string place) => measure switch
    {
        Measure.Voltage => wiring.HasComponent(place) || wiring.HasPoint(place),
        Measure.Resistance or Measure.Current => wiring.HasComponent(place),
        Measure.Capacitance => wiring.HasComponent(place) && wiring[place] is RunCapacitor,
        Measure.Pressure or Measure.Temperature or Measure.Oxygen or Measure.CarbonDioxide or Measure.CarbonMonoxide
            or Measure.Speed or Measure.Feed or Measure.Duration or Measure.Flow => false,
    };

    /// <summary>Every electrical reading that can be taken, in the order of the wiring.</summary>
    public IEnumerable<(Measure Measure, string Place)> All()
    {
        foreach (var point in wiring.TestPoints)
            if (point.Id is not (Points.Neutral or Points.BoardCommon)) yield return (Measure.Voltage, point.Id);
        foreach (var part in wiring.Components)
        {
            if (part is EarthConductor) continue;
            yield return (Measure.Voltage, part.Id);
            if (part is Motor or Igniter) yield return (Measure.Current, part.Id);
            if (part is RunCapacitor) yield return (Measure.Capacitance, part.Id);
            if (part is not (MainsSupply or LowVoltageSupply or BoardOutput or StartBypass or PressureSensor))
                yield return (Measure.Resistance, part.Id);
        }
    }

    /// <summary>The reading on a stove whose switches stand as on a sound one, save those named.</summary>
    /// <param name="observable">What is read, where, in which condition.</param>
    /// <param name="openSwitches">Ids of switches that stand open, for whatever reason (lid up, too little vacuum, tripped).</param>
    /// <param name="changes">Components at fault.</param>
    /// <returns>V, A, Ω or F; positive infinity is open (overload); NaN when it cannot be predicted.</returns>
    /// <exception cref="CircuitException">A component is unknown.</exception>
    public double Predict(Observable observable, ReadOnlySpan<string> openSwitches, ReadOnlySpan<CircuitChange> changes)
    {
        var state = wiring.In(observable.Measure is Measure.Resistance or Measure.Capacitance ? Operation.Unplugged : Operations.Of(observable.Condition));
        if (observable.Place == ComponentIds.CirculatingPump && observable.Measure != Measure.Resistance)
            state = state with { Calls = state.Calls | BoardCalls.Pump };
        ulong open = 0;
        foreach (var id in openSwitches) open |= wiring.Bit(id);
        return Predict(observable.Measure, observable.Place, state with { Positions = state.Positions.Opened(open) }, changes);
    }

    /// <summary>The reading in any control state. Resistances ignore what is called: their plug is out.</summary>
    /// <param name="measure">Voltage, current, resistance or capacitance.</param>
    /// <param name="place">Component or test point.</param>
    /// <param name="state">What board and switches do.</param>
    /// <param name="changes">Components at fault.</param>
    /// <returns>V, A or Ω; positive infinity is open (overload); NaN when it cannot be predicted.</returns>
    public double Predict(Measure measure, string place, ControlState state, ReadOnlySpan<CircuitChange> changes)
    {
        if (!Knows(measure, place)) return double.NaN;
        if (measure == Measure.Capacitance) return IsolatedPart.CapacitanceF(wiring, changes, place);
        if (measure == Measure.Resistance)
        {
            var ohm = IsolatedPart.ResistanceOhm(wiring, state, changes, place);
            return ohm > meter.OverloadOhm ? double.PositiveInfinity : ohm;
        }
        return measure == Measure.Current || IsMains(place)
            ? Read(SolvedWiring.Alternating(wiring, state, changes), measure, place)
            : Read(SolvedWiring.Direct(wiring, state, changes), measure, place);
    }

    /// <summary>
    /// A voltage or current from a circuit already solved: the cheap way to take many readings of one state.
    /// Take mains readings from <see cref="SolvedWiring.Alternating"/>, low-voltage ones from <see cref="SolvedWiring.Direct"/>.
    /// </summary>
    /// <param name="solved">The solved circuit.</param>
    /// <param name="measure">Voltage or current.</param>
    /// <param name="place">Component or test point.</param>
    public double Read(SolvedWiring solved, Measure measure, string place)
    {
        if (measure == Measure.Current) return solved.CurrentA(place);
        var (from, to) = wiring.HasComponent(place)
            ? solved.Ends(wiring.ComponentIndex(place))
            : (wiring.PointIndex(place), IsMains(place) ? 0 : wiring.PointIndex(Points.BoardCommon));
        return IsMains(place) ? solved.VoltageV(from, to, _input).Magnitude : solved.VoltageV(from, to, meter.InputOhm).Real;
    }

    /// <summary>True when volts at this place alternate, false when they are direct.</summary>
    /// <param name="place">Component or test point.</param>
    public bool IsMains(string place)
    {
        var point = wiring.HasComponent(place) ? wiring.PointIndex(wiring[place].From) : wiring.PointIndex(place);
        return wiring.TestPoints[point].Circuit == SupplyCircuit.Mains;
    }
}
