using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Patterns.Anatomies;

namespace Emberwright.Stove.Patterns;

/// <summary>
/// Hydronic stove: the exchanger is a water jacket with scraped tubes that feeds radiators through a pump; the room gets what the
/// firebox radiates.
/// </summary>
public static class Hydronic
{
    /// <summary>Id of the pattern.</summary>
    public const string Id = "hydronic";

    /// <summary>The pattern with all its numbers; the origin stands beside each.</summary>
    public static Pattern Pattern { get; } = new()
    {
        Id = Id,
        Name = "hydronic stove",
        Synonyms = ["hydronic", "boiler stove", "water stove", "thermo stove", "stove with water jacket", "idro stove"],
        Form = new(FeedKind.Chute, ExchangerKind.WaterTubes, AshWay.Back, IntakeKind.Pipe),
        Air = new CommonChain
        {
            Intake = CommonChain.Hole(3.8e-3, Origin.Fitted),
            BurnPotM2 = 2.84e-3,
            SeamLeak = 1e-5,
            ExchangerM2 = 2.4e-3,
            ExchangerShape = new(6, 1, IsRound: true),
            AshPassagesM2 = 1.16e-3,
            AshShape = new(1, 3),
            Blower = new FanCurve(137, 1150, 185_000),
            Sizes = Origin.Fitted,
        }.Build(),
        Heat = new HeatSide(27.6, 1150, 0.20, Origin.Fitted, StreamIsWater: true, ReturnC: 58),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(80, 0.5, 4.0, Elbows90: 1, Tees: 1, Terminal: "vertical-cap", Lining: "rigid", Insulated: true),
        Levels = BurnLevels.Of(Origin.Fitted, igniting: (0.9, 0.75), low: (1.45, 0.74), high: (3.2, 1.15), shutdown: (0.4, 0.95), lowStream: 1),
        Ports = CommonChain.Ports("chamber", 80),
        Switch = new VacuumSwitch(Places.Firebox, 12, 8, Origin.Memory),
        Lags = new Lags(150, 600, 90, 90, Origin.Memory),
        Ratings =
        [
            Rate.FanOnly(Measure.Pressure, Places.Firebox, -40, -24),
            Rate.FanOnly(Measure.Pressure, Places.BlowerInlet, -105, -76),
            Rate.FanOnly(Measure.Pressure, Places.Collar, 5, 20),
            Rate.Low(Measure.Pressure, Places.Firebox, -20, -9),
            Rate.Low(Measure.Oxygen, Places.Flue, 13.5, 16),
            Rate.Low(Measure.CarbonDioxide, Places.Flue, 4.9, 7.3),
            Rate.Low(Measure.CarbonMonoxide, Places.Flue, 200, 900),
            Rate.Low(Measure.Temperature, Places.Collar, 80, 110),
            Rate.Low(Measure.Feed, Places.Feed, 1.1, 1.8),
            Rate.High(Measure.Pressure, Places.Firebox, -32, -14),
            Rate.High(Measure.Oxygen, Places.Flue, 9, 12),
            Rate.High(Measure.CarbonDioxide, Places.Flue, 8.6, 11.6),
            Rate.High(Measure.CarbonMonoxide, Places.Flue, 80, 250),
            Rate.High(Measure.Temperature, Places.Collar, 140, 180),
            Rate.High(Measure.Feed, Places.Feed, 2.8, 3.6),
        ],
        Anatomy = HydronicAnatomy.Data,
        Parameters = Baselines.Hydronic,
        HoldsBlowerSpeed = true,
        SupplyV = 230,
    };
}
