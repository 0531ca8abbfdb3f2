using System.Text.Json;
using Emberwright.Visits.Journal;
using Json.Schema;
using Xunit;

namespace Emberwright.Visits.Tests.Journal;

/// <summary>The published schema and the reader say the same.</summary>
public class SchemaTests
{
    private static readonly string SchemaText = Repository.Text("docs", "schema", "visit.schema.json");
    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    public static TheoryData<string> Files() =>
    [
        .. new[] { Repository.Files("*.jsonl", "demo", "visits"), Fixtures("v1"), Fixtures("closing") }
            .SelectMany(f => f).Select(f => Path.GetRelativePath(Repository.Root, f)),
    ];

    [Theory]
    [MemberData(nameof(Files))]
    public void The_schema_accepts_a_line_exactly_when_the_reader_has_no_complaint(string path)
    {
        var text = Repository.Text(path);
        var bad = VisitFile.Read(text).Problems.Select(p => p.Line).ToHashSet();
        var lines = text.Split('\n');
        for (var i = 0; i < lines.Length; i++)
            if (lines[i].Length > 0)
                Assert.True(Accepts(lines[i]) != bad.Contains(i + 1), $"{path}, line {i + 1}: {lines[i]}");
    }

    [Fact]
    public void Every_kind_stands_in_the_schema_with_examples_that_read_without_a_problem()
    {
        using var document = JsonDocument.Parse(SchemaText);
        var definitions = document.RootElement.GetProperty("$defs");
        string[] shared = ["header", "words", "entry", "area", "blob"];
        Assert.Equal(EntryKinds.Names.Order(), definitions.EnumerateObject().Select(d => d.Name).Except(shared).Order());
        foreach (var kind in EntryKinds.Names)
        {
            Assert.NotEmpty(definitions.GetProperty(kind).GetProperty("description").GetString()!);
            foreach (var example in definitions.GetProperty(kind).GetProperty("examples").EnumerateArray())
            {
                var line = $$"""{"at":"2026-01-14T09:30:00Z","kind":"{{kind}}","body":{{example.GetRawText()}}}""";
                Assert.Empty(VisitFile.Read(VisitHeader.For("v").Line + "\n" + line).Problems);
                Assert.True(Accepts(line), line);
            }
        }
    }

    [Fact]
    public void Every_member_is_described()
    {
        using var document = JsonDocument.Parse(SchemaText);
        var bare = document.RootElement.GetProperty("$defs").EnumerateObject()
            .Where(d => d.Value.TryGetProperty("properties", out _))
            .SelectMany(d => d.Value.GetProperty("properties").EnumerateObject().Select(p => (Kind: d.Name, Member: p)))
            .Where(m => !m.Member.Value.TryGetProperty("description", out _) && !m.Member.Value.TryGetProperty("$ref", out _) && !m.Member.Value.TryGetProperty("const", out _))
            .Select(m => $"{m.Kind}.{m.Member.Name}");
        Assert.Empty(bare);
    }

    [Theory]
    [MemberData(nameof(EntryFactoryTests.EveryKind), MemberType = typeof(EntryFactoryTests))]
    public void What_the_app_writes_the_schema_accepts(EntryBody body)
    {
        var entry = SomeEntries.Device(1, SomeEntries.Start, 1).Make(VisitJournal.Begin("visit-1"), body);
        Assert.True(Accepts(entry.Line), entry.Line);
    }

    private static bool Accepts(string line)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            return Schema.Evaluate(document.RootElement).IsValid;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static string[] Fixtures(string folder) => Repository.Files("*.jsonl", "tests", "Emberwright.Visits.Tests", "Fixtures", folder);
}
