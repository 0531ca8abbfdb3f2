using System.Numerics;
using Emberwright.Stove.Faults;

namespace Emberwright.Stove.Controls;

/// <summary>
/// A wiring in one control state with given faults, solved for alternating or direct current.
/// One solution serves all its meter readings.
/// </summary>
public sealed class SolvedWiring
{
    /// <summary>
    /// Multiple of its rating at which a fuse is taken as blown. A quick-acting fuse to IEC 60127-2 must open within
    /// 30 minutes at 2.1 times its rating (from memory).
    /// </summary>
    public const double FuseBlowsAt = 2.1;

    private readonly CircuitSolution _solution;
    private readonly WiringNetlist _netlist;

    private SolvedWiring(Wiring wiring, CircuitSolution solution, bool fuseBlown)
    {
        Wiring = wiring;
        FuseBlown = fuseBlown;
        _solution = solution;
        _netlist = wiring.Netlist;
    }

    /// <summary>The wiring that was solved.</summary>
    public Wiring Wiring { get; }

    /// <summary>True when the current blew the fuse; the voltages are those after it went.</summary>
    public bool FuseBlown { get; }

    /// <summary>Solves for alternating current at the supply's frequency.</summary>
    /// <param name="wiring">The circuit.</param>
    /// <param name="state">What board and switches do.</param>
    /// <param name="changes">Components at fault.</param>
    /// <exception cref="CircuitException">A fault names an unknown component, or a value is missing.</exception>
    public static SolvedWiring Alternating(Wiring wiring, ControlState state, ReadOnlySpan<CircuitChange> changes)
    {
        var intact = new SolvedWiring(wiring, Solve(wiring, state, changes, true, false), false);
        var fuse = wiring.Netlist.FuseIndex;
        if (fuse < 0 || intact.CurrentA(fuse) <= FuseBlowsAt * ((Fuse)wiring.Components[fuse]).RatedA) return intact;
        return new SolvedWiring(wiring, Solve(wiring, state, changes, true, true), true);
    }

    /// <summary>Solves for direct current: sense loops, sensors, and resistances with the plug out.</summary>
    /// <param name="wiring">The circuit.</param>
    /// <param name="state">What board and switches do.</param>
    /// <param name="changes">Components at fault.</param>
    /// <exception cref="CircuitException">A fault names an unknown component, or a value is missing.</exception>
    public static SolvedWiring Direct(Wiring wiring, ControlState state, ReadOnlySpan<CircuitChange> changes) =>
        new(wiring, Solve(wiring, state, changes, false, false), false);

    /// <summary>Current through a component, A (rms).</summary>
    /// <param name="component">Index of the component in its wiring.</param>
    public double CurrentA(int component) => _solution.CurrentA(component).Magnitude;

    /// <summary>Current through a component, A (rms).</summary>
    /// <param name="component">Id of the component.</param>
    public double CurrentA(string component) => CurrentA(Wiring.ComponentIndex(component));

    /// <summary>Voltage between two test points as an instrument of finite impedance reads it, V (complex, rms).</summary>
    /// <param name="first">Index of the first test point.</param>
    /// <param name="second">Index of the second.</param>
    /// <param name="meterOhm">Input impedance of the meter, Ω.</param>
    public Complex VoltageV(int first, int second, Complex meterOhm) => _solution.LoadedVoltageV(first, second, meterOhm);

    /// <summary>Voltage between two test points with nothing joined to them, V (complex, rms).</summary>
    /// <param name="first">Index of the first test point.</param>
    /// <param name="second">Index of the second.</param>
    public Complex OpenVoltageV(int first, int second) => _solution.VoltageV(first) - _solution.VoltageV(second);

    /// <summary>Impedance between two test points with all sources at rest, Ω.</summary>
    /// <param name="first">Index of the first test point.</param>
    /// <param name="second">Index of the second.</param>
    public Complex ImpedanceOhm(int first, int second) => _solution.ImpedanceOhm(first, second);

    /// <summary>The two test points a component lies between.</summary>
    /// <param name="component">Index of the component.</param>
    public (int From, int To) Ends(int component) => (_netlist.From(component), _netlist.To(component));

    private static CircuitSolution Solve(
        Wiring wiring, ControlState state, ReadOnlySpan<CircuitChange> changes, bool alternating, bool fuseBlown) =>
        new Circuit(wiring.Netlist.Nodes, wiring.Netlist.Branches(wiring, state, changes, alternating, fuseBlown)).Solve();
}
