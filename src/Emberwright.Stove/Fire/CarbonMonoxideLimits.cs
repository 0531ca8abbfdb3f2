// Question: how much carbon monoxide in room air is too much, for how long, and who decides that the stove may run again?
// Values are limits set by the authorities named; no formula. mg/m³ and ppm side by side as published.
// Sources: see each row. Rows marked "common practice" have no published source and are the tool's defaults; local code and
//   the alarm's own instructions take precedence.

namespace Emberwright.Stove.Fire;

/// <summary>What kind of limit a row is; they are not comparable with each other.</summary>
public enum LimitKind
{
    /// <summary>Air quality for everybody, averaged over the time given.</summary>
    Ambient,
    /// <summary>Healthy adults at work, averaged over the time given, or a ceiling.</summary>
    Workplace,
    /// <summary>An alarm must sound between the two times at this level.</summary>
    AlarmMustSound,
    /// <summary>An alarm must keep silent up to the time given at this level.</summary>
    AlarmMustNotSound,
    /// <summary>What the technician does.</summary>
    Action,
}

/// <summary>Who may let an appliance run again after a stop.</summary>
public enum Release
{
    /// <summary>Nobody needs to: the row stops nothing by itself.</summary>
    None,
    /// <summary>The technician on site, after the cause is found, cured and the room measured again.</summary>
    Technician,
    /// <summary>The emergency service that attended, then the technician after cure and measurement.</summary>
    EmergencyServiceThenTechnician,
}

/// <summary>One limit of carbon monoxide in room air.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Kind">Kind of limit.</param>
/// <param name="Ppm">Level, ppm by volume.</param>
/// <param name="MgPerM3">The same as the source states it in mg/m³; null when it states ppm.</param>
/// <param name="NotBefore">Averaging time, or the earliest moment an alarm may sound; zero for a ceiling or at once.</param>
/// <param name="Within">The moment by which an alarm must sound; null when the row has none.</param>
/// <param name="Meaning">What follows, in words for the screen.</param>
/// <param name="Source">Authority, document, and "from memory" where it was not read.</param>
/// <param name="Release">Who may let the stove run again.</param>
public sealed record CarbonMonoxideLimit(
    string Id,
    LimitKind Kind,
    double Ppm,
    double? MgPerM3,
    TimeSpan NotBefore,
    TimeSpan? Within,
    string Meaning,
    string Source,
    Release Release);

/// <summary>Limits of carbon monoxide in room air, and what a reading calls for.</summary>
public static class CarbonMonoxideLimits
{
    /// <summary>Any rise while the stove burns, over the reading taken in the room before: the smallest step an instrument shows reliably, ppm.</summary>
    public const double RiseThatCountsPpm = 3;

    /// <summary>What the technician acts on, strictest last.</summary>
    public static IReadOnlyList<CarbonMonoxideLimit> Actions { get; } =
    [
        new("rise", LimitKind.Action, RiseThatCountsPpm, null, TimeSpan.Zero, null,
            "Carbon monoxide in the room rises while the stove burns: exhaust leaks in. Stop the stove, find the leak.",
            "common practice, no source", Release.Technician),
        new("ventilate", LimitKind.Action, 35, null, TimeSpan.Zero, null,
            "Stop the stove, open windows, do not stay in the room; measure again with the stove out.",
            "common practice, at the one-hour level of 40 CFR 50.8", Release.Technician),
        new("evacuate", LimitKind.Action, 70, null, TimeSpan.Zero, null,
            "Everyone out now, also pets; call the emergency number from outside. Anyone with headache or nausea needs medical help.",
            "common practice, at the lowest level at which an alarm by UL 2034 must sound", Release.EmergencyServiceThenTechnician),
    ];

    /// <summary>Published limits.</summary>
    public static IReadOnlyList<CarbonMonoxideLimit> Published { get; } =
    [
        Ambient("who-24h", 4 / 1.145, 4, 24, "WHO global air quality guidelines 2021, 24-hour mean"),
        Ambient("who-8h", 10 / 1.145, 10, 8, "WHO global air quality guidelines 2021, 8-hour mean (kept from earlier guidelines)"),
        Ambient("who-1h", 35 / 1.145, 35, 1, "WHO global air quality guidelines 2021, 1-hour mean (kept from earlier guidelines)"),
        Ambient("who-15min", 100 / 1.145, 100, 0.25, "WHO global air quality guidelines 2021, 15-minute mean (kept from earlier guidelines)"),
        Ambient("epa-8h", 9, null, 8, "US EPA, National Ambient Air Quality Standards, 40 CFR 50.8"),
        Ambient("epa-1h", 35, null, 1, "US EPA, National Ambient Air Quality Standards, 40 CFR 50.8"),
        Workplace("osha-8h", 50, 8, "US OSHA, 29 CFR 1910.1000 table Z-1, 8-hour mean"),
        Workplace("niosh-8h", 35, 8, "US NIOSH recommended exposure limit, mean over a shift"),
        Workplace("niosh-ceiling", 200, 0, "US NIOSH recommended exposure limit, ceiling"),
        AlarmSilent("en50291-30", 30, 120, "EN 50291-1 (from memory)"),
        AlarmSounds("en50291-50", 50, 60, 90, "EN 50291-1 (from memory)"),
        AlarmSounds("en50291-100", 100, 10, 40, "EN 50291-1 (from memory)"),
        AlarmSounds("en50291-300", 300, 0, 3, "EN 50291-1 (from memory)"),
        AlarmSounds("ul2034-70", 70, 60, 240, "UL 2034 (from memory)"),
        AlarmSounds("ul2034-150", 150, 10, 50, "UL 2034 (from memory)"),
        AlarmSounds("ul2034-400", 400, 4, 15, "UL 2034 (from memory)"),
    ];

    /// <summary>What a reading in the room calls for: the strictest action it reaches; null when none.</summary>
    /// <param name="roomPpm">Reading in the room, ppm; 0 … 10 000, by an instrument zeroed outdoors.</param>
    /// <param name="beforePpm">Reading in the same room before the stove was lit; without one everything counts as a rise.</param>
    /// <exception cref="InputException">A reading outside its range.</exception>
    public static CarbonMonoxideLimit? ActionFor(double roomPpm, double beforePpm = 0)
    {
        const string remedy = "Zero the instrument outdoors, then read again.";
        InputException.Require(roomPpm, 0, 10_000, "carbon monoxide in the room", "ppm", remedy);
        InputException.Require(beforePpm, 0, 10_000, "carbon monoxide in the room before", "ppm", remedy);
        CarbonMonoxideLimit? strictest = null;
        foreach (var action in Actions)
        {
            var reached = action.Id == "rise" ? roomPpm - beforePpm >= action.Ppm : roomPpm >= action.Ppm;
            if (reached) strictest = action;
        }
        return strictest;
    }

    private static CarbonMonoxideLimit Ambient(string id, double ppm, double? mg, double hours, string source) =>
        new(id, LimitKind.Ambient, ppm, mg, TimeSpan.FromHours(hours), null, "Mean that the air people live in should stay below.", source, Release.None);

    private static CarbonMonoxideLimit Workplace(string id, double ppm, double hours, string source) =>
        new(id, LimitKind.Workplace, ppm, null, TimeSpan.FromHours(hours), null, "For healthy adults at work; not a limit for a home.", source, Release.None);

    private static CarbonMonoxideLimit AlarmSilent(string id, double ppm, double minutes, string source) =>
        new(id, LimitKind.AlarmMustNotSound, ppm, null, TimeSpan.FromMinutes(minutes), null,
            "The alarm stays silent so long: silence does not prove clean air.", source, Release.None);

    private static CarbonMonoxideLimit AlarmSounds(string id, double ppm, double fromMinutes, double toMinutes, string source) =>
        new(id, LimitKind.AlarmMustSound, ppm, null, TimeSpan.FromMinutes(fromMinutes), TimeSpan.FromMinutes(toMinutes),
            "The alarm must sound between these times. Never dismiss an alarm before measuring.", source, Release.EmergencyServiceThenTechnician);
}
