namespace Emberwright.Field.Tests.Running;

/// <summary>Where the tested program lies on disk.</summary>
internal static class Repo
{
    public static string Root { get; } = FindRoot(AppContext.BaseDirectory);

    /// <summary>Debug or Release, as this test program was built.</summary>
    public static string Configuration { get; } = new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;

    public static string Artifacts(params string[] parts)
    {
        var path = Path.Combine([Root, "artifacts", .. parts]);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        return path;
    }

    private static string FindRoot(string from)
    {
        var folder = new DirectoryInfo(from);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Emberwright.slnx"))) folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("Run the tests from inside the repository.");
    }
}
