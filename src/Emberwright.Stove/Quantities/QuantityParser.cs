using System.Globalization;

namespace Emberwright.Stove.Quantities;

/// <summary>
/// Grammar: optional sign (+, -, −, –), digits with at most one decimal point, optional space, unit.
/// "OL" and "open" are an open circuit where a resistance may stand.
/// </summary>
internal static class QuantityParser
{
    public static bool TryParse(string? text, Dimension? expected, out Quantity quantity, out QuantityProblem? problem)
    {
        quantity = default;
        var given = (text ?? "").Trim().Replace('\u00A0', ' ').Replace('\u202F', ' ');
        if (expected is null or Dimension.Resistance && IsOpenCircuit(given))
        {
            problem = null;
            quantity = new Quantity(double.PositiveInfinity, Units.Ohm);
            return true;
        }

        problem = Read(given, expected, out quantity);
        return problem is null;
    }

    private static bool IsOpenCircuit(string text) =>
        text.Equals("OL", StringComparison.OrdinalIgnoreCase) || text.Equals("open", StringComparison.OrdinalIgnoreCase);

    private static QuantityProblem? Read(string given, Dimension? expected, out Quantity quantity)
    {
        quantity = default;
        var example = Example(expected ?? Dimension.Pressure);
        QuantityProblem Problem(string message, string remedy) => new(given, message, remedy);

        if (given.Length == 0) return Problem("Nothing is written here.", $"Write a number and its unit, such as {example}.");
        var end = NumberEnd(given);
        var number = given[..end];
        var symbol = given[end..].Trim();
        if (number.Contains(','))
            return Problem("A comma may be a decimal mark or a thousands mark.", $"Write a decimal point and no thousands mark, such as {example}.");
        if (!TryNumber(number, out var value))
            return Problem("It does not begin with a number.", $"Write a number and its unit, such as {example}.");
        if (symbol.Length == 0)
            return Problem("The unit is missing.", expected is { } d ? $"Add one of {UnitSymbols.ListOf(d)}." : $"Write the unit, such as {example}.");
        if (UnitSymbols.RemedyFor(symbol) is { } instead)
            return Problem($"'{symbol}' is not a unit.", instead);
        if (UnitSymbols.Find(symbol, expected) is not { } unit)
            return Problem(
                UnitSymbols.Find(symbol) is { } other ? $"'{symbol}' measures {Words(other.Dimension)}." : $"The unit '{symbol}' is not known.",
                expected is { } wanted ? $"Use one of {UnitSymbols.ListOf(wanted)}." : "Use a unit such as Pa, inWC, °C, °F, %, ppm, V, Ω, kg/h.");

        var read = new Quantity(value, unit);
        if (Bounds(unit.Dimension) is { } bounds && (read.Si < bounds.Low || read.Si > bounds.High))
            return Problem($"It is outside {bounds.Words}.", "Check the number, its sign and its unit.");
        quantity = read;
        return null;
    }

    private static int NumberEnd(string text)
    {
        var i = 0;
        while (i < text.Length && (char.IsAsciiDigit(text[i]) || text[i] is '.' or ',' || IsSign(text[i]) || (text[i] == ' ' && i > 0 && IsSign(text[i - 1])))) i++;
        return i;
    }

    private static bool IsSign(char c) => c is '+' or '-' or '\u2212' or '\u2013';

    private static bool TryNumber(string number, out double value)
    {
        var plain = number.Replace('\u2212', '-').Replace('\u2013', '-').Replace(" ", "", StringComparison.Ordinal);
        return double.TryParse(plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value)
            && double.IsFinite(value);
    }

    private static (double Low, double High, string Words)? Bounds(Dimension dimension) => dimension switch
    {
        Dimension.Temperature => (-273.15, 2000, "−273.15 … 2000 °C"),
        Dimension.Fraction => (0, 100, "0 … 100 %"),
        Dimension.Mass or Dimension.MassFlow or Dimension.Rotation or Dimension.Resistance or Dimension.Duration
            or Dimension.Capacitance
            => (0, double.PositiveInfinity, "0 and above"),
        Dimension.Pressure or Dimension.TemperatureDifference or Dimension.VolumeFlow or Dimension.Length or Dimension.Velocity
            or Dimension.Voltage or Dimension.Current or Dimension.Power => null,
    };

    private static string Example(Dimension dimension) => dimension switch
    {
        Dimension.Pressure => "-12.4 Pa",
        Dimension.Temperature => "163 °C",
        Dimension.TemperatureDifference => "15 K",
        Dimension.VolumeFlow => "120 m³/h",
        Dimension.MassFlow => "1.7 kg/h",
        Dimension.Mass => "15 kg",
        Dimension.Length => "5.5 m",
        Dimension.Velocity => "3 m/s",
        Dimension.Rotation => "2400 rpm",
        Dimension.Voltage => "121 V",
        Dimension.Current => "0.4 A",
        Dimension.Resistance => "48 ohm",
        Dimension.Power => "300 W",
        Dimension.Fraction => "11.8 %",
        Dimension.Duration => "20 min",
        Dimension.Capacitance => "2.0 µF",
    };

    private static string Words(Dimension dimension) => dimension switch
    {
        Dimension.Pressure => "pressure",
        Dimension.Temperature => "temperature",
        Dimension.TemperatureDifference => "a temperature difference",
        Dimension.VolumeFlow => "volume flow",
        Dimension.MassFlow => "mass flow",
        Dimension.Mass => "mass",
        Dimension.Length => "length",
        Dimension.Velocity => "speed of air",
        Dimension.Rotation => "rotation",
        Dimension.Voltage => "voltage",
        Dimension.Current => "current",
        Dimension.Resistance => "resistance",
        Dimension.Power => "power",
        Dimension.Fraction => "a fraction",
        Dimension.Duration => "duration",
        Dimension.Capacitance => "capacitance",
    };
}
