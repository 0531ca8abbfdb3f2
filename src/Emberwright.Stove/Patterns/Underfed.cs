using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Patterns.Anatomies;

namespace Emberwright.Stove.Patterns;

/// <summary>
/// Underfed stove: fuel pushed up into the fire from below, air through an intake flapper and the grate, a gap above the glass
/// that washes it with room air, an exchanger behind a panel that swings down, a strong combustion blower on a hinged plate,
/// proved by a probe in the exhaust. "Fan only" is its test at full speed.
/// </summary>
public static class Underfed
{
    /// <summary>Id of the pattern.</summary>
    public const string Id = "underfed";

    /// <summary>The pattern with all its numbers; the origin stands beside each.</summary>
    public static Pattern Pattern { get; } = new()
    {
        Id = Id,
        Name = "underfed stove with swing-down exchanger panel, hinged blower access, airwash gap and intake flapper",
        Synonyms = ["underfed stove", "bottom-feed stove", "underfeed stove", "underfed stove with swing-down exchanger panel and exhaust probe", "swing-down panel stove"],
        Form = new(FeedKind.FromBelow, ExchangerKind.SwingDownPanel, AshWay.Back, IntakeKind.Flapper),
        Air = new CommonChain
        {
            Intake = CommonChain.Hole(2.4e-3, Origin.Fitted),
            BurnPotM2 = 1.55e-3,
            SeamLeak = 1.5e-5,
            ExchangerM2 = 2.3e-3,
            AshPassagesM2 = 1.65e-3,
            Blower = new FanCurve(260, 1500, 245_000),
            Sizes = Origin.Fitted,
            Further = [new Opening("airwash", Boundary.Room, "firebox", 0.2e-3, 0.6, Origin.Memory)],
        }.Build(),
        Heat = new HeatSide(14.6, 100, 0.25, Origin.Fitted),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(76, 0.6, 1.2, Tees: 1, Terminal: "vertical-cap", Lining: "rigid"),
        Levels = BurnLevels.Of(Origin.Fitted, igniting: (0.6, 0.5), low: (0.8, 0.38), high: (1.9, 0.55), shutdown: (0.3, 0.5)),
        Ports = CommonChain.Ports("firebox", 76),
        Switch = new VacuumSwitch(Places.Firebox, 12, 8, Origin.Memory),
        Lags = new Lags(150, 420, 90, 90, Origin.Memory),
        Ratings =
        [
            Rate.FanOnly(Measure.Pressure, Places.Firebox, -125, -75),
            Rate.High(Measure.Pressure, Places.Firebox, -62, -12),
            Rate.High(Measure.Oxygen, Places.Flue, 10, 12),
            Rate.High(Measure.Temperature, Places.Collar, 149, 182),
            Rate.High(Measure.CarbonMonoxide, Places.Flue, 80, 400),
            Rate.High(Measure.Temperature, Places.WarmAir, 45, 80),
        ],
        Anatomy = UnderfedAnatomy.Data,
        Parameters = Baselines.Usual,
        SupplyV = 120,
    };
}
