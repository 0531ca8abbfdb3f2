using System.Text.Json;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;

namespace Emberwright.Visits.Journal;

/// <summary>When a reading belongs, in metrology's terms.</summary>
public enum Phase
{
    /// <summary>Before any work.</summary>
    AsFound,
    /// <summary>After work.</summary>
    AsLeft,
}

/// <summary>A number read with an instrument.</summary>
/// <param name="Place">Port or test point.</param>
/// <param name="IsTestPoint">True for a place on the wiring where a meter lead goes.</param>
/// <param name="Measure">What was read.</param>
/// <param name="Condition">The state it was read in.</param>
/// <param name="Value">The value.</param>
/// <param name="Written">The value as written, whose digits show the instrument's resolution.</param>
/// <param name="Instrument">Name of the instrument.</param>
/// <param name="Phase">As found or as left, when stated; otherwise it follows from whether work was done before.</param>
/// <param name="After">How long the condition had lasted: "35 min" on high.</param>
/// <param name="Note">Further words.</param>
public sealed record ReadingBody(
    string Place, bool IsTestPoint, Measure Measure, Condition Condition, Quantity Value, string Written,
    string? Instrument = null, Phase? Phase = null, Quantity? After = null, string? Note = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "reading";

    /// <summary>What was read, where and in which condition.</summary>
    public Observable Observable => new(Measure, Place, Condition);

    /// <summary>The value in the measure's own unit.</summary>
    public double Si => Value.In(Measure);

    /// <summary>The smallest step the written digits show, in the unit they are written in: 0.01 for "-0.10 inWC".</summary>
    public double Step
    {
        get
        {
            var point = Written.IndexOf('.', StringComparison.Ordinal);
            var decimals = point < 0 ? 0 : Written.Skip(point + 1).TakeWhile(char.IsAsciiDigit).Count();
            return Math.Pow(10, -decimals);
        }
    }

    internal static ReadingBody Read(BodyReader r)
    {
        var port = r.Text("port");
        var place = port ?? r.Text("testPoint");
        if (string.IsNullOrWhiteSpace(place)) r.Refuse("port", "", "It is not said where this was read.", "Add \"port\" or \"testPoint\".");
        var written = r.Required("value", "Write the number and its unit, such as \"-12.4 Pa\".");
        var (measure, value) = ReadValue(r, written);
        return new(place ?? "", port is null, measure, ReadCondition(r, measure), value, written, r.Text("instrument"),
            r.Choice<Phase>("phase"), r.Quantity("after", Dimension.Duration), r.Text("note"));
    }

    internal override void Write(BodyWriter w)
    {
        w.Text(IsTestPoint ? "testPoint" : "port", Place);
        w.Text("quantity", MeasureUnits.Name(Measure));
        w.Text("condition", ConditionText.Format(Condition));
        w.Text("value", Written);
        w.Text("instrument", Instrument);
        w.Choice("phase", Phase);
        w.Quantity("after", After);
        w.Text("note", Note);
    }

    private static (Measure, Quantity) ReadValue(BodyReader r, string written)
    {
        var name = r.Text("quantity");
        var measure = name is null ? null : MeasureUnits.ByName(name);
        if (name is not null && measure is null)
            r.Refuse("quantity", name, $"'{name}' is not a quantity that is read.", $"Use one of {MeasureUnits.Names}.");
        if (written.Length == 0 || (name is not null && measure is null)) return default;

        var dimension = measure is { } known ? MeasureUnits.Of(known).Dimension : (Dimension?)null;
        QuantityProblem? problem;
        Quantity value;
        var read = dimension is { } d ? Quantity.TryParse(written, d, out value, out problem) : Quantity.TryParse(written, out value, out problem);
        if (!read)
        {
            r.Refuse("value", written, problem!.Message, problem.Remedy);
            return default;
        }

        if ((measure ?? Implied(value.Unit)) is { } what) return (what, value);
        r.Refuse("quantity", "", $"The unit {value.Unit.Symbol} does not tell what was read.", $"Add \"quantity\": one of {MeasureUnits.Names}.");
        return default;
    }

    // Percent may be oxygen or carbon dioxide, so it implies neither.
    private static Measure? Implied(Unit unit) => unit.Dimension switch
    {
        Dimension.Pressure => Measure.Pressure,
        Dimension.Temperature => Measure.Temperature,
        Dimension.VolumeFlow => Measure.Flow,
        Dimension.MassFlow => Measure.Feed,
        Dimension.Rotation => Measure.Speed,
        Dimension.Voltage => Measure.Voltage,
        Dimension.Current => Measure.Current,
        Dimension.Resistance => Measure.Resistance,
        Dimension.Duration => Measure.Duration,
        Dimension.Capacitance => Measure.Capacitance,
        Dimension.Fraction => unit == Units.PartsPerMillion ? Measure.CarbonMonoxide : null,
        Dimension.TemperatureDifference or Dimension.Mass or Dimension.Length or Dimension.Velocity or Dimension.Power => null,
    };

    private static Condition ReadCondition(BodyReader r, Measure measure)
    {
        if (r.ObjectIfAny("condition") is { } parts)
            return new(parts.Choice<FireState>("fire") ?? FireState.Cold, parts.Choice<BlowerState>("blower") ?? BlowerState.On,
                parts.Choice<OpeningState>("opening") ?? OpeningState.Closed);
        var text = r.Text("condition");
        if (ConditionText.Parse(text) is { } condition) return condition;
        if (text is null && measure is Measure.Voltage or Measure.Current or Measure.Resistance or Measure.Capacitance) return Condition.FanOnly;
        r.Refuse("condition", text ?? "", text is null ? "The condition is missing." : $"'{text}' is not a condition.", ConditionText.Remedy);
        return default;
    }
}
