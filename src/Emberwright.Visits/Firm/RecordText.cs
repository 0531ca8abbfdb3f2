using System.Globalization;
using System.Text.Json;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>
/// A record as texts, one a member, as a form shows and takes them. Lists stand one item a line, its parts between
/// semicolons. Reading checks each text as reading a file does, and says what is wrong in the same words.
/// </summary>
public static class RecordText
{
    private static readonly Dictionary<string, string[]> Lists = new()
    {
        ["qualifications"] = ["what", "number", "until"],
        ["clearances"] = ["from", "measured", "required"],
        ["papers"] = ["what", "number", "by", "on", "until", "file"],
    };

    /// <summary>The members of a list's item in the order they stand in; null for a member that is no such list.</summary>
    public static IReadOnlyList<string>? PartsOf(string member) => Lists.GetValueOrDefault(member);

    /// <summary>Each member that is set, as text.</summary>
    public static IReadOnlyDictionary<string, string> Write(RecordBody record)
    {
        ArgumentNullException.ThrowIfNull(record);
        using var document = JsonDocument.Parse(BodyWriter.Object(record.Write));
        return document.RootElement.EnumerateObject().Where(m => m.Name != "id").ToDictionary(m => m.Name, m => Text(m.Name, m.Value));
    }

    /// <summary>The record of some texts; members not given are left as they were. Null when something is wrong.</summary>
    /// <param name="kind">Kind of record.</param>
    /// <param name="id">Its id.</param>
    /// <param name="members">Texts by member.</param>
    public static (RecordBody? Record, IReadOnlyList<Problem> Problems) Read(string kind, string id, IReadOnlyDictionary<string, string> members)
    {
        ArgumentNullException.ThrowIfNull(members);
        using var document = JsonDocument.Parse(BodyWriter.Object(w =>
        {
            w.Text("id", id);
            foreach (var (member, text) in members) Write(w, member, text);
        }));
        var problems = new List<Problem>();
        var reader = new BodyReader(document.RootElement, 0, "", problems);
        var record = FirmKinds.Read(kind, reader, "") as RecordBody;
        return (problems.Count > 0 ? null : record, problems);
    }

    private static void Write(BodyWriter w, string member, string text)
    {
        var plain = text.Trim();
        if (Lists.TryGetValue(member, out var parts))
        {
            string[] lines = [.. plain.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
            w.List(member, lines, (line, o) =>
            {
                foreach (var (part, value) in parts.Zip(line.Split(';', StringSplitOptions.TrimEntries)))
                    if (value.Length > 0) o.Text(part, value);
            });
        }
        else if (member == "equivalents") w.TextList(member, plain.Split(['|', '/', ';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
        else if (member is "price" or "keep" or "perMinute" or "value")
        {
            if (plain.Length == 0) return;
            if (IsNumber(plain)) w.Raw(member, plain);
            else w.Text(member, plain);
        }
        // Dates and quantities have no empty form: an emptied field says nothing and leaves what was.
        else if (plain.Length > 0 || !IsTyped(member)) w.Text(member, plain);
    }

    private static bool IsTyped(string member) => member is "fuelPerYear" or "calibratedOn" or "calibratedUntil" or "tool";

    private static string Text(string member, JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Array when Lists.TryGetValue(member, out var parts) => string.Join('\n', value.EnumerateArray().Select(item =>
            string.Join("; ", parts.Select(p => item.TryGetProperty(p, out var part) ? part.GetString() ?? "" : "")).TrimEnd(';', ' '))),
        JsonValueKind.Array => string.Join(" | ", value.EnumerateArray().Select(item => item.GetString())),
        JsonValueKind.String => value.GetString()!,
        _ => value.GetRawText(),
    };

    // As JSON writes a number: no sign, no leading nought, no exponent.
    internal static bool IsNumber(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _) && char.IsAsciiDigit(text[0]) && char.IsAsciiDigit(text[^1])
        && (text[0] != '0' || text.Length == 1 || text[1] == '.');
}
