using System.Globalization;

namespace Emberwright.Stove.Quantities;

/// <summary>Writes values as people read them: to the instrument's resolution, unit always, true minus sign.</summary>
public static class QuantityFormat
{
    /// <summary>The true minus sign, U+2212.</summary>
    public const char Minus = '\u2212';

    /// <summary>Writes a value in the system's unit for its measure.</summary>
    /// <param name="value">The value in the measure's own unit.</param>
    /// <param name="measure">What it is.</param>
    /// <param name="system">The system of units wanted.</param>
    /// <param name="resolution">The instrument's step, in the measure's own unit; null takes an ordinary instrument's.</param>
    /// <param name="plus">True to write a plus before a value above zero, as pressures are often written.</param>
    public static string Format(double value, Measure measure, UnitSystem system, double? resolution = null, bool plus = false)
    {
        var own = MeasureUnits.Of(measure);
        var (unit, step) = MeasureUnits.Shown(measure, system);
        if (resolution is { } given) step = given * own.Scale / unit.Scale;
        return In(unit.FromBase(own.ToBase(value)), unit, step, plus);
    }

    /// <summary>Writes a value that is already in the unit shown.</summary>
    /// <param name="value">The value; +∞ Ω is written "open", NaN as a dash.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="step">The instrument's step in that unit; above 0.</param>
    /// <param name="plus">True to write a plus before a value above zero.</param>
    public static string In(double value, Unit unit, double step, bool plus = false)
    {
        if (double.IsNaN(value)) return "–";
        if (double.IsPositiveInfinity(value)) return "open";
        return $"{Number(value, step, plus)} {unit.Symbol}";
    }

    /// <summary>The number alone, rounded half away from zero to the power of ten at or below the step.</summary>
    public static string Number(double value, double step, bool plus = false)
    {
        if (!(step > 0)) throw new ArgumentOutOfRangeException(nameof(step), step, "A step is above 0.");
        var decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(step) - 1e-9), -9, 15);
        var rounded = Round(value, decimals);
        var digits = Math.Abs(rounded).ToString("F" + Math.Max(decimals, 0), CultureInfo.InvariantCulture);
        return rounded < 0 ? Minus + digits : plus && rounded > 0 ? "+" + digits : digits;
    }

    /// <summary>The shortest digits that read back as the same number, with a true minus and no exponent.</summary>
    internal static string Exact(double value)
    {
        var digits = Math.Abs(value).ToString("R", CultureInfo.InvariantCulture);
        if (digits.Contains('E')) digits = Plain(Math.Abs(value));
        return value < 0 ? Minus + digits : digits;
    }

    private static string Plain(double value)
    {
        // "R" switches to an exponent outside 1e-5 … 1e15; 339 decimals hold any double exactly enough to read back.
        var digits = value.ToString("F339", CultureInfo.InvariantCulture).TrimEnd('0');
        return digits.EndsWith('.') ? digits[..^1] : digits;
    }

    private static double Round(double value, int decimals)
    {
        if (decimals >= 0) return Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        var tens = Math.Pow(10, -decimals);
        return Math.Round(value / tens, MidpointRounding.AwayFromZero) * tens;
    }
}
