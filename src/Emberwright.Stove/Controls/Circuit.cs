// What are the voltages and currents of a small linear circuit, direct or alternating at one frequency?
// Equation: Kirchhoff's current law at every node, Σ I = 0, with each branch I = (V_from − V_to − E − k(V_from − V_control))/Z;
//   a branch with Z = 0 keeps its current as an unknown of its own (modified nodal analysis).
// Symbols: V node voltage against the reference node (V, rms), I branch current (A, rms), Z impedance (Ω), E emf (V), k drop share.
// Validity: linear branches; a node with no path to the reference node, or a value that is not a number, is an error naming it.
// Assumptions: one frequency at a time; direct current is frequency 0 with capacitors left out.
// Source: Ho, Ruehli & Brennan, "The modified nodal approach to network analysis", IEEE Trans. Circuits and Systems 22, 1975 (from memory).
// Worked value: 120 V behind 0 Ω into 48 Ω drives 2.5 A (Ohm's law).

using System.Numerics;

namespace Emberwright.Stove.Controls;

/// <summary>Nodes joined by branches, at one frequency; node 0 is the reference.</summary>
public sealed class Circuit
{
    private readonly string[] _nodes;
    private readonly Branch[] _branches;

    /// <summary>Sets up a circuit.</summary>
    /// <param name="nodes">Node names; the first is the reference node, at 0 V.</param>
    /// <param name="branches">The branches between them.</param>
    /// <exception cref="CircuitException">A branch lacks a value, or a node has no path to the reference node.</exception>
    public Circuit(string[] nodes, Branch[] branches)
    {
        _nodes = nodes;
        _branches = branches;
        foreach (ref readonly var b in branches.AsSpan()) RequireValues(b);
        RequirePaths();
    }

    /// <summary>Solves the circuit.</summary>
    /// <exception cref="CircuitException">The circuit has no unique solution; the message names where.</exception>
    public CircuitSolution Solve()
    {
        var nodeCount = _nodes.Length - 1;
        var ideal = 0;
        foreach (ref readonly var b in _branches.AsSpan())
            if (b.ImpedanceOhm == Complex.Zero) ideal++;
        var n = nodeCount + ideal;
        var matrix = new Complex[n * n];
        var right = new Complex[n];
        var row = nodeCount;
        foreach (ref readonly var b in _branches.AsSpan())
        {
            if (double.IsInfinity(b.ImpedanceOhm.Real)) continue;
            if (b.ImpedanceOhm == Complex.Zero) StampIdeal(matrix, right, n, b, row++);
            else Stamp(matrix, right, n, b);
        }
        var lu = ComplexLu.Factor(matrix, n, out var singular) ?? throw Singular(singular, nodeCount);
        return new CircuitSolution(_nodes, _branches, lu, lu.Solve(right), n);
    }

    private static void Stamp(Complex[] m, Complex[] rhs, int n, in Branch b)
    {
        var y = Complex.One / b.ImpedanceOhm;
        int i = b.From - 1, j = b.To - 1, c = b.Control - 1;
        var own = y * (1 - b.Drop);
        if (i >= 0)
        {
            m[i * n + i] += own;
            if (j >= 0) m[i * n + j] -= y;
            if (c >= 0) m[i * n + c] += y * b.Drop;
            rhs[i] += y * b.EmfV;
        }
        if (j >= 0)
        {
            m[j * n + j] += y;
            if (i >= 0) m[j * n + i] -= own;
            if (c >= 0) m[j * n + c] -= y * b.Drop;
            rhs[j] -= y * b.EmfV;
        }
    }

    private static void StampIdeal(Complex[] m, Complex[] rhs, int n, in Branch b, int row)
    {
        int i = b.From - 1, j = b.To - 1, c = b.Control - 1;
        if (i >= 0)
        {
            m[i * n + row] += 1;
            m[row * n + i] += 1 - b.Drop;
        }
        if (j >= 0)
        {
            m[j * n + row] -= 1;
            m[row * n + j] -= 1;
        }
        if (c >= 0) m[row * n + c] += b.Drop;
        rhs[row] = b.EmfV;
    }

    private void RequireValues(in Branch b)
    {
        if (Complex.IsNaN(b.ImpedanceOhm))
            throw new CircuitException($"Component '{b.Name}' has no impedance; give its resistance in Ω (0 for an ideal source).");
        if (!Complex.IsFinite(b.EmfV))
            throw new CircuitException($"Component '{b.Name}' has no finite source voltage; give it in V (0 for a passive part).");
        if (b.Drop is not (>= 0 and <= 1))
            throw new CircuitException($"Component '{b.Name}' holds back a share of {b.Drop}; allowed is 0 to 1.");
        if ((uint)b.From >= (uint)_nodes.Length || (uint)b.To >= (uint)_nodes.Length || (uint)b.Control >= (uint)_nodes.Length)
            throw new CircuitException($"Component '{b.Name}' is joined to a node that does not exist; name both of its test points.");
    }

    private void RequirePaths()
    {
        Span<int> root = stackalloc int[_nodes.Length];
        for (var i = 0; i < root.Length; i++) root[i] = i;
        foreach (ref readonly var b in _branches.AsSpan())
        {
            if (double.IsInfinity(b.ImpedanceOhm.Real)) continue;
            root[Find(root, b.From)] = Find(root, b.To);
        }
        var reference = Find(root, 0);
        for (var i = 1; i < root.Length; i++)
            if (Find(root, i) != reference)
                throw new CircuitException(
                    $"Test point '{_nodes[i]}' floats: nothing joins it to '{_nodes[0]}'. Give its lead an insulation resistance, or join it to the circuit.");
    }

    private static int Find(Span<int> root, int i)
    {
        while (root[i] != i) i = root[i] = root[root[i]];
        return i;
    }

    private CircuitException Singular(int column, int nodeCount) => new(column < nodeCount
        ? $"The voltage of test point '{_nodes[column + 1]}' is not determined: its branches cancel. Check the impedances joined to it."
        : "Two ideal sources contradict each other (or close a loop without resistance). Give one of them its internal resistance in Ω.");
}
