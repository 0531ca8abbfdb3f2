using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;

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
        Air = new Topology(
            [
                new Node("air-box", 0.15),
                new Node("firebox", 0.35),
                new Node("exchanger-end", 0.6),
                new Node("blower-inlet", 0.15),
                new Node("collar", 0.2),
            ],
            [
                new Opening("intake", Boundary.AirSupply, "air-box", 3.8e-3, 0.6, Origin.Fitted) { Scale = Parameter.Intake, IsIntake = true },
                new Opening("burn-pot", "air-box", "firebox", 3.0e-3, 0.6, Origin.Fitted) { Scale = Parameter.BurnPot, IsPotAir = true },
                new Crack("door", Boundary.Room, "firebox", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.DoorLeak, DoorOpenAreaM2 = 0.10 },
                new Crack("ash-door", Boundary.Room, "firebox", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.AshDoorLeak },
                new Crack("lid", Boundary.Room, "firebox", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.LidLeak },
                Passage.Chamber("exchanger", "firebox", "exchanger-end", 2.6e-3, 1, Origin.Fitted)
                    with { Scale = Parameter.Exchanger, ColdSide = ColdSide.Stream },
                Passage.Chamber("ash-passages", "exchanger-end", "blower-inlet", 1.52e-3, 1, Origin.Fitted)
                    with { Scale = Parameter.AshPassages },
                new Crack("exhaust-covers", Boundary.Room, "exchanger-end", 2e-5, 0.65, Origin.Memory) { Scale = Parameter.ExhaustLeak },
                new Blower("combustion-blower", "blower-inlet", "collar", new FanCurve(125, 800, 128_000), Origin.Fitted),
                new Crack("blower-gasket", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.BlowerGasketLeak },
                new Crack("vent-joints", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.VentLeak },
                new VentLink("vent", "collar", Boundary.Terminal, Origin.Memory) { Scale = Parameter.Vent },
            ],
            FireNode: "firebox",
            FlueNode: "collar"),
        Heat = new HeatSide(19.5, 140, 0.25, Origin.Fitted),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(76, 0.6, 1.2, Tees: 1, Terminal: "vertical-cap", Lining: "rigid"),
        Levels = new Dictionary<FireState, BurnLevel>
        {
            [FireState.Cold] = new(0, 1.0, 0, Origin.Fitted),
            [FireState.Igniting] = new(0.8, 0.8, 0.6, Origin.Fitted),
            [FireState.Low] = new(1.1, 0.66, 0.6, Origin.Fitted),
            [FireState.High] = new(2.6, 1.0, 1, Origin.Fitted),
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
            new(new(Measure.Temperature, Places.Collar, Condition.HighBurn), 140, 200, Origin.Memory),
            new(new(Measure.CarbonMonoxide, Places.Flue, Condition.HighBurn), 80, 400, Origin.Memory),
            new(new(Measure.Temperature, Places.WarmAir, Condition.HighBurn), 45, 80, Origin.Memory),
        ],
        Parameters = Baselines.Usual,
        SupplyV = 120,
    };
}
