using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;

namespace Emberwright.Stove.Patterns;

/// <summary>
/// Sealed-combustion stove: all air from outdoors through a pipe, tight seals, a pressure sensor on the chamber and a controller
/// that holds its set point by the combustion blower's speed, twin-wall vent. Cold and fan only, the blower runs full.
/// </summary>
public static class SealedCombustion
{
    /// <summary>Id of the pattern.</summary>
    public const string Id = "sealed-combustion";

    /// <summary>The pattern with all its numbers; the origin stands beside each.</summary>
    public static Pattern Pattern { get; } = new()
    {
        Id = Id,
        Name = "sealed-combustion stove with pressure sensor and modulating blower",
        Synonyms = ["sealed-combustion stove", "room-sealed stove", "modulating stove", "pressure-sensor stove", "airtight stove"],
        Form = new(FeedKind.Chute, ExchangerKind.Ducts, AshWay.Back, IntakeKind.Duct),
        Air = new Topology(
            [
                new Node("air-box", 0.15),
                new Node("firebox", 0.35),
                new Node("exchanger-end", 0.6),
                new Node("blower-inlet", 0.15),
                new Node("collar", 0.2),
            ],
            [
                new Passage("intake", Boundary.AirSupply, "air-box", 1.96e-3, 0.05, 1.5, 0.0002, 1.5, Origin.Memory)
                    { Scale = Parameter.Intake, IsIntake = true },
                new Opening("burn-pot", "air-box", "firebox", 1.85e-3, 0.6, Origin.Fitted) { Scale = Parameter.BurnPot, IsPotAir = true },
                new Crack("door", Boundary.Room, "firebox", 4e-6, 0.65, Origin.Memory) { Scale = Parameter.DoorLeak, DoorOpenAreaM2 = 0.10 },
                new Crack("lid", Boundary.Room, "firebox", 4e-6, 0.65, Origin.Memory) { Scale = Parameter.LidLeak },
                Passage.Chamber("exchanger", "firebox", "exchanger-end", 1.2e-3, 1, Origin.Fitted)
                    with { Scale = Parameter.Exchanger, ColdSide = ColdSide.Stream },
                Passage.Chamber("ash-passages", "exchanger-end", "blower-inlet", 0.97e-3, 1, Origin.Fitted)
                    with { Scale = Parameter.AshPassages },
                new Crack("exhaust-covers", Boundary.Room, "exchanger-end", 4e-6, 0.65, Origin.Memory) { Scale = Parameter.ExhaustLeak },
                new Blower("combustion-blower", "blower-inlet", "collar", new FanCurve(135, 1200, 490_000), Origin.Fitted),
                new Crack("blower-gasket", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.BlowerGasketLeak },
                new Crack("vent-joints", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.VentLeak },
                new VentLink("vent", "collar", Boundary.Terminal, Origin.Memory) { Scale = Parameter.Vent },
            ],
            FireNode: "firebox",
            FlueNode: "collar"),
        Heat = new HeatSide(11.5, 100, 0.25, Origin.Fitted),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(80, 0.5, 4.0, Elbows90: 1, Tees: 1, Terminal: "vertical-cap", Lining: "rigid", Insulated: true),
        Levels = new Dictionary<FireState, BurnLevel>
        {
            [FireState.Cold] = new(0, 1.0, 0, Origin.Fitted),
            [FireState.Igniting] = new(0.6, 1.0, 0.6, Origin.Fitted),
            [FireState.Low] = new(0.9, 1.0, 0.6, Origin.Fitted),
            [FireState.High] = new(1.8, 1.0, 1, Origin.Fitted),
            [FireState.Shutdown] = new(0.3, 1.0, 0.6, Origin.Fitted),
        },
        Ports =
        [
            new Port(Places.Firebox, "chamber", "firebox", 0.40),
            new Port(Places.BlowerInlet, "blower inlet", "blower-inlet", 0.15),
            new Port(Places.Collar, "vent collar", "collar", 0.25, 5.03e-3, "vent"),
        ],
        Switch = new VacuumSwitch(Places.Firebox, 14, 12, Origin.Memory),
        Lags = new Lags(150, 420, 90, 90, Origin.Memory),
        Ratings =
        [
            new(new(Measure.Pressure, Places.Firebox, Condition.HighBurn), -60, -12, Origin.Memory),
            new(new(Measure.Oxygen, Places.Flue, Condition.HighBurn), 9, 11.5, Origin.Memory),
            new(new(Measure.Temperature, Places.Collar, Condition.HighBurn), 170, 200, Origin.Memory),
            new(new(Measure.Temperature, Places.Collar, Condition.LowBurn), 85, 110, Origin.Memory),
            new(new(Measure.CarbonMonoxide, Places.Flue, Condition.HighBurn), 80, 250, Origin.Memory),
            new(new(Measure.Temperature, Places.WarmAir, Condition.HighBurn), 45, 80, Origin.Memory),
        ],
        Parameters = Baselines.WithoutAshDoor,
        SupplyV = 230,
        IsSealed = true,
        Control = new PressureControl(
            Places.Firebox,
            new Dictionary<FireState, double>
            {
                [FireState.Igniting] = -18,
                [FireState.Low] = -14.5,
                [FireState.High] = -16,
                [FireState.Shutdown] = -20,
            },
            0.25, 1.0, Origin.Fitted),
    };
}
