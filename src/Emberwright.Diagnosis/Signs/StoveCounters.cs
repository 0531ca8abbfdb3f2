using static Emberwright.Diagnosis.Signs.Wording;

namespace Emberwright.Diagnosis.Signs;

/// <summary>
/// Signs that the board's counters and settings amount to. They can be answered in words too; where counters or parameters are
/// recorded, <see cref="StoveRecord"/> judges them. Usual shares: from memory, no source.
/// </summary>
internal static class StoveCounters
{
    /// <summary>Share of failed starts.</summary>
    public const string Failed = "failed-starts";
    /// <summary>Hours per start.</summary>
    public const string RunLength = "run-length";
    /// <summary>Starts the igniter has behind it.</summary>
    public const string IgniterStarts = "igniter-starts";
    /// <summary>Hours the blowers have behind them.</summary>
    public const string RunHours = "run-hours";
    /// <summary>Feed setting against the card.</summary>
    public const string FeedTrim = "feed-trim";
    /// <summary>Blower setting against the card.</summary>
    public const string BlowerTrim = "blower-trim";
    /// <summary>All settings against the card.</summary>
    public const string Settings = "settings";

    public static IReadOnlyList<Sign> Signs { get; } =
    [
        Stated(Failed, "Share of starts that failed, by the stove's own counters?", ["failed starts", "ignition failures", "missed ignitions"],
            Out("few", "fewer than one in twenty", .82, ["few", "hardly any"]),
            Out("some", "one in twenty to one in five", .13, ["some", "several"]),
            Out("many", "more than one in five", .05, ["many", "most"])),
        Stated(RunLength, "Hours per start, by the stove's own counters?", ["run length", "hours per start"],
            Out("short", "under an hour and a half: it cycles", .1, ["short", "cycles"]),
            Out("usual", "one and a half to twelve hours", .8, ["usual", "normal"]),
            Out("long", "more than twelve hours", .1, ["long"])),
        Stated(IgniterStarts, "Starts the igniter has behind it, by the stove's own counter?", ["igniter starts", "start counter"],
            Out("few", "fewer than 700", .5, ["few"]),
            Out("usual", "700 to 2000", .35, ["usual"]),
            Out("many", "more than 2000", .15, ["many"])),
        Stated(RunHours, "Hours the stove has run, by its own counter?", ["run hours", "hour counter"],
            Out("few", "fewer than 4000", .45, ["few"]),
            Out("usual", "4000 to 10 000", .4, ["usual"]),
            Out("many", "more than 10 000", .15, ["many"])),
        Stated(FeedTrim, "Feed setting against the card?", ["feed trim", "feed parameter"],
            Out("below", "below it", .03, ["below", "lower", "less"]),
            Out("as-card", "as the card says", .94, ["as card", "same", "right"]),
            Out("above", "above it", .03, ["above", "higher", "more"])),
        Stated(BlowerTrim, "Combustion blower's setting against the card?", ["blower trim", "blower parameter", "fan parameter"],
            Out("below", "below it", .03, ["below", "lower", "less"]),
            Out("as-card", "as the card says", .94, ["as card", "same", "right"]),
            Out("above", "above it", .03, ["above", "higher", "more"])),
    ];
}
