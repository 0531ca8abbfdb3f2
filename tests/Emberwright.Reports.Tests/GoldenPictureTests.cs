using Emberwright.Reports.Pictures;
using Xunit;

namespace Emberwright.Reports.Tests;

/// <summary>
/// The pictures as they were last looked at and found good. After a wanted change set EMBERWRIGHT_GOLDEN=write,
/// run, look at every changed file, and commit it.
/// </summary>
public class GoldenPictureTests
{
    public static TheoryData<string> Names => [.. Gallery.Scenes.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_picture_is_as_it_was_last_seen(string name)
    {
        var svg = SvgWriter.Alone(Gallery.Scenes[name]());
        var path = Path.Combine(Folder(), name + ".svg");
        if (Environment.GetEnvironmentVariable("EMBERWRIGHT_GOLDEN") == "write") File.WriteAllText(path, svg);
        Assert.Equal(File.ReadAllText(path), svg);
    }

    internal static string Folder()
    {
        // Builds map the source path away, so look upwards from the running test for the folder.
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !Directory.Exists(Path.Combine(at.FullName, "tests", "Emberwright.Reports.Tests"))) at = at.Parent;
        var root = at?.FullName ?? throw new DirectoryNotFoundException($"The folder tests/Emberwright.Reports.Tests was not found above {AppContext.BaseDirectory}.");
        return Directory.CreateDirectory(Path.Combine(root, "tests", "Emberwright.Reports.Tests", "Golden")).FullName;
    }
}
