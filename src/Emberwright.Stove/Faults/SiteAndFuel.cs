using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Causes outside the appliance: house, weather, fuel, alarms.</summary>
internal static class SiteAndFuel
{
    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "house-depressurised",
            Name = "House depressurised",
            Aliases = ["house depressurised", "kitchen hood", "extractor fan", "negative pressure in the house", "tight house"],
            Area = Area.Site,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.House, -9, 3.5)],
            Symptoms =
            [
                .. Says((SmokeOrSmell, .5), (StopsProving, .15), (AlarmShown, .12), (CoAlarm, .08)), new("house-pressure", "deep", .94), new("room-monoxide", "rise", .5),
                new("happens", "extractor-on", .8), new("extractor", "strong", .75), new("window-open", "better", .9), new("hood-on", "worse", .92), new("smell", "smoke", .6),
            ],
            Remedy = new(RemedyKind.Advise, "No use with the hood until air is supplied: outside air to the stove, an interlock or a window contact; measure with the hood on.",
                20, 0, [Cautions.Monoxide, Cautions.Licensed]),
            SafetyStop = "spillage",
        },
        new()
        {
            Id = "outside-air-hose-off",
            Name = "Outside-air hose off",
            Aliases = ["outside-air hose off", "outside air disconnected", "outside air"],
            Area = Area.Site,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Symptoms =
            [
                .. Says((SmokeOrSmell, .3), (AlarmShown, .15), (StopsProving, .1), (Due, .2)), new("room-monoxide", "rise", .15),
                new("outside-air", "off", .96), new("onset", "after-work", .35), new("happens", "extractor-on", .4),
            ],
            Remedy = new(RemedyKind.Adjust, "Refit and clamp the outside-air hose; a room-sealed stove without it is not sealed.", 6, 3, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "wind",
            Name = "Wind on the terminal",
            Aliases = ["wind", "downdraught", "gusts", "wind pressure"],
            Area = Area.Site,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Wind, 9, 5)],
            Symptoms =
            [
                .. Says((SmokeOrSmell, .3), (StopsLater, .2), (StopsProving, .2), (LazyFlame, .1), (AlarmShown, .1)),
                new("happens", "weather", .85), new("terminal-place", "exposed", .75), new("onset", "sudden", .3),
            ],
            Remedy = new(RemedyKind.Advise, "Another terminal or place within the listing; look at it on a windy day.", 15, 0, [Cautions.Ladder]),
        },
        new()
        {
            Id = "pellets-wet",
            Name = "Wet pellets",
            Aliases = ["pellets wet", "damp pellets", "swollen pellets", "wet fuel"],
            Area = Area.Site,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Moisture, 0.07, 0.03)],
            Symptoms =
            [
                .. Says((NoLight, .35), (LazyFlame, .25), (LittleHeat, .15), (NoFeed, .1), (StopsProving, .1)),
                new("fuel", "damp", .75), new("pellet-look", "swollen", .9), new("dry-bag", "better", .93), new("glass", "black", .35),
            ],
            Remedy = new(RemedyKind.Advise, "Empty the hopper, burn a known dry bag; store bags off the floor.", 10, 0, [Cautions.Auger]),
        },
        new()
        {
            Id = "pellets-poor",
            Name = "Dusty, long or high-ash pellets",
            Aliases = ["dusty pellets", "bad pellets", "poor fuel", "high-ash pellets", "wet or dusty pellets"],
            Area = Area.Site,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Feed, -0.15, 0.15)],
            Symptoms =
            [
                .. Says((LazyFlame, .3), (StopsLater, .15), (LittleHeat, .15), (StopsProving, .1), (NoLight, .05), (EatsFuel, .05)),
                new("fuel", "dusty", .4), new("fuel", "new-brand", .35), new("pellet-look", "dusty", .8), new("onset", "after-fuel", .7), new("dry-bag", "better", .85), new("ash-kind", "clinker", .35),
            ],
            Remedy = new(RemedyKind.Advise, "Sieve or change the fuel; a photo of bag and lot for the file.", 8, 0, [Cautions.Auger]),
        },
        new()
        {
            Id = "other-fuel",
            Name = "Fuel the stove is not set for",
            Aliases = ["barley", "grain", "corn", "nut shells", "wrong fuel"],
            Area = Area.Site,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Moisture, 0.04, 0.03), new(Parameter.Feed, 0.15, 0.15)],
            Symptoms = [.. Says((LazyFlame, .3), (StopsLater, .25), (NoLight, .15), (Noise, .05)), new("fuel", "other-fuel", .93), new("ash-kind", "clinker", .7), new("pot-content", "clinker", .55), new("onset", "after-fuel", .7)],
            Remedy = new(RemedyKind.Advise, "Burn what the label allows; set air, feed and agitator to the fuel.", 10, 0, [Cautions.Auger, Cautions.Ash]),
        },
        new()
        {
            Id = "co-alarm-expired",
            Name = "CO alarm expired or too close to the stove",
            Aliases = ["co alarm expired", "alarm out of date", "alarm misplaced"],
            Area = Area.Site,
            BaseRatePercent = 0.6,
            Origin = Origins.Memory,
            Symptoms = [.. Says((CoAlarm, .85)), new("co-alarm-date", "expired", .9), new("ill", "no", .97)],
            Remedy = new(RemedyKind.Advise, "Only after the room has been measured burning on high and in shutdown: a new alarm in its proper place.", 10, 30, [Cautions.Monoxide]),
        },
        new()
        {
            Id = "reversed-draft",
            Name = "Cold vent draws backwards when the blower is off",
            Aliases = ["reversed draft", "backdraught", "cold chimney"],
            Area = Area.Site,
            BaseRatePercent = 0.5,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.House, -4, 2), new(Parameter.Wind, 4, 3)],
            Symptoms = [.. Says((SmokeOrSmell, .6), (CoAlarm, .1), (PowerCutSmoke, .15)), new("room-monoxide", "rise", .2), new("smell-when", "after-shutdown", .7), new("pencil-intake", "out", .85), new("window-open", "better", .5)],
            Remedy = new(RemedyKind.Advise, "Air for the house, rise and insulation for the vent; no use while it draws backwards.", 20, 0, [Cautions.Monoxide]),
            SafetyStop = "reversed-draft",
        },
    ];
}
