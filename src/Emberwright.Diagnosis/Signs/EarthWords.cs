// Question:    does a part leak to earth, by the ohms read between it and the appliance's metal?
// Equation:    leaks when R < 1 MΩ; an open reading or more is sound.
// Symbols:     R resistance to earth, Ω.
// Validity:    unplugged, the part's leads off; an ordinary ohmmeter, not an insulation tester.
// Assumptions: sheathed igniters draw a little moisture when cold and may read some megohms; that is not a leak.
// Source:      common practice, no source.
// Worked:      "igniter to earth", "0.2 megohm": 200 kΩ, the igniter leaks.
using System.Globalization;
using System.Text.RegularExpressions;

namespace Emberwright.Diagnosis.Signs;

/// <summary>Reads "igniter to earth: 0.2 megohm" as the sign it is.</summary>
internal static partial class EarthWords
{
    private const string Sign = "earth-ohms";
    private const double SoundOhm = 1e6;

    /// <summary>The sign of a part named in what was measured to earth and a resistance in the outcome; null when it is no such thing.</summary>
    public static SignOutcome? Read(string what, string outcome)
    {
        var topic = Words.Of(what);
        if (!(topic.Has("earth") || topic.Has("ground") || topic.Has("chassis")) || Part(topic) is not { } part) return null;
        if (Words.Of(outcome) is var said && (said.Has("open") || said.Has("ol") || said.Has("infinite"))) return new SignOutcome(Sign, "clear");
        if (Value().Match(outcome) is not { Success: true } match) return null;
        var ohm = double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) * (match.Groups[2].Value.ToLowerInvariant() switch
        {
            "m" or "meg" => 1e6,
            "k" or "kilo" => 1e3,
            _ => 1,
        });
        return new SignOutcome(Sign, ohm < SoundOhm ? part : "clear");
    }

    private static string? Part(Words topic) =>
        topic.Has("igniter") ? "igniter"
        : topic.Has("motor") || topic.Has("blower") || topic.Has("fan") || topic.Has("pump") ? "blower"
        : topic.Has("wiring") || topic.Has("wire") || topic.Has("lead") || topic.Has("cable") ? "wiring"
        : null;

    [GeneratedRegex(@"(\d+(?:\.\d+)?)\s*(meg|kilo|M|k|m)?\s*(?:Ω|ohms?)", RegexOptions.IgnoreCase)]
    private static partial Regex Value();
}
