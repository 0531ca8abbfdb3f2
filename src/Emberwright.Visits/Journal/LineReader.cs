using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Emberwright.Visits.Journal;

/// <summary>
/// Reads the entry lines of one file in turn. What a line leaves out is derived from the line and from those before it,
/// in the same way every time.
/// </summary>
internal sealed class LineReader(string visit, JournalFormat format, IReadOnlyList<UpcastStep> upcasts)
{
    private readonly Dictionary<string, long> lastSeq = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> seen = new(StringComparer.Ordinal);
    private HybridClock clock;
    private string author = "";
    private DateTimeOffset at = DateTimeOffset.UnixEpoch;
    private bool hasTime;

    public List<Problem> Problems { get; } = [];

    /// <summary>Reads one line; a line that is no JSON object becomes an entry with an <see cref="UnreadBody"/>.</summary>
    public Entry Read(string line, int number, bool torn)
    {
        var found = new List<Problem>();
        JsonDocument? document = null;
        try
        {
            document = JsonDocument.Parse(line);
            if (document.RootElement.ValueKind != JsonValueKind.Object)
                found.Add(new(number, "", line, "The line is not an object.", "Write one entry as {\"kind\": …, \"body\": {…}}."));
        }
        catch (JsonException error)
        {
            found.Add(torn
                ? new(number, "", line, "The last line is cut off.", "Write the entry again; everything before it was read.")
                : new(number, "", line, $"The line is not JSON: wrong at character {error.BytePositionInLine + 1}.", "Check quotation marks, commas and braces near it."));
        }

        using (document)
        {
            var entry = found.Count > 0 ? Unreadable(line, found) : ReadObject(document!.RootElement, line, number, found);
            Problems.AddRange(found);
            return entry;
        }
    }

    private Entry ReadObject(JsonElement json, string line, int number, List<Problem> found)
    {
        var envelope = new BodyReader(json, number, "", found);
        var kind = envelope.Required("kind", "Name the kind of entry, such as reading.");
        var version = envelope.Count("v") ?? 1;
        author = envelope.Text("author") ?? author;
        if (envelope.Time("at") is { } time) at = time;
        else if (!hasTime) envelope.Report<string>("at", "", "The time is missing.", "Write such as \"at\": \"2026-01-14T09:30:00-05:00\" on the first entry.");
        hasTime = true;

        var body = ReadBody(envelope, kind, version, json, found);
        return Place(line, envelope.Text("id"), envelope.Text("device"), Seq(envelope), Clock(envelope), body, Was(envelope));
    }

    private EntryBody ReadBody(BodyReader envelope, string kind, int version, JsonElement json, List<Problem> found)
    {
        if (kind.Length == 0) return new UnreadBody("", found);
        if (!envelope.Has("body") || json.GetProperty("body").ValueKind != JsonValueKind.Object)
        {
            envelope.Refuse("body", "", "The body is missing.", "Add \"body\": {…} with what this entry says.");
            return new UnreadBody(kind, found);
        }

        if (version > format.CurrentVersion) return new UnknownBody(kind, json.GetProperty("body").GetRawText());
        var (currentKind, current) = Upcasting.ToCurrent(upcasts, version, kind, json.GetProperty("body"));
        var reader = new BodyReader(current, envelope.Line, "body.", found);
        var body = format.Read(currentKind, reader, current.GetRawText());
        return reader.Unusable ? new UnreadBody(kind, found) : body;
    }

    private static long? Seq(BodyReader envelope)
    {
        var seq = envelope.Number("seq", 1, 9_007_199_254_740_991);
        return seq is { } number && number == Math.Floor(number) ? (long)number : null;
    }

    private static HybridClock? Clock(BodyReader envelope)
    {
        if (envelope.Text("clock") is not { } text) return null;
        if (HybridClock.TryParse(text, out var clock)) return clock;
        envelope.Report<string>("clock", text, "This is not a clock reading.", "Leave it out; it is then derived from the time.");
        return null;
    }

    private static string? Was(BodyReader envelope)
    {
        if (envelope.Text("was") is not { } hash) return null;
        return Blob.IsReference(Blob.Prefix + hash)
            ? hash
            : envelope.Report<string>("was", hash, "This is no hash.", "It is written when words are erased from a line: 64 hexadecimal digits.");
    }

    private Entry Unreadable(string line, List<Problem> found) => Place(line, null, null, null, null, new UnreadBody("", found));

    private Entry Place(string line, string? id, string? device, long? seq, HybridClock? stated, EntryBody body, string? was = null)
    {
        device ??= Entry.ByHand;
        clock = stated ?? clock.Next(at);
        var number = seq ?? lastSeq.GetValueOrDefault(device) + 1;
        lastSeq[device] = Math.Max(number, lastSeq.GetValueOrDefault(device));
        return new Entry
        {
            Id = string.IsNullOrWhiteSpace(id) ? DerivedId(line) : id,
            Device = device,
            Seq = number,
            Author = author,
            At = at,
            Clock = clock,
            Body = body,
            Line = line,
            Was = was,
        };
    }

    // A UUID of version 8 (RFC 9562, section 5.8) from visit, line and how often the same line came before.
    private string DerivedId(string line)
    {
        var before = seen[line] = seen.GetValueOrDefault(line) + 1;
        var bytes = SHA256.HashData(Encoding.UTF8.GetBytes($"{visit}\n{before}\n{line}"))[..16];
        bytes[6] = (byte)((bytes[6] & 0x0F) | 0x80);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return new Guid(bytes, bigEndian: true).ToString();
    }
}
