namespace Emberwright.Stove.Quantities;

/// <summary>Finds the unit a person meant by what they wrote.</summary>
public static class UnitSymbols
{
    // Other spellings of a printed symbol, as keyboards and habits produce them.
    private static readonly Dictionary<string, string> Spellings = new(StringComparer.Ordinal)
    {
        ["in WC"] = "inWC", ["in.WC"] = "inWC", ["inH2O"] = "inWC", ["in H2O"] = "inWC", ["\"WC"] = "inWC", ["in. w.c."] = "inWC",
        ["mmH2O"] = "mmWC", ["mm WC"] = "mmWC",
        ["degC"] = "°C", ["deg C"] = "°C", ["C"] = "°C", ["℃"] = "°C",
        ["degF"] = "°F", ["deg F"] = "°F", ["F"] = "°F", ["℉"] = "°F",
        ["m3/s"] = "m³/s", ["m3/h"] = "m³/h", ["cfm"] = "CFM", ["ft3/min"] = "CFM", ["ft³/min"] = "CFM",
        ["lbs/h"] = "lb/h", ["lb/hr"] = "lb/h", ["kg/hr"] = "kg/h",
        ["lbs"] = "lb", ["tonne"] = "t", ["tonnes"] = "t", ["short tons"] = "short ton",
        ["inch"] = "in", ["inches"] = "in", ["\""] = "in", ["feet"] = "ft", ["foot"] = "ft",
        ["fpm"] = "ft/min", ["kph"] = "km/h", ["1/min"] = "rpm", ["/min"] = "rpm", ["r/min"] = "rpm",
        ["volt"] = "V", ["volts"] = "V", ["amp"] = "A", ["amps"] = "A", ["VAC"] = "V", ["VDC"] = "V",
        ["ohm"] = "Ω", ["ohms"] = "Ω", ["\u2126"] = "Ω",
        ["kohm"] = "kΩ", ["kohms"] = "kΩ", ["k\u2126"] = "kΩ", ["Mohm"] = "MΩ", ["Mohms"] = "MΩ", ["M\u2126"] = "MΩ",
        ["Btu/h"] = "BTU/h", ["BTU/hr"] = "BTU/h", ["Btu/hr"] = "BTU/h", ["btuh"] = "BTU/h",
        ["percent"] = "%", ["sec"] = "s", ["mins"] = "min", ["minutes"] = "min", ["hr"] = "h", ["hrs"] = "h",
        ["hour"] = "h", ["hours"] = "h", ["day"] = "d", ["days"] = "d",
    };

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
        foreach (var (spelling, printed) in Spellings)
            if (SameCase(spelling, written) && spelling.Equals(written, comparison)) symbol = printed;
        return Units.All.FirstOrDefault(u =>
            (expected is null || u.Dimension == expected) && SameCase(u.Symbol, symbol) && u.Symbol.Equals(symbol, comparison));
    }

    // mV and MV, mbar and Mbar: a first letter m is milli and M mega, never the other.
    private static bool SameCase(string symbol, string written) =>
        written.Length == 0 || written[0] is not ('m' or 'M') || symbol[0] == written[0];
}
