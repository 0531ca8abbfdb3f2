// What does an ohmmeter show on one part taken out of its circuit?
// Equation: R of the part alone; copper R(T) = R20·(1 + α(T − 20 °C)), α = 0.00393/K.
// Symbols: R (Ω), T (°C).
// Validity: direct current, plug out, both leads off the part.
// Assumptions: a contact is in the position the state gives it.
// Source: IEC 60028, standard of resistance for copper (α at 20 °C, from memory).
// Worked value: 1.21 Ω at 20 °C is 1.472 Ω at 75 °C.

using Emberwright.Stove.Faults;

namespace Emberwright.Stove.Controls;

/// <summary>Resistance of a part alone, leads off.</summary>
public static class IsolatedPart
{
    /// <summary>Temperature coefficient of copper's resistance at 20 °C, 1/K.</summary>
    public const double CopperPerK = 0.00393;

    /// <summary>Resistance of a copper winding at a temperature, Ω.</summary>
    /// <param name="ohmAt20C">Resistance at 20 °C, Ω.</param>
    /// <param name="temperatureC">Temperature, °C; −50 … 200.</param>
    public static double CopperOhm(double ohmAt20C, double temperatureC) => ohmAt20C * (1 + CopperPerK * (temperatureC - 20));

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
