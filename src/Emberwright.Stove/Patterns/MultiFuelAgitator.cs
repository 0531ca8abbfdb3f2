using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Patterns.Anatomies;

namespace Emberwright.Stove.Patterns;

/// <summary>
/// Multi-fuel stove: a burn pot with a slowly turning agitator that breaks clinker of corn and other grain, a strong blower, short
/// vent through the wall. The numbers here burn pellets; another fuel is a matter of the site's fuel and the feed.
/// </summary>
public static class MultiFuelAgitator
{
    /// <summary>Id of the pattern.</summary>
    public const string Id = "multi-fuel-agitator";

    /// <summary>The pattern with all its numbers; the origin stands beside each.</summary>
    public static Pattern Pattern { get; } = new()
    {
        Id = Id,
        Name = "multi-fuel stove with agitator",
        Synonyms = ["multi-fuel stove", "corn stove", "corn and pellet stove", "agitator stove"],
        Form = new(FeedKind.Chute, ExchangerKind.Plates, AshWay.Sides, IntakeKind.Pipe),
        Air = new CommonChain
        {
            Intake = CommonChain.Hole(3.8e-3, Origin.Fitted),
            BurnPotM2 = 3.0e-3,
            SeamLeak = 2e-5,
            ExchangerM2 = 2.6e-3,
            AshPassagesM2 = 1.52e-3,
            Blower = new FanCurve(125, 800, 128_000),
            Sizes = Origin.Fitted,
            Further = [new Crack("agitator-shaft", Boundary.Room, "firebox", 4e-6, 0.65, Origin.Memory)],
        }.Build(),
        Heat = new HeatSide(19.5, 140, 0.25, Origin.Fitted),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(76, 0.6, 1.2, Tees: 1, Terminal: "vertical-cap", Lining: "rigid"),
        Levels = BurnLevels.Of(Origin.Fitted, igniting: (0.8, 0.8), low: (1.1, 0.66), high: (2.6, 1.0), shutdown: (0.3, 0.9)),
        Ports = CommonChain.Ports("firebox", 76),
        Switch = new VacuumSwitch(Places.Firebox, 12.5, 8.7, Origin.Memory),
        Lags = new Lags(150, 420, 90, 90, Origin.Memory),
        Ratings =
        [
            Rate.High(Measure.Pressure, Places.Firebox, -62, -12),
            Rate.High(Measure.Oxygen, Places.Flue, 10, 13),
            Rate.High(Measure.Temperature, Places.Collar, 140, 200),
            Rate.High(Measure.CarbonMonoxide, Places.Flue, 80, 400),
            Rate.High(Measure.Temperature, Places.WarmAir, 45, 80),
        ],
        Anatomy = MultiFuelAgitatorAnatomy.Data,
        Parameters = Baselines.Usual,
        SupplyV = 120,
    };
}
