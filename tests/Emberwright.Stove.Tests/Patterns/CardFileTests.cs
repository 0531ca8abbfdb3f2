using System.Text.Json;
using Emberwright.Stove.Patterns;
using Json.Schema;
using Xunit;

namespace Emberwright.Stove.Tests.Patterns;

/// <summary>Cards are read, written, and refused with the path of every mistake; schema and reader say the same.</summary>
public class CardFileTests
{
    private static readonly string SchemaText = File.ReadAllText(Path.Combine(Root(), "docs", "schema", "card.schema.json"));
    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    private static string Example()
    {
        using var document = JsonDocument.Parse(SchemaText);
        return document.RootElement.GetProperty("examples")[0].GetRawText();
    }

    [Fact]
    public void The_schemas_example_reads_and_fits()
    {
        var card = CardFile.Read(Example(), out var problems);

        Assert.Empty(problems);
        Assert.Equal(0.05 * 249.08891, card!.SwitchClosesPa!.Value, 1e-3);
        Assert.Equal(5, card.Healthy.Count);
        var stove = new VirtualStove(DamperInsert.Pattern, card, card.HealthySite!);
        var reading = stove.Solve(new double[Enum.GetValues<Parameter>().Length], Condition.FanOnly).Value(Measure.Pressure, Places.Firebox);
        Assert.Equal(-0.11 * 249.08891, reading, 0.5);
    }

    [Fact]
    public void Written_and_read_again_it_is_the_same()
    {
        var card = CardFile.Read(Example(), out _)!;
        var text = CardFile.Write(card);
        var again = CardFile.Read(text, out var problems);

        Assert.Empty(problems);
        Assert.Equal(text, CardFile.Write(again!));
        Assert.True(Accepts(text), text);
    }

    [Theory]
    [InlineData("""{"name":"x"}""", "$.pattern")]
    [InlineData("""{"pattern":"kettle"}""", "$.pattern")]
    [InlineData("""{"pattern":"damper-insert","healthy":[{"measure":"pressure","place":"firebox","condition":"fan only","value":"-27"}]}""", "$.healthy[0].value")]
    [InlineData("""{"pattern":"damper-insert","healthy":[{"measure":"pressure","place":"attic","condition":"fan only","value":"-27 Pa"}]}""", "$.healthy[0].place")]
    [InlineData("""{"pattern":"damper-insert","healthy":[{"measure":"luck","place":"firebox","condition":"fan only","value":"1 Pa"}]}""", "$.healthy[0].measure")]
    [InlineData("""{"pattern":"damper-insert","healthySite":{"vent":{"diameter":"3 lb"}}}""", "$.healthySite.vent.diameter")]
    [InlineData("""{"pattern":"damper-insert","healthySite":{"vent":{"tees":-1}}}""", "$.healthySite.vent.tees")]
    [InlineData("""{"pattern":"damper-insert","vacuumSwitch":{"closes":"10 Pa","opens":"12 Pa"}}""", "$.vacuumSwitch.opens")]
    [InlineData("""{"pattern":"damper-insert","parts":[{"power":"300 W"}]}""", "$.parts[0].component")]
    [InlineData("""{"pattern":"damper-insert","access":[{"area":"roof","where":"up"}]}""", "$.access[0].area")]
    [InlineData("""{"pattern":"damper-insert","access":[{"panel":"attic","area":"vent","where":"up"}]}""", "$.access[0].panel")]
    [InlineData("""{"pattern":"damper-insert","access":[{"area":"vent","where":"up","fastening":[{"kind":"glue"}]}]}""", "$.access[0].fastening[0].kind")]
    [InlineData("""{"pattern":"damper-insert","gaskets":[{"seat":"door-rope","side":"inside"}]}""", "$.gaskets[0].side")]
    [InlineData("""{"pattern":"damper-insert","codes":{}}""", "$.codes")]
    [InlineData("""{"format":"other","pattern":"damper-insert"}""", "$.format")]
    [InlineData("""{"version":9,"pattern":"damper-insert"}""", "$.version")]
    [InlineData("""{"pattern":""", "$")]
    public void A_mistake_is_named_with_its_path(string text, string path)
    {
        Assert.Null(CardFile.Read(text, out var problems));
        Assert.Contains(problems, p => p.Path == path);
        Assert.All(problems, p => Assert.NotEmpty(p.Remedy));
    }

    [Fact]
    public void Every_mistake_is_named_not_only_the_first()
    {
        CardFile.Read("""{"pattern":"damper-insert","healthy":[{"measure":"pressure"}],"parts":[{}]}""", out var problems);

        Assert.True(problems.Count >= 3);
    }

    [Fact]
    public void Members_of_a_later_version_are_left_alone() =>
        Assert.NotNull(CardFile.Read("""{"pattern":"damper-insert","colour":"red"}""", out _));

    private static bool Accepts(string text)
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
