using Emberwright.Stove.Air;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Heat;
using Emberwright.Stove.Patterns.Anatomies;

namespace Emberwright.Stove.Patterns;

/// <summary>
/// A brand-free family of construction: how fuel is fed, how fire is proved, where air goes, how controls are wired.
/// It is complete: with no card at all the tool works, with wider bands.
/// </summary>
public sealed record Pattern
{
    /// <summary>Stable id, lower case with hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>Name in the trade's words.</summary>
    public required string Name { get; init; }

    /// <summary>Other words people search it by.</summary>
    public IReadOnlyList<string> Synonyms { get; init; } = [];

    /// <summary>Where air goes.</summary>
    public required Topology Air { get; init; }

    /// <summary>How heat is given off.</summary>
    public required HeatSide Heat { get; init; }

    /// <summary>The fuel it is meant for.</summary>
    public required FuelSide Fuel { get; init; }

    /// <summary>The vent run taken when the site does not say.</summary>
    public required VentRun Vent { get; init; }

    /// <summary>Feed and speeds by the state of the fire.</summary>
    public required IReadOnlyDictionary<FireState, BurnLevel> Levels { get; init; }

    /// <summary>Places where a pressure is measured.</summary>
    public required IReadOnlyList<Port> Ports { get; init; }

    /// <summary>The vacuum switch or pressure sensor.</summary>
    public required VacuumSwitch Switch { get; init; }

    /// <summary>First-order lags.</summary>
    public required Lags Lags { get; init; }

    /// <summary>Ranges a healthy stove's readings have, wherever it stands.</summary>
    public IReadOnlyList<Rating> Ratings { get; init; } = [];

    /// <summary>What hands meet: panels, ash traps, gaskets, sensors, and how to learn what is not known.</summary>
    public required Anatomy Anatomy { get; init; }

    /// <summary>Port the vacuum switch's or pressure sensor's hose joins, unless a card says otherwise.</summary>
    public string SensePort => Switch.SensePort;

    /// <summary>Which parameters act on this pattern, with the uncertainty of the clean stove's baseline.</summary>
    public required IReadOnlyList<Baseline> Parameters { get; init; }

    /// <summary>Rated mains voltage, V.</summary>
    public double SupplyV { get; init; } = 120;

    /// <summary>True when combustion air always comes from outdoors, whatever the site says.</summary>
    public bool IsSealed { get; init; }

    /// <summary>How it is built, as far as a section through it shows.</summary>
    public required StoveForm Form { get; init; }

    /// <summary>How its controls are wired.</summary>
    /// <exception cref="CircuitException">No wiring is known for this pattern.</exception>
    public Wiring Wiring => WiringLibrary.For(Id);

    /// <summary>Its board's sequence.</summary>
    /// <exception cref="CircuitException">No program is known for this pattern.</exception>
    public BurnProgram Program => ProgramLibrary.For(Id);

    /// <summary>True when the board holds the combustion blower's speed by its speed sensor: low voltage and a blocked path do not show in it.</summary>
    public bool HoldsBlowerSpeed { get; init; }

    /// <summary>Keeps a pressure by changing the combustion blower's speed; null when the speed is fixed per level.</summary>
    public PressureControl? Control { get; init; }
}

/// <summary>Heat given off by the stove.</summary>
/// <param name="ConductanceWPerK">UA of the exchanger, W/K.</param>
/// <param name="StreamWPerK">Heat capacity rate of the other stream (room air at sea level, or water) at full speed, W/K.</param>
/// <param name="RadiantShare">Share of the fuel's heat given to the room from the firebox, 0 … 0.6.</param>
/// <param name="StreamIsWater">True when the exchanger heats water.</param>
/// <param name="ReturnC">Temperature of the returning water, °C; not used for air.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record HeatSide(
    double ConductanceWPerK, double StreamWPerK, double RadiantShare, Origin Origin,
    bool StreamIsWater = false, double ReturnC = 55)
{
    /// <summary>Heat capacity of room air, J/(kg·K).</summary>
    public const double AirHeatCapacity = 1006;

    /// <summary>The room-air blower whose flow is the other stream; null for water.</summary>
    public RoomAirBlower? RoomAir { get; init; }

    /// <summary>Heat to room air through a blower's own network.</summary>
    /// <param name="conductanceWPerK">UA of the exchanger, W/K.</param>
    /// <param name="blower">The room-air blower.</param>
    /// <param name="radiantShare">Share of the fuel's heat given to the room from the firebox.</param>
    /// <param name="origin">Where these numbers come from.</param>
    public static HeatSide ToAir(double conductanceWPerK, RoomAirBlower blower, double radiantShare, Origin origin) => new(
        conductanceWPerK,
        blower.Run(1).FlowM3PerS * AirHeatCapacity * Atmosphere.DensityKgPerM3(Atmosphere.PressurePa(0), 273.15 + ReferenceDay.RoomC),
        radiantShare, origin)
    { RoomAir = blower };
}

/// <summary>The fuel of a pattern.</summary>
/// <param name="Fuel">Analysis and nominal moisture.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record FuelSide(Fuel Fuel, Origin Origin);

/// <summary>Feed and speeds in one state of the fire.</summary>
/// <param name="FeedKgPerH">Fuel burnt, kg/h; 0 when cold.</param>
/// <param name="SpeedRatio">Combustion blower's speed over its curve's, –.</param>
/// <param name="StreamShare">Room-air blower's speed (or pump's flow) over full, –.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record BurnLevel(double FeedKgPerH, double SpeedRatio, double StreamShare, Origin Origin);

/// <summary>A place where a pressure is measured.</summary>
/// <param name="Id">Stable id; shared ones are in <see cref="Places"/>.</param>
/// <param name="Name">Name in the trade's words.</param>
/// <param name="Node">Node whose gas it touches.</param>
/// <param name="HeightM">Height of the tapping above the floor, m.</param>
/// <param name="AreaM2">Cross-section of the gas stream at the tapping, m²; null where the gas is nearly at rest.</param>
/// <param name="FlowLink">Link whose flow passes that cross-section.</param>
public sealed record Port(string Id, string Name, string Node, double HeightM, double? AreaM2 = null, string? FlowLink = null);

/// <summary>The vacuum switch: where its hose joins and when it acts.</summary>
/// <param name="SensePort">Port its hose is joined to.</param>
/// <param name="ClosesPa">Vacuum at which it closes, Pa below room; &gt; 0.</param>
/// <param name="OpensPa">Vacuum at which it opens again, Pa below room; weaker than <paramref name="ClosesPa"/>.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record VacuumSwitch(string SensePort, double ClosesPa, double OpensPa, Origin Origin);

/// <summary>First-order lags, s.</summary>
/// <param name="BurnPotS">Fuel bed: from a change of feed to the change of heat.</param>
/// <param name="ExchangerS">Body and exchanger.</param>
/// <param name="ExhaustS">Exhaust gas at the collar.</param>
/// <param name="DiscS">A disc on its surface.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record Lags(double BurnPotS, double ExchangerS, double ExhaustS, double DiscS, Origin Origin);

/// <summary>A range a healthy stove's reading has.</summary>
/// <param name="Observable">What is read, where, in which condition.</param>
/// <param name="Low">Lower end in the measure's unit.</param>
/// <param name="High">Upper end.</param>
/// <param name="Origin">Where the range comes from.</param>
public sealed record Rating(Observable Observable, double Low, double High, Origin Origin);

/// <summary>How well the clean stove's parameter is known from the pattern alone and with a card.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="PatternSd">Standard deviation when only the pattern is known, in the parameter's unit.</param>
/// <param name="CardSd">Standard deviation with a card.</param>
public sealed record Baseline(Parameter Parameter, double PatternSd, double CardSd);

/// <summary>A controller that holds a pressure by the combustion blower's speed.</summary>
/// <param name="Port">Port of its sensor.</param>
/// <param name="SetPointPa">Pressure held in each state of the fire, Pa (negative below room).</param>
/// <param name="LeastSetting">Lowest setting, times the level's speed ratio.</param>
/// <param name="MostSetting">Highest setting, times the level's speed ratio.</param>
/// <param name="Origin">Where these numbers come from.</param>
public sealed record PressureControl(
    string Port, IReadOnlyDictionary<FireState, double> SetPointPa, double LeastSetting, double MostSetting, Origin Origin);
