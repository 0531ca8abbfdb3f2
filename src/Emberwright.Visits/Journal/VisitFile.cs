using System.Text;
using System.Text.Json;

namespace Emberwright.Visits.Journal;

/// <summary>
/// A visit file as read: its journal and what is wrong in it. The format is JSON Lines, UTF-8: a header, then one entry
/// per line. Everything that can be read is; everything that cannot is kept and written back as it stands.
/// </summary>
/// <param name="Journal">The entries, those that could not be read among them.</param>
/// <param name="Problems">What is wrong, in the order of lines.</param>
public sealed record VisitFile(VisitJournal Journal, IReadOnlyList<Problem> Problems)
{
    /// <summary>Reads the text of a visit file. It never throws for what the text says.</summary>
    public static VisitFile Read(string text) => Read(text, JournalFormat.Visit);

    /// <summary>Reads the text of a journal of any format.</summary>
    /// <param name="text">The text.</param>
    /// <param name="format">What it should be.</param>
    public static VisitFile Read(string text, JournalFormat format)
    {
        ArgumentNullException.ThrowIfNull(format);
        return Read(text, format, format.Upcasts);
    }

    /// <summary>The text of a journal: header, words kept beside it, and lines as first written, each ended by a line feed.</summary>
    public static string Write(VisitJournal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        var text = new StringBuilder(journal.Header.Line).Append('\n');
        foreach (var kept in journal.Words.OrderBy(w => w.Key, StringComparer.Ordinal)) text.Append(WordsLine.Write(kept)).Append('\n');
        foreach (var entry in journal.Entries) text.Append(entry.Line).Append('\n');
        return text.ToString();
    }

    /// <summary>The header alone, without reading the entries; null when the text does not begin with one.</summary>
    public static VisitHeader? HeaderOf(string text) => HeaderOf(text, JournalFormat.Visit);

    /// <inheritdoc cref="HeaderOf(string)"/>
    public static VisitHeader? HeaderOf(string text, JournalFormat format)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(format);
        return ReadHeader(text.TrimStart('\uFEFF').Split('\n', 2), format, [], out _) is { Visit.Length: > 0 } header ? header : null;
    }

    internal static VisitFile Read(string text, IReadOnlyList<UpcastStep> upcasts) => Read(text, JournalFormat.Visit, upcasts);

    private static VisitFile Read(string text, JournalFormat format, IReadOnlyList<UpcastStep> upcasts)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = text.TrimStart('\uFEFF').Split('\n');
        var problems = new List<Problem>();
        var header = ReadHeader(lines, format, problems, out var first);
        var reader = new LineReader(header.Visit, format, upcasts);
        var entries = new List<Entry>();
        var words = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var i = first; i < lines.Length; i++)
        {
            var line = lines[i].TrimEnd('\r');
            if (WordsLine.Read(line, i + 1, problems) is { } kept) words[kept.Key] = kept.Value;
            else if (!string.IsNullOrWhiteSpace(line) && !WordsLine.IsOne(line)) entries.Add(reader.Read(line, i + 1, torn: i == lines.Length - 1));
        }

        return new VisitFile(VisitJournal.Of(header, entries).With(words), [.. problems, .. reader.Problems]);
    }

    private static VisitHeader ReadHeader(string[] lines, JournalFormat format, List<Problem> problems, out int next)
    {
        next = 0;
        while (next < lines.Length - 1 && string.IsNullOrWhiteSpace(lines[next])) next++;
        var line = lines[next].TrimEnd('\r');
        var number = next + 1;
        if (ReadHeaderLine(line, number, format, problems) is { } header)
        {
            next++;
            return header;
        }

        problems.Insert(0, new(number, "", line.Length > 80 ? line[..80] + "…" : line, "The file does not begin with a header.",
            VisitHeader.For($"the {format.IdMember}'s id", format).Line + " should be its first line."));
        return VisitHeader.For("", format);
    }

    private static VisitHeader? ReadHeaderLine(string line, int number, JournalFormat format, List<Problem> problems)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            if (document.RootElement.ValueKind != JsonValueKind.Object) return null;
            var header = new BodyReader(document.RootElement, number, "", problems);
            if (header.Text("format") != format.Name) return null;
            var version = header.Count("version") ?? format.CurrentVersion;
            if (version > format.CurrentVersion)
                problems.Add(new(number, "version", version.ToString(), $"The file was written by a newer version; this one reads up to {format.CurrentVersion}.",
                    "Update to see everything. What is not understood is kept."));
            return new VisitHeader(header.Required(format.IdMember, $"Give the {format.IdMember} an id, such as a UUID."), version, line) { Format = format };
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
