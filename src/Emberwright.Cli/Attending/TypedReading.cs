using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli.Attending;

/// <summary>
/// Reads a number typed by itself for the reading in hand, or with its place and condition in front:
/// <c>firebox fan only -0.03 inWC</c>, <c>flue o2 high 11.7 %</c>, <c>vacuum-switch 119 V</c>.
/// </summary>
internal static class TypedReading
{
    private static readonly string[] Elsewhere =
    [
        Places.Firebox, Places.BlowerInlet, Places.Collar, Places.Flue, Places.Room, Places.WarmAir, Places.House, Places.Supply, Places.SwitchHose,
        Places.VentOutlet, Places.Intake, Places.Panel, Places.BlowerFlange, Places.Water, Places.FlowPipe, Places.ReturnPipe, Places.Feed,
    ];

    /// <summary>The reading a line states; null with why not, or null twice when the line is none.</summary>
    public static ReadingBody? Read(string line, ReadItem? asked, Catalogue catalogue, Pattern pattern, out string? problem)
    {
        problem = null;
        if (Value(line) is not { } at) return null;
        var before = line[..at].Trim();
        var written = line[at..].Trim();
        if (before.Length == 0 && asked is null)
        {
            problem = "Say where it was read: the place, the condition, then number and unit, such as: firebox fan only -12.4 Pa.";
            return null;
        }

        return before.Length == 0 ? Asked(written, asked!.Observable, out problem) : Placed(before, written, catalogue, pattern, out problem);
    }

    private static ReadingBody? Asked(string written, Observable observable, out string? problem)
    {
        if (!Quantity.TryParse(written, observable.Measure, out var value, out var wrong))
        {
            problem = $"{wrong!.Message} {wrong.Remedy}";
            return null;
        }

        problem = null;
        return new ReadingBody(observable.Place, !Words.IsPort(observable), observable.Measure, observable.Condition, value, written);
    }

    private static ReadingBody? Placed(string before, string written, Catalogue catalogue, Pattern pattern, out string? problem)
    {
        var words = before.Split([' ', ',', ':'], StringSplitOptions.RemoveEmptyEntries);
        var places = Elsewhere.Concat(pattern.Ports.Select(p => p.Id)).Concat(catalogue.Checks.SelectMany(c => c.Reads).Select(r => r.Place)).Distinct().ToList();
        var length = Enumerable.Range(1, words.Length).Reverse().FirstOrDefault(n => places.Contains(string.Join('-', words.Take(n)), StringComparer.OrdinalIgnoreCase));
        problem = null;
        if (length == 0)
        {
            problem = $"No place is called '{words[0]}'. Places here: {string.Join(", ", places)}.";
            return null;
        }

        var place = string.Join('-', words.Take(length)).ToLowerInvariant();
        var rest = words.Skip(length).ToList();
        var measure = rest.Select(MeasureUnits.ByName).FirstOrDefault(m => m is not null);
        rest.RemoveAll(w => MeasureUnits.ByName(w) is not null);
        if (!(measure is { } stated ? Quantity.TryParse(written, stated, out var value, out var wrong) : Quantity.TryParse(written, out value, out wrong)))
        {
            problem = $"{wrong!.Message} {wrong.Remedy}";
            return null;
        }

        measure ??= Implied(value.Unit.Dimension);
        if (measure is not { } what)
        {
            problem = $"{value.Unit.Symbol} does not tell what was read. Write o2, co2 or co behind the place.";
            return null;
        }

        var condition = rest.Count == 0 ? Usual(what, place) : ConditionText.Parse(string.Join(' ', rest)) ?? ConditionText.Parse(string.Join(", ", rest));
        if (condition is { } state) return new ReadingBody(place, !Words.IsPort(new(what, place, state)), what, state, value, written);
        problem = $"{(rest.Count == 0 ? "Say in which condition it was read." : $"'{string.Join(' ', rest)}' is no condition.")} {ConditionText.Remedy}";
        return null;
    }

    // Where number and unit begin: the last number of the line, or a word for an open circuit.
    private static int? Value(string line)
    {
        var words = line.TrimEnd().Split(' ');
        for (var n = 2; n >= 1; n--)
        {
            if (words.Length < n) continue;
            var at = line.TrimEnd().Length - words[^n..].Sum(w => w.Length + 1) + 1;
            var written = line[at..].Trim();
            if (written.Length > 0 && IsValue(written)) return at;
        }

        return null;
    }

    // "11.7 %" states no measure, and "12,4 Pa" is refused with a remedy: both are values all the same.
    private static bool IsValue(string written) => Quantity.TryParse(written, out _, out _)
        || (char.IsAsciiDigit(written[0]) || written[0] is '-' or '−' or '+' or '.') && written.Any(c => char.IsLetter(c) || c is '%' or '°' or 'Ω');

    private static Measure? Implied(Dimension dimension) => dimension == Dimension.Fraction ? null
        : Enum.GetValues<Measure>().Where(m => MeasureUnits.Of(m).Dimension == dimension).Cast<Measure?>().FirstOrDefault();

    // Electrical readings are taken while the board calls, ohms with the plug out, pressures fan only.
    private static Condition? Usual(Measure measure, string place) => measure switch
    {
        Measure.Resistance or Measure.Capacitance => Condition.BlowerOff,
        Measure.Voltage or Measure.Current => Condition.FanOnly,
        Measure.Pressure when place is Places.Water or Places.House => Condition.BlowerOff,
        Measure.Pressure or Measure.Speed => Condition.FanOnly,
        Measure.Feed => Condition.HighBurn,
        Measure.Temperature or Measure.Oxygen or Measure.CarbonDioxide or Measure.CarbonMonoxide or Measure.Duration or Measure.Flow => null,
    };
}
