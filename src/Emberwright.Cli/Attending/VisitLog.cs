using System.Text;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli.Attending;

/// <summary>
/// A visit file on the disk, to which entries are only ever added. Nothing already in it is touched: a last line that was
/// cut off stays as it is and the next entry begins on a line of its own. An entry counts once it has reached the disk.
/// </summary>
internal sealed class VisitLog(string path, EntryFactory entries)
{
    /// <summary>The path as given.</summary>
    public string Path { get; } = path;

    /// <summary>Reads the file anew, so that what others added meanwhile is seen.</summary>
    public VisitFile Read() => VisitFile.Read(File.ReadAllText(Path, Encoding.UTF8));

    /// <summary>Writes one entry behind everything the file holds.</summary>
    /// <param name="body">What it says.</param>
    /// <returns>The file as it then stands, and the entry.</returns>
    public (VisitFile File, Entry Entry) Append(EntryBody body)
    {
        using var stream = new FileStream(Path, FileMode.Open, FileAccess.ReadWrite, FileShare.Read);
        using var reader = new StreamReader(stream, Encoding.UTF8, leaveOpen: true);
        var text = reader.ReadToEnd();
        var entry = entries.Make(VisitFile.Read(text).Journal, body);
        var added = (text.EndsWith('\n') ? "" : "\n") + entry.Line + "\n";
        stream.Seek(0, SeekOrigin.End);
        stream.Write(Encoding.UTF8.GetBytes(added));
        stream.Flush(flushToDisk: true);
        return (VisitFile.Read(text + added), entry);
    }
}
