using Emberwright.Reports.Wording;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>The site and its vent in one line each, in the units of the report.</summary>
internal static class SiteLine
{
    public static IEnumerable<string> Of(Visit visit, UnitSystem units)
    {
        if (visit.Site is not { } site) yield break;
        var facts = new List<string>();
        if (site.Altitude is { } altitude) facts.Add(Say.Of("site.above-sea-level", Far(altitude, units, 1)));
        if (site.Outdoor is { } outdoor) facts.Add(Say.Of("site.outdoors", Warm(outdoor, units)));
        if (site.Room is { } room) facts.Add(Say.Of("site.room", Warm(room, units)));
        if (site.Wind is { } wind) facts.Add(Say.Of("site.wind", In(wind, units == UnitSystem.Us ? (Units.MilePerHour, 1) : (Units.MetrePerSecond, 0.1))));
        if (site.Supply is { } supply) facts.Add(Say.Of("site.supply", supply));
        if (facts.Count > 0) yield return ObservableName.Capital(string.Join("; ", facts)) + ".";
        if (site.Vent is { } vent && Vent(vent, units) is { Length: > 0 } run) yield return Say.Of("site.vent", run);
    }

    /// <summary>"3 in, 18 ft up, 1 ft across, flexible, vertical cap": what is known of a vent.</summary>
    public static string Vent(VentBody vent, UnitSystem units) => string.Join(", ", new[]
    {
        vent.Diameter is { } wide ? In(wide, units == UnitSystem.Us ? (Units.Inch, 0.1) : (Units.Millimetre, 1)) : null,
        vent.Vertical is { } up ? Say.Of("site.up", Far(up, units, 0.1)) : null,
        vent.Horizontal is { } across ? Say.Of("site.across", Far(across, units, 0.1)) : null,
        vent.Lining,
        vent.Terminal?.Replace('-', ' '),
    }.Where(words => !string.IsNullOrEmpty(words)));

    private static string Far(Quantity length, UnitSystem units, double step) => In(length, (units == UnitSystem.Us ? Units.Foot : Units.Metre, step));

    private static string Warm(Quantity temperature, UnitSystem units) => In(temperature, (units == UnitSystem.Us ? Units.Fahrenheit : Units.Celsius, 1));

    // What was written in this unit stays as it was written; a whole number of another keeps no idle nought.
    private static string In(Quantity quantity, (Unit Unit, double Step) shown)
    {
        if (quantity.Unit == shown.Unit) return $"{quantity}";
        var written = QuantityFormat.Number(quantity.In(shown.Unit), shown.Step);
        return $"{(written.EndsWith(".0", StringComparison.Ordinal) ? written[..^2] : written)} {shown.Unit.Symbol}";
    }
}
