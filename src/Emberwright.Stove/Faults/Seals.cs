using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Leaks: into the firebox and exhaust on the suction side, out into the room on the pressure side.</summary>
internal static class Seals
{
    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "door-gasket-leaking",
            Name = "Door gasket leaking",
            Aliases = ["door leaking", "door rope worn", "fuel door gasket"],
            Area = Area.Seals,
            BaseRatePercent = 4,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.DoorLeak, 2.0, 0.45)],
            Symptoms =
            [
                .. Says((StopsProving, .25), (NoFeed, .15), (LazyFlame, .35), (SmokeOrSmell, .08)),
                new("door-paper", "slides", .88), new("glass", "black", .5), new("ash-kind", "black-cinders", .3),
            ],
            Remedy = new(RemedyKind.Replace, "New door rope of the right diameter in fresh cement, hinge and latch set so that paper grips all round.",
                25, 25, [Cautions.Fibre, Cautions.MakeSafe]),
            ProvedBy = ["paper-strip-door", "smoke-pencil-door"],
        },
        new()
        {
            Id = "door-latch-loose",
            Name = "Door latch or hinge does not pull the door home",
            Aliases = ["latch loose", "hinge worn", "door not tight"],
            Area = Area.Seals,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.DoorLeak, 1.7, 0.5)],
            Symptoms =
            [
                .. Says((LazyFlame, .3), (StopsProving, .25), (NoFeed, .15), (SmokeOrSmell, .1)),
                new("latch", "loose", .93), new("door-paper", "slides", .8),
            ],
            Remedy = new(RemedyKind.Adjust, "Set latch and hinge until paper grips all round; a broken latch puts the stove out of use.", 12, 0, [Cautions.MakeSafe]),
            SafetyStop = "broken-glass-or-latch",
        },
        new()
        {
            Id = "ash-door-leaking",
            Name = "Ash door or ash pan gasket leaking",
            Aliases = ["ash door leaking", "ash pan not shut", "ash drawer open"],
            Area = Area.Seals,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.AshDoorLeak, 2.0, 0.5)],
            Symptoms =
            [
                .. Says((LazyFlame, .35), (StopsProving, .2), (NoFeed, .1), (FierceFlame, .1)),
                new("ash-door-paper", "slides", .88), new("glass", "black", .45),
            ],
            Remedy = new(RemedyKind.Replace, "New ash-door gasket, pan home and latched.", 15, 18, [Cautions.MakeSafe, Cautions.Fibre, Cautions.Ash]),
            ProvedBy = ["paper-strip-ash-door", "smoke-pencil-door"],
        },
        new()
        {
            Id = "glass-leaking",
            Name = "Glass cracked or its gasket leaking",
            Aliases = ["glass leaking", "glass cracked", "glass gasket"],
            Area = Area.Seals,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.DoorLeak, 1.2, 0.5)],
            Symptoms =
            [
                .. Says((LazyFlame, .3), (SmokeOrSmell, .15), (StopsProving, .15)),
                new("glass-whole", "cracked", .6), new("glass-whole", "gasket-worn", .35), new("glass", "streak", .6),
            ],
            Remedy = new(RemedyKind.Replace, "New glass gasket, or glass and gasket; screws only finger-tight plus a quarter turn.", 25, 60, [Cautions.MakeSafe, Cautions.Fibre], 0.5),
            ProvedBy = ["look-glass"],
            SafetyStop = "broken-glass-or-latch",
        },
        new()
        {
            Id = "hopper-lid-seal",
            Name = "Hopper-lid seal worn",
            Aliases = ["lid leaking", "hopper lid gasket", "lid seal"],
            Area = Area.Seals,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.LidLeak, 2.0, 0.5)],
            Symptoms =
            [
                .. Says((NoFeed, .2), (StopsProving, .2), (LazyFlame, .2), (SmokeOrSmell, .15), (HopperSmoke, .1)),
                new("lid-seal", "worn", .92),
            ],
            Remedy = new(RemedyKind.Replace, "New hopper-lid seal; lid flush when shut.", 12, 18, [Cautions.MakeSafe, Cautions.Auger]),
            ProvedBy = ["look-lid-seal", "tape-hopper-seam"],
        },
        new()
        {
            Id = "burn-back",
            Name = "Burn-back into the feed tube or hopper",
            Aliases = ["burn-back", "hopper fire", "smoke from the hopper"],
            Area = Area.Feed,
            BaseRatePercent = 0.6,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.LidLeak, 1.0, 0.6)],
            Symptoms =
            [
                .. Says((HopperSmoke, .75), (SmokeOrSmell, .15), (TripsLimit, .05)),
                new("smell", "hot-pellets", .8), new("feed-tube-look", "scorched", .93), new("code", "over-temperature", .4),
            ],
            Remedy = new(RemedyKind.Adjust, "Stop use. Find why: lid or tube seal, choked exhaust, blower that stopped, pellets left in the tube; prove shutdown before release.",
                45, 20, [Cautions.MakeSafe, Cautions.Ash, Cautions.FindWhy]),
            SafetyStop = "burn-back",
        },
        new()
        {
            Id = "exchanger-cracked",
            Name = "Exchanger or firebox cracked",
            Aliases = ["cracked exchanger", "cracked firebox", "weld cracked", "burnt through"],
            Area = Area.AshPassages,
            BaseRatePercent = 0.7,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.ExhaustLeak, 2.2, 0.6)],
            Symptoms =
            [
                .. Says((SmokeOrSmell, .35), (CoAlarm, .2), (LazyFlame, .15), (StopsProving, .1)), new("warm-air-monoxide", "rise", .8), new("room-monoxide", "rise", .3),
                new("exchanger-crack", "crack", .85), new("smell", "smoke", .5), new("smell-when", "after-shutdown", .5), new("oxygen-fan", "rises", .85),
            ],
            Remedy = new(RemedyKind.Advise, "Out of use: exhaust can reach the warm air. Replacement of the body or the stove is the maker's and the owner's decision.",
                15, 0, [Cautions.Monoxide]),
            SafetyStop = "cracked-exchanger",
        },
        new()
        {
            Id = "exhaust-cover-leaking",
            Name = "Clean-out cover of the ash passages leaking",
            Aliases = ["clean-out cover leaking", "ash passage cover gasket", "swing-down panel not sealed"],
            Area = Area.AshPassages,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.ExhaustLeak, 1.7, 0.5)],
            Symptoms =
            [
                .. Says((LazyFlame, .25), (StopsProving, .25), (NoFeed, .15)),
                new("exhaust-cover", "leaks", .9), new("onset", "after-work", .6), new("work-done", "service", .6),
            ],
            Remedy = new(RemedyKind.Adjust, "New gasket under the cover, screws even.", 12, 6, [Cautions.Fibre, Cautions.MakeSafe]),
        },
        new()
        {
            Id = "blower-gasket-leaking",
            Name = "Combustion blower gasket leaking exhaust into the room",
            Aliases = ["blower gasket leaking", "exhaust fan gasket", "blower flange leaking"],
            Area = Area.CombustionBlower,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.BlowerGasketLeak, 2.5, 0.6)],
            Symptoms =
            [
                .. Says((SmokeOrSmell, .55), (CoAlarm, .3)), new("room-monoxide", "rise", .8), new("flange-monoxide", "rise", .92),
                new("pencil-flange", "blown", .92), new("blower-gasket", "torn", .9), new("smell", "smoke", .75),
                new("onset", "after-work", .5), new("work-done", "service", .5), new("smell-when", "burning", .75), new("happens", "on-high", .35),
            ],
            Remedy = new(RemedyKind.Replace, "Take the blower off, clean both faces, new gasket; smoke pencil round the flange after.",
                25, 12, [Cautions.MakeSafe, Cautions.Fibre, Cautions.Sealant, Cautions.Monoxide]),
            ProvedBy = ["smoke-pencil-flange", "look-blower-gasket"],
            SafetyStop = "pressure-side-leak",
        },
        new()
        {
            Id = "vent-joint-leaking",
            Name = "Vent joint leaking into the room",
            Aliases = ["vent joints", "pipe joint leaking", "vent leaking"],
            Area = Area.Vent,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.VentLeak, 2.5, 0.6)],
            Symptoms =
            [
                .. Says((SmokeOrSmell, .6), (CoAlarm, .25)), new("room-monoxide", "rise", .75), new("flange-monoxide", "rise", .3),
                new("pencil-joints", "blown", .92), new("smell", "smoke", .75), new("onset", "after-work", .35), new("smell-when", "burning", .75),
            ],
            Remedy = new(RemedyKind.Adjust, "Take the joint apart, new seal as the vent's listing says, screws or locking bands; smoke pencil after.",
                20, 10, [Cautions.MakeSafe, Cautions.Monoxide]),
            SafetyStop = "pressure-side-leak",
        },
        new()
        {
            Id = "cleanout-cap-off",
            Name = "Clean-out cap off or not sealed",
            Aliases = ["clean-out cap off", "tee cap missing", "tee cap loose"],
            Area = Area.Vent,
            BaseRatePercent = 0.8,
            Origin = Origins.Practice,
            Shifts = [new(Parameter.VentLeak, 3.5, 0.6)],
            Symptoms =
            [
                .. Says((SmokeOrSmell, .65), (CoAlarm, .2)), new("room-monoxide", "rise", .8), new("flange-monoxide", "rise", .3),
                new("tee-cap", "off", .95), new("work-done", "swept", .5), new("onset", "after-work", .6), new("smell-when", "burning", .7),
            ],
            Remedy = new(RemedyKind.Adjust, "Put the cap back with its seal; smoke pencil after.", 5, 4, [Cautions.Monoxide]),
            SafetyStop = "cleanout-cap-off",
        },
    ];
}
