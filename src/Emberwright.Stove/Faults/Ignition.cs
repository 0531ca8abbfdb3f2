using Emberwright.Stove.Controls;
using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Faults that keep fuel in the pot from lighting.</summary>
internal static class Ignition
{
    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "igniter-dead",
            Name = "Igniter dead",
            Aliases = ["igniter burnt out", "hot rod dead", "glow plug dead"],
            Area = Area.Ignition,
            BaseRatePercent = 8,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.Igniter, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoLight, .85), (StopsProving, .005), (NoFeed, .05), (AlarmShown, .06)),
                new("igniter-glow", "dark", .96), new("igniter-alone", "dark", .97), new("pot-content", "heap", .8), new("code", "no-fire", .6), new("onset", "sudden", .55),
                new("lit-by-hand", "burns", .95),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the igniter once its resistance reads open, unplugged.", 25, 70, [Cautions.MakeSafe]),
            ProvedBy = ["igniter-ohms", "igniter-alone"],
        },
        new()
        {
            Id = "igniter-weak",
            Name = "Igniter weak",
            Aliases = ["igniter tired", "igniter high resistance", "slow to light"],
            Area = Area.Ignition,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.Igniter, ComponentState.Drifted, 1.5)],
            Symptoms =
            [
                .. Says((NoLight, .75), (StopsProving, .06), (SmokeOrSmell, .06)),
                new("igniter-glow", "dull", .75), new("igniter-alone", "dull", .8), new("pot-content", "heap", .7), new("code", "no-fire", .5), new("onset", "gradual", .6),
                new("lit-by-hand", "burns", .95),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the igniter when its resistance is well above its rating and its supply is right.", 25, 70, [Cautions.MakeSafe]),
            ProvedBy = ["igniter-ohms", "igniter-current"],
        },
        new()
        {
            Id = "igniter-to-earth",
            Name = "Igniter or its lead to earth",
            Aliases = ["igniter shorted", "igniter earth fault", "trips the breaker", "igniter grounded"],
            Area = Area.Ignition,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.Igniter, ComponentState.LeakingToEarth, LeakOhm: 5)],
            Symptoms =
            [
                .. Says((Dead, .75), (NoLight, .15)),
                new("earth-ohms", "igniter", .93), new("fuse", "blown", .6), new("breaker", "trips", .6), new("happens", "at-start", .5), new("igniter-glow", "dark", .8),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the igniter and its lead once ohms to earth are low, unplugged; then the fuse by one of the same rating.", 25, 72, [Cautions.MakeSafe]),
            ProvedBy = ["igniter-earth-ohms"],
        },
        new()
        {
            Id = "igniter-passage-ashed",
            Name = "Igniter passage ashed up",
            Aliases = ["igniter tube blocked", "igniter hole blocked", "ash behind the igniter"],
            Area = Area.Ignition,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Symptoms =
            [
                .. Says((NoLight, .85), (SmokeOrSmell, .04)),
                new("igniter-passage", "ashed", .93), new("pot-content", "heap", .75), new("code", "no-fire", .5), new("onset", "gradual", .55), new("igniter-glow", "hidden", .6),
                new("lit-by-hand", "burns", .95),
            ],
            Remedy = new(RemedyKind.Clean, "Vacuum and brush the igniter's passage; the igniter's tip where the pot's hole is.", 8, 0, [Cautions.MakeSafe, Cautions.Ash]),
        },
        new()
        {
            Id = "igniter-misplaced",
            Name = "Igniter slid back in its tube",
            Aliases = ["igniter not home", "igniter slid back"],
            Area = Area.Ignition,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Symptoms =
            [
                .. Says((NoLight, .85)),
                new("igniter-passage", "slid-back", .93), new("pot-content", "heap", .75), new("code", "no-fire", .5), new("igniter-alone", "glows", .97), new("onset", "after-work", .35),
                new("lit-by-hand", "burns", .95),
            ],
            Remedy = new(RemedyKind.Adjust, "Push the igniter home to its mark, tighten its screw.", 6, 0, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "igniter-output-dead",
            Name = "Board gives the igniter no voltage",
            Aliases = ["igniter relay", "board output dead (igniter)"],
            Area = Area.Electrical,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.IgniterOutput, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoLight, .88)),
                new("igniter-glow", "dark", .95), new("igniter-alone", "glows", .97), new("pot-content", "heap", .8), new("code", "no-fire", .5), new("board-look", "scorched", .25),
                new("lit-by-hand", "burns", .95),
            ],
            Remedy = new(RemedyKind.Replace, "Save the parameters, replace the board once a loaded output stays at 0 V while it calls.", 30, 280, [Cautions.MakeSafe], 0.1),
            ProvedBy = ["igniter-output-voltage"],
        },
    ];
}
