using System.Numerics;

namespace Emberwright.Stove.Controls;

/// <summary>A wiring made ready for solving: node names, ends of each part, and what the wires add.</summary>
internal sealed class WiringNetlist
{
    private readonly int[] _from;
    private readonly int[] _to;
    private readonly Branch[] _wiresAlternating;
    private readonly Branch[] _wiresDirect;

    internal WiringNetlist(Wiring wiring)
    {
        Nodes = [.. wiring.TestPoints.Select(p => p.Id)];
        _from = [.. wiring.Components.Select(c => wiring.PointIndex(c.From))];
        _to = [.. wiring.Components.Select(c => wiring.PointIndex(c.To))];
        AngularFrequency = 2 * Math.PI * wiring.Mains.FrequencyHz;
        FuseIndex = wiring.Components.IndexOf(wiring.Components.OfType<Fuse>().FirstOrDefault()!);
        EarthNode = wiring.PointIndex(Points.Earth);
        (_wiresAlternating, _wiresDirect) = Wires(wiring);
    }

    internal string[] Nodes { get; }

    internal double AngularFrequency { get; }

    /// <summary>Index of the fuse among the components, or −1.</summary>
    internal int FuseIndex { get; }

    internal int EarthNode { get; }

    internal int From(int component) => _from[component];

    internal int To(int component) => _to[component];

    /// <summary>Branches of one state; branch i belongs to component i.</summary>
    internal Branch[] Branches(Wiring wiring, ControlState state, ReadOnlySpan<Faults.CircuitChange> changes, bool alternating, bool fuseBlown)
    {
        var wires = alternating ? _wiresAlternating : _wiresDirect;
        var count = _from.Length;
        var branches = new Branch[count + wires.Length + changes.Length];
        var angular = alternating ? AngularFrequency : 0;
        var components = wiring.Components;
        for (var i = 0; i < count; i++)
        {
            var value = ComponentModel.Healthy(components[i], state, state.Positions.IsOpen(i), angular);
            branches[i] = new Branch(components[i].Id, _from[i], _to[i], value.Ohm, value.EmfV, value.Drop);
        }
        if (fuseBlown) branches[FuseIndex] = branches[FuseIndex] with { ImpedanceOhm = ComponentModel.OpenOhm };
        wires.CopyTo(branches, count);
        for (var i = 0; i < changes.Length; i++)
        {
            var at = wiring.ComponentIndex(changes[i].Component);
            branches[at] = ComponentModel.Changed(branches[at], components[at], changes[i], angular);
            branches[count + wires.Length + i] = new Branch(changes[i].Component, _from[at], EarthNode, LeakOhm(changes[i]));
        }
        return branches;
    }

    private static double LeakOhm(Faults.CircuitChange change) => change.State != Faults.ComponentState.LeakingToEarth
        ? double.PositiveInfinity
        : change.LeakOhm ?? throw new CircuitException(
            $"Component '{change.Component}' leaks to earth without a value; give the leak's resistance in Ω.");

    private (Branch[] Alternating, Branch[] Direct) Wires(Wiring wiring)
    {
        var live = wiring.PointIndex(Points.Live);
        var alternating = new List<Branch>();
        var direct = new List<Branch>();
        var harness = wiring.Harness;
        for (var node = 1; node < Nodes.Length; node++)
        {
            if (node == EarthNode) continue;
            var insulation = new Branch($"insulation of {Nodes[node]}", node, EarthNode, harness.InsulationOhm);
            alternating.Add(insulation);
            direct.Add(insulation);
            if (node == live || wiring.TestPoints[node].Circuit != SupplyCircuit.Mains) continue;
            alternating.Add(new Branch($"lead at {Nodes[node]} beside live", node, live, Reactance(harness.ToLiveF)));
            alternating.Add(new Branch($"lead at {Nodes[node]} beside earth", node, EarthNode, Reactance(harness.ToEarthF)));
        }
        var neutral = new Branch("insulation of neutral", 0, EarthNode, harness.InsulationOhm);
        alternating.Add(neutral);
        direct.Add(neutral);
        return ([.. alternating], [.. direct]);
    }

    private Complex Reactance(double farad) => new(0, -1 / (AngularFrequency * farad));
}
