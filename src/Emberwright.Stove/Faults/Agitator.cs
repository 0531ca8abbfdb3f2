using Emberwright.Stove.Controls;
using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Faults of the agitator that stirs the burn pot of a multi-fuel stove.</summary>
internal static class Agitator
{
    private static readonly IReadOnlyList<string> MultiFuel = [PatternIds.MultiFuel];

    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "agitator-jammed",
            Name = "Agitator jammed by clinker",
            Aliases = ["agitator jam", "agitator jammed", "stirrer jammed"],
            Area = Area.BurnPot,
            BaseRatePercent = 5,
            Origin = Origins.Memory,
            Patterns = MultiFuel,
            Shifts = [new(Parameter.BurnPot, -0.4, 0.3)],
            Circuit = [new(ComponentIds.AgitatorMotor, ComponentState.Stalled)],
            Symptoms =
            [
                .. Says((StopsLater, .3), (LazyFlame, .25), (Noise, .2), (FierceFlame, .1)),
                new("agitator", "still", .6), new("agitator", "clunks", .38), new("pot-content", "clinker", .92), new("fuel", "other-fuel", .6), new("agitator-hand", "locks", .93), new("agitator-alone", "turns", .93),
                new("noise", "click", .3), new("ash-kind", "clinker", .8),
            ],
            Remedy = new(RemedyKind.Clean, "Cooled: break the clinker out, turn the agitator free by hand, look at its pin; another fuel mix.", 15, 0, [Cautions.MakeSafe, Cautions.Ash]),
        },
        new()
        {
            Id = "agitator-motor-dead",
            Name = "Agitator motor dead",
            Aliases = ["agitator motor", "stirrer motor"],
            Area = Area.BurnPot,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Patterns = MultiFuel,
            Circuit = [new(ComponentIds.AgitatorMotor, ComponentState.Open)],
            Symptoms = [.. Says((StopsLater, .3), (LazyFlame, .35), (FierceFlame, .1)), new("agitator", "still", .96), new("agitator-alone", "dead", .96), new("agitator-hand", "free", .85), new("pot-content", "clinker", .6)],
            Remedy = new(RemedyKind.Replace, "Replace the agitator motor once the pot is cleared and the motor's winding reads open.", 25, 130, [Cautions.MakeSafe], 0.3),
            ProvedBy = ["agitator-motor-alone", "agitator-motor-ohms"],
        },
        new()
        {
            Id = "agitator-pin-sheared",
            Name = "Agitator drive pin sheared",
            Aliases = ["agitator pin", "drive pin broken"],
            Area = Area.BurnPot,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Patterns = MultiFuel,
            Symptoms = [.. Says((StopsLater, .3), (LazyFlame, .35), (Noise, .1)), new("agitator", "still", .9), new("agitator-pin", "sheared", .96), new("agitator-alone", "turns", .97), new("pot-content", "clinker", .6)],
            Remedy = new(RemedyKind.Replace, "A new pin of the same softness once the pot is cleared.", 12, 5, [Cautions.MakeSafe]),
            ProvedBy = ["look-agitator-pin"],
        },
    ];
}
