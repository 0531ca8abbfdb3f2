using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.Pictures;

/// <summary>
/// A unit pressures are shown in, with the number of decimals its gauges resolve.
/// </summary>
/// <param name="Unit">The unit.</param>
/// <param name="Decimals">Decimals of a reading.</param>
public sealed record PressureUnit(Unit Unit, int Decimals)
{
    /// <summary>Pascal, whole.</summary>
    public static PressureUnit Pascal { get; } = new(Units.Pascal, 0);

    /// <summary>Inch of water column, thousandths.</summary>
    public static PressureUnit InchOfWater { get; } = new(Units.InchOfWater, 3);

    /// <summary>As written behind the number.</summary>
    public string Symbol => Unit.Symbol;

    /// <summary>Pascals in one of it.</summary>
    public double PaPerUnit => Unit.Scale;

    /// <summary>A pressure in this unit, at the resolution of its gauges.</summary>
    public double Round(double pa) => Math.Round(pa / PaPerUnit, Decimals, MidpointRounding.AwayFromZero);

    /// <summary>The number alone, with its sign: on which side of room pressure it lies matters. Nought has none.</summary>
    public string Number(double pa) => Change(Round(pa));

    /// <summary>Number and unit.</summary>
    public string Value(double pa) => $"{Number(pa)} {Symbol}";

    /// <summary>A change already in this unit, with its sign.</summary>
    public string Change(double change) => Figures.Signed(change, Decimals);
}

/// <summary>Numbers as our pages write them: a point, a true minus, no grouping.</summary>
internal static class Figures
{
    public static string Fixed(double value, int decimals) =>
        double.IsFinite(value) ? QuantityFormat.Number(value, Math.Pow(10, -decimals)) : "–";

    public static string Signed(double value, int decimals) => QuantityFormat.Number(value, Math.Pow(10, -decimals), plus: true);

    /// <summary>Up to so many decimals, none that are nought.</summary>
    public static string Short(double value, int decimals)
    {
        var text = Fixed(value, decimals);
        return text.Contains('.') ? text.TrimEnd('0').TrimEnd('.') : text;
    }
}
