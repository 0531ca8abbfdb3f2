using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using Xunit;

namespace Emberwright.Architecture.Tests;

/// <summary>The computing rooms do no input or output, and ask neither the clock nor chance.</summary>
public class PurityTests
{
    private static readonly string[] ForbiddenTypes =
    [
        "System.IO.File", "System.IO.FileInfo", "System.IO.FileStream", "System.IO.Directory", "System.IO.DirectoryInfo",
        "System.Console", "System.Diagnostics.Process", "System.Net.Http.HttpClient",
        "System.Net.Sockets.Socket", "System.Threading.Thread", "System.Diagnostics.Stopwatch",
    ];

    private static readonly string[] ForbiddenMembers =
    [
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today",
        "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow",
        "System.Guid.NewGuid", "System.Guid.CreateVersion7", "System.Random.get_Shared",
    ];

    // The compiler writes this into every method with yield return.
    private const string IteratorsOwn = "System.Environment.get_CurrentManagedThreadId";

    [Theory]
    [InlineData("Emberwright.Stove")]
    [InlineData("Emberwright.Diagnosis")]
    [InlineData("Emberwright.Visits")]
    [InlineData("Emberwright.Reports")]
    public void A_computing_room_touches_nothing_outside(string assembly)
    {
        Assert.Empty(ForbiddenUses(Path.Combine(AppContext.BaseDirectory, assembly + ".dll")));
    }

    [Fact]
    public void The_search_does_find_what_it_forbids()
    {
        var own = Path.Combine(AppContext.BaseDirectory, "Emberwright.Architecture.Tests.dll");
        Assert.Contains("System.IO.File", ForbiddenUses(own));
    }

    private static List<string> ForbiddenUses(string path)
    {
        using var pe = new PEReader(File.OpenRead(path));
        var metadata = pe.GetMetadataReader();
        var uses = new List<string>();

        foreach (var handle in metadata.TypeReferences)
        {
            var name = NameOf(metadata, handle);
            if (ForbiddenTypes.Contains(name))
                uses.Add(name);
        }

        foreach (var handle in metadata.MemberReferences)
        {
            var member = metadata.GetMemberReference(handle);
            if (member.Parent.Kind != HandleKind.TypeReference)
                continue;
            var name = NameOf(metadata, (TypeReferenceHandle)member.Parent) + "." + metadata.GetString(member.Name);
            if (ForbiddenMembers.Contains(name) || (name.StartsWith("System.Environment.", StringComparison.Ordinal) && name != IteratorsOwn))
                uses.Add(name);
        }

        return uses;
    }

    private static string NameOf(MetadataReader metadata, TypeReferenceHandle handle)
    {
        var type = metadata.GetTypeReference(handle);
        return metadata.GetString(type.Namespace) + "." + metadata.GetString(type.Name);
    }
}
