using System.Xml.Linq;
using Xunit;

namespace Emberwright.Architecture.Tests;

/// <summary>Which room may enter which: exactly the references of ARCHITECTURE.md, no more.</summary>
public class ReferenceTests
{
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Emberwright.Stove"] = [],
        ["Emberwright.Diagnosis"] = ["Emberwright.Stove"],
        ["Emberwright.Visits"] = ["Emberwright.Diagnosis"],
        ["Emberwright.Reports"] = ["Emberwright.Visits"],
        ["Emberwright.Field"] = ["Emberwright.Reports"],
        ["Emberwright.Cli"] = ["Emberwright.Reports"],
        ["Emberwright.Server"] = ["Emberwright.Reports", "Emberwright.Field"],
    };

    public static TheoryData<string> Projects() =>
        new(Repository.Files("src", "*.csproj").Select(f => Path.GetFileNameWithoutExtension(f)));

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_references_only_the_rooms_below_it(string project)
    {
        var file = Repository.Files("src", project + ".csproj").Single();
        var references = XDocument.Load(file).Descendants("ProjectReference")
            .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/')))
            .ToArray();

        Assert.True(Allowed.TryGetValue(project, out var allowed), $"{project} is a new room: add it to ARCHITECTURE.md and to this test.");
        Assert.Empty(references.Except(allowed!));
    }

    [Fact]
    public void Every_room_of_the_plan_exists()
    {
        var found = Repository.Files("src", "*.csproj").Select(f => Path.GetFileNameWithoutExtension(f)).ToHashSet();
        Assert.Superset(Allowed.Keys.ToHashSet(), found);
    }

    [Fact]
    public void The_server_uses_no_type_of_the_app()
    {
        var uses = Repository.Files("src/Emberwright.Server", "*.cs")
            .Where(f => File.ReadAllText(f).Contains("Emberwright.Field", StringComparison.Ordinal));
        Assert.Empty(uses);
    }
}
