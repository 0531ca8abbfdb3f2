using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Patterns.Anatomies;

namespace Emberwright.Stove.Patterns;

/// <summary>
/// Thermocouple-proved top-feed freestanding stove: air through an intake and the burn pot's holes, up among heat-exchanger tubes
/// scraped by a pull rod, down into an ash chamber behind the firebox wall that is not seen until its covers come off.
/// </summary>
public static class ThermocoupleFreestanding
{
    /// <summary>Id of the pattern.</summary>
    public const string Id = "thermocouple-freestanding";

    /// <summary>The pattern with all its numbers; the origin stands beside each.</summary>
    public static Pattern Pattern { get; } = new()
    {
        Id = Id,
        Name = "thermocouple-proved top-feed freestanding stove with scraped tubes and a hidden ash chamber",
        Synonyms = ["thermocouple stove", "freestanding stove", "top-feed freestanding stove", "thermocouple-proved top-feed freestanding stove", "hidden ash chamber stove"],
        Form = new(FeedKind.Chute, ExchangerKind.ScrapedTubes, AshWay.HiddenChamber, IntakeKind.Pipe),
        Air = new CommonChain
        {
            Intake = CommonChain.Hole(3.6e-3, Origin.Fitted),
            BurnPotM2 = 2.85e-3,
            SeamLeak = 2e-5,
            ExchangerM2 = 2.6e-3,
            AshPassagesM2 = 1.58e-3,
            Blower = new FanCurve(100, 800, 130_000),
            Sizes = Origin.Fitted,
        }.Build(),
        Heat = new HeatSide(18, 130, 0.25, Origin.Fitted),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(76, 0.6, 1.2, Tees: 1, Terminal: "vertical-cap", Lining: "rigid"),
        Levels = BurnLevels.Of(Origin.Fitted, igniting: (0.7, 0.8), low: (1.0, 0.68), high: (2.4, 1.0), shutdown: (0.3, 0.9)),
        Ports = CommonChain.Ports("firebox", 76),
        Switch = new VacuumSwitch(Places.Firebox, 12.5, 8.7, Origin.Memory),
        Lags = new Lags(150, 420, 90, 90, Origin.Memory),
        Ratings =
        [
            Rate.High(Measure.Pressure, Places.Firebox, -62, -12),
            Rate.High(Measure.Oxygen, Places.Flue, 10, 13),
            Rate.High(Measure.Temperature, Places.Collar, 143, 171),
            Rate.High(Measure.CarbonMonoxide, Places.Flue, 80, 400),
            Rate.High(Measure.Temperature, Places.WarmAir, 45, 80),
        ],
        Anatomy = ThermocoupleFreestandingAnatomy.Data,
        Parameters = Baselines.Usual,
        SupplyV = 120,
    };
}
