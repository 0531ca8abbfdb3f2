using System.Text.Json;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Emberwright.Visits.Tests.Journal;
using Json.Schema;
using Xunit;

namespace Emberwright.Visits.Tests.Firm;

/// <summary>The published schema of the firm's book and its reader say the same.</summary>
public class FirmSchemaTests
{
    private static readonly string SchemaText = Repository.Text("docs", "schema", "firm.schema.json");
    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    public static TheoryData<EntryBody> EveryKind() => [.. SomeRecords.EveryKind];

    [Theory]
    [MemberData(nameof(EveryKind))]
    public void What_is_written_the_schema_accepts_and_reads_back_as_it_was(EntryBody body)
    {
        var book = SomeRecords.Book(body);
        var back = FirmFile.Read(FirmFile.Write(book));
        Assert.Empty(back.Problems);
        Assert.Equal(body, Assert.Single(back.Journal.Entries).Body);
        Assert.True(Accepts(book.Entries[0].Line), book.Entries[0].Line);
    }

    [Fact]
    public void No_kind_is_left_out_above() =>
        Assert.Equal(FirmKinds.Names.Order(), SomeRecords.EveryKind.Select(b => b.Kind).Distinct().Order());

    [Fact]
    public void Every_kind_stands_in_the_schema_with_examples_that_read_without_a_problem()
    {
        using var document = JsonDocument.Parse(SchemaText);
        var definitions = document.RootElement.GetProperty("$defs");
        string[] shared = ["header", "words", "entry", "blob"];
        Assert.Equal(FirmKinds.Names.Order(), definitions.EnumerateObject().Select(d => d.Name).Except(shared).Order());
        foreach (var kind in FirmKinds.Names)
            foreach (var example in definitions.GetProperty(kind).GetProperty("examples").EnumerateArray())
            {
                var line = $$"""{"at":"2026-01-14T09:30:00Z","kind":"{{kind}}","body":{{JsonSerializer.Serialize(example)}}}""";
                Assert.Empty(FirmFile.Read(VisitHeader.For("f", JournalFormat.Firm).Line + "\n" + line).Problems);
                Assert.True(Accepts(line), line);
            }
    }

    private static bool Accepts(string line)
    {
        using var document = JsonDocument.Parse(line);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
