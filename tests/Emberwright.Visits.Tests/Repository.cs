namespace Emberwright.Visits.Tests;

/// <summary>Finds files of the repository these tests were built from.</summary>
internal static class Repository
{
    public static string Text(params string[] path) => File.ReadAllText(Path.Combine([Root, .. path]));

    public static string[] Files(string pattern, params string[] folder) =>
        [.. Directory.EnumerateFiles(Path.Combine([Root, .. folder]), pattern).Order(StringComparer.Ordinal)];

    public static string Root { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Emberwright.slnx"))) folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("Emberwright.slnx was not found.");
    }
}
