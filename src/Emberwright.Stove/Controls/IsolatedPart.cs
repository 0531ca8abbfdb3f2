// What does an ohmmeter show on one part taken out of its circuit?
// Equation: R of the part alone at room temperature; to earth, the insulation beside any leak.
// Symbols: R (Ω).
// Validity: direct current, plug out, both leads off the part. A warm winding reads higher: see CopperWinding.
// Assumptions: a contact is in the position the state gives it.
// Source: Ohm's law.
// Worked value: a 300 W, 120 V igniter whose wire gains 7.1 % hot reads 48/1.071 = 44.8 Ω cold.

using Emberwright.Stove.Faults;

namespace Emberwright.Stove.Controls;

/// <summary>Resistance of a part alone, leads off.</summary>
public static class IsolatedPart
{
    /// <summary>Resistance between the part's terminals, Ω; 1 GΩ stands for open.</summary>
    /// <param name="wiring">The circuit the part belongs to.</param>
    /// <param name="state">Positions of the switches.</param>
    /// <param name="changes">Components at fault.</param>
    /// <param name="component">Id of the part.</param>
    /// <exception cref="CircuitException">The component is unknown or cannot be in that state.</exception>
    public static double ResistanceOhm(Wiring wiring, ControlState state, ReadOnlySpan<CircuitChange> changes, string component)
    {
        var i = wiring.ComponentIndex(component);
        var part = wiring.Components[i];
        var healthy = ComponentModel.Healthy(part, state with { PluggedIn = false, Calls = BoardCalls.None }, state.Positions.IsOpen(i), 0);
        var branch = new Branch(component, 0, 0, healthy.Ohm);
        foreach (var change in changes)
            if (change.Component == component) branch = ComponentModel.Changed(branch, part, change, 0);
        return branch.ImpedanceOhm.Real;
    }

    /// <summary>
    /// Capacitance of a capacitor alone, F: an open one has none, a shorted one cannot be charged and reads above any range
    /// (positive infinity).
    /// </summary>
    /// <param name="wiring">The circuit the part belongs to.</param>
    /// <param name="changes">Components at fault.</param>
    /// <param name="component">Id of the capacitor.</param>
    /// <exception cref="CircuitException">The component is no capacitor.</exception>
    public static double CapacitanceF(Wiring wiring, ReadOnlySpan<CircuitChange> changes, string component)
    {
        var farad = wiring[component] is RunCapacitor capacitor ? capacitor.Farad
            : throw new CircuitException($"Component '{component}' is no capacitor; capacitance is read on one of: {Capacitors(wiring)}.");
        foreach (var change in changes)
        {
            if (change.Component != component) continue;
            farad = change.State switch
            {
                ComponentState.Open => 0,
                ComponentState.Shorted => double.PositiveInfinity,
                ComponentState.Drifted => farad * change.Factor,
                ComponentState.Healthy or ComponentState.LeakingToEarth or ComponentState.Stalled => farad,
            };
        }
        return farad;
    }

    private static string Capacitors(Wiring wiring) =>
        string.Join(", ", wiring.Components.OfType<RunCapacitor>().Select(c => c.Id)) is { Length: > 0 } ids ? ids : "none on this wiring";

    /// <summary>Resistance from the part's live terminal to earth with its leads off, Ω.</summary>
    /// <param name="wiring">The circuit the part belongs to.</param>
    /// <param name="changes">Components at fault.</param>
    /// <param name="component">Id of the part.</param>
    /// <exception cref="CircuitException">A leak is given without its resistance.</exception>
    public static double ToEarthOhm(Wiring wiring, ReadOnlySpan<CircuitChange> changes, string component)
    {
        var siemens = 1 / wiring.Harness.InsulationOhm;
        foreach (var change in changes)
        {
            if (change.Component != component || change.State != ComponentState.LeakingToEarth) continue;
            siemens += 1 / (change.LeakOhm ?? throw new CircuitException(
                $"Component '{component}' leaks to earth without a value; give the leak's resistance in Ω."));
        }
        return 1 / siemens;
    }
}
