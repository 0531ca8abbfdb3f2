using System.Diagnostics;
using Xunit;

namespace Emberwright.Field.Tests.Running;

/// <summary>The app as it is published: a folder of static files, written once for all tests that need it.</summary>
internal static class PublishedApp
{
    private static readonly Lazy<Task<string>> Written = new(Write);

    /// <summary>The folder; nobody changes what is in it.</summary>
    public static Task<string> Folder => Written.Value;

    private static async Task<string> Write()
    {
        var folder = Repo.Artifacts("static");
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
        using var process = Process.Start(new ProcessStartInfo("bash", ["start", "static", folder])
        {
            WorkingDirectory = Repo.Root,
            RedirectStandardOutput = true,
        })!;
        var said = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0, said);
        return folder;
    }
}
