using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;

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
        Air = new Topology(
            [
                new Node("air-box", 0.15),
                new Node("firebox", 0.35),
                new Node("exchanger-end", 0.6),
                new Node("blower-inlet", 0.15),
                new Node("collar", 0.2),
            ],
            [
                new Opening("intake", Boundary.AirSupply, "air-box", 3.6e-3, 0.6, Origin.Fitted) { Scale = Parameter.Intake, IsIntake = true },
                new Opening("burn-pot", "air-box", "firebox", 2.85e-3, 0.6, Origin.Fitted) { Scale = Parameter.BurnPot, IsPotAir = true },
                new Crack("door", Boundary.Room, "firebox", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.DoorLeak, DoorOpenAreaM2 = 0.10 },
                new Crack("ash-door", Boundary.Room, "firebox", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.AshDoorLeak },
                new Crack("lid", Boundary.Room, "firebox", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.LidLeak },
                Passage.Chamber("exchanger", "firebox", "exchanger-end", 2.6e-3, 1, Origin.Fitted)
                    with { Scale = Parameter.Exchanger, ColdSide = ColdSide.Stream },
                Passage.Chamber("ash-passages", "exchanger-end", "blower-inlet", 1.58e-3, 1, Origin.Fitted)
                    with { Scale = Parameter.AshPassages },
                new Crack("exhaust-covers", Boundary.Room, "exchanger-end", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.ExhaustLeak },
                new Blower("combustion-blower", "blower-inlet", "collar", new FanCurve(100, 800, 130_000), Origin.Fitted),
                new Crack("blower-gasket", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.BlowerGasketLeak },
                new Crack("vent-joints", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.VentLeak },
                new VentLink("vent", "collar", Boundary.Terminal, Origin.Memory) { Scale = Parameter.Vent },
            ],
            FireNode: "firebox",
            FlueNode: "collar"),
        Heat = new HeatSide(18, 130, 0.25, Origin.Fitted),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(76, 0.6, 1.2, Tees: 1, Terminal: "vertical-cap", Lining: "rigid"),
        Levels = new Dictionary<FireState, BurnLevel>
        {
            [FireState.Cold] = new(0, 1.0, 0, Origin.Fitted),
            [FireState.Igniting] = new(0.7, 0.8, 0.6, Origin.Fitted),
            [FireState.Low] = new(1.0, 0.68, 0.6, Origin.Fitted),
            [FireState.High] = new(2.4, 1.0, 1, Origin.Fitted),
            [FireState.Shutdown] = new(0.3, 0.9, 0.6, Origin.Fitted),
        },
        Ports =
        [
            new Port(Places.Firebox, "firebox", "firebox", 0.40),
            new Port(Places.BlowerInlet, "blower inlet", "blower-inlet", 0.15),
            new Port(Places.Collar, "vent collar", "collar", 0.25, 4.54e-3, "vent"),
        ],
        Switch = new VacuumSwitch(Places.Firebox, 12.5, 8.7, Origin.Memory),
        Lags = new Lags(150, 420, 90, 90, Origin.Memory),
        Ratings =
        [
            new(new(Measure.Pressure, Places.Firebox, Condition.HighBurn), -62, -12, Origin.Memory),
            new(new(Measure.Oxygen, Places.Flue, Condition.HighBurn), 10, 13, Origin.Memory),
            new(new(Measure.Temperature, Places.Collar, Condition.HighBurn), 143, 171, Origin.Memory),
            new(new(Measure.CarbonMonoxide, Places.Flue, Condition.HighBurn), 80, 400, Origin.Memory),
            new(new(Measure.Temperature, Places.WarmAir, Condition.HighBurn), 45, 80, Origin.Memory),
        ],
        Parameters = Baselines.Usual,
        SupplyV = 120,
    };
}
