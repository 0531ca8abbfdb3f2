namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>What kind of sensor or safety switch.</summary>
public enum SensorKind
{
    /// <summary>Switch on a hose, closed by vacuum.</summary>
    VacuumSwitch,
    /// <summary>Electronic pressure sensor on a hose.</summary>
    PressureSensor,
    /// <summary>Disc that closes when the exhaust is warm.</summary>
    ProofDisc,
    /// <summary>Disc or thermostat that opens when something is too hot.</summary>
    Limit,
    /// <summary>Disc that lets the room-air blower run.</summary>
    FanDisc,
    /// <summary>Thermocouple in the flame or flue.</summary>
    Thermocouple,
    /// <summary>Resistance probe, platinum or thermistor.</summary>
    Probe,
    /// <summary>Speed sensor of a blower.</summary>
    SpeedSensor,
    /// <summary>Switch worked by a door or lid.</summary>
    LidOrDoorSwitch,
}

/// <summary>A sensor or safety switch and where it sits.</summary>
/// <param name="Component">Component id in the pattern's wiring.</param>
/// <param name="Name">Name in the trade's words.</param>
/// <param name="Kind">What kind it is.</param>
/// <param name="Where">Where it sits, and how it is reached.</param>
/// <param name="Senses">Node of the air path whose gas or wall it feels, or a place outside it in words.</param>
/// <param name="Origin">Where this comes from.</param>
public sealed record SensorPlace(string Component, string Name, SensorKind Kind, string Where, string Senses, Origin Origin)
{
    /// <summary>Panels it is reached through, by id.</summary>
    public IReadOnlyList<string> Through { get; init; } = [];
}
