using System.Globalization;

namespace Emberwright.Reports.Pictures;

/// <summary>
/// A unit pressures are shown in, with the number of decimals its gauges resolve.
/// It formats; it does not parse.
/// </summary>
/// <param name="Symbol">As written behind the number.</param>
/// <param name="PaPerUnit">Pascals in one of it.</param>
/// <param name="Decimals">Decimals of a reading.</param>
public sealed record PressureUnit(string Symbol, double PaPerUnit, int Decimals)
{
    /// <summary>Pascal.</summary>
    public static PressureUnit Pascal { get; } = new("Pa", 1, 0);

    /// <summary>Inch of water column at 4 °C, 249.089 Pa (NIST SP 811, appendix B).</summary>
    public static PressureUnit InchOfWater { get; } = new("inWC", 249.089, 3);

    /// <summary>A pressure in this unit, at the resolution of its gauges.</summary>
    public double Round(double pa) => Math.Round(pa / PaPerUnit, Decimals, MidpointRounding.AwayFromZero);

    /// <summary>The number alone, with its sign: on which side of room pressure it lies matters. Nought has none.</summary>
    public string Number(double pa) => Figures.Signed(Round(pa), Decimals);

    /// <summary>Number and unit.</summary>
    public string Value(double pa) => $"{Number(pa)} {Symbol}";

    /// <summary>A change: number with its sign, 0 without.</summary>
    public string Change(double change) => Figures.Signed(change, Decimals);
}

/// <summary>Numbers as our pages write them: a point, a true minus, no grouping.</summary>
internal static class Figures
{
    public static string Fixed(double value, int decimals)
    {
        if (!double.IsFinite(value)) return "–";
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        var digits = Math.Abs(rounded).ToString("F" + decimals, CultureInfo.InvariantCulture);
        return rounded < 0 ? "−" + digits : digits;
    }

    public static string Signed(double value, int decimals) =>
        Math.Round(value, decimals, MidpointRounding.AwayFromZero) > 0 ? "+" + Fixed(value, decimals) : Fixed(value, decimals);

    /// <summary>Up to so many decimals, none that are nought.</summary>
    public static string Short(double value, int decimals)
    {
        var text = Fixed(value, decimals);
        return text.Contains('.') ? text.TrimEnd('0').TrimEnd('.') : text;
    }
}
