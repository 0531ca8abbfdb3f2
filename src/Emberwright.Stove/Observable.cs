namespace Emberwright.Stove;

/// <summary>What kind of quantity an observable is; its SI unit stands beside each.</summary>
public enum Measure
{
    /// <summary>Static pressure relative to the room at the same height, Pa.</summary>
    Pressure,
    /// <summary>Temperature, °C.</summary>
    Temperature,
    /// <summary>Oxygen in dry flue gas, volume fraction in %.</summary>
    Oxygen,
    /// <summary>Carbon dioxide in dry flue gas, volume fraction in %.</summary>
    CarbonDioxide,
    /// <summary>Carbon monoxide, ppm by volume (dry when in flue gas).</summary>
    CarbonMonoxide,
    /// <summary>Voltage, V.</summary>
    Voltage,
    /// <summary>Resistance, Ω.</summary>
    Resistance,
    /// <summary>Current, A.</summary>
    Current,
    /// <summary>Rotation speed, 1/min.</summary>
    Speed,
    /// <summary>Fuel feed, kg/h.</summary>
    Feed,
    /// <summary>Duration, s.</summary>
    Duration,
    /// <summary>Volume flow, m³/s.</summary>
    Flow,
    /// <summary>Capacitance, F.</summary>
    Capacitance,
}

/// <summary>
/// One number that can be read on a stove: what, where, in which condition.
/// It names a reading, it does not hold one.
/// </summary>
/// <param name="Measure">The kind of quantity.</param>
/// <param name="Place">Port or test point by its id in the pattern, e.g. <c>firebox</c>, <c>vacuum-switch</c>.</param>
/// <param name="Condition">The state in which it is read.</param>
public sealed record Observable(Measure Measure, string Place, Condition Condition);
