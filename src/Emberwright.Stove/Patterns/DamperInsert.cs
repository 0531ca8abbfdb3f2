using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Heat;
using Emberwright.Stove.Patterns.Anatomies;

namespace Emberwright.Stove.Patterns;

/// <summary>
/// Damper-regulated top-feed insert proved by an exhaust temperature disc: air through a damper and the holes of a burn pot,
/// up over an exchanger, down ash passages at the sides to the combustion blower, a flexible liner up a masonry chimney.
/// </summary>
public static class DamperInsert
{
    /// <summary>Id of the pattern.</summary>
    public const string Id = "damper-insert";

    /// <summary>The pattern with all its numbers; the origin stands beside each.</summary>
    public static Pattern Pattern { get; } = new()
    {
        Id = Id,
        Name = "damper-regulated top-feed insert proved by an exhaust temperature disc",
        Synonyms = ["pellet insert", "fireplace insert", "top-feed insert", "damper insert", "snap disc insert"],
        Form = new(FeedKind.Chute, ExchangerKind.Tubes, AshWay.Sides, IntakeKind.Damper, IsInsert: true),
        Air = new CommonChain
        {
            Intake = CommonChain.Hole(2.6e-3, Origin.Memory),
            BurnPotM2 = 1.62e-3,
            SeamLeak = 2e-5,
            ExchangerM2 = 1.7e-3,
            ExchangerShape = new(6, 3),
            AshPassagesM2 = 1.0e-3,
            AshShape = new(2, 1.5),
            Blower = new FanCurve(80, 1750, 53_000),
            Sizes = Origin.Memory,
        }.Build(),
        Heat = HeatSide.ToAir(13.2, RoomAirBlower.Sized(0.0809, 60), 0.25, Origin.Memory),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(76, 0.3, 5.5, Tees: 1, Terminal: "vertical-cap", Lining: "flexible"),
        Levels = BurnLevels.Of(Origin.Memory, igniting: (0.5, 0.7), low: (0.91, 0.73), high: (1.75, 1.15), shutdown: (0.25, 0.9)),
        Ports = CommonChain.Ports("firebox", 76),
        Switch = new VacuumSwitch(Places.Firebox, 12.5, 8.7, Origin.Memory),
        Lags = new Lags(150, 420, 90, 90, Origin.Memory),
        Ratings =
        [
            Rate.FanOnly(Measure.Pressure, Places.Firebox, -34, -22),
            Rate.FanOnly(Measure.Pressure, Places.BlowerInlet, -68, -52),
            Rate.FanOnly(Measure.Pressure, Places.Collar, 0, 12),
            Rate.Low(Measure.Pressure, Places.Firebox, -20, -10),
            Rate.Low(Measure.Oxygen, Places.Flue, 14, 16.5),
            Rate.Low(Measure.CarbonDioxide, Places.Flue, 4.4, 6.8),
            Rate.Low(Measure.CarbonMonoxide, Places.Flue, 200, 900),
            Rate.Low(Measure.Temperature, Places.Collar, 80, 105),
            Rate.Low(Measure.Feed, Places.Feed, 0.7, 1.1),
            Rate.Low(Measure.Temperature, Places.WarmAir, 50, 78),
            Rate.High(Measure.Pressure, Places.Firebox, -30, -20),
            Rate.High(Measure.Oxygen, Places.Flue, 10.5, 13),
            Rate.High(Measure.CarbonDioxide, Places.Flue, 7.6, 10.2),
            Rate.High(Measure.CarbonMonoxide, Places.Flue, 80, 300),
            Rate.High(Measure.Temperature, Places.Collar, 145, 185),
            Rate.High(Measure.Feed, Places.Feed, 1.5, 2.0),
            Rate.High(Measure.Temperature, Places.WarmAir, 60, 80),
        ],
        Anatomy = DamperInsertAnatomy.Data,
        Parameters = Baselines.Usual,
        SupplyV = 120,
    };
}
