using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;

namespace Emberwright.Stove.Patterns;

/// <summary>
/// Underfed stove: fuel pushed up into the fire from below, air through an intake flapper and the grate, a gap above the glass
/// that washes it with room air, an exchanger behind a panel that swings down, a strong combustion blower on a hinged plate,
/// proved by a probe in the exhaust. "Fan only" is its test at full speed.
/// </summary>
public static class Underfed
{
    /// <summary>Id of the pattern.</summary>
    public const string Id = "underfed";

    /// <summary>The pattern with all its numbers; the origin stands beside each.</summary>
    public static Pattern Pattern { get; } = new()
    {
        Id = Id,
        Name = "underfed stove with swing-down exchanger panel, hinged blower access, airwash gap and intake flapper",
        Synonyms = ["underfed stove", "bottom-feed stove", "underfeed stove", "underfed stove with swing-down exchanger panel and exhaust probe", "swing-down panel stove"],
        Form = new(FeedKind.FromBelow, ExchangerKind.SwingDownPanel, AshWay.Back, IntakeKind.Flapper),
        Air = new Topology(
            [
                new Node("air-box", 0.15),
                new Node("firebox", 0.35),
                new Node("exchanger-end", 0.6),
                new Node("blower-inlet", 0.15),
                new Node("collar", 0.2),
            ],
            [
                new Opening("intake", Boundary.AirSupply, "air-box", 2.4e-3, 0.6, Origin.Fitted) { Scale = Parameter.Intake, IsIntake = true },
                new Opening("burn-pot", "air-box", "firebox", 1.55e-3, 0.6, Origin.Fitted) { Scale = Parameter.BurnPot, IsPotAir = true },
                new Opening("airwash", Boundary.Room, "firebox", 0.2e-3, 0.6, Origin.Memory),
                new Crack("door", Boundary.Room, "firebox", 1.5e-5, 0.65, Origin.Memory) { Scale = Parameter.DoorLeak, DoorOpenAreaM2 = 0.10 },
                new Crack("ash-door", Boundary.Room, "firebox", 1.5e-5, 0.65, Origin.Memory) { Scale = Parameter.AshDoorLeak },
                new Crack("lid", Boundary.Room, "firebox", 1.5e-5, 0.65, Origin.Memory) { Scale = Parameter.LidLeak },
                Passage.Chamber("exchanger", "firebox", "exchanger-end", 2.3e-3, 1, Origin.Fitted)
                    with { Scale = Parameter.Exchanger, ColdSide = ColdSide.Stream },
                Passage.Chamber("ash-passages", "exchanger-end", "blower-inlet", 1.65e-3, 1, Origin.Fitted)
                    with { Scale = Parameter.AshPassages },
                new Crack("exhaust-covers", Boundary.Room, "exchanger-end", 1.5e-5, 0.65, Origin.Memory) { Scale = Parameter.ExhaustLeak },
                new Blower("combustion-blower", "blower-inlet", "collar", new FanCurve(260, 1500, 245_000), Origin.Fitted),
                new Crack("blower-gasket", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.BlowerGasketLeak },
                new Crack("vent-joints", "collar", Boundary.Room, 2e-6, 0.65, Origin.Memory) { Scale = Parameter.VentLeak },
                new VentLink("vent", "collar", Boundary.Terminal, Origin.Memory) { Scale = Parameter.Vent },
            ],
            FireNode: "firebox",
            FlueNode: "collar"),
        Heat = new HeatSide(14.6, 100, 0.25, Origin.Fitted),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(76, 0.6, 1.2, Tees: 1, Terminal: "vertical-cap", Lining: "rigid"),
        Levels = new Dictionary<FireState, BurnLevel>
        {
            [FireState.Cold] = new(0, 1.0, 0, Origin.Fitted),
            [FireState.Igniting] = new(0.6, 0.5, 0.6, Origin.Fitted),
            [FireState.Low] = new(0.8, 0.38, 0.6, Origin.Fitted),
            [FireState.High] = new(1.9, 0.55, 1, Origin.Fitted),
            [FireState.Shutdown] = new(0.3, 0.5, 0.6, Origin.Fitted),
        },
        Ports =
        [
            new Port(Places.Firebox, "firebox", "firebox", 0.40),
            new Port(Places.BlowerInlet, "blower inlet", "blower-inlet", 0.15),
            new Port(Places.Collar, "vent collar", "collar", 0.25, 4.54e-3, "vent"),
        ],
        Switch = new VacuumSwitch(Places.Firebox, 12, 8, Origin.Memory),
        Lags = new Lags(150, 420, 90, 90, Origin.Memory),
        Ratings =
        [
            new(new(Measure.Pressure, Places.Firebox, Condition.FanOnly), -125, -75, Origin.Memory),
            new(new(Measure.Pressure, Places.Firebox, Condition.HighBurn), -62, -12, Origin.Memory),
            new(new(Measure.Oxygen, Places.Flue, Condition.HighBurn), 10, 12, Origin.Memory),
            new(new(Measure.Temperature, Places.Collar, Condition.HighBurn), 149, 182, Origin.Memory),
            new(new(Measure.CarbonMonoxide, Places.Flue, Condition.HighBurn), 80, 400, Origin.Memory),
            new(new(Measure.Temperature, Places.WarmAir, Condition.HighBurn), 45, 80, Origin.Memory),
        ],
        Parameters = Baselines.Usual,
        SupplyV = 120,
    };
}
