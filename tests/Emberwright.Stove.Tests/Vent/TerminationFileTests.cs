using System.Text.Json;
using Emberwright.Stove.Tests.Published.ScipyNetworks;
using Emberwright.Stove.Vent;
using Json.Schema;
using Xunit;

namespace Emberwright.Stove.Tests.Vent;

/// <summary>A list of the user's own distances is read with its sources, or refused with every mistake named.</summary>
public class TerminationFileTests
{
    private static readonly string SchemaText = File.ReadAllText(Path.Combine(ScipyNetworks.Root(), "docs", "schema", "terminations.schema.json"));

    private static string Example() => JsonDocument.Parse(SchemaText).RootElement.GetProperty("examples")[0].GetRawText();

    [Fact]
    public void The_schemas_example_reads()
    {
        var list = TerminationFile.Read(Example(), out var problems)!;

        Assert.Empty(problems);
        Assert.Equal(4 * 0.3048, list[0].UsualM, 1e-9);
        Assert.Contains("Orrin", list[0].Origin.Source, StringComparison.Ordinal);
        Assert.Equal("the appliance's manual", list[1].Origin.Source);
        Assert.True(JsonSchema.FromText(SchemaText.Replace("urn:emberwright:terminations:1", "urn:emberwright:terminations:test", StringComparison.Ordinal)).Evaluate(JsonDocument.Parse(Example()).RootElement).IsValid);
    }

    [Theory]
    [InlineData("""{"format":"emberwright-terminations","source":"x","distances":[]}""", "$.distances")]
    [InlineData("""{"format":"other","source":"x","distances":[{"id":"a","from":"b","distance":"4 ft"}]}""", "$.format")]
    [InlineData("""{"format":"emberwright-terminations","distances":[{"id":"a","from":"b","distance":"4 ft"}]}""", "$.source")]
    [InlineData("""{"format":"emberwright-terminations","source":"x","distances":[{"id":"a","from":"b","distance":"400 ft"}]}""", "$.distances[0].distance")]
    [InlineData("""{"format":"emberwright-terminations","source":"x","distances":[{"id":"a","from":"b","distance":"4 ft"},{"id":"a","from":"c","distance":"1 m"}]}""", "$.distances[1].id")]
    [InlineData("[", "$")]
    public void A_mistake_is_named_with_its_path(string text, string path)
    {
        Assert.Null(TerminationFile.Read(text, out var problems));
        Assert.Contains(problems, p => p.Path == path);
    }
}
