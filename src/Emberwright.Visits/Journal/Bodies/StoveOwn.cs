using System.Globalization;
using Emberwright.Stove.Controls;

namespace Emberwright.Visits.Journal;

/// <summary>An alarm code or blink count the stove shows.</summary>
/// <param name="Code">The code as shown.</param>
/// <param name="Meaning">Its meaning, when known.</param>
/// <param name="Count">How many times it is logged.</param>
public sealed record CodeBody(string Code, string? Meaning = null, int? Count = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "code";

    internal static CodeBody Read(BodyReader r) =>
        new(r.Required("code", "Write the code as the stove shows it."), r.Text("meaning"), r.Count("count"));

    internal override void Write(BodyWriter w)
    {
        w.Text("code", Code);
        w.Text("meaning", Meaning);
        w.Number("count", Count);
    }
}

/// <summary>A counter the stove keeps: hours, starts, failed starts.</summary>
/// <param name="Counter">Its name.</param>
/// <param name="Value">What it shows.</param>
public sealed record CounterBody(string Counter, string Value) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "counter";

    /// <summary>The number shown, hours in h; null when it is no number.</summary>
    public double? Number
    {
        get
        {
            var plain = Value.Trim().TrimEnd('h', 'H').TrimEnd();
            return double.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
        }
    }

    internal static CounterBody Read(BodyReader r)
    {
        var body = new CounterBody(r.Required("counter", "Name the counter, such as hours or starts."), r.Required("value", "Write what it shows."));
        if (body.Value.Length > 0 && body.Number is null && Counters.Find(body.Counter) is not null)
            r.Report<string>("value", body.Value, "A counter shows a plain number.", "Write it without a thousands mark, such as 4120 or 4120 h.");
        return body;
    }

    internal override void Write(BodyWriter w)
    {
        w.Text("counter", Counter);
        w.Text("value", Value);
    }
}

/// <summary>A setting of the board, as found or as changed.</summary>
/// <param name="Parameter">Its name or number.</param>
/// <param name="Value">Its value.</param>
/// <param name="Before">Its value before a change.</param>
public sealed record ParameterBody(string Parameter, string Value, string? Before = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "parameter";

    internal static ParameterBody Read(BodyReader r) =>
        new(r.Required("parameter", "Name the parameter."), r.Required("value", "Write its value."), r.Text("before"));

    internal override void Write(BodyWriter w)
    {
        w.Text("parameter", Parameter);
        w.Text("value", Value);
        w.Text("before", Before);
    }
}
