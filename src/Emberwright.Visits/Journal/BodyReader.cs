using System.Globalization;
using System.Text.Json;
using Emberwright.Stove.Quantities;

namespace Emberwright.Visits.Journal;

/// <summary>
/// Reads the members of one JSON object. A wrong optional member is reported and read as missing; a wrong or missing
/// required one makes the whole body unusable.
/// </summary>
internal sealed class BodyReader(JsonElement json, int line, string path, List<Problem> problems)
{
    private bool broken;

    /// <summary>True once a required member was missing or wrong, here or in a nested object.</summary>
    public bool Unusable => broken;

    public int Line => line;

    public List<Problem> Problems => problems;

    public bool Has(string field) => Find(field) is not null;

    public string? Text(string field) => Find(field) switch
    {
        null => null,
        { ValueKind: JsonValueKind.String } text => text.GetString(),
        { ValueKind: JsonValueKind.Number } number => number.GetRawText(),
        { } other => Report<string>(field, other.GetRawText(), "This should be text.", "Put it in quotation marks."),
    };

    public string Required(string field, string remedy)
    {
        var text = Text(field);
        if (!string.IsNullOrWhiteSpace(text)) return text;
        Refuse(field, "", "This is missing.", remedy);
        return "";
    }

    public double? Number(string field, double low, double high)
    {
        if (Find(field) is not { } value) return null;
        if (value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && number >= low && number <= high) return number;
        Report<string>(field, value.GetRawText(), $"This should be a number from {low} to {high}.", "Write it without quotation marks and without a unit.");
        return null;
    }

    public int? Count(string field)
    {
        if (Find(field) is not { } value) return null;
        if (value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var count) && count >= 0) return count;
        Report<string>(field, value.GetRawText(), "This should be a whole number, 0 or more.", "Write it without quotation marks.");
        return null;
    }

    public bool? Flag(string field)
    {
        switch (Find(field))
        {
            case null: return null;
            case { ValueKind: JsonValueKind.True }: return true;
            case { ValueKind: JsonValueKind.False }: return false;
            case { } other:
                Report<string>(field, other.GetRawText(), "This should be true or false.", "Write true or false without quotation marks.");
                return null;
        }
    }

    public Quantity? Quantity(string field, Dimension dimension)
    {
        if (Find(field) is null) return null;
        if (Text(field) is not { } text) return null;
        if (Stove.Quantities.Quantity.TryParse(text, dimension, out var quantity, out var problem)) return quantity;
        Report<string>(field, text, problem!.Message, problem.Remedy);
        return null;
    }

    public DateOnly? Date(string field)
    {
        if (Text(field) is not { } text) return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)) return date;
        Report<string>(field, text, "This should be a date.", "Write year-month-day, such as 2026-01-14.");
        return null;
    }

    public DateTimeOffset? Time(string field)
    {
        if (Text(field) is not { } text) return null;
        if (Rfc3339.Parse(text) is { } time) return time;
        Report<string>(field, text, "This should be a time with its offset from UTC.", "Write such as 2026-01-14T09:30:00-05:00.");
        return null;
    }

    public T? Choice<T>(string field) where T : struct, Enum
    {
        if (Text(field) is not { } text) return null;
        if (EnumWords.Find<T>(text) is { } value) return value;
        Report<string>(field, text, $"'{text}' is not known here.", $"Use one of {EnumWords.All<T>()}.");
        return null;
    }

    public T RequiredChoice<T>(string field) where T : struct, Enum
    {
        if (Has(field))
        {
            if (Choice<T>(field) is { } value) return value;
            broken = true;
        }
        else Refuse(field, "", "This is missing.", $"Use one of {EnumWords.All<T>()}.");
        return default;
    }

    public BodyReader? Object(string field)
    {
        if (Find(field) is not { } value) return null;
        if (value.ValueKind == JsonValueKind.Object) return new BodyReader(value, line, path + field + ".", problems);
        Report<string>(field, value.GetRawText(), "This should be an object.", "Put its members in braces.");
        return null;
    }

    /// <summary>The member when it is an object; text in its place is no error.</summary>
    public BodyReader? ObjectIfAny(string field) => RawObject(field) is null ? null : Object(field);

    public IReadOnlyList<T> Objects<T>(string field, Func<BodyReader, T?> read) where T : class =>
        [.. Items(field).Select((item, i) => Item(item, $"{field}[{i}]", read)).OfType<T>()];

    public IReadOnlyList<string> Texts(string field) =>
        [.. Items(field).Select((item, i) => item.ValueKind == JsonValueKind.String
            ? item.GetString()
            : Report<string>($"{field}[{i}]", item.GetRawText(), "This should be text.", "Put it in quotation marks.")).OfType<string>()];

    /// <summary>The member as JSON text when it is an object, for what another part reads.</summary>
    public string? RawObject(string field) => Find(field) is { ValueKind: JsonValueKind.Object } value ? value.GetRawText() : null;

    public IEnumerable<KeyValuePair<string, JsonElement>> Members(string field) =>
        Find(field) is { ValueKind: JsonValueKind.Object } value
            ? value.EnumerateObject().Select(m => KeyValuePair.Create(m.Name, m.Value))
            : [];

    /// <summary>Reports a problem and gives up on the whole body.</summary>
    public void Refuse(string field, string value, string message, string remedy)
    {
        broken = true;
        Report<string>(field, value, message, remedy);
    }

    /// <summary>Reports a problem that leaves the rest of the body usable.</summary>
    public T? Report<T>(string field, string value, string message, string remedy) where T : class
    {
        problems.Add(new Problem(line, path + field, value, message, remedy));
        return null;
    }

    private T? Item<T>(JsonElement item, string field, Func<BodyReader, T?> read) where T : class
    {
        if (item.ValueKind != JsonValueKind.Object)
            return Report<T>(field, item.GetRawText(), "This should be an object.", "Put its members in braces.");
        var reader = new BodyReader(item, line, path + field + ".", problems);
        var result = read(reader);
        return reader.Unusable ? null : result;
    }

    private JsonElement[] Items(string field)
    {
        if (Find(field) is not { } value) return [];
        if (value.ValueKind == JsonValueKind.Array) return [.. value.EnumerateArray()];
        Report<string>(field, value.GetRawText(), "This should be a list.", "Put its items in square brackets.");
        return [];
    }

    private JsonElement? Find(string field) =>
        json.TryGetProperty(field, out var value) && value.ValueKind != JsonValueKind.Null ? value : null;
}
