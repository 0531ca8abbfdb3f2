using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Heat;
using Emberwright.Stove.Patterns.Anatomies;

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
        Air = new CommonChain
        {
            Intake = CommonChain.Pipe(0.05, 1.5, 1.5, Origin.Memory),
            BurnPotM2 = 1.85e-3,
            SeamLeak = 4e-6,
            HasAshDoor = false,
            ExchangerM2 = 1.2e-3,
            ExchangerShape = new(4, 2),
            AshPassagesM2 = 0.97e-3,
            AshShape = new(2, 2),
            Blower = new FanCurve(135, 1200, 490_000),
            Sizes = Origin.Fitted,
        }.Build(),
        Heat = HeatSide.ToAir(11.5, RoomAirBlower.Sized(0.0826, 40), 0.25, Origin.Fitted),
        Fuel = new FuelSide(Fuels.PelletsA1, Origin.Memory),
        Vent = new VentRun(80, 0.5, 4.0, Elbows90: 1, Tees: 1, Terminal: "vertical-cap", Lining: "rigid", Insulated: true),
        Levels = BurnLevels.Of(Origin.Fitted, igniting: (0.6, 1.0), low: (0.9, 1.0), high: (1.8, 1.0), shutdown: (0.3, 1.0)),
        Ports = CommonChain.Ports("chamber", 80),
        Switch = new VacuumSwitch(Places.Firebox, 14, 12, Origin.Memory),
        Lags = new Lags(150, 420, 90, 90, Origin.Memory),
        Ratings =
        [
            Rate.FanOnly(Measure.Pressure, Places.Firebox, -52, -32),
            Rate.FanOnly(Measure.Pressure, Places.BlowerInlet, -112, -82),
            Rate.FanOnly(Measure.Pressure, Places.Collar, 1, 12),
            Rate.Low(Measure.Pressure, Places.Firebox, -20, -12),
            Rate.Low(Measure.Oxygen, Places.Flue, 14, 16.5),
            Rate.Low(Measure.CarbonDioxide, Places.Flue, 4.4, 6.8),
            Rate.Low(Measure.CarbonMonoxide, Places.Flue, 200, 800),
            Rate.Low(Measure.Temperature, Places.Collar, 85, 120),
            Rate.Low(Measure.Feed, Places.Feed, 0.7, 1.1),
            Rate.Low(Measure.Temperature, Places.WarmAir, 50, 78),
            Rate.High(Measure.Pressure, Places.Firebox, -25, -14),
            Rate.High(Measure.Oxygen, Places.Flue, 9, 11.5),
            Rate.High(Measure.CarbonDioxide, Places.Flue, 9, 11.6),
            Rate.High(Measure.CarbonMonoxide, Places.Flue, 80, 250),
            Rate.High(Measure.Temperature, Places.Collar, 165, 205),
            Rate.High(Measure.Feed, Places.Feed, 1.6, 2.1),
            Rate.High(Measure.Temperature, Places.WarmAir, 60, 80),
        ],
        Anatomy = SealedCombustionAnatomy.Data,
        Parameters = Baselines.WithoutAshDoor,
        HoldsBlowerSpeed = true,
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
