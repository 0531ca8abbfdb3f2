// Question: how do a person's words leave a line that states them, while a seal over that line stays whole?
// Rule:     the line is written anew with "erased on request" in the place of the words, its id, and a member "was" with
//           the SHA-256 of the line as first written; a seal goes by that hash. Where both lines meet, the new one stays.
// Validity: words that were kept beside the journal under a reference need none of this: their bytes are erased.
// Limits:   the hash of a line that was not salted lets one who guesses every letter of it confirm the guess; and of the
//           rest of such a line only its author vouches, so a check names how many there are.
// Source:   own convention; SHA-256, FIPS 180-4.
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Emberwright.Visits.Journal;

/// <summary>Takes words out of a line of a journal.</summary>
public static class Redaction
{
    private static readonly JsonSerializerOptions AsPeopleRead = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The line without the words; null when none stands in it.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="erase">Gives a text of the body as it may stay: itself where nothing is to be erased.</param>
    public static string? Of(Entry entry, Func<string, string> erase)
    {
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(erase);
        if (entry.Body is UnreadBody) return erase(entry.Line) is var rest && rest != entry.Line ? Unread(entry, rest) : null;
        if (JsonNode.Parse(entry.Line) is not JsonObject line || line["body"] is not JsonObject body) return null;
        var changed = false;
        string Erased(string text)
        {
            var left = erase(text);
            changed |= left != text;
            return left;
        }

        Walk(body, Erased);
        if (!changed) return null;
        // What a line left out was derived from its place in the file: the new line states it.
        line["id"] = entry.Id;
        line["device"] = entry.Device;
        line["seq"] = entry.Seq;
        line["author"] = entry.Author;
        line["at"] = Rfc3339.Format(entry.At);
        line["clock"] = entry.Clock.ToString();
        line["was"] = entry.LineHash();
        return line.ToJsonString(AsPeopleRead);
    }

    private static void Walk(JsonNode node, Func<string, string> erase)
    {
        if (node is JsonObject members)
        {
            foreach (var (name, value) in members.ToArray())
                if (value is JsonValue && value.GetValueKind() == JsonValueKind.String) members[name] = erase(value.GetValue<string>());
                else if (value is not null) Walk(value, erase);
        }
        else if (node is JsonArray items)
        {
            for (var i = 0; i < items.Count; i++)
                if (items[i] is JsonValue value && value.GetValueKind() == JsonValueKind.String) items[i] = erase(value.GetValue<string>());
                else if (items[i] is { } item) Walk(item, erase);
        }
    }

    // A line that could not be read has no members to look into: it goes whole.
    private static string Unread(Entry entry, string rest) => BodyWriter.Object(w =>
    {
        w.Text("id", entry.Id);
        w.Text("device", entry.Device);
        w.Number("seq", entry.Seq);
        w.Text("author", entry.Author);
        w.Time("at", entry.At);
        w.Text("clock", entry.Clock.ToString());
        w.Text("kind", "note");
        w.Member("body", o => o.Text("words", $"{PersonalWords.Erased}: a line of {rest.Length} characters that could not be read"));
        w.Text("was", entry.LineHash());
    });
}
