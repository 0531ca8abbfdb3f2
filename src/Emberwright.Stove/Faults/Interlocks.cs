using Emberwright.Stove.Controls;
using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Faults of the safety switches in series with the feed, and of the hose to the vacuum switch.</summary>
internal static class Interlocks
{
    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "hose-off",
            Name = "Sensing hose off or cracked",
            Aliases = ["vacuum hose off", "hose off", "sensing hose cracked", "vacuum hose split"],
            Area = Area.Interlocks,
            BaseRatePercent = 3,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.SensedPressure, -4, 0.8)],
            Symptoms =
            [
                .. Says((NoFeed, .8), (StopsProving, .1), (AlarmShown, .06)), new("feed-pulse", "still", .9),
                new("hose", "off", .6), new("hose", "cracked", .37), new("onset", "sudden", .5), new("onset", "after-work", .35), new("code", "low-draught", .5),
            ],
            Remedy = new(RemedyKind.Adjust, "Refit the hose, cut back or renew a cracked end; heat-proof hose of the same bore.", 4, 3, [Cautions.HoseOff]),
        },
        new()
        {
            Id = "hose-plugged",
            Name = "Sensing hose or its tap plugged",
            Aliases = ["vacuum hose plugged", "hose blocked", "pressure tap blocked", "hose plugged with soot"],
            Area = Area.Interlocks,
            BaseRatePercent = 3,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.SensedPressure, -3, 0.9)],
            Symptoms =
            [
                .. Says((NoFeed, .6), (StopsProving, .3), (AlarmShown, .05)), new("feed-pulse", "still", .8),
                new("hose-bore", "blocked", .93), new("onset", "gradual", .35), new("code", "low-draught", .5),
            ],
            Remedy = new(RemedyKind.Clean, "Take the hose off the switch, clear tap and hose, refit.", 6, 0, [Cautions.HoseOff]),
        },
        new()
        {
            Id = "condensate-in-hose",
            Name = "Water in the sensing hose",
            Aliases = ["condensate in hose", "hose wet", "water in the hose"],
            Area = Area.Interlocks,
            BaseRatePercent = 0.7,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.SensedPressure, -1.5, 0.7)],
            Symptoms =
            [
                .. Says((AlarmShown, .3), (StopsProving, .3), (NoFeed, .25)),
                new("hose-bore", "wet", .93), new("code", "low-draught", .6), new("happens", "weather", .3),
            ],
            Remedy = new(RemedyKind.Clean, "Take the hose off the switch, blow it dry, lay it so that it falls towards the stove.", 6, 0, [Cautions.HoseOff]),
        },
        new()
        {
            Id = "vacuum-switch-open",
            Name = "Vacuum switch stuck open",
            Aliases = ["vacuum switch bad", "pressure switch stuck open", "vacuum switch"],
            Area = Area.Interlocks,
            BaseRatePercent = 1.6,
            Origin = Origins.Memory,
            Patterns = PatternIds.VacuumSwitch,
            Circuit = [new(ComponentIds.VacuumSwitch, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoFeed, .75), (StopsProving, .15), (AlarmShown, .06)),
                new("switch-pump", "never-closes", .94), new("onset", "sudden", .6), new("code", "low-draught", .5),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the vacuum switch by one of the same rating once the vacuum at its hose is right and it stays open on a hand pump.",
                12, 45, [Cautions.MakeSafe, Cautions.NoBridge]),
            ProvedBy = ["vacuum-switch-pump", "vacuum-switch-both"],
        },
        new()
        {
            Id = "vacuum-switch-drifted",
            Name = "Vacuum switch drifted",
            Aliases = ["vacuum switch or sensor drifted", "vacuum switch closes late", "vacuum switch weak"],
            Area = Area.Interlocks,
            BaseRatePercent = 1.4,
            Origin = Origins.Memory,
            Patterns = PatternIds.VacuumSwitch,
            Shifts = [new(Parameter.SwitchThreshold, 0.85, 0.3)],
            Symptoms =
            [
                .. Says((NoFeed, .6), (StopsProving, .3), (AlarmShown, .05)),
                new("switch-pump", "late", .93), new("onset", "gradual", .5), new("happens", "at-random", .2), new("code", "low-draught", .5),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the vacuum switch by one of the same rating once a hand pump and gauge show it closing past its label.",
                12, 45, [Cautions.MakeSafe, Cautions.NoBridge]),
            ProvedBy = ["vacuum-switch-pump", "vacuum-switch-both"],
        },
        new()
        {
            Id = "vacuum-switch-closed",
            Name = "Vacuum switch stuck closed",
            Aliases = ["vacuum switch stuck closed", "vacuum switch welded"],
            Area = Area.Interlocks,
            BaseRatePercent = 0.6,
            Origin = Origins.Memory,
            Patterns = PatternIds.VacuumSwitch,
            Circuit = [new(ComponentIds.VacuumSwitch, ComponentState.Shorted)],
            Symptoms =
            [
                .. Says((AlarmShown, .35), (SmokeOrSmell, .15), (Due, .25)),
                new("switch-pump", "never-opens", .94), new("hose-off-test", "feeds-on", .95),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the vacuum switch; prove that the feed stops with the hose off.", 12, 45, [Cautions.MakeSafe, Cautions.NoBridge]),
            ProvedBy = ["vacuum-switch-pump", "hose-off-test"],
            SafetyStop = "safety-device-bridged",
        },
        new()
        {
            Id = "safety-bridged",
            Name = "Safety device bridged",
            Aliases = ["switch jumped", "jumper wire", "bridged safety device", "limit bypassed"],
            Area = Area.Interlocks,
            BaseRatePercent = 0.7,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.HighLimitDisc, ComponentState.Shorted)],
            Symptoms = [.. Says((Due, .3), (TripsLimit, .1), (SmokeOrSmell, .1)), new("bridge-wire", "found", .95), new("onset", "after-work", .4)],
            Remedy = new(RemedyKind.Adjust, "Take the bridge off, then find out why it was put there; out of use until the switch works.", 10, 0, [Cautions.MakeSafe, Cautions.NoBridge]),
            SafetyStop = "safety-device-bridged",
        },
        new()
        {
            Id = "high-limit-tripped",
            Name = "High-limit disc tripped",
            Aliases = ["high limit tripped", "snap disc tripped", "high-limit disc tripped", "overheat reset"],
            Area = Area.Interlocks,
            BaseRatePercent = 3.5,
            Origin = Origins.Memory,
            Patterns = PatternIds.HighLimit,
            Circuit = [new(ComponentIds.HighLimitDisc, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoFeed, .45), (TripsLimit, .25), (StopsProving, .05), (StopsLater, .1), (Dead, .05)),
                new("disc-click", "clicks", .95), new("code", "over-temperature", .4), new("onset", "sudden", .7),
            ],
            CausedBy =
            [
                new("room-blower-dirty", 10), new("room-blower-dead", 12), new("room-blower-slow", 8), new("room-air-output-dead", 12), new("room-blower-disc-open", 12),
                new("exchanger-fouled", 3), new("burn-back", 10), new("feed-output-stuck-on", 6), new("feed-trim-high", 3),
                new("pump-seized", 6), new("pump-dead", 6), new("air-lock", 6),
            ],
            Remedy = new(RemedyKind.Reset, "Find why it got hot first; then press the reset, hear it click, and watch its place warm up on high.", 3, 0, [Cautions.FindWhy, Cautions.NoBridge]),
            ProvedBy = ["high-limit-voltage", "high-limit-ohms"],
        },
        new()
        {
            Id = "high-limit-bad",
            Name = "High-limit disc bad",
            Aliases = ["high-limit disc bad", "limit disc weak", "limit opens too early"],
            Area = Area.Interlocks,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.HighLimitDisc, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoFeed, .5), (StopsLater, .2), (TripsLimit, .15), (Dead, .05)),
                new("disc-click", "clicks-again", .5), new("disc-click", "silent", .45), new("disc-bench", "early", .9),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the disc by one of the same temperature and reset kind, once its place is cool and it still opens.",
                12, 20, [Cautions.MakeSafe, Cautions.NoBridge, Cautions.FindWhy]),
            ProvedBy = ["high-limit-voltage", "high-limit-ohms", "disc-hot-plate"],
        },
        new()
        {
            Id = "lid-switch-open",
            Name = "Lid switch open",
            Aliases = ["lid/door switch open", "hopper lid switch", "lid switch not reached", "lid bent", "lid switch"],
            Area = Area.Interlocks,
            BaseRatePercent = 3,
            Origin = Origins.Memory,
            Patterns = PatternIds.LidSwitch,
            Circuit = [new(ComponentIds.LidSwitch, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoFeed, .87), (StopsProving, .05)),
                new("lid-home", "proud", .55), new("lid-shut", "no", .15), new("lid-plunger", "feeds", .75), new("lid-history", "hit", .35), new("onset", "sudden", .6),
            ],
            Remedy = new(RemedyKind.Adjust, "Straighten lid or hinge so that it presses the plunger home; replace a switch that stays open when pressed.",
                12, 12, [Cautions.MakeSafe, Cautions.NoBridge]),
            ProvedBy = ["lid-switch-voltage", "lid-plunger", "look-lid"],
        },
        new()
        {
            Id = "door-switch-open",
            Name = "Door switch open",
            Aliases = ["lid/door switch open", "door contact open", "fuel door switch"],
            Area = Area.Interlocks,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Patterns = PatternIds.DoorSwitch,
            Circuit = [new(ComponentIds.DoorSwitch, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoFeed, .5), (AlarmShown, .35), (StopsProving, .08)),
                new("door-plunger", "feeds", .85), new("latch", "loose", .3), new("onset", "sudden", .6), new("code", "door", .6),
            ],
            Remedy = new(RemedyKind.Adjust, "Set latch and switch so that the shut door presses it home; replace one that stays open.", 12, 12, [Cautions.MakeSafe, Cautions.NoBridge]),
            ProvedBy = ["door-switch-voltage", "door-plunger"],
        },
        new()
        {
            Id = "proof-disc-bad",
            Name = "Proof-of-fire disc bad",
            Aliases = ["proof-of-fire switch bad", "proof of fire disc", "exhaust snap disc", "low-limit disc"],
            Area = Area.Interlocks,
            BaseRatePercent = 5,
            Origin = Origins.Memory,
            Patterns = PatternIds.ProofDisc,
            Circuit = [new(ComponentIds.ProofDisc, ComponentState.Open)],
            Symptoms =
            [
                .. Says((StopsProving, .85), (NoFeed, .04), (StopsLater, .06)),
                new("disc-bench", "never", .9), new("code", "no-fire", .4),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the disc by one of the same temperature once it stays open on a hot plate or hot exhaust.", 12, 20, [Cautions.MakeSafe, Cautions.NoBridge]),
            ProvedBy = ["proof-disc-voltage", "disc-hot-plate"],
        },
        new()
        {
            Id = "proof-disc-cold",
            Name = "Proof-of-fire disc sooted or not seated",
            Aliases = ["proof disc loose", "proof disc dirty", "proof-of-fire disc out of place"],
            Area = Area.Interlocks,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Patterns = PatternIds.ProofDisc,
            Shifts = [new(Parameter.ProofSensor, -35, 12)],
            Symptoms = [.. Says((StopsProving, .85), (StopsLater, .08)), new("disc-seat", "loose", .5), new("disc-seat", "sooted", .43), new("disc-bench", "right", .95)],
            Remedy = new(RemedyKind.Clean, "Wipe the disc and its seat, screw it flat.", 6, 0, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "proof-disc-closed",
            Name = "Proof-of-fire disc stuck closed",
            Aliases = ["proof of fire stuck closed", "stove will not shut down"],
            Area = Area.Interlocks,
            BaseRatePercent = 0.5,
            Origin = Origins.Memory,
            Patterns = PatternIds.ProofDisc,
            Circuit = [new(ComponentIds.ProofDisc, ComponentState.Shorted)],
            Symptoms = [.. Says((WillNotStop, .6), (Noise, .05), (NoLight, .1)), new("disc-bench", "stuck", .92), new("run-on", "never-stops", .85)],
            Remedy = new(RemedyKind.Replace, "Replace the disc by one of the same temperature.", 12, 20, [Cautions.MakeSafe, Cautions.NoBridge]),
            ProvedBy = ["proof-disc-voltage", "disc-hot-plate"],
        },
    ];
}
