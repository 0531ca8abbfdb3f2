namespace Emberwright.Stove.Quantities;

/// <summary>
/// A kind of quantity that can be written with a unit. It is not a <see cref="Measure"/>: oxygen and carbon
/// monoxide are two measures of one dimension, and a length is a dimension that no reading has.
/// Each member names its base unit, the one in which <see cref="Quantity.Si"/> is given.
/// </summary>
public enum Dimension
{
    /// <summary>Pressure difference, Pa.</summary>
    Pressure,
    /// <summary>Temperature on a scale, °C; not a difference.</summary>
    Temperature,
    /// <summary>Difference of two temperatures, K.</summary>
    TemperatureDifference,
    /// <summary>Volume flow, m³/s.</summary>
    VolumeFlow,
    /// <summary>Mass flow, kg/h.</summary>
    MassFlow,
    /// <summary>Mass, kg.</summary>
    Mass,
    /// <summary>Length, m.</summary>
    Length,
    /// <summary>Speed of air, m/s; not of rotation.</summary>
    Velocity,
    /// <summary>Rotation, 1/min.</summary>
    Rotation,
    /// <summary>Voltage, V.</summary>
    Voltage,
    /// <summary>Current, A.</summary>
    Current,
    /// <summary>Resistance, Ω; an open circuit is +∞.</summary>
    Resistance,
    /// <summary>Power, W.</summary>
    Power,
    /// <summary>Fraction by volume or by mass, %.</summary>
    Fraction,
    /// <summary>Duration, s.</summary>
    Duration,
    /// <summary>Capacitance, F.</summary>
    Capacitance,
}
