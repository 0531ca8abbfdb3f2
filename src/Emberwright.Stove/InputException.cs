using System.Globalization;

namespace Emberwright.Stove;

/// <summary>
/// A value given by a person or a file that cannot be right: names the field, the value, the allowed range and the remedy.
/// It is not for mistakes of the program; those stay ordinary argument exceptions.
/// </summary>
public sealed class InputException : ArgumentException
{
    /// <summary>States one field's trouble in words of its own.</summary>
    /// <param name="field">The field as people know it, e.g. <c>oxygen</c>.</param>
    /// <param name="trouble">What is wrong, with value and allowed range, without a final stop.</param>
    /// <param name="remedy">What to do, as one sentence.</param>
    public InputException(string field, string trouble, string remedy)
        : base($"{field}: {trouble}. {remedy}")
    {
        Field = field;
        Remedy = remedy;
    }

    /// <summary>The field as people know it.</summary>
    public string Field { get; }

    /// <summary>What to do about it.</summary>
    public string Remedy { get; }

    /// <summary>Returns <paramref name="value"/> when it is a number from <paramref name="least"/> to <paramref name="most"/>, both allowed.</summary>
    /// <param name="value">The value given.</param>
    /// <param name="least">Smallest allowed value.</param>
    /// <param name="most">Largest allowed value.</param>
    /// <param name="field">The field as people know it.</param>
    /// <param name="unit">Unit of value and range; empty for a pure number.</param>
    /// <param name="remedy">What to do, as one sentence.</param>
    /// <exception cref="InputException">The value is NaN or outside the range.</exception>
    public static double Require(double value, double least, double most, string field, string unit, string remedy)
    {
        if (value >= least && value <= most) return value;
        var space = unit.Length == 0 ? "" : " ";
        throw new InputException(
            field,
            string.Create(CultureInfo.InvariantCulture, $"{value:G6}{space}{unit} is outside {least:G6} to {most:G6}{space}{unit}"),
            remedy);
    }
}
