using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Heat;
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
            Intake = CommonChain.Hole(3.36e-3, Origin.Fitted),
            BurnPotM2 = 2.53e-3,
            SeamLeak = 2e-5,
            ExchangerM2 = 3.06e-3,
            ExchangerShape = new(8, 4),
            AshPassagesM2 = 1.43e-3,
            AshShape = new(1, 4),
            Blower = new FanCurve(96.5, 800, 122_000),
            Sizes = Origin.Fitted,
        }.Build(),
        Heat = HeatSide.ToAir(19, RoomAirBlower.Sized(0.1156, 70), 0.25, Origin.Fitted),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(76, 0.6, 1.2, Tees: 1, Terminal: "vertical-cap", Lining: "rigid"),
        Levels = BurnLevels.Of(Origin.Fitted, igniting: (0.7, 0.87), low: (1.25, 0.775), high: (2.42, 1.16), shutdown: (0.3, 1.0), lowStream: 0.5),
        Ports = CommonChain.Ports("firebox", 76),
        Switch = new VacuumSwitch(Places.Firebox, 12.5, 8.7, Origin.Memory),
        Lags = new Lags(150, 420, 90, 90, Origin.Memory),
        Ratings =
        [
            Rate.FanOnly(Measure.Pressure, Places.Firebox, -40, -25),
            Rate.FanOnly(Measure.Pressure, Places.BlowerInlet, -75, -56),
            Rate.FanOnly(Measure.Pressure, Places.Collar, 4, 16),
            Rate.Low(Measure.Pressure, Places.Firebox, -20, -10),
            Rate.Low(Measure.Oxygen, Places.Flue, 14.5, 17),
            Rate.Low(Measure.CarbonDioxide, Places.Flue, 3.9, 6.3),
            Rate.Low(Measure.CarbonMonoxide, Places.Flue, 200, 1200),
            Rate.Low(Measure.Temperature, Places.Collar, 80, 105),
            Rate.Low(Measure.Feed, Places.Feed, 1.0, 1.5),
            Rate.Low(Measure.Temperature, Places.WarmAir, 50, 80),
            Rate.High(Measure.Pressure, Places.Firebox, -30, -20),
            Rate.High(Measure.Oxygen, Places.Flue, 10.5, 13),
            Rate.High(Measure.CarbonDioxide, Places.Flue, 7.6, 10.2),
            Rate.High(Measure.CarbonMonoxide, Places.Flue, 80, 300),
            Rate.High(Measure.Temperature, Places.Collar, 145, 185),
            Rate.High(Measure.Feed, Places.Feed, 2.1, 2.6),
            Rate.High(Measure.Temperature, Places.WarmAir, 60, 80),
        ],
        Anatomy = ThermocoupleFreestandingAnatomy.Data,
        Parameters = Baselines.Usual,
        SupplyV = 120,
    };
}
