using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Fouling, of which every stove has a little: present as a fault once its parameter has passed the limit.</summary>
/// <remarks>Rates are this share of the calls that end with cleaning only; the estimate itself comes from the fuel burned.</remarks>
internal static class Fouling
{
    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "ash-passages-full",
            Name = "Ash passages full",
            Aliases = ["ash passages blocked", "ash traps full", "ash chamber full", "fly ash packed", "behind the fire wall full"],
            Area = Area.AshPassages,
            BaseRatePercent = 12,
            Origin = Origins.Memory,
            Fouling = new(Parameter.AshPassages, -0.51),
            Symptoms =
            [
                .. Says((NoFeed, .25), (StopsProving, .25), (LazyFlame, .25), (StopsLater, .12)),
                new("onset", "gradual", .75), new("glass", "black", .55), new("happens", "on-high", .15),
                new("code", "low-draught", .35),
            ],
            Remedy = new(RemedyKind.Clean, "Open the covers of the ash passages, empty and brush them to bare metal, new gaskets under the covers.",
                20, 0, [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre]),
        },
        new()
        {
            Id = "exchanger-blocked",
            Name = "Exchanger passages blocked",
            Aliases = ["exchanger passages full", "heat exchanger plugged", "tubes plugged"],
            Area = Area.AshPassages,
            BaseRatePercent = 6,
            Origin = Origins.Memory,
            Fouling = new(Parameter.Exchanger, -0.51),
            Symptoms =
            [
                .. Says((StopsProving, .2), (NoFeed, .15), (LazyFlame, .3), (StopsLater, .12), (LittleHeat, .1)),
                new("onset", "gradual", .75), new("glass", "black", .5), new("code", "low-draught", .3),
            ],
            Remedy = new(RemedyKind.Clean, "Scrape and brush the exchanger's passages, then empty what fell into the ash passages below.",
                20, 0, [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre]),
        },
        new()
        {
            Id = "exchanger-fouled",
            Name = "Exchanger fouled (insulating deposit)",
            Aliases = ["exchanger coated", "heat exchanger dirty", "fins coated", "exchanger fouled"],
            Area = Area.AshPassages,
            BaseRatePercent = 6,
            Origin = Origins.Memory,
            Fouling = new(Parameter.Insulation, -0.36),
            Symptoms =
            [
                .. Says((LittleHeat, .45), (EatsFuel, .25), (TripsLimit, .08), (AlarmShown, .08)),
                new("onset", "gradual", .75), new("code", "over-temperature", .2), new("warm-air-change", "cooler", .55),
            ],
            Remedy = new(RemedyKind.Clean, "Brush the exchanger's surfaces to bare metal on the fire side and blow out the air side.",
                20, 0, [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre]),
        },
        new()
        {
            Id = "vent-fouled",
            Name = "Vent partly blocked",
            Aliases = ["vent blocked", "vent sooted", "flue blocked", "chimney blocked", "pipe choked"],
            Area = Area.Vent,
            BaseRatePercent = 5,
            Origin = Origins.Memory,
            Fouling = new(Parameter.Vent, -0.51),
            Symptoms =
            [
                .. Says((StopsProving, .2), (NoFeed, .15), (LazyFlame, .25), (StopsLater, .12), (SmokeOrSmell, .12)),
                new("onset", "gradual", .7), new("glass", "black", .5), new("code", "low-draught", .3),
            ],
            Remedy = new(RemedyKind.Clean, "Sweep the vent from the top down, the tee last; put its cap back with its seal.",
                25, 0, [Cautions.MakeSafe, Cautions.Ladder, Cautions.Ash]),
        },
        new()
        {
            Id = "pot-clogged",
            Name = "Burn-pot holes clogged",
            Aliases = ["burn pot clogged", "fire pot blocked", "clinker in the pot", "grate blocked", "brazier blocked"],
            Area = Area.BurnPot,
            BaseRatePercent = 7,
            Origin = Origins.Memory,
            Fouling = new(Parameter.BurnPot, -0.4),
            Symptoms =
            [
                .. Says((LazyFlame, .3), (NoLight, .2), (StopsProving, .2), (FierceFlame, .08), (StopsLater, .08)),
                new("pot-content", "clinker", .4), new("pot-content", "heap", .3), new("ash-kind", "black-cinders", .4),
                new("glass", "black", .5), new("ash-kind", "clinker", .25),
            ],
            Remedy = new(RemedyKind.Clean, "Lift the pot out, scrape it, open every hole with a drill bit held in the fingers, put it back the right way round.",
                4, 0, [Cautions.MakeSafe, Cautions.Ash]),
        },
        new()
        {
            Id = "wheel-fouled",
            Name = "Combustion blower wheel fouled",
            Aliases = ["exhaust fan dirty", "draft fan dirty", "blower wheel fouled", "impeller caked"],
            Area = Area.CombustionBlower,
            BaseRatePercent = 4,
            Origin = Origins.Memory,
            Fouling = new(Parameter.Wheel, -0.22) { Beyond = 0.1 },
            Symptoms =
            [
                .. Says((LazyFlame, .3), (StopsProving, .2), (NoFeed, .15), (StopsLater, .1), (Noise, .1)),
                new("onset", "gradual", .7), new("noise", "rattle", .15), new("noise", "hum", .1),
            ],
            Remedy = new(RemedyKind.Clean, "Take the combustion blower out, brush wheel and housing to bare metal, refit with a new gasket.",
                20, 8, [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre, Cautions.Sealant]),
        },
        new()
        {
            Id = "room-blower-dirty",
            Name = "Room-air blower dirty",
            Aliases = ["room-air blower dead/dirty", "room-air blower choked", "convection fan dirty", "distribution fan dirty", "choked with hair"],
            Area = Area.RoomAirBlower,
            BaseRatePercent = 5,
            Origin = Origins.Memory,
            Patterns = PatternIds.RoomAirBlower,
            Fouling = new(Parameter.RoomAir, -0.51) { Beyond = 0.15 },
            Symptoms =
            [
                .. Says((TripsLimit, .35), (LittleHeat, .3), (StopsLater, .15), (Noise, .06)),
                new("onset", "gradual", .7), new("warm-air-change", "weaker", .7), new("code", "over-temperature", .3),
                new("pets", "yes", .6), new("disc-click", "clicks", .35),
            ],
            Remedy = new(RemedyKind.Clean, "Brush and blow out the room-air blower's inlet, wheel and grille, outdoors if it can come out.",
                15, 0, [Cautions.MakeSafe]),
        },
    ];
}
