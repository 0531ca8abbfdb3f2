using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;

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
        Air = new Topology(
            [
                new Node("air-box", 0.15),
                new Node("firebox", 0.35),
                new Node("exchanger-end", 0.6),
                new Node("blower-inlet", 0.15),
                new Node("collar", 0.2),
            ],
            [
                new Opening("intake", Boundary.AirSupply, "air-box", 4.0e-3, 0.6, Origin.Fitted) { Scale = Parameter.Intake, IsIntake = true },
                new Opening("burn-pot", "air-box", "firebox", 3.1e-3, 0.6, Origin.Fitted) { Scale = Parameter.BurnPot, IsPotAir = true },
                new Crack("door", Boundary.Room, "firebox", 1e-5, 0.65, Origin.Memory) { Scale = Parameter.DoorLeak, DoorOpenAreaM2 = 0.10 },
                new Crack("ash-door", Boundary.Room, "firebox", 1e-5, 0.65, Origin.Memory) { Scale = Parameter.AshDoorLeak },
                new Crack("lid", Boundary.Room, "firebox", 1e-5, 0.65, Origin.Memory) { Scale = Parameter.LidLeak },
                Passage.Chamber("exchanger", "firebox", "exchanger-end", 2.0e-3, 1, Origin.Fitted)
                    with { Scale = Parameter.Exchanger, ColdSide = ColdSide.Stream },
                Passage.Chamber("ash-passages", "exchanger-end", "blower-inlet", 1.31e-3, 1, Origin.Fitted)
                    with { Scale = Parameter.AshPassages },
                new Crack("exhaust-covers", Boundary.Room, "exchanger-end", 1e-5, 0.65, Origin.Memory) { Scale = Parameter.ExhaustLeak },
                new Blower("combustion-blower", "blower-inlet", "collar", new FanCurve(145, 1200, 215_000), Origin.Fitted),
                new Crack("blower-gasket", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.BlowerGasketLeak },
                new Crack("vent-joints", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.VentLeak },
                new VentLink("vent", "collar", Boundary.Terminal, Origin.Memory) { Scale = Parameter.Vent },
            ],
            FireNode: "firebox",
            FlueNode: "collar"),
        Heat = new HeatSide(30, 1200, 0.20, Origin.Fitted, StreamIsWater: true, ReturnC: 58),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(80, 0.5, 4.0, Elbows90: 1, Tees: 1, Terminal: "vertical-cap", Lining: "rigid", Insulated: true),
        Levels = new Dictionary<FireState, BurnLevel>
        {
            [FireState.Cold] = new(0, 1.0, 0, Origin.Fitted),
            [FireState.Igniting] = new(0.9, 0.7, 1, Origin.Fitted),
            [FireState.Low] = new(1.3, 0.68, 1, Origin.Fitted),
            [FireState.High] = new(3.2, 1.05, 1, Origin.Fitted),
            [FireState.Shutdown] = new(0.4, 0.9, 1, Origin.Fitted),
        },
        Ports =
        [
            new Port(Places.Firebox, "chamber", "firebox", 0.40),
            new Port(Places.BlowerInlet, "blower inlet", "blower-inlet", 0.15),
            new Port(Places.Collar, "vent collar", "collar", 0.25, 5.03e-3, "vent"),
        ],
        Switch = new VacuumSwitch(Places.Firebox, 12, 8, Origin.Memory),
        Lags = new Lags(150, 600, 90, 90, Origin.Memory),
        Ratings =
        [
            new(new(Measure.Pressure, Places.Firebox, Condition.HighBurn), -60, -8, Origin.Memory),
            new(new(Measure.Oxygen, Places.Flue, Condition.HighBurn), 8, 14, Origin.Memory),
            new(new(Measure.Temperature, Places.Collar, Condition.HighBurn), 100, 180, Origin.Memory),
            new(new(Measure.CarbonMonoxide, Places.Flue, Condition.HighBurn), 80, 400, Origin.Memory),
        ],
        Parameters = Baselines.Hydronic,
        SupplyV = 230,
    };
}
