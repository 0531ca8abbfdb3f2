namespace Emberwright.Stove.Quantities;

/// <summary>The system of units a person works in. Files may mix both; each quantity carries its own unit.</summary>
public enum UnitSystem
{
    /// <summary>Pa, °C, m³/h, kg/h.</summary>
    Si,
    /// <summary>inWC, °F, CFM, lb/h.</summary>
    Us,
}

/// <summary>Joins each <see cref="Measure"/> to its name in files, its unit inside, and its units on screens.</summary>
public static class MeasureUnits
{
    /// <summary>The unit in which a measure is held inside, as <see cref="Measure"/> documents it.</summary>
    public static Unit Of(Measure measure) => measure switch
    {
        Measure.Pressure => Units.Pascal,
        Measure.Temperature => Units.Celsius,
        Measure.Oxygen or Measure.CarbonDioxide => Units.Percent,
        Measure.CarbonMonoxide => Units.PartsPerMillion,
        Measure.Voltage => Units.Volt,
        Measure.Resistance => Units.Ohm,
        Measure.Current => Units.Ampere,
        Measure.Speed => Units.RevolutionPerMinute,
        Measure.Feed => Units.KilogramPerHour,
        Measure.Duration => Units.Second,
        Measure.Flow => Units.CubicMetrePerSecond,
        Measure.Capacitance => Units.Farad,
    };

    /// <summary>
    /// The unit a measure is shown in, and the step of an ordinary instrument in that unit (common practice, no source).
    /// </summary>
    public static (Unit Unit, double Step) Shown(Measure measure, UnitSystem system) => (measure, system) switch
    {
        (Measure.Pressure, UnitSystem.Si) => (Units.Pascal, 1),
        (Measure.Pressure, UnitSystem.Us) => (Units.InchOfWater, 0.01),
        (Measure.Temperature, UnitSystem.Si) => (Units.Celsius, 1),
        (Measure.Temperature, UnitSystem.Us) => (Units.Fahrenheit, 1),
        (Measure.Oxygen or Measure.CarbonDioxide, _) => (Units.Percent, 0.1),
        (Measure.CarbonMonoxide, _) => (Units.PartsPerMillion, 1),
        (Measure.Voltage, _) => (Units.Volt, 1),
        (Measure.Resistance, _) => (Units.Ohm, 1),
        (Measure.Current, _) => (Units.Ampere, 0.01),
        (Measure.Speed, _) => (Units.RevolutionPerMinute, 10),
        (Measure.Feed, UnitSystem.Si) => (Units.KilogramPerHour, 0.1),
        (Measure.Feed, UnitSystem.Us) => (Units.PoundPerHour, 0.1),
        (Measure.Duration, _) => (Units.Minute, 1),
        (Measure.Flow, UnitSystem.Si) => (Units.CubicMetrePerHour, 1),
        (Measure.Flow, UnitSystem.Us) => (Units.CubicFootPerMinute, 1),
        (Measure.Capacitance, _) => (Units.Microfarad, 0.01),
    };

    /// <summary>The name of a measure in files, e.g. <c>pressure</c>, <c>o2</c>.</summary>
    public static string Name(Measure measure) => measure switch
    {
        Measure.Pressure => "pressure",
        Measure.Temperature => "temperature",
        Measure.Oxygen => "o2",
        Measure.CarbonDioxide => "co2",
        Measure.CarbonMonoxide => "co",
        Measure.Voltage => "voltage",
        Measure.Resistance => "resistance",
        Measure.Current => "current",
        Measure.Speed => "speed",
        Measure.Feed => "feed",
        Measure.Duration => "duration",
        Measure.Flow => "flow",
        Measure.Capacitance => "capacitance",
    };

    /// <summary>The measure of a name, letter case forgiven; null when there is none.</summary>
    public static Measure? ByName(string name)
    {
        foreach (var measure in Enum.GetValues<Measure>())
            if (Name(measure).Equals(name, StringComparison.OrdinalIgnoreCase)) return measure;
        return null;
    }

    /// <summary>All names, for messages: "pressure, temperature, o2, …".</summary>
    public static string Names { get; } = string.Join(", ", Enum.GetValues<Measure>().Select(Name));
}
