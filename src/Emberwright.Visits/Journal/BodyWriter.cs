using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Emberwright.Stove.Quantities;

namespace Emberwright.Visits.Journal;

/// <summary>Writes the members of one JSON object; what is null is left out.</summary>
internal sealed class BodyWriter(Utf8JsonWriter json)
{
    // A visit file is read by people: − and ° stand as they are.
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Object(Action<BodyWriter> members)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, Options))
        {
            json.WriteStartObject();
            members(new BodyWriter(json));
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan);
    }

    public void Text(string field, string? value)
    {
        if (value is not null) json.WriteString(field, value);
    }

    public void Number(string field, double? value)
    {
        if (value is { } number) json.WriteNumber(field, number);
    }

    public void Flag(string field, bool? value)
    {
        if (value is { } flag) json.WriteBoolean(field, flag);
    }

    public void Quantity(string field, Quantity? value) => Text(field, value?.ToString());

    public void Choice<T>(string field, T? value) where T : struct, Enum => Text(field, value is { } one ? EnumWords.Of(one) : null);

    public void Date(string field, DateOnly? value) => Text(field, value?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    public void Time(string field, DateTimeOffset? value) => Text(field, value is { } time ? Rfc3339.Format(time) : null);

    public void Member(string field, Action<BodyWriter> members)
    {
        json.WriteStartObject(field);
        members(this);
        json.WriteEndObject();
    }

    public void Texts(string field, IReadOnlyList<string> values)
    {
        if (values.Count > 0) TextList(field, values);
    }

    /// <summary>A list that is written even when empty: in a record an empty list clears the one before.</summary>
    public void TextList(string field, IReadOnlyList<string> values)
    {
        json.WriteStartArray(field);
        foreach (var value in values) json.WriteStringValue(value);
        json.WriteEndArray();
    }

    /// <inheritdoc cref="TextList"/>
    public void List<T>(string field, IReadOnlyList<T> values, Action<T, BodyWriter> members)
    {
        json.WriteStartArray(field);
        foreach (var value in values)
        {
            json.WriteStartObject();
            members(value, this);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public void Objects<T>(string field, IReadOnlyList<T> values, Action<T, BodyWriter> members)
    {
        if (values.Count > 0) List(field, values, members);
    }

    public void Raw(string field, string? value)
    {
        if (value is null) return;
        json.WritePropertyName(field);
        json.WriteRawValue(value);
    }

    /// <summary>Copies the members of a JSON object given as text.</summary>
    public void Members(string jsonObject)
    {
        using var document = JsonDocument.Parse(jsonObject);
        foreach (var member in document.RootElement.EnumerateObject()) member.WriteTo(json);
    }
}
