using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;

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
        Air = new Topology(
            [
                new Node("air-box", 0.15),
                new Node("firebox", 0.35),
                new Node("exchanger-end", 0.60),
                new Node("blower-inlet", 0.15),
                new Node("collar", 0.20),
            ],
            [
                new Opening("intake", Boundary.AirSupply, "air-box", 2.6e-3, 0.6, Origin.Memory) { Scale = Parameter.Intake, IsIntake = true },
                new Opening("burn-pot", "air-box", "firebox", 1.66e-3, 0.6, Origin.Fitted) { Scale = Parameter.BurnPot, IsPotAir = true },
                new Crack("door", Boundary.Room, "firebox", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.DoorLeak, DoorOpenAreaM2 = 0.10 },
                new Crack("ash-door", Boundary.Room, "firebox", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.AshDoorLeak },
                new Crack("lid", Boundary.Room, "firebox", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.LidLeak },
                Passage.Chamber("exchanger", "firebox", "exchanger-end", 1.7e-3, 1, Origin.Memory)
                    with { Scale = Parameter.Exchanger, ColdSide = ColdSide.Stream },
                Passage.Chamber("ash-passages", "exchanger-end", "blower-inlet", 1.0e-3, 1, Origin.Memory)
                    with { Scale = Parameter.AshPassages },
                new Crack("exhaust-covers", Boundary.Room, "exchanger-end", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.ExhaustLeak },
                new Blower("combustion-blower", "blower-inlet", "collar", new FanCurve(80, 1750, 53_000), Origin.Memory),
                new Crack("blower-gasket", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.BlowerGasketLeak },
                new Crack("vent-joints", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.VentLeak },
                new VentLink("vent", "collar", Boundary.Terminal, Origin.Memory) { Scale = Parameter.Vent },
            ],
            FireNode: "firebox",
            FlueNode: "collar"),
        Heat = new HeatSide(13.2, 98, 0.25, Origin.Memory),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(76, 0.3, 5.5, Tees: 1, Terminal: "vertical-cap", Lining: "flexible"),
        Levels = new Dictionary<FireState, BurnLevel>
        {
            [FireState.Cold] = new(0, 1.0, 0, Origin.Memory),
            [FireState.Igniting] = new(0.5, 0.7, 0.6, Origin.Memory),
            [FireState.Low] = new(0.9, 0.7, 0.6, Origin.Memory),
            [FireState.High] = new(1.75, 1.10, 1, Origin.Fitted),
            [FireState.Shutdown] = new(0.25, 0.9, 0.6, Origin.Memory),
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
