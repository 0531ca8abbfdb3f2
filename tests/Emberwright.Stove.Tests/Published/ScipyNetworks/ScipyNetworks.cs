using System.Text.Json;
using Emberwright.Stove.Air.Networks;
using Xunit;

namespace Emberwright.Stove.Tests.Published.ScipyNetworks;

/// <summary>
/// Two hundred random networks solved by SciPy (scipy.optimize.root) on equations of its own, written by make_networks.py beside
/// this file into networks.json. Within 0.1 % of every flow (all are above 1e-4 kg/s) and of every pressure, or within
/// 2e-6 kg/s and 0.005 Pa: the laws here are smoothed over 3e-6 kg/s and blend the air of both ends over as little, SciPy's have
/// the kink.
/// </summary>
public class ScipyNetworks
{
    private static readonly JsonElement Golden = JsonDocument.Parse(File.ReadAllText(
        Path.Combine(Root(), "tests", "Emberwright.Stove.Tests", "Published", "ScipyNetworks", "networks.json"))).RootElement;

    [Fact]
    public void All_of_them_are_there() => Assert.Equal(200, Golden.GetArrayLength());

    [Fact]
    public void Pressures_and_flows_agree()
    {
        foreach (var one in Golden.EnumerateArray())
        {
            var network = NetworkFile.Read(one.GetProperty("network").GetRawText(), out var problems);
            Assert.Empty(problems);
            var solved = NetworkSolver.Solve(network!);

            Assert.True(solved.Converged, $"{network!.Name}: {solved.Worst}");
            Assert.True(solved.MassResidualKgPerS < 1e-9);
            foreach (var (expected, node) in Numbers(one, "pressurePa").Zip(solved.Nodes))
                Assert.True(Math.Abs(node.PressurePa - expected) <= Math.Max(1e-3 * Math.Abs(expected), 0.005), $"{network.Name}, {node.Node.Id}: {node.PressurePa} Pa, SciPy {expected}");
            foreach (var (expected, link) in Numbers(one, "massFlowKgPerS").Zip(solved.Links))
                Assert.True(Math.Abs(link.MassFlowKgPerS - expected) <= Math.Max(1e-3 * Math.Abs(expected), 2e-6), $"{network.Name}, {link.Link.Id}: {link.MassFlowKgPerS} kg/s, SciPy {expected}");
        }
    }

    private static IEnumerable<double> Numbers(JsonElement one, string name) => one.GetProperty(name).EnumerateArray().Select(e => e.GetDouble());

    internal static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Emberwright.slnx")))
            folder = folder.Parent;
        return folder!.FullName;
    }
}
