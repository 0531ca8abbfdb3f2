using System.IO.Compression;

namespace Emberwright.Visits.Firm;

/// <summary>A file within a pack.</summary>
/// <param name="Name">Its path in the pack, with forward slashes.</param>
/// <param name="Bytes">Its content.</param>
public sealed record PackedFile(string Name, byte[] Bytes);

/// <summary>Several files as one ZIP file (APPNOTE, Deflate). The same files always give the same bytes: no clock is read.</summary>
public static class Pack
{
    private static readonly DateTimeOffset Fixed = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Packs files in the order given.</summary>
    public static byte[] Zip(IEnumerable<PackedFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        using var made = new MemoryStream();
        using (var zip = new ZipArchive(made, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var file in files)
            {
                var entry = zip.CreateEntry(file.Name, CompressionLevel.Optimal);
                entry.LastWriteTime = Fixed;
                using var stream = entry.Open();
                stream.Write(file.Bytes);
            }
        }

        return made.ToArray();
    }

    /// <summary>The files of a pack.</summary>
    /// <param name="bytes">The ZIP file.</param>
    /// <param name="mostBytes">Refused beyond this much unpacked: a damaged or malicious file may claim any size.</param>
    /// <exception cref="InvalidDataException">It is no ZIP file, or too large unpacked.</exception>
    public static IReadOnlyList<PackedFile> Unzip(byte[] bytes, long mostBytes = 2_000_000_000)
    {
        using var zip = new ZipArchive(new MemoryStream(bytes), ZipArchiveMode.Read);
        var files = new List<PackedFile>();
        foreach (var entry in zip.Entries.Where(e => !e.FullName.EndsWith('/')))
        {
            if ((mostBytes -= entry.Length) < 0) throw new InvalidDataException("The pack is too large unpacked.");
            using var stream = entry.Open();
            using var content = new MemoryStream();
            stream.CopyTo(content);
            files.Add(new(entry.FullName, content.ToArray()));
        }

        return files;
    }
}
