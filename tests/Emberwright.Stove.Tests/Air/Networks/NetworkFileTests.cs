using System.Text.Json;
using Emberwright.Stove.Air.Networks;
using Json.Schema;
using Xunit;

namespace Emberwright.Stove.Tests.Air.Networks;

/// <summary>Networks are read, and refused with the path of every mistake; schema and reader say the same.</summary>
public class NetworkFileTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Root(), "docs", "schema", "network.schema.json")));

    public static TheoryData<string> Demos => [.. Directory.GetFiles(Path.Combine(Root(), "demo", "networks")).Select(f => Path.GetFileName(f)!)];

    [Theory]
    [MemberData(nameof(Demos))]
    public void A_demo_network_fits_the_schema_and_is_solved(string name)
    {
        var text = File.ReadAllText(Path.Combine(Root(), "demo", "networks", name));

        Assert.True(Fits(text));
        var network = NetworkFile.Read(text, out var problems);
        Assert.Empty(problems);
        Assert.True(NetworkSolver.Solve(network!).Converged);
    }

    [Theory]
    [InlineData("""{"id":"b","pressure":"3 furlong"}""", """{"id":"x","kind":"opening","from":"a","to":"b","areaM2":0.01}""", "$.nodes[1].pressure", true)]
    [InlineData("""{"id":"b","colour":"red"}""", """{"id":"x","kind":"opening","from":"a","to":"b","areaM2":0.01}""", "$.nodes[1].colour", false)]
    [InlineData("""{"id":"a"}""", """{"id":"x","kind":"opening","from":"a","to":"a","areaM2":0.01}""", "$.nodes[1].id", true)]
    [InlineData("""{"id":"b"}""", """{"id":"x","kind":"opening","from":"a","to":"q","areaM2":0.01}""", "$.links[0].to", true)]
    [InlineData("""{"id":"b"}""", """{"id":"x","kind":"opening","from":"a","to":"b","areaM2":-1}""", "$.links[0].areaM2", false)]
    [InlineData("""{"id":"b"}""", """{"id":"x","kind":"opening","from":"a","to":"b"}""", "$.links[0]", false)]
    [InlineData("""{"id":"b"}""", """{"id":"x","kind":"tube","from":"a","to":"b"}""", "$.links[0].kind", false)]
    [InlineData("""{"id":"b"}""", """{"id":"x","kind":"crack","from":"a","to":"b","leakage":"3 m3/h"}""", "$.links[0].at", false)]
    [InlineData("""{"id":"b"}""", """{"id":"x","kind":"passage","from":"a","to":"b","diameter":"80 mm"}""", "$.links[0]", true)]
    [InlineData("""{"id":"b"}""", """{"id":"x","kind":"blower","from":"a","to":"b","shutOff":"80 Pa"}""", "$.links[0].quadraticPaS2PerM6", false)]
    [InlineData("""{"id":"b"},{"id":"c"}""", """{"id":"x","kind":"opening","from":"b","to":"c","areaM2":0.01}""", "$.nodes[1]", true)]
    public void A_mistake_is_named_with_its_path(string node, string link, string path, bool fitsSchema)
    {
        var text = $$"""{"format":"emberwright-network","nodes":[{"id":"a","pressure":"10 Pa"},{{node}}],"links":[{{link}}]}""";

        Assert.Null(NetworkFile.Read(text, out var problems));
        Assert.Contains(problems, p => p.Path == path && p.Remedy.Length > 0);
        Assert.Equal(fitsSchema, Fits(text));
    }

    [Fact]
    public void What_is_not_json_says_where() =>
        Assert.Contains("line 2", Assert.Single(Problems("{\n,")).Message, StringComparison.Ordinal);

    private static IReadOnlyList<Stove.Patterns.FileProblem> Problems(string text)
    {
        NetworkFile.Read(text, out var problems);
        return problems;
    }

    private static bool Fits(string text)
    {
        using var document = JsonDocument.Parse(text);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Emberwright.slnx")))
            folder = folder.Parent;
        return folder!.FullName;
    }
}
