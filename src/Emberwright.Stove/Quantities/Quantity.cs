namespace Emberwright.Stove.Quantities;

/// <summary>
/// A number with its unit as somebody entered it. It is not a reading: it knows neither place nor condition.
/// Two quantities are equal when number and unit are equal; 1 bar and 1000 mbar are not.
/// The default value has no unit and must not be used.
/// </summary>
/// <param name="Entered">The number as written in <paramref name="Unit"/>; +∞ is an open circuit, never NaN.</param>
/// <param name="Unit">The unit as written.</param>
public readonly record struct Quantity(double Entered, Unit Unit)
{
    /// <summary>The kind of quantity.</summary>
    public Dimension Dimension => Unit.Dimension;

    /// <summary>The value in the base unit that <see cref="Quantities.Dimension"/> names.</summary>
    public double Si => Unit.ToBase(Entered);

    /// <summary>The value in another unit of the same dimension.</summary>
    /// <exception cref="ArgumentException">The unit measures something else.</exception>
    public double In(Unit unit) => unit.Dimension == Dimension
        ? unit == Unit ? Entered : unit.FromBase(Si)
        : throw new ArgumentException($"{unit.Symbol} does not measure {Dimension}.", nameof(unit));

    /// <summary>The value in the unit that <see cref="Measure"/> names for this measure.</summary>
    /// <exception cref="ArgumentException">The measure has another dimension.</exception>
    public double In(Measure measure) => In(MeasureUnits.Of(measure));

    /// <summary>A value in the measure's own unit, as a quantity.</summary>
    public static Quantity Of(double value, Measure measure) => new(value, MeasureUnits.Of(measure));

    /// <summary>Reads a quantity of any dimension, e.g. "−0.05 inWC", "312 degF".</summary>
    /// <param name="text">Number, then unit.</param>
    /// <param name="quantity">The quantity read.</param>
    /// <param name="problem">What is wrong and what to write instead; null on success.</param>
    public static bool TryParse(string? text, out Quantity quantity, out QuantityProblem? problem) =>
        QuantityParser.TryParse(text, null, out quantity, out problem);

    /// <summary>Reads a quantity of a stated dimension; "10 °F" as a difference is not "10 °F" as a temperature.</summary>
    /// <inheritdoc cref="TryParse(string?, out Quantity, out QuantityProblem?)"/>
    public static bool TryParse(string? text, Dimension expected, out Quantity quantity, out QuantityProblem? problem) =>
        QuantityParser.TryParse(text, expected, out quantity, out problem);

    /// <summary>Reads a quantity of a stated measure.</summary>
    /// <inheritdoc cref="TryParse(string?, out Quantity, out QuantityProblem?)"/>
    public static bool TryParse(string? text, Measure expected, out Quantity quantity, out QuantityProblem? problem) =>
        QuantityParser.TryParse(text, MeasureUnits.Of(expected).Dimension, out quantity, out problem);

    /// <summary>Number and unit so that reading them gives the same quantity: shortest digits, true minus.</summary>
    public override string ToString() =>
        double.IsPositiveInfinity(Entered) ? "open" : $"{QuantityFormat.Exact(Entered)} {Unit.Symbol}";
}

/// <summary>Why a text is not a quantity.</summary>
/// <param name="Value">The text as given.</param>
/// <param name="Message">What is wrong with it.</param>
/// <param name="Remedy">What to write instead.</param>
public sealed record QuantityProblem(string Value, string Message, string Remedy);
