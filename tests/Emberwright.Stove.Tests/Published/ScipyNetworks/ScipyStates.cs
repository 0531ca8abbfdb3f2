using System.Text.Json;
using Emberwright.Stove.Air.Networks;
using Xunit;

namespace Emberwright.Stove.Tests.Published.ScipyNetworks;

/// <summary>
/// Forty random networks whose links may carry air either way, more than half of them with several states, each state found by
/// SciPy on equations of its own (make_states.py beside this file). Every state of SciPy's is found, and no other; within
/// 0.1 % or 2e-6 kg/s and 0.005 Pa, for the same reason as in <see cref="ScipyNetworks"/>.
/// </summary>
public class ScipyStates
{
    private static readonly JsonElement Golden = JsonDocument.Parse(File.ReadAllText(
        Path.Combine(ScipyNetworks.Root(), "tests", "Emberwright.Stove.Tests", "Published", "ScipyNetworks", "states.json"))).RootElement;

    [Fact]
    public void Forty_networks_many_with_several_states()
    {
        Assert.Equal(40, Golden.GetArrayLength());
        Assert.True(Golden.EnumerateArray().Count(g => g.GetProperty("states").GetArrayLength() > 1) >= 20);
    }

    [Fact]
    public void Every_state_is_found_and_no_other()
    {
        foreach (var one in Golden.EnumerateArray())
        {
            var network = NetworkFile.Read(one.GetProperty("network").GetRawText(), out var problems);
            Assert.Empty(problems);
            var found = NetworkStates.Of(network!);
            var expected = one.GetProperty("states").EnumerateArray().ToList();

            Assert.True(found.IsComplete);
            Assert.All(expected, e => Assert.True(found.States.Any(s => Agrees(e, s.Solution)), $"{network!.Name}: a state of {expected.Count} is missing"));
            Assert.All(found.States, s => Assert.True(Stratified(s.Solution) || expected.Any(e => Agrees(e, s.Solution)), $"{network!.Name}: a state SciPy does not know"));
        }
    }

    /// <summary>Each start leads somewhere that is listed, and only to one place.</summary>
    [Fact]
    public void A_start_is_named_with_one_state_at_most()
    {
        foreach (var one in Golden.EnumerateArray())
        {
            var found = NetworkStates.Of(NetworkFile.Read(one.GetProperty("network").GetRawText(), out _)!);
            var starts = found.States.SelectMany(s => s.ReachedFrom).ToList();

            Assert.Equal(starts.Count, starts.Distinct().Count());
        }
    }

    /// <summary>A link that stands still between two columns: SciPy's held choices cannot express it.</summary>
    private static bool Stratified(NetworkSolution s) => s.Links.Any(l => Math.Abs(l.MassFlowKgPerS) < 1e-5);

    private static bool Agrees(JsonElement state, NetworkSolution solved) =>
        Numbers(state, "pressurePa").Zip(solved.Nodes).All(p => Math.Abs(p.Second.PressurePa - p.First) <= Math.Max(1e-3 * Math.Abs(p.First), 0.005))
        && Numbers(state, "massFlowKgPerS").Zip(solved.Links).All(p => Math.Abs(p.Second.MassFlowKgPerS - p.First) <= Math.Max(1e-3 * Math.Abs(p.First), 2e-6));

    private static IEnumerable<double> Numbers(JsonElement one, string name) => one.GetProperty(name).EnumerateArray().Select(e => e.GetDouble());
}
