using System.Text.RegularExpressions;
using Xunit;

namespace Emberwright.Architecture.Tests;

/// <summary>What the repository's own text must not contain.</summary>
public class ManuscriptTests
{
    private static readonly string[] TextKinds = [".cs", ".md", ".razor", ".css", ".html", ".js", ".json", ".jsonl", ".props", ".csproj", ".sh", ".py"];

    private static IEnumerable<string> Texts() =>
        new[] { "src", "tests", "docs", "demo", "bench" }
            .Where(folder => Directory.Exists(Path.Combine(Repository.Root, folder)))
            .SelectMany(folder => Repository.Files(folder, "*.*"))
            .Where(f => TextKinds.Contains(Path.GetExtension(f)) && Path.GetFileName(f) != "packages.lock.json" && Path.GetFileName(f) != "ManuscriptTests.cs");

    [Fact]
    public void No_text_names_a_path_of_one_machine()
    {
        var machinePath = new Regex(@"(?<![\w.~])/(work|home|root|Users)/\w");
        Assert.Empty(Texts().Where(f => machinePath.IsMatch(File.ReadAllText(f))));
    }

    [Fact]
    public void Nothing_unfinished_is_left_in_the_sources()
    {
        var unfinished = new Regex(@"NotImplementedException|\bTODO\b|\bFIXME\b|\bHACK\b");
        Assert.Empty(Repository.Files("src", "*.cs").Concat(Repository.Files("src", "*.razor")).Where(f => unfinished.IsMatch(File.ReadAllText(f))));
    }

    [Fact]
    public void Every_source_file_keeps_to_a_readable_length()
    {
        var tooLong = Repository.Files("src", "*.cs").Where(f => File.ReadLines(f).Count() > 420).Select(f => Path.GetFileName(f));
        Assert.Empty(tooLong);
    }
}
