using Emberwright.Stove.Air;
using Emberwright.Stove.Air.Networks;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Air.Networks;

public class NetworkSolverTests
{
    private static readonly Origin Given = Origin.Memory;

    [Fact]
    public void A_stoves_air_path_as_a_network_reads_what_the_virtual_stove_reads()
    {
        var pattern = DamperInsert.Pattern with { Vent = new VentRun(76, 1, 0, Terminal: "open") };
        var state = new VirtualStove(pattern, null, new Site(OutdoorC: 20, RoomC: 20)).Solve(new double[Enum.GetValues<Parameter>().Length], Condition.FanOnly);
        var links = pattern.Air.Links.Select(l => l is VentLink
            ? new Passage(l.Id, l.From, l.To, Math.PI * 0.076 * 0.076 / 4, 0.076, 1, 0.0005, 1.5, Given) : l);
        var network = new AirNetwork("", 20, 101_325,
            [.. pattern.Air.Nodes.Select(n => new NetworkNode(n.Id, n.HeightM, 20, null)),
                new(Boundary.Room, 0, 20, 0), new(Boundary.AirSupply, 0, 20, 0), new(Boundary.Terminal, 0, 20, 0)],
            [.. links]);

        var solved = NetworkSolver.Solve(network);

        foreach (var link in solved.Links)
            Assert.Equal(state.MassFlowKgPerS(link.Link.Id), link.MassFlowKgPerS, 1e-8);
    }

    /// <summary>Two equal openings, 5 m apart, in a warm shaft: the lower draws half the stack, by symmetry, and Δp = Δρ·g·H.</summary>
    [Fact]
    public void A_warm_shaft_draws_by_its_column()
    {
        var network = new AirNetwork("", 0, 101_325,
            [new("bottom", 0, 0, 0), new("shaft", 0, 50, null), new("head", 5, 50, null), new("top", 5, 0, 0)],
            [new Opening("in", "bottom", "shaft", 0.01, 0.6, Given), new Opening("up", "shaft", "head", 100, 1, Given), new Opening("out", "head", "top", 0.01, 0.6, Given)]);

        var solved = NetworkSolver.Solve(network);

        var column = 101_325 / 287.053 * ((1 / 273.15) - (1 / 323.15)) * 9.80665 * 5;
        Assert.Equal(column, solved.Links[0].LossPa + solved.Links[2].LossPa, 1e-3);
        Assert.Equal(273.15 / 323.15, solved.Links[0].LossPa / solved.Links[2].LossPa, 1e-3);
    }

    [Fact]
    public void Four_hundred_nodes_in_a_row_are_no_trouble()
    {
        var nodes = Enumerable.Range(0, 400).Select(i => new NetworkNode($"n{i}", 0, 20, i switch { 0 => 100, 399 => 0, _ => null })).ToList();
        var links = Enumerable.Range(0, 399).Select(i => (Link)new Opening($"l{i}", $"n{i}", $"n{i + 1}", 0.01, 0.6, Given)).ToList();

        var solved = NetworkSolver.Solve(new AirNetwork("", 20, 101_325, nodes, links));

        Assert.True(solved.Converged);
        Assert.Equal(100.0 / 399, solved.Links[200].LossPa, 1e-6);
    }

    [Fact]
    public void A_place_linked_to_no_given_pressure_is_named()
    {
        var network = new AirNetwork("", 20, 101_325, [new("a", 0, 20, 0), new("b", 0, 20, null), new("c", 0, 20, null)],
            [new Opening("x", "b", "c", 0.01, 0.6, Given)]);

        Assert.Equal("b", Assert.Throws<InputException>(() => NetworkSolver.Solve(network)).Field);
    }

    /// <summary>
    /// A warm room joined to cold outdoors by two equal shafts, one leaving at each of two equal heights: by symmetry air may rise in
    /// either, and the two states are each other's mirror.
    /// </summary>
    [Fact]
    public void Two_equal_shafts_stand_in_two_mirrored_states()
    {
        Link Shaft(string id, string top) => new Passage(id, "room", top, 0.01, 0.113, 4, 0.0005, 1.5, Given);
        var network = new AirNetwork("", 0, 101_325,
            [new("room", 0, 25, null), new("top-a", 4, 0, 0), new("top-b", 4, 0, 0)], [Shaft("a", "top-a"), Shaft("b", "top-b")]);

        var found = NetworkStates.Of(network);
        var moving = found.States.Where(s => Math.Abs(s.Solution.Links[0].MassFlowKgPerS) > 1e-4).ToList();

        Assert.True(found.IsComplete);
        Assert.Equal(["a", "b"], found.EitherWay);
        Assert.Equal(2, moving.Count);
        Assert.Equal(moving[0].Solution.Links[0].MassFlowKgPerS, moving[1].Solution.Links[1].MassFlowKgPerS, 1e-9);
        Assert.Equal(moving[0].Solution.Links[0].MassFlowKgPerS, -moving[0].Solution.Links[1].MassFlowKgPerS, 1e-9);
    }

    [Fact]
    public void Air_of_one_temperature_has_one_state()
    {
        var network = new AirNetwork("", 20, 101_325, [new("a", 0, 20, 5), new("b", 3, 20, null), new("c", 6, 20, 0)],
            [new Opening("x", "a", "b", 0.01, 0.6, Given), new Opening("y", "b", "c", 0.01, 0.6, Given)]);

        var found = NetworkStates.Of(network);

        Assert.Empty(found.EitherWay);
        Assert.Equal(Enum.GetValues<NetworkStart>(), Assert.Single(found.States).ReachedFrom);
    }
}
