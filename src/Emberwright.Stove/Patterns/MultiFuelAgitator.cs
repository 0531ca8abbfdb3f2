using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Heat;
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
            Intake = CommonChain.Hole(3.6e-3, Origin.Fitted),
            BurnPotM2 = 2.6e-3,
            SeamLeak = 2e-5,
            ExchangerM2 = 2.9e-3,
            ExchangerShape = new(6, 5),
            AshPassagesM2 = 1.345e-3,
            AshShape = new(2, 2),
            Blower = new FanCurve(119, 800, 117_500),
            Sizes = Origin.Fitted,
            Further = [new Crack("agitator-shaft", Boundary.Room, "firebox", 4e-6, 0.65, Origin.Memory)],
        }.Build(),
        Heat = HeatSide.ToAir(19.6, RoomAirBlower.Sized(0.1238, 75), 0.25, Origin.Fitted),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(76, 0.6, 1.2, Tees: 1, Terminal: "vertical-cap", Lining: "rigid"),
        Levels = BurnLevels.Of(Origin.Fitted, igniting: (0.8, 0.87), low: (1.27, 0.73), high: (2.55, 1.16), shutdown: (0.3, 1.0), lowStream: 0.5),
        Ports = CommonChain.Ports("firebox", 76),
        Switch = new VacuumSwitch(Places.Firebox, 12.5, 8.7, Origin.Memory),
        Lags = new Lags(150, 420, 90, 90, Origin.Memory),
        Ratings =
        [
            Rate.FanOnly(Measure.Pressure, Places.Firebox, -45, -28),
            Rate.FanOnly(Measure.Pressure, Places.BlowerInlet, -95, -70),
            Rate.FanOnly(Measure.Pressure, Places.Collar, 5, 20),
            Rate.Low(Measure.Pressure, Places.Firebox, -20, -10),
            Rate.Low(Measure.Oxygen, Places.Flue, 14.5, 17),
            Rate.Low(Measure.CarbonDioxide, Places.Flue, 3.9, 6.3),
            Rate.Low(Measure.CarbonMonoxide, Places.Flue, 200, 1200),
            Rate.Low(Measure.Temperature, Places.Collar, 80, 105),
            Rate.Low(Measure.Feed, Places.Feed, 1.0, 1.5),
            Rate.Low(Measure.Temperature, Places.WarmAir, 50, 80),
            Rate.High(Measure.Pressure, Places.Firebox, -31, -20),
            Rate.High(Measure.Oxygen, Places.Flue, 10.5, 13.2),
            Rate.High(Measure.CarbonDioxide, Places.Flue, 7.4, 10.2),
            Rate.High(Measure.CarbonMonoxide, Places.Flue, 80, 300),
            Rate.High(Measure.Temperature, Places.Collar, 145, 195),
            Rate.High(Measure.Feed, Places.Feed, 2.2, 2.6),
            Rate.High(Measure.Temperature, Places.WarmAir, 60, 80),
        ],
        Anatomy = MultiFuelAgitatorAnatomy.Data,
        Parameters = Baselines.Usual,
        SupplyV = 120,
    };
}
