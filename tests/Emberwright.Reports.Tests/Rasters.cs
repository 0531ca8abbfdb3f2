using System.Diagnostics;

namespace Emberwright.Reports.Tests;

/// <summary>A grey picture of a page.</summary>
/// <param name="Width">Columns.</param>
/// <param name="Height">Rows.</param>
/// <param name="Grey">Row by row from the top, 0 black to 255 white.</param>
internal sealed record Raster(int Width, int Height, byte[] Grey)
{
    /// <summary>Points that differ by more than a quarter of the scale, and the mean difference in grey levels.</summary>
    public (int Far, double Mean) Against(Raster other)
    {
        if ((Width, Height) != (other.Width, other.Height)) return (int.MaxValue, 255);
        var differences = Grey.Zip(other.Grey, (a, b) => Math.Abs(a - b)).ToArray();
        return (differences.Count(d => d > 64), differences.Average());
    }
}

/// <summary>Pages of a PDF file as another program paints them: pdftoppm of poppler-utils.</summary>
internal static class Rasters
{
    /// <summary>True when the program is there.</summary>
    public static bool Installed { get; } = Ask();

    /// <summary>Every page, in grey.</summary>
    /// <param name="pdf">The file.</param>
    /// <param name="resolution">Points an inch.</param>
    public static IReadOnlyList<Raster> Of(byte[] pdf, int resolution)
    {
        var folder = Directory.CreateTempSubdirectory("emberwright-pages");
        try
        {
            var file = Path.Combine(folder.FullName, "paper.pdf");
            File.WriteAllBytes(file, pdf);
            using var tool = Process.Start(new ProcessStartInfo("pdftoppm", ["-gray", "-r", $"{resolution}", file, Path.Combine(folder.FullName, "page")]))!;
            tool.WaitForExit();
            if (tool.ExitCode != 0) throw new InvalidOperationException($"pdftoppm ended with {tool.ExitCode}.");
            return [.. folder.GetFiles("page*.pgm").OrderBy(f => f.Name, StringComparer.Ordinal).Select(f => Read(File.ReadAllBytes(f.FullName)))];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Reads a binary portable greymap: "P5", width, height, 255, then the points.</summary>
    public static Raster Read(byte[] file)
    {
        var at = 0;
        string Word()
        {
            while (char.IsWhiteSpace((char)file[at])) at++;
            var from = at;
            while (!char.IsWhiteSpace((char)file[at])) at++;
            return System.Text.Encoding.ASCII.GetString(file, from, at - from);
        }

        if (Word() != "P5") throw new InvalidDataException("This is no binary greymap.");
        var (width, height) = (int.Parse(Word()), int.Parse(Word()));
        if (Word() != "255") throw new InvalidDataException("A greymap of 255 levels was expected.");
        at++;
        return new(width, height, file[at..(at + width * height)]);
    }

    private static bool Ask()
    {
        try
        {
            using var tool = Process.Start(new ProcessStartInfo("pdftoppm", "-v") { RedirectStandardError = true });
            tool!.WaitForExit();
            return true;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
