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
            Intake = CommonChain.Hole(4.0e-3, Origin.Fitted),
            BurnPotM2 = 3.1e-3,
            SeamLeak = 1e-5,
            ExchangerM2 = 2.0e-3,
            AshPassagesM2 = 1.31e-3,
            Blower = new FanCurve(145, 1200, 215_000),
            Sizes = Origin.Fitted,
        }.Build(),
        Heat = new HeatSide(30, 1200, 0.20, Origin.Fitted, StreamIsWater: true, ReturnC: 58),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(80, 0.5, 4.0, Elbows90: 1, Tees: 1, Terminal: "vertical-cap", Lining: "rigid", Insulated: true),
        Levels = BurnLevels.Of(Origin.Fitted, igniting: (0.9, 0.7), low: (1.3, 0.68), high: (3.2, 1.05), shutdown: (0.4, 0.9), lowStream: 1),
        Ports = CommonChain.Ports("chamber", 80),
        Switch = new VacuumSwitch(Places.Firebox, 12, 8, Origin.Memory),
        Lags = new Lags(150, 600, 90, 90, Origin.Memory),
        Ratings =
        [
            Rate.High(Measure.Pressure, Places.Firebox, -60, -8),
            Rate.High(Measure.Oxygen, Places.Flue, 8, 14),
            Rate.High(Measure.Temperature, Places.Collar, 100, 180),
            Rate.High(Measure.CarbonMonoxide, Places.Flue, 80, 400),
        ],
        Anatomy = HydronicAnatomy.Data,
        Parameters = Baselines.Hydronic,
        SupplyV = 230,
    };
}
