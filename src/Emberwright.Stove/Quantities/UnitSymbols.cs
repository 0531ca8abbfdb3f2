namespace Emberwright.Stove.Quantities;

/// <summary>Finds the unit a person meant by what they wrote.</summary>
public static class UnitSymbols
{
    // Other spellings of a printed symbol, as keyboards and habits produce them.
    private static readonly (string Printed, string[] Also)[] Spellings =
    [
        ("inWC", ["in WC", "in.WC", "inH2O", "in H2O", "\"WC", "in. w.c."]),
        ("mmWC", ["mmH2O", "mm WC"]),
        ("°C", ["degC", "deg C", "C", "℃"]),
        ("°F", ["degF", "deg F", "F", "℉"]),
        ("m³/s", ["m3/s"]),
        ("m³/h", ["m3/h"]),
        ("CFM", ["cfm", "ft3/min", "ft³/min"]),
        ("kg/h", ["kg/hr"]),
        ("lb/h", ["lbs/h", "lb/hr"]),
        ("lb", ["lbs"]),
        ("t", ["tonne", "tonnes"]),
        ("short ton", ["short tons"]),
        ("in", ["inch", "inches", "\""]),
        ("ft", ["foot", "feet"]),
        ("ft/min", ["fpm"]),
        ("km/h", ["kph"]),
        ("rpm", ["1/min", "/min", "r/min"]),
        ("V", ["volt", "volts", "VAC", "VDC"]),
        ("A", ["amp", "amps"]),
        ("Ω", ["ohm", "ohms", "\u2126"]),
        ("kΩ", ["kohm", "kohms", "k\u2126"]),
        ("MΩ", ["Mohm", "Mohms", "M\u2126"]),
        ("µF", ["uF", "\u03BCF", "MFD", "mfd"]),
        ("BTU/h", ["Btu/h", "BTU/hr", "Btu/hr", "btuh"]),
        ("%", ["percent"]),
        ("s", ["sec"]),
        ("min", ["mins", "minutes"]),
        ("h", ["hr", "hrs", "hour", "hours"]),
        ("d", ["day", "days"]),
    ];

    // Words that look like units but do not fix a number, each with what to write instead.
    private static readonly Dictionary<string, string> Refused = new(StringComparer.OrdinalIgnoreCase)
    {
        ["mg/m3"] = "It depends on temperature and reference oxygen; write the analyser's ppm.",
        ["mg/m³"] = "It depends on temperature and reference oxygen; write the analyser's ppm.",
        ["ton"] = "Write t (1000 kg) or short ton (2000 lb).",
        ["tons"] = "Write t (1000 kg) or short ton (2000 lb).",
        ["bag"] = "Bags differ; write the mass in kg or lb.",
        ["bags"] = "Bags differ; write the mass in kg or lb.",
        ["month"] = "Months differ in length; write days.",
        ["months"] = "Months differ in length; write days.",
    };

    /// <summary>
    /// Finds a unit by its symbol or a common spelling. Letter case is forgiven except where it decides
    /// between milli and mega.
    /// </summary>
    /// <param name="symbol">What was written, e.g. <c>degF</c>.</param>
    /// <param name="expected">The dimension wanted; null takes the first that knows the symbol.</param>
    /// <returns>The unit, or null.</returns>
    public static Unit? Find(string symbol, Dimension? expected = null) =>
        Match(symbol, expected, StringComparison.Ordinal) ?? Match(symbol, expected, StringComparison.OrdinalIgnoreCase);

    /// <summary>What to write instead of a word that fixes no unit; null when there is nothing special to say.</summary>
    public static string? RemedyFor(string symbol) => Refused.GetValueOrDefault(symbol);

    /// <summary>The printed symbols of a dimension, e.g. "Pa, inWC, mmWC".</summary>
    public static string ListOf(Dimension dimension) =>
        string.Join(", ", Units.All.Where(u => u.Dimension == dimension).Select(u => u.Symbol));

    private static Unit? Match(string written, Dimension? expected, StringComparison comparison)
    {
        var symbol = written;
        foreach (var (printed, also) in Spellings)
            if (also.Any(spelling => SameCase(spelling, written) && spelling.Equals(written, comparison))) symbol = printed;
        return Units.All.FirstOrDefault(u =>
            (expected is null || u.Dimension == expected) && SameCase(u.Symbol, symbol) && u.Symbol.Equals(symbol, comparison));
    }

    // mV and MV, mbar and Mbar: a first letter m is milli and M mega, never the other.
    private static bool SameCase(string symbol, string written) =>
        written.Length == 0 || written[0] is not ('m' or 'M') || symbol[0] == written[0];
}
