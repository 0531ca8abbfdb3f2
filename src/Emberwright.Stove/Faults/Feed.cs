using Emberwright.Stove.Controls;
using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Faults between hopper and burn pot. Where no fuel falls at all there is no fire to compute: they show by signs.</summary>
internal static class Feed
{
    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "hopper-empty",
            Name = "Hopper empty",
            Aliases = ["no fuel", "out of pellets"],
            Area = Area.Feed,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Symptoms =
            [
                .. Says((NoFeed, .5), (StopsProving, .25), (StopsLater, .2)),
                new("hopper", "empty", .97), new("hopper-filled", "no", .8), new("feed-drop", "none", .9), new("code", "no-fire", .5),
            ],
            Remedy = new(RemedyKind.Adjust, "Fill the hopper; the auger takes some minutes to fill before the first pellet falls.", 4, 0, [Cautions.Auger]),
        },
        new()
        {
            Id = "hopper-bridging",
            Name = "Pellets bridging in the hopper",
            Aliases = ["bridging", "hopper bridging", "hole over the auger", "pellets hang up"],
            Area = Area.Feed,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Symptoms =
            [
                .. Says((NoFeed, .45), (StopsLater, .25), (StopsProving, .25)),
                new("hopper", "hollow", .95), new("bridge", "hollow", .92), new("feed-drop", "none", .85), new("fuel", "long", .45), new("fuel", "new-brand", .25),
                new("feed-pulse", "turns", .97),
            ],
            Remedy = new(RemedyKind.Adjust, "Stove off and out: break the bridge with a wooden stick, sieve out long pellets and dust, another fuel next time.", 4, 0, [Cautions.Auger]),
        },
        new()
        {
            Id = "feed-jam",
            Name = "Feed jammed",
            Aliases = ["feed jam", "auger jam", "auger jammed", "foreign object in the auger", "packed fines"],
            Area = Area.Feed,
            BaseRatePercent = 5,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.FeedMotor, ComponentState.Stalled)],
            Symptoms =
            [
                .. Says((NoFeed, .7), (StopsProving, .15), (Noise, .08)),
                new("feed-pulse", "springs-back", .75), new("feed-pulse", "hums", .12), new("noise", "click", .55), new("auger-hand", "locks", .9), new("feed-motor-alone", "turns", .95),
                new("feed-drop", "none", .9), new("auger-look", "object", .4), new("auger-look", "packed", .5), new("fuel", "dusty", .3),
            ],
            Remedy = new(RemedyKind.Adjust, "Empty the hopper, free the auger, draw the flight if need be, take out what jams it and the packed fines.",
                20, 0, [Cautions.MakeSafe, Cautions.Auger]),
        },
        new()
        {
            Id = "feed-motor-dead",
            Name = "Feed motor dead",
            Aliases = ["auger motor dead", "feed motor burnt out", "auger motor"],
            Area = Area.Feed,
            BaseRatePercent = 3,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.FeedMotor, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoFeed, .88), (StopsProving, .05)),
                new("feed-pulse", "still", .95), new("feed-motor-alone", "dead", .96), new("feed-drop", "none", .95), new("onset", "sudden", .7),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the feed motor: same rotation, shaft and revolutions per minute.", 25, 130, [Cautions.MakeSafe, Cautions.Auger], 0.6),
            ProvedBy = ["feed-motor-ohms", "feed-motor-alone"],
        },
        new()
        {
            Id = "feed-motor-weak",
            Name = "Feed motor stalls under load",
            Aliases = ["auger motor weak", "feed motor weak"],
            Area = Area.Feed,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.FeedMotor, ComponentState.Drifted, 0.7)],
            Symptoms =
            [
                .. Says((NoFeed, .4), (StopsLater, .25), (StopsProving, .2)),
                new("feed-pulse", "slow", .5), new("feed-pulse", "springs-back", .25), new("feed-motor-alone", "stalls", .6), new("auger-hand", "free", .95), new("happens", "warm-only", .45),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the feed motor once the auger turns free by hand and the motor alone stalls against a stick: same rotation, shaft and revolutions per minute.", 25, 130,
                [Cautions.MakeSafe, Cautions.Auger], 0.6),
            ProvedBy = ["feed-motor-alone"],
        },
        new()
        {
            Id = "feed-gearbox-stripped",
            Name = "Feed gearbox stripped",
            Aliases = ["gearbox stripped", "auger gearbox", "gear stripped"],
            Area = Area.Feed,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Symptoms =
            [
                .. Says((NoFeed, .65), (StopsLater, .12), (Noise, .1), (StopsProving, .1)),
                new("feed-pulse", "turns", .3), new("feed-pulse", "springs-back", .45), new("feed-shaft", "slips", .93), new("noise", "grind", .4), new("noise", "click", .3),
                new("feed-motor-alone", "stalls", .75), new("auger-hand", "free", .95), new("feed-drop", "none", .85),
            ],
            Remedy = new(RemedyKind.Replace, "Free the auger first, since what stripped the gears may still sit in it; then replace the feed motor with its gearbox: same rotation, shaft and revolutions per minute.", 25, 130,
                [Cautions.MakeSafe, Cautions.Auger], 0.6),
            ProvedBy = ["feed-motor-alone", "look-feed-shaft"],
        },
        new()
        {
            Id = "coupling-loose",
            Name = "Feed coupling loose or its pin sheared",
            Aliases = ["coupling loose", "set screw loose", "shear pin", "collar screw"],
            Area = Area.Feed,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Symptoms =
            [
                .. Says((NoFeed, .7), (StopsLater, .12), (Noise, .06), (StopsProving, .1)),
                new("coupling", "loose", .95), new("feed-pulse", "turns", .9), new("feed-drop", "none", .9), new("onset", "after-work", .25), new("feed-motor-alone", "turns", .97),
            ],
            Remedy = new(RemedyKind.Adjust, "Tighten the set screw on the flat, or a new pin; find what the auger met.", 8, 2, [Cautions.MakeSafe, Cautions.Auger]),
        },
        new()
        {
            Id = "auger-bearing-worn",
            Name = "Auger bearing or bushing worn",
            Aliases = ["auger bearing", "auger bushing", "squealing auger"],
            Area = Area.Feed,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Symptoms =
            [
                .. Says((Noise, .6), (NoFeed, .2), (StopsLater, .08)),
                new("noise", "squeal", .5), new("noise", "grind", .25), new("auger-hand", "grinds", .85), new("feed-pulse", "slow", .4), new("feed-motor-alone", "turns", .95),
            ],
            Remedy = new(RemedyKind.Replace, "New auger bushing; clean the flight and the tube while it is out.", 35, 30, [Cautions.MakeSafe, Cautions.Auger], 0.4),
            ProvedBy = ["turn-auger"],
        },
        new()
        {
            Id = "feed-mount-loose",
            Name = "Feed motor mounting loose",
            Aliases = ["motor mount", "torque arm loose"],
            Area = Area.Feed,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Symptoms = [.. Says((Noise, .8), (NoFeed, .1)), new("noise", "click", .4), new("noise", "squeal", .2), new("feed-mount", "loose", .94)],
            Remedy = new(RemedyKind.Adjust, "Tighten the mounting, renew its rubber.", 8, 3, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "feed-trim-high",
            Name = "Feed trim too high",
            Aliases = ["feed trim wrong", "feed setting too high", "overfeeding"],
            Area = Area.Feed,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Feed, 0.35, 0.12)],
            Symptoms =
            [
                .. Says((FierceFlame, .4), (LazyFlame, .2), (EatsFuel, .2), (TripsLimit, .05)),
                new("settings", "changed", .8), new("pot-content", "heap", .4), new("ash-kind", "black-cinders", .4), new("onset", "after-work", .3),
            ],
            Remedy = new(RemedyKind.Adjust, "Weigh the feed, set the trim to the card, watch the flame half an hour.", 12, 0, [Cautions.Hot, Cautions.Monoxide]),
        },
        new()
        {
            Id = "feed-trim-low",
            Name = "Feed trim too low",
            Aliases = ["feed trim wrong", "feed setting too low", "underfeeding"],
            Area = Area.Feed,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Feed, -0.4, 0.15)],
            Symptoms =
            [
                .. Says((LittleHeat, .35), (StopsProving, .3), (StopsLater, .15)),
                new("settings", "changed", .8), new("onset", "after-work", .3), new("flame", "weak", .5),
            ],
            Remedy = new(RemedyKind.Adjust, "Weigh the feed, set the trim to the card, watch the flame half an hour.", 12, 0, [Cautions.Hot, Cautions.Monoxide]),
        },
        new()
        {
            Id = "auger-worn",
            Name = "Auger flight worn or tube polished: feeds too little",
            Aliases = ["auger worn", "flight worn"],
            Area = Area.Feed,
            BaseRatePercent = 0.5,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Feed, -0.3, 0.15)],
            Symptoms =
            [
                .. Says((LittleHeat, .4), (StopsProving, .25), (StopsLater, .15)),
                new("auger-look", "worn", .9), new("onset", "gradual", .8), new("settings", "right", .9),
            ],
            Remedy = new(RemedyKind.Replace, "New auger flight.", 45, 90, [Cautions.MakeSafe, Cautions.Auger], 0.1),
            ProvedBy = ["weigh-feed", "draw-auger"],
        },
    ];
}
