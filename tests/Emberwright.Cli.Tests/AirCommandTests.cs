using System.Text.Json;
using Xunit;

namespace Emberwright.Cli.Tests;

public class AirCommandTests
{
    /// <summary>Orifice 0.01 m², C_d 0.6, 293.15 K, 10 Pa: 0.0294 kg/s (IBPSA Modelica library, one-way flow comparison).</summary>
    [Fact]
    public void One_opening_passes_what_the_published_table_says()
    {
        var run = Run.Of("air", Path.Combine(Run.Root, "demo", "networks", "one-opening.json"), "--json");

        Assert.Equal(ExitCodes.Ok, run.Code);
        Assert.Equal("converged", run.Json.GetProperty("status").GetString());
        Assert.Equal(0.0294, run.Json.GetProperty("links")[0].GetProperty("massFlowKgPerS").GetDouble(), 0.0001);
    }

    /// <summary>The networks SciPy solved, through the command, within 0.1 % of every flow or 2e-6 kg/s, below the flow over which laws are smoothed.</summary>
    [Fact]
    public void Networks_solved_by_scipy_come_out_the_same()
    {
        var golden = JsonDocument.Parse(File.ReadAllText(Path.Combine(
            Run.Root, "tests", "Emberwright.Stove.Tests", "Published", "ScipyNetworks", "networks.json"))).RootElement;
        for (var i = 0; i < golden.GetArrayLength(); i++)
        {
            var run = Run.OfInput(golden[i].GetProperty("network").GetRawText(), "air", "-", "--json");

            Assert.Equal(ExitCodes.Ok, run.Code);
            var flows = run.Json.GetProperty("links").EnumerateArray().Select(l => l.GetProperty("massFlowKgPerS").GetDouble());
            foreach (var (flow, expected) in flows.Zip(golden[i].GetProperty("massFlowKgPerS").EnumerateArray().Select(e => e.GetDouble())))
                Assert.Equal(expected, flow, Math.Max(1e-3 * Math.Abs(expected), 2e-6));
        }
    }

    /// <summary>Networks of several states, every one found by SciPy with directions held; see make_states.py beside the file.</summary>
    [Fact]
    public void All_states_that_scipy_found_are_told()
    {
        var golden = JsonDocument.Parse(File.ReadAllText(Path.Combine(
            Run.Root, "tests", "Emberwright.Stove.Tests", "Published", "ScipyNetworks", "states.json"))).RootElement;
        foreach (var one in golden.EnumerateArray().Where((_, i) => i % 4 == 0))
        {
            var run = Run.OfInput(one.GetProperty("network").GetRawText(), "air", "-", "--json");
            var told = run.Json.GetProperty("otherStates").EnumerateArray().Prepend(run.Json).Select(Flows).ToList();

            Assert.All(one.GetProperty("states").EnumerateArray(), state => Assert.Contains(told, flows => flows
                .Zip(state.GetProperty("massFlowKgPerS").EnumerateArray().Select(e => e.GetDouble()))
                .All(p => Math.Abs(p.First - p.Second) <= Math.Max(1e-3 * Math.Abs(p.Second), 2e-6))));
        }

        static List<double> Flows(JsonElement state) =>
            [.. state.GetProperty("links").EnumerateArray().Select(l => l.GetProperty("massFlowKgPerS").GetDouble())];
    }

    [Fact]
    public void The_words_say_that_there_are_two_states()
    {
        var run = Run.Of("air", Path.Combine(Run.Root, "demo", "networks", "two-chimneys.json"));

        Assert.Contains("State 1 of", run.Out, StringComparison.Ordinal);
        Assert.Contains("may carry air either way", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistake_is_named_with_path_and_remedy()
    {
        var run = Run.OfInput("""{"format":"emberwright-network","nodes":[{"id":"a","pressure":"3 furlong"}],"links":[]}""", "air", "-");

        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains("$.nodes[0].pressure", run.Error, StringComparison.Ordinal);
        Assert.Contains("Use one of Pa", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void A_file_that_is_not_there_says_what_to_give() =>
        Assert.Contains("demo/networks/cold-stove.json", Run.Of("air", "nowhere.json").Error, StringComparison.Ordinal);
}
