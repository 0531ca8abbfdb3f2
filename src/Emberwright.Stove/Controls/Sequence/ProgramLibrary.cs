using static Emberwright.Stove.Controls.ComponentIds;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>The boards' programs of the pattern library. All values are common practice, no source.</summary>
public static class ProgramLibrary
{
    private static readonly AlarmCode NoFire = new(Alarms.NoFire, "NO FIRE", "No fire proved.");
    private static readonly AlarmCode LowDraught = new(Alarms.LowDraught, "LOW DRAUGHT", "Too little vacuum.");
    private static readonly AlarmCode TooHot = new(Alarms.OverTemperature, "TOO HOT", "Over-temperature.");
    private static readonly AlarmCode DoorOpen = new(Alarms.Door, "DOOR", "Door or lid open.");
    private static readonly AlarmCode Sensor = new(Alarms.Sensor, "SENSOR", "A sensor's value is impossible.");
    private static readonly AlarmCode Blower = new(Alarms.BlowerSpeed, "BLOWER", "The combustion blower does not reach its speed.");

    private static readonly Dictionary<string, BurnProgram> ByPattern = new[]
    {
        DamperInsertProgram.Create(), ThermocoupleFreestanding(), Underfed(), SealedCombustion(), Hydronic(), MultiFuel(),
    }.ToDictionary(p => p.Pattern, StringComparer.Ordinal);

    /// <summary>The program of a pattern's board.</summary>
    /// <param name="patternId">Id of the pattern.</param>
    /// <exception cref="CircuitException">No program has that id.</exception>
    public static BurnProgram For(string patternId) => ByPattern.TryGetValue(patternId, out var program) ? program
        : throw new CircuitException($"No program for pattern '{patternId}'; there are: {string.Join(", ", ByPattern.Keys)}.");

    private static BurnProgram ThermocoupleFreestanding() => new()
    {
        Pattern = "thermocouple-freestanding",
        PurgeS = 90,
        IgniterS = 12 * 60,
        StartFeedShare = 0.5,
        LowFeedShare = 0.5,
        Proof = new ProofOfFire(ProofKind.Thermocouple, 15 * 60, 8, 5, 60),
        Settings = [new(VacuumSwitch, 12.5, 8.7), new(HighLimitDisc, 93, 80), new(RoomAirDisc, 49, 38)],
        Watched = [new WatchedContact(VacuumSwitch, 60, 60, Alarms.LowDraught)],
        CoolC = 40,
        RunOnS = 15 * 60,
        RoomAirFromC = 0,
        Codes = [NoFire with { Shown = "2 blinks" }, LowDraught with { Shown = "3 blinks" }],
    };

    private static BurnProgram Underfed() => new()
    {
        Pattern = "underfed",
        PurgeS = 60,
        IgniterS = 15 * 60,
        StartFeedShare = 0.5,
        LowFeedShare = 0.4,
        Proof = new ProofOfFire(ProofKind.ExhaustProbe, 25 * 60, 55, 45, 120),
        Settings = [new(VacuumSwitch, 12, 8), new(HighLimitDisc, 93, 80)],
        Watched = [new WatchedContact(VacuumSwitch, 60, 30, Alarms.LowDraught)],
        SpeedMissingS = 30,
        ExhaustLimitC = 260,
        CoolC = 45,
        RunOnS = 10 * 60,
        RoomAirFromC = 45,
        Codes = [NoFire, LowDraught, TooHot, Sensor, Blower],
    };

    private static BurnProgram SealedCombustion() => new()
    {
        Pattern = "sealed-combustion",
        PurgeS = 120,
        IgniterS = 10 * 60,
        StartFeedShare = 0.5,
        LowFeedShare = 0.4,
        Proof = new ProofOfFire(ProofKind.ExhaustProbe, 25 * 60, 50, 42, 120),
        Settings = [new(HighLimitDisc, 90, 75)],
        Draft = new DraftWatch(12, 60, 180),
        Watched = [new WatchedContact(DoorSwitch, 0, 60, Alarms.Door)],
        SpeedMissingS = 30,
        ExhaustLimitC = 260,
        CoolC = 45,
        RunOnS = 10 * 60,
        RoomAirFromC = 45,
        Codes = [NoFire, LowDraught, TooHot, DoorOpen, Sensor, Blower],
    };

    private static BurnProgram Hydronic() => new()
    {
        Pattern = "hydronic",
        PurgeS = 120,
        IgniterS = 12 * 60,
        StartFeedShare = 0.5,
        LowFeedShare = 0.4,
        Proof = new ProofOfFire(ProofKind.ExhaustProbe, 25 * 60, 50, 42, 120),
        Settings = [new(VacuumSwitch, 12, 8), new(HighLimitDisc, 90, 75), new(SafetyThermostat, 95, 80)],
        Watched =
        [
            new WatchedContact(VacuumSwitch, 60, 60, Alarms.LowDraught),
            new WatchedContact(DoorSwitch, 0, 60, Alarms.Door),
            new WatchedContact(SafetyThermostat, 0, 5, Alarms.OverTemperature),
        ],
        SpeedMissingS = 30,
        ExhaustLimitC = 260,
        WaterLimitC = 85,
        PumpFromC = 50,
        CoolC = 45,
        RunOnS = 10 * 60,
        RoomAirFromC = double.PositiveInfinity,
        Codes = [NoFire, LowDraught, TooHot, DoorOpen, Sensor, Blower],
    };

    private static BurnProgram MultiFuel() => new()
    {
        Pattern = "multi-fuel-agitator",
        PurgeS = 60,
        IgniterS = 15 * 60,
        StartFeedShare = 0.5,
        LowFeedShare = 0.5,
        Proof = new ProofOfFire(ProofKind.Disc, Wirings.MultiFuelWiring.ProofTimeS, double.NaN, double.NaN, 60),
        Settings = [new(VacuumSwitch, 12.5, 8.7), new(ProofDisc, 49, 38), new(HighLimitDisc, 93, 80), new(RoomAirDisc, 49, 38)],
        CoolC = 40,
        RunOnS = 10 * 60,
        RoomAirFromC = 0,
        Codes = [NoFire with { Shown = "lamp blinks" }],
    };
}
