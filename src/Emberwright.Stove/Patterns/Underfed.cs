using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Heat;
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
            Intake = CommonChain.Hole(2.33e-3, Origin.Fitted),
            BurnPotM2 = 1.43e-3,
            SeamLeak = 1.5e-5,
            ExchangerM2 = 2.45e-3,
            ExchangerShape = new(10, 4),
            AshPassagesM2 = 1.59e-3,
            AshShape = new(1, 5),
            Blower = new FanCurve(256, 1480, 226_000),
            Sizes = Origin.Fitted,
            Further = [new Opening("airwash", Boundary.Room, "firebox", 0.2e-3, 0.6, Origin.Memory)],
        }.Build(),
        Heat = HeatSide.ToAir(13.4, RoomAirBlower.Sized(0.0933, 80), 0.25, Origin.Fitted),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(76, 0.6, 1.2, Tees: 1, Terminal: "vertical-cap", Lining: "rigid"),
        Levels = BurnLevels.Of(Origin.Fitted, igniting: (0.6, 0.5), low: (0.81, 0.405), high: (1.9, 0.60), shutdown: (0.3, 0.5), lowStream: 0.48),
        Ports = CommonChain.Ports("firebox", 76),
        Switch = new VacuumSwitch(Places.Firebox, 12, 8, Origin.Memory),
        Lags = new Lags(150, 420, 90, 90, Origin.Memory),
        Ratings =
        [
            Rate.FanOnly(Measure.Pressure, Places.Firebox, -125, -75),
            Rate.FanOnly(Measure.Pressure, Places.BlowerInlet, -195, -130),
            Rate.FanOnly(Measure.Pressure, Places.Collar, 10, 28),
            Rate.Low(Measure.Pressure, Places.Firebox, -22, -10),
            Rate.Low(Measure.Oxygen, Places.Flue, 15, 17.5),
            Rate.Low(Measure.CarbonDioxide, Places.Flue, 3.4, 5.8),
            Rate.Low(Measure.CarbonMonoxide, Places.Flue, 200, 1300),
            Rate.Low(Measure.Temperature, Places.Collar, 80, 110),
            Rate.Low(Measure.Feed, Places.Feed, 0.7, 1.1),
            Rate.Low(Measure.Temperature, Places.WarmAir, 50, 78),
            Rate.High(Measure.Pressure, Places.Firebox, -32, -20),
            Rate.High(Measure.Oxygen, Places.Flue, 10, 12.5),
            Rate.High(Measure.CarbonDioxide, Places.Flue, 8.2, 10.6),
            Rate.High(Measure.CarbonMonoxide, Places.Flue, 80, 350),
            Rate.High(Measure.Temperature, Places.Collar, 150, 195),
            Rate.High(Measure.Feed, Places.Feed, 1.6, 2.2),
            Rate.High(Measure.Temperature, Places.WarmAir, 60, 80),
        ],
        Anatomy = UnderfedAnatomy.Data,
        Parameters = Baselines.Usual,
        HoldsBlowerSpeed = true,
        SupplyV = 120,
    };
}
