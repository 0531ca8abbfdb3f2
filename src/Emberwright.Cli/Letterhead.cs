using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Wording;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli;

/// <summary>What a report takes from files beside the visit: the firm's letterhead, photos and signatures.</summary>
internal static class Letterhead
{
    /// <summary>Reads a letterhead file.</summary>
    /// <param name="path">JSON with name, contact, colour, logo; null gives none.</param>
    /// <exception cref="InputFileException">It cannot be read, or a member makes no sense.</exception>
    public static Firm? Read(string? path)
    {
        if (path is null) return null;
        try
        {
            using var json = JsonDocument.Parse(File.ReadAllText(path));
            string Text(string member) => json.RootElement.TryGetProperty(member, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString()! : "";
            var logo = Text("logo") is { Length: > 0 } file ? Logo(path, file) : [];
            return new Firm(Text("name"), Text("contact"), logo, Colour(path, Text("colour")));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException)
        {
            throw new InputFileException($"{path}: cannot be read as a letterhead ({e.Message.TrimEnd('.')}). Write {{\"name\": \"…\", \"contact\": \"…\", \"colour\": \"#3b5a4a\", \"logo\": \"logo.png\"}}.", e);
        }
    }

    /// <summary>Finds the bytes a visit refers to in a folder, and takes them only when their hash is right.</summary>
    /// <param name="folder">The folder; null has nothing.</param>
    public static Func<string, ImmutableArray<byte>> Photos(string? folder)
    {
        if (folder is null) return _ => [];
        var files = Directory.Exists(folder)
            ? Directory.GetFiles(folder).GroupBy(f => Path.GetFileNameWithoutExtension(f).ToLowerInvariant()).ToDictionary(same => same.Key, same => same.First())
            : throw new InputFileException($"{folder}: no such folder. Name the one that holds the photos with --photos.", null);
        return reference =>
        {
            if (!files.TryGetValue(reference[(reference.IndexOf(':') + 1)..], out var file)) return [];
            var bytes = File.ReadAllBytes(file);
            return Blob.ReferenceTo(bytes) == reference ? [.. bytes] : [];
        };
    }

    /// <summary>Speaks the language of a translation until disposed of; null speaks English.</summary>
    /// <param name="path">The translation; null takes none.</param>
    /// <exception cref="InputFileException">It cannot be read, or is none.</exception>
    public static IDisposable? Language(string? path)
    {
        if (path is null) return null;
        try
        {
            return Say.In(Reports.Wording.Language.Read(File.ReadAllText(path)));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            throw new InputFileException($"{path}: cannot be read as a translation ({e.Message.TrimEnd('.')}).", e);
        }
    }

    // Papers hold pixels; the app turns a drawing into them when it is chosen, the terminal has nothing to draw with.
    private static ImmutableArray<byte> Logo(string path, string file)
    {
        var bytes = File.ReadAllBytes(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, file));
        return bytes.AsSpan().StartsWith(PngSign) || bytes.AsSpan().StartsWith(JpegSign)
            ? [.. bytes]
            : throw new InputFileException($"{path}: logo is '{file}', which is neither PNG nor JPEG. Save it as one of the two, about 300 pixels high; the app also takes SVG and turns it into PNG.", null);
    }

    // PNG specification (third edition), 5.2; JFIF 1.02, start of image.
    private static ReadOnlySpan<byte> PngSign => [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    private static ReadOnlySpan<byte> JpegSign => [0xFF, 0xD8, 0xFF];

    private static int? Colour(string path, string words)
    {
        if (words.Length == 0) return null;
        return words.Length == 7 && words[0] == '#' && int.TryParse(words[1..], NumberStyles.HexNumber, CultureInfo.InvariantCulture, out var colour)
            ? colour
            : throw new InputFileException($"{path}: colour is '{words}'; write it as #RRGGBB, such as #3b5a4a.", null);
    }
}

/// <summary>A file beside the visit that cannot be used; the message names it and the remedy.</summary>
internal sealed class InputFileException(string message, Exception? inner) : Exception(message, inner);
