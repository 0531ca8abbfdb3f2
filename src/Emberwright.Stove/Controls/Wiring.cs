using System.Collections.Immutable;

namespace Emberwright.Stove.Controls;

/// <summary>
/// The circuit of a pattern as data: test points, parts between them, the order of the interlocks in the feed's chain.
/// Immutable. It holds healthy values only; what is wrong is given beside it when it is solved.
/// </summary>
public sealed class Wiring
{
    private readonly Dictionary<string, int> _componentIndex;
    private readonly Dictionary<string, int> _pointIndex;

    /// <summary>Sets up a wiring and checks that it is complete.</summary>
    /// <param name="pattern">Id of the pattern.</param>
    /// <param name="points">Test points; the first is neutral.</param>
    /// <param name="components">Parts, at most 64.</param>
    /// <param name="feedChain">Ids of the interlocks in series with the feed motor, in the order of the current.</param>
    /// <param name="harness">What the wires themselves add.</param>
    /// <exception cref="CircuitException">An id is doubled or unknown, or something required is missing.</exception>
    public Wiring(
        string pattern, IEnumerable<TestPoint> points, IEnumerable<WiringComponent> components,
        IEnumerable<string> feedChain, Harness harness)
    {
        Pattern = pattern;
        TestPoints = [.. points];
        Components = [.. components];
        FeedChain = [.. feedChain];
        Harness = harness;
        _pointIndex = Index(TestPoints.Select(p => p.Id), "test point");
        _componentIndex = Index(Components.Select(c => c.Id), "component");
        Require(TestPoints.Length > 0 && TestPoints[0].Id == Points.Neutral, $"its first test point must be '{Points.Neutral}'");
        Require(Components.Length <= 64, $"it has {Components.Length} components; at most 64 are allowed");
        foreach (var id in new[] { Points.Live, Points.BoardLive, Points.Earth, Points.BoardCommon })
            Require(_pointIndex.ContainsKey(id), $"test point '{id}' is missing");
        foreach (var c in Components)
        {
            Require(_pointIndex.ContainsKey(c.From), $"component '{c.Id}' starts at unknown test point '{c.From}'");
            Require(_pointIndex.ContainsKey(c.To), $"component '{c.Id}' ends at unknown test point '{c.To}'");
            WiringValues.Require(c);
        }
        foreach (var id in FeedChain)
            Require(_componentIndex.TryGetValue(id, out var i) && Components[i] is Interlock, $"feed chain names '{id}', which is no interlock");
        Mains = Components.OfType<MainsSupply>().SingleOrDefault()
            ?? throw new CircuitException($"Wiring '{pattern}': it needs one mains supply; add it with voltage and frequency.");
        foreach (var output in Components.OfType<BoardOutput>()) Outputs |= output.Call;
        Netlist = new WiringNetlist(this);
    }

    /// <summary>Id of the pattern it belongs to.</summary>
    public string Pattern { get; }

    /// <summary>Test points; the first is neutral.</summary>
    public ImmutableArray<TestPoint> TestPoints { get; }

    /// <summary>Parts between the test points.</summary>
    public ImmutableArray<WiringComponent> Components { get; }

    /// <summary>Interlocks in series with the feed motor, in the order of the current.</summary>
    public ImmutableArray<string> FeedChain { get; }

    /// <summary>What the wires themselves add.</summary>
    public Harness Harness { get; }

    /// <summary>The mains supply.</summary>
    public MainsSupply Mains { get; }

    /// <summary>All loads that its board has an output for.</summary>
    public BoardCalls Outputs { get; }

    /// <summary>Everything that can be prepared once for solving.</summary>
    internal WiringNetlist Netlist { get; }

    /// <summary>The component with this id.</summary>
    /// <exception cref="CircuitException">There is none.</exception>
    public WiringComponent this[string id] => Components[ComponentIndex(id)];

    /// <summary>True when the id names a component.</summary>
    public bool HasComponent(string id) => _componentIndex.ContainsKey(id);

    /// <summary>True when the id names a test point.</summary>
    public bool HasPoint(string id) => _pointIndex.ContainsKey(id);

    /// <summary>Index of a component.</summary>
    /// <exception cref="CircuitException">There is none with this id.</exception>
    public int ComponentIndex(string id) => _componentIndex.TryGetValue(id, out var i) ? i
        : throw new CircuitException($"Wiring '{Pattern}' has no component '{id}'; it has: {string.Join(", ", _componentIndex.Keys)}.");

    /// <summary>Index of a test point.</summary>
    /// <exception cref="CircuitException">There is none with this id.</exception>
    public int PointIndex(string id) => _pointIndex.TryGetValue(id, out var i) ? i
        : throw new CircuitException($"Wiring '{Pattern}' has no test point '{id}'; it has: {string.Join(", ", _pointIndex.Keys)}.");

    /// <summary>Bit of a contact for <see cref="SwitchPositions"/>.</summary>
    /// <exception cref="CircuitException">There is no such component.</exception>
    public ulong Bit(string id) => 1UL << ComponentIndex(id);

    /// <summary>The same wiring with one part replaced, as a stove card states it.</summary>
    /// <param name="component">The part, with the id of the one it replaces.</param>
    public Wiring With(WiringComponent component) => new(
        Pattern, TestPoints, Components.SetItem(ComponentIndex(component.Id), component), FeedChain, Harness);

    /// <summary>The same wiring with the interlocks of the feed's chain in another order, as a stove card states it.</summary>
    /// <param name="order">All ids of <see cref="FeedChain"/>, in the new order.</param>
    /// <exception cref="CircuitException">The ids are not the same ones.</exception>
    public Wiring WithFeedOrder(IReadOnlyList<string> order)
    {
        Require(order.Count == FeedChain.Length && FeedChain.All(order.Contains),
            $"the new order must hold exactly {string.Join(", ", FeedChain)}");
        var seats = FeedChain.Select(id => this[id]).ToArray();
        var components = Components;
        for (var i = 0; i < order.Count; i++)
        {
            var moved = this[order[i]];
            components = components.SetItem(ComponentIndex(order[i]), moved with { From = seats[i].From, To = seats[i].To });
            foreach (var bypass in Components.OfType<StartBypass>().Where(b => b.From == moved.From && b.To == moved.To))
                components = components.SetItem(ComponentIndex(bypass.Id), bypass with { From = seats[i].From, To = seats[i].To });
        }
        return new Wiring(Pattern, TestPoints, components, order, Harness);
    }

    private Dictionary<string, int> Index(IEnumerable<string> ids, string what)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var id in ids)
            Require(index.TryAdd(id, index.Count), $"{what} '{id}' appears twice");
        return index;
    }

    private void Require(bool condition, string otherwise)
    {
        if (!condition) throw new CircuitException($"Wiring '{Pattern}': {otherwise}.");
    }
}
