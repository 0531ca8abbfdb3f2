using System.Numerics;

namespace Emberwright.Stove.Controls;

/// <summary>A solved circuit: node voltages, branch currents, and what an instrument between two nodes would do to it.</summary>
public sealed class CircuitSolution
{
    private readonly string[] _nodes;
    private readonly Branch[] _branches;
    private readonly ComplexLu _lu;
    private readonly Complex[] _unknowns;
    private readonly int _size;

    internal CircuitSolution(string[] nodes, Branch[] branches, ComplexLu lu, Complex[] unknowns, int size) =>
        (_nodes, _branches, _lu, _unknowns, _size) = (nodes, branches, lu, unknowns, size);

    /// <summary>Node names; the first is the reference node.</summary>
    public IReadOnlyList<string> Nodes => _nodes;

    /// <summary>Voltage of a node against the reference node, V (rms).</summary>
    /// <param name="node">Index of the node.</param>
    public Complex VoltageV(int node) => node == 0 ? Complex.Zero : _unknowns[node - 1];

    /// <summary>Current through a branch from its first to its second node, A (rms).</summary>
    /// <param name="branch">Index of the branch.</param>
    public Complex CurrentA(int branch)
    {
        ref readonly var b = ref _branches[branch];
        if (double.IsInfinity(b.ImpedanceOhm.Real)) return Complex.Zero;
        if (b.ImpedanceOhm == Complex.Zero) return _unknowns[_nodes.Length - 1 + IdealsBefore(branch)];
        var from = VoltageV(b.From);
        return (from - VoltageV(b.To) - b.EmfV - b.Drop * (from - VoltageV(b.Control))) / b.ImpedanceOhm;
    }

    /// <summary>
    /// Impedance seen between two nodes with all sources at rest, Ω (Thévenin's theorem): the voltage that
    /// 1 A sent from <paramref name="a"/> to <paramref name="b"/> outside the circuit would raise.
    /// </summary>
    /// <param name="a">Index of the first node.</param>
    /// <param name="b">Index of the second node.</param>
    public Complex ImpedanceOhm(int a, int b)
    {
        var right = new Complex[_size];
        if (a > 0) right[a - 1] += 1;
        if (b > 0) right[b - 1] -= 1;
        var v = _lu.Solve(right);
        return (a > 0 ? v[a - 1] : Complex.Zero) - (b > 0 ? v[b - 1] : Complex.Zero);
    }

    /// <summary>Voltage an instrument of finite impedance reads between two nodes, V: V·Z_meter/(Z_meter + Z_circuit).</summary>
    /// <param name="a">Index of the node of the first lead.</param>
    /// <param name="b">Index of the node of the second lead.</param>
    /// <param name="meterOhm">Input impedance of the instrument, Ω.</param>
    public Complex LoadedVoltageV(int a, int b, Complex meterOhm) =>
        (VoltageV(a) - VoltageV(b)) * meterOhm / (meterOhm + ImpedanceOhm(a, b));

    private int IdealsBefore(int branch)
    {
        var count = 0;
        for (var i = 0; i < branch; i++)
            if (_branches[i].ImpedanceOhm == Complex.Zero) count++;
        return count;
    }
}
