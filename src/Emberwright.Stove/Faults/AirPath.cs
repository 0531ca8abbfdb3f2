using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Faults of the way the combustion air takes, apart from fouling: intake, pot, baffle, vent, terminal.</summary>
internal static class AirPath
{
    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "nest-in-cap",
            Name = "Vent cap blocked by a nest",
            Aliases = ["cap blocked", "bird nest", "wasp nest", "nest in the cap", "terminal blocked"],
            Area = Area.Vent,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Vent, -1.35, 0.6)],
            Symptoms =
            [
                .. Says((StopsProving, .5), (NoFeed, .2), (SmokeOrSmell, .15), (LazyFlame, .1)),
                new("cap-look", "nest", .92), new("onset", "season-start", .5), new("onset", "sudden", .35),
            ],
            Remedy = new(RemedyKind.Clean, "Clear the cap and the top of the run, look down the vent for what fell in, empty the tee, fit a bird guard the listing allows.",
                25, 0, [Cautions.Ladder, Cautions.MakeSafe]),
        },
        new()
        {
            Id = "terminal-snowed-in",
            Name = "Terminal snowed in or iced up",
            Aliases = ["snow over the vent", "terminal iced", "drift over the hood"],
            Area = Area.Vent,
            BaseRatePercent = 0.7,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Vent, -1.8, 0.7)],
            Symptoms =
            [
                .. Says((StopsProving, .35), (StopsLater, .2), (SmokeOrSmell, .25), (NoFeed, .15)),
                new("cap-look", "snow", .95), new("happens", "weather", .6), new("onset", "sudden", .8),
            ],
            Remedy = new(RemedyKind.Adjust, "Clear snow and ice from terminal and intake; raise the terminal or fit what its listing allows where it drifts in again.",
                10, 0, [Cautions.Ladder]),
        },
        new()
        {
            Id = "intake-blocked",
            Name = "Air intake blocked",
            Aliases = ["intake blocked", "air inlet blocked", "outside air blocked", "leaves in the intake", "screen blocked"],
            Area = Area.BurnPot,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Intake, -1.35, 0.6)],
            Symptoms =
            [
                .. Says((StopsProving, .3), (NoFeed, .1), (LazyFlame, .35), (NoLight, .1)),
                new("intake-look", "blocked", .93), new("glass", "black", .5),
            ],
            Remedy = new(RemedyKind.Clean, "Clear the intake and its screen from outside to the pot.", 10, 0, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "damper-stuck",
            Name = "Air damper stuck or set wrong (too little air)",
            Aliases = ["damper stuck", "damper shut", "intake flapper stuck", "flapper stuck"],
            Area = Area.BurnPot,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Patterns = PatternIds.AirDamper,
            Shifts = [new(Parameter.Intake, -1.0, 0.5)],
            Symptoms =
            [
                .. Says((LazyFlame, .5), (StopsProving, .2), (NoLight, .1)),
                new("damper", "shut", .9), new("glass", "black", .5), new("onset", "after-work", .2),
            ],
            Remedy = new(RemedyKind.Adjust, "Free the damper, set it by the flame and the firebox vacuum, lock it, mark it.", 8, 0, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "damper-open",
            Name = "Air damper too far open (too much air)",
            Aliases = ["too much air", "intake damper open", "damper off its stop"],
            Area = Area.BurnPot,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Patterns = PatternIds.AirDamper,
            Shifts = [new(Parameter.Intake, 0.45, 0.2)],
            Symptoms =
            [
                .. Says((FierceFlame, .35), (LittleHeat, .2), (EatsFuel, .15), (NoLight, .1), (StopsProving, .1)),
                new("damper", "open", .9),
            ],
            Remedy = new(RemedyKind.Adjust, "Set the damper by the flame and the firebox vacuum, lock it, mark it.", 8, 0, [Cautions.Hot]),
        },
        new()
        {
            Id = "pot-misseated",
            Name = "Burn pot not seated, air passes beside it",
            Aliases = ["burn pot mis-seated", "pot not down", "liner askew"],
            Area = Area.BurnPot,
            BaseRatePercent = 2.5,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.BurnPot, 0.35, 0.2)],
            Symptoms =
            [
                .. Says((NoLight, .35), (LazyFlame, .25), (StopsProving, .15), (FierceFlame, .05)),
                new("pot-seat", "askew", .92), new("onset", "after-work", .35), new("pot-content", "heap", .5),
            ],
            Remedy = new(RemedyKind.Adjust, "Clean the ledge, set the pot down flat, check that it cannot rock.", 3, 0, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "pot-turned",
            Name = "Burn pot back to front, the igniter misses it",
            Aliases = ["burn pot turned round", "pot the wrong way round"],
            Area = Area.Ignition,
            BaseRatePercent = 1.5,
            Origin = Origins.Practice,
            Patterns = [PatternIds.Damper, PatternIds.Thermocouple, PatternIds.Sealed, PatternIds.Hydronic],
            Symptoms =
            [
                .. Says((NoLight, .9)),
                new("pot-seat", "turned", .95), new("onset", "after-work", .6), new("pot-content", "heap", .85), new("code", "no-fire", .5),
            ],
            Remedy = new(RemedyKind.Adjust, "Turn the pot so that its igniter hole meets the igniter, empty the heap first.", 3, 0, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "baffle-misplaced",
            Name = "Baffle or fire wall misplaced",
            Aliases = ["baffle misplaced", "firebrick fallen", "fire wall not seated"],
            Area = Area.AshPassages,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Exchanger, -0.6, 0.4), new(Parameter.Insulation, -0.25, 0.15)],
            Symptoms =
            [
                .. Says((LittleHeat, .35), (LazyFlame, .25), (StopsProving, .1), (EatsFuel, .1), (Noise, .05)),
                new("baffle", "misplaced", .93), new("onset", "after-work", .5),
            ],
            Remedy = new(RemedyKind.Adjust, "Seat the baffle and the fire wall on their ledges.", 8, 0, [Cautions.MakeSafe, Cautions.Fibre]),
        },
        new()
        {
            Id = "tee-full",
            Name = "Tee full of what was swept down",
            Aliases = ["tee full after sweeping", "soot in the tee", "tee blocked"],
            Area = Area.Vent,
            BaseRatePercent = 1,
            Origin = Origins.Practice,
            Shifts = [new(Parameter.Vent, -1.1, 0.5)],
            Symptoms =
            [
                .. Says((StopsProving, .3), (LazyFlame, .25), (NoFeed, .2), (SmokeOrSmell, .15)),
                new("tee-look", "full", .95), new("work-done", "swept", .6), new("onset", "after-work", .6),
            ],
            Remedy = new(RemedyKind.Clean, "Open and empty the tee last of all; put its cap back with its seal.", 8, 0, [Cautions.Ash, Cautions.MakeSafe]),
        },
        new()
        {
            Id = "vent-too-restrictive",
            Name = "Vent run too restrictive",
            Aliases = ["vent too long", "too many elbows", "vent run too restrictive", "3 inch where 4 is needed"],
            Area = Area.Vent,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Vent, -0.45, 0.2)],
            Symptoms =
            [
                .. Says((LazyFlame, .45), (StopsProving, .2), (SmokeOrSmell, .1)),
                new("onset", "from-new", .75), new("glass", "black", .5), new("vent-route", "long", .85),
            ],
            Remedy = new(RemedyKind.Advise, "Work the run out with its fittings and altitude; a larger diameter or fewer elbows within the listing.",
                20, 0, [Cautions.Licensed]),
        },
        new()
        {
            Id = "vent-without-rise",
            Name = "Vent without rise: no natural draught in a power cut",
            Aliases = ["vent without rise", "no natural draught", "power outage", "smoke-back in a power cut", "straight out through the wall"],
            Area = Area.Vent,
            BaseRatePercent = 1,
            Origin = Origins.Practice,
            Symptoms =
            [
                .. Says((PowerCutSmoke, .9), (CoAlarm, .05)), new("room-monoxide", "none", .97),
                new("vent-route", "flat", .97), new("power", "cut", .9), new("backup", "none", .9),
            ],
            Remedy = new(RemedyKind.Advise, "Nothing is broken: a rise in the vent or a backup supply with a suitable waveform; a CO alarm in the room.",
                15, 0, [Cautions.Monoxide]),
        },
        new()
        {
            Id = "condensate-in-vent",
            Name = "Condensate standing in the vent",
            Aliases = ["water in the vent", "condensate in vent", "drain blocked"],
            Area = Area.Vent,
            BaseRatePercent = 0.6,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Vent, -0.8, 0.4)],
            Symptoms =
            [
                .. Says((StopsProving, .25), (AlarmShown, .2), (Noise, .15), (LazyFlame, .15)),
                new("noise", "gurgle", .5), new("tee-look", "wet", .9), new("happens", "weather", .3),
            ],
            Remedy = new(RemedyKind.Clean, "Drain the tee, clear its drain, insulate the cold part of the run, correct its fall.", 20, 0, [Cautions.MakeSafe]),
        },
    ];
}
