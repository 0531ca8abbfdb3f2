using System.Numerics;

namespace Emberwright.Stove.Controls;

/// <summary>
/// One two-terminal element of a circuit at one frequency:
/// V_from − V_to = Z·I + E + k·(V_from − V_control), with I flowing from → to.
/// It is a value of a component in one state, not the component itself.
/// </summary>
/// <param name="Name">Name of the component, for messages.</param>
/// <param name="From">Index of the first node.</param>
/// <param name="To">Index of the second node.</param>
/// <param name="ImpedanceOhm">
/// Series impedance Z, Ω. Zero is an ideal source or wire; infinity is no connection at all; NaN is an error.
/// </param>
/// <param name="EmfV">Series electromotive force E, V (root mean square for alternating current), positive at <paramref name="From"/>.</param>
/// <param name="Drop">k, share of the voltage between <paramref name="From"/> and <paramref name="Control"/> held back, 0 … 1 (a phase-controlled output).</param>
/// <param name="Control">Index of the node k refers to; 0 is the reference node.</param>
public readonly record struct Branch(
    string Name, int From, int To, Complex ImpedanceOhm, Complex EmfV = default, double Drop = 0, int Control = 0);
