using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>
/// Everything the firm has, in one ZIP file: the book, every visit, every picture and kept word, with a list that holds
/// the hash of each. The form is described in docs/archive.md.
/// </summary>
/// <param name="Book">The book's text; null when there is none.</param>
/// <param name="Visits">Visit files' texts by visit id.</param>
/// <param name="Blobs">Bytes kept beside the journals, by hexadecimal hash.</param>
public sealed record Archive(string? Book, IReadOnlyDictionary<string, string> Visits, IReadOnlyDictionary<string, byte[]> Blobs)
{
    /// <summary>Name of the format.</summary>
    public const string Format = "emberwright-archive";

    /// <summary>The version this build writes and the highest it reads.</summary>
    public const int Version = 1;

    private const string ListName = "archive.json";
    private const string BookName = "firm.jsonl";

    /// <summary>The ZIP file.</summary>
    /// <param name="made">When.</param>
    public byte[] Write(DateTimeOffset made)
    {
        var files = new List<PackedFile>();
        if (Book is not null) files.Add(new(BookName, Encoding.UTF8.GetBytes(Book)));
        foreach (var (id, text) in Visits.OrderBy(v => v.Key, StringComparer.Ordinal)) files.Add(new($"visits/{FileName(id)}.jsonl", Encoding.UTF8.GetBytes(text)));
        foreach (var (hash, bytes) in Blobs.OrderBy(b => b.Key, StringComparer.Ordinal)) files.Add(new($"blobs/{hash}", bytes));
        var list = BodyWriter.Object(w =>
        {
            w.Text("format", Format);
            w.Number("version", Version);
            w.Time("made", made);
            w.Text("engine", Engine.Version);
            w.List("files", files, (file, o) =>
            {
                o.Text("name", file.Name);
                o.Number("bytes", file.Bytes.Length);
                o.Text("sha256", Hash(file.Bytes));
            });
        });
        return Pack.Zip([new(ListName, Encoding.UTF8.GetBytes(list)), .. files]);
    }

    /// <summary>Reads a ZIP file. Files that are missing or changed are told; the others are read.</summary>
    /// <exception cref="InvalidDataException">It is no archive, or of a newer version.</exception>
    public static (Archive Archive, IReadOnlyList<string> Problems) Read(byte[] zip)
    {
        var files = Unzip(zip);
        if (!files.TryGetValue(ListName, out var list)) throw NoArchive();
        var (version, expected) = ReadList(list);
        if (version > Version) throw new InvalidDataException($"The archive has version {version}; this program reads up to {Version}. Update the program.");
        var problems = new List<string>();
        var sound = new List<PackedFile>();
        foreach (var (name, hash) in expected)
            if (!files.TryGetValue(name, out var bytes)) problems.Add($"{name} is missing from the archive.");
            else if (Hash(bytes) != hash) problems.Add($"{name} was changed or damaged since the archive was made. It is left out; take it from another archive.");
            else sound.Add(new(name, bytes));
        return (new(
            sound.FirstOrDefault(f => f.Name == BookName) is { } book ? Encoding.UTF8.GetString(book.Bytes) : null,
            sound.Where(f => f.Name.StartsWith("visits/", StringComparison.Ordinal)).Select(f => Encoding.UTF8.GetString(f.Bytes)).ToDictionary(IdOf),
            sound.Where(f => f.Name.StartsWith("blobs/", StringComparison.Ordinal)).ToDictionary(f => f.Name["blobs/".Length..], f => f.Bytes)), problems);
    }

    /// <summary>One visit with the bytes its entries name, and no book; null when it is not here.</summary>
    /// <param name="visit">The visit's id.</param>
    public Archive? Only(string visit) => Visits.TryGetValue(visit, out var text)
        ? new(null, new Dictionary<string, string> { [visit] = text }, Blobs.Where(b => text.Contains("sha256:" + b.Key, StringComparison.Ordinal)).ToDictionary())
        : null;

    /// <summary>A visit's id as part of a file name: letters, digits, hyphens; anything else by its hash.</summary>
    public static string FileName(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return id.Length is > 0 and <= 64 && id.All(c => char.IsAsciiLetterOrDigit(c) || c == '-') ? id : Hash(Encoding.UTF8.GetBytes(id));
    }

    private static string IdOf(string text) => VisitFile.HeaderOf(text)?.Visit ?? Hash(Encoding.UTF8.GetBytes(text));

    private static Dictionary<string, byte[]> Unzip(byte[] zip)
    {
        try
        {
            return Pack.Unzip(zip).GroupBy(f => f.Name).ToDictionary(g => g.Key, g => g.First().Bytes);
        }
        catch (InvalidDataException e)
        {
            throw NoArchive(e);
        }
    }

    private static (int Version, IReadOnlyList<(string Name, string Hash)> Files) ReadList(byte[] json)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            var reader = new BodyReader(document.RootElement, 0, "", []);
            if (reader.Text("format") != Format) throw NoArchive();
            return (reader.Count("version") ?? Version,
                [.. reader.Objects("files", f => Tuple.Create(f.Text("name") ?? "", f.Text("sha256") ?? "")).Select(t => (t.Item1, t.Item2))]);
        }
        catch (JsonException e)
        {
            throw NoArchive(e);
        }
    }

    private static InvalidDataException NoArchive(Exception? inner = null) =>
        new("This is not an Emberwright archive. An archive is a ZIP file that holds archive.json.", inner);

    private static string Hash(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
