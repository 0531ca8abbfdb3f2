// Question: how many base units is one of the units people write?
// Equation: base = (written − zero) · scale.
// Symbols: scale in base units per unit; zero in the unit itself.
// Validity: exact for every unit here; no unit depends on weather, place or fuel.
// Assumptions: water columns are the conventional ones (9.80665 m/s², 1000 kg/m³), as gauges are scaled.
// Source: NIST Special Publication 811 (2008), Appendix B: B.6 exact definitions of foot, pound and international
//   table Btu (1055.05585262 J), B.8 "millimeter of water, conventional" 9.80665 Pa, "inch of water, conventional"
//   249.0889 Pa, "cubic foot per minute" 4.719474e-4 m³/s, "British thermal unit per hour" 0.2930711 W
//   (quoted from memory; every factor here follows from the definitions).
// Worked value (B.8): 1 inch of water, conventional = 25.4 × 9.80665 Pa = 249.0889 Pa.
namespace Emberwright.Stove.Quantities;

/// <summary>The units Emberwright reads and writes, in both systems, with exact factors.</summary>
public static class Units
{
    private const double FootM = 0.3048;
    private const double InchM = 0.0254;
    private const double PoundKg = 0.45359237;
    private const double StandardGravity = 9.80665;
    private const double BtuJ = 1055.05585262;

    /// <summary>Pascal.</summary>
    public static Unit Pascal { get; } = new("Pa", Dimension.Pressure, 1);
    /// <summary>Conventional inch of water column.</summary>
    public static Unit InchOfWater { get; } = new("inWC", Dimension.Pressure, 25.4 * StandardGravity);
    /// <summary>Conventional millimetre of water column.</summary>
    public static Unit MillimetreOfWater { get; } = new("mmWC", Dimension.Pressure, StandardGravity);
    /// <summary>Millibar.</summary>
    public static Unit Millibar { get; } = new("mbar", Dimension.Pressure, 100);
    /// <summary>Hectopascal.</summary>
    public static Unit Hectopascal { get; } = new("hPa", Dimension.Pressure, 100);
    /// <summary>Kilopascal.</summary>
    public static Unit Kilopascal { get; } = new("kPa", Dimension.Pressure, 1000);
    /// <summary>Bar.</summary>
    public static Unit Bar { get; } = new("bar", Dimension.Pressure, 100_000);
    /// <summary>Pound-force per square inch.</summary>
    public static Unit Psi { get; } = new("psi", Dimension.Pressure, PoundKg * StandardGravity / (InchM * InchM));

    /// <summary>Degree Celsius.</summary>
    public static Unit Celsius { get; } = new("°C", Dimension.Temperature, 1);
    /// <summary>Degree Fahrenheit.</summary>
    public static Unit Fahrenheit { get; } = new("°F", Dimension.Temperature, 5.0 / 9.0, 32);
    /// <summary>Kelvin, as a temperature.</summary>
    public static Unit Kelvin { get; } = new("K", Dimension.Temperature, 1, 273.15);

    /// <summary>Kelvin, as a difference.</summary>
    public static Unit KelvinDifference { get; } = new("K", Dimension.TemperatureDifference, 1);
    /// <summary>Degree Celsius, as a difference.</summary>
    public static Unit CelsiusDifference { get; } = new("°C", Dimension.TemperatureDifference, 1);
    /// <summary>Degree Fahrenheit, as a difference.</summary>
    public static Unit FahrenheitDifference { get; } = new("°F", Dimension.TemperatureDifference, 5.0 / 9.0);

    /// <summary>Cubic metre per second.</summary>
    public static Unit CubicMetrePerSecond { get; } = new("m³/s", Dimension.VolumeFlow, 1);
    /// <summary>Cubic metre per hour.</summary>
    public static Unit CubicMetrePerHour { get; } = new("m³/h", Dimension.VolumeFlow, 1.0 / 3600);
    /// <summary>Cubic foot per minute.</summary>
    public static Unit CubicFootPerMinute { get; } = new("CFM", Dimension.VolumeFlow, FootM * FootM * FootM / 60);

    /// <summary>Kilogram per hour.</summary>
    public static Unit KilogramPerHour { get; } = new("kg/h", Dimension.MassFlow, 1);
    /// <summary>Pound per hour.</summary>
    public static Unit PoundPerHour { get; } = new("lb/h", Dimension.MassFlow, PoundKg);
    /// <summary>Gram per second.</summary>
    public static Unit GramPerSecond { get; } = new("g/s", Dimension.MassFlow, 3.6);
    /// <summary>Gram per minute.</summary>
    public static Unit GramPerMinute { get; } = new("g/min", Dimension.MassFlow, 0.06);

    /// <summary>Kilogram.</summary>
    public static Unit Kilogram { get; } = new("kg", Dimension.Mass, 1);
    /// <summary>Gram.</summary>
    public static Unit Gram { get; } = new("g", Dimension.Mass, 0.001);
    /// <summary>Pound.</summary>
    public static Unit Pound { get; } = new("lb", Dimension.Mass, PoundKg);
    /// <summary>Metric tonne.</summary>
    public static Unit Tonne { get; } = new("t", Dimension.Mass, 1000);
    /// <summary>Short ton, 2000 lb.</summary>
    public static Unit ShortTon { get; } = new("short ton", Dimension.Mass, 2000 * PoundKg);

    /// <summary>Metre.</summary>
    public static Unit Metre { get; } = new("m", Dimension.Length, 1);
    /// <summary>Centimetre.</summary>
    public static Unit Centimetre { get; } = new("cm", Dimension.Length, 0.01);
    /// <summary>Millimetre.</summary>
    public static Unit Millimetre { get; } = new("mm", Dimension.Length, 0.001);
    /// <summary>Foot.</summary>
    public static Unit Foot { get; } = new("ft", Dimension.Length, FootM);
    /// <summary>Inch.</summary>
    public static Unit Inch { get; } = new("in", Dimension.Length, InchM);

    /// <summary>Metre per second.</summary>
    public static Unit MetrePerSecond { get; } = new("m/s", Dimension.Velocity, 1);
    /// <summary>Kilometre per hour.</summary>
    public static Unit KilometrePerHour { get; } = new("km/h", Dimension.Velocity, 1 / 3.6);
    /// <summary>Mile per hour.</summary>
    public static Unit MilePerHour { get; } = new("mph", Dimension.Velocity, 5280 * FootM / 3600);
    /// <summary>Foot per minute.</summary>
    public static Unit FootPerMinute { get; } = new("ft/min", Dimension.Velocity, FootM / 60);

    /// <summary>Revolution per minute.</summary>
    public static Unit RevolutionPerMinute { get; } = new("rpm", Dimension.Rotation, 1);

    /// <summary>Volt.</summary>
    public static Unit Volt { get; } = new("V", Dimension.Voltage, 1);
    /// <summary>Millivolt.</summary>
    public static Unit Millivolt { get; } = new("mV", Dimension.Voltage, 0.001);

    /// <summary>Ampere.</summary>
    public static Unit Ampere { get; } = new("A", Dimension.Current, 1);
    /// <summary>Milliampere.</summary>
    public static Unit Milliampere { get; } = new("mA", Dimension.Current, 0.001);

    /// <summary>Ohm.</summary>
    public static Unit Ohm { get; } = new("Ω", Dimension.Resistance, 1);
    /// <summary>Kilohm.</summary>
    public static Unit Kilohm { get; } = new("kΩ", Dimension.Resistance, 1000);
    /// <summary>Megohm.</summary>
    public static Unit Megohm { get; } = new("MΩ", Dimension.Resistance, 1_000_000);

    /// <summary>Watt.</summary>
    public static Unit Watt { get; } = new("W", Dimension.Power, 1);
    /// <summary>Kilowatt.</summary>
    public static Unit Kilowatt { get; } = new("kW", Dimension.Power, 1000);
    /// <summary>British thermal unit (international table) per hour.</summary>
    public static Unit BtuPerHour { get; } = new("BTU/h", Dimension.Power, BtuJ / 3600);

    /// <summary>Percent.</summary>
    public static Unit Percent { get; } = new("%", Dimension.Fraction, 1);
    /// <summary>Parts per million.</summary>
    public static Unit PartsPerMillion { get; } = new("ppm", Dimension.Fraction, 0.0001);

    /// <summary>Second.</summary>
    public static Unit Second { get; } = new("s", Dimension.Duration, 1);
    /// <summary>Minute.</summary>
    public static Unit Minute { get; } = new("min", Dimension.Duration, 60);
    /// <summary>Hour.</summary>
    public static Unit Hour { get; } = new("h", Dimension.Duration, 3600);
    /// <summary>Day.</summary>
    public static Unit Day { get; } = new("d", Dimension.Duration, 86_400);

    /// <summary>Farad; written F it means Fahrenheit, so nobody reads or writes it.</summary>
    public static Unit Farad { get; } = new("F", Dimension.Capacitance, 1);
    /// <summary>Microfarad; MFD on many capacitors' labels.</summary>
    public static Unit Microfarad { get; } = new("µF", Dimension.Capacitance, 1e-6);
    /// <summary>Nanofarad.</summary>
    public static Unit Nanofarad { get; } = new("nF", Dimension.Capacitance, 1e-9);

    /// <summary>Every unit. Where two dimensions share a symbol, the one meant when nothing is said comes first.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        Pascal, InchOfWater, MillimetreOfWater, Millibar, Hectopascal, Kilopascal, Bar, Psi,
        Celsius, Fahrenheit, Kelvin, KelvinDifference, CelsiusDifference, FahrenheitDifference,
        CubicMetrePerSecond, CubicMetrePerHour, CubicFootPerMinute,
        KilogramPerHour, PoundPerHour, GramPerSecond, GramPerMinute,
        Kilogram, Gram, Pound, Tonne, ShortTon,
        Metre, Centimetre, Millimetre, Foot, Inch,
        MetrePerSecond, KilometrePerHour, MilePerHour, FootPerMinute,
        RevolutionPerMinute, Volt, Millivolt, Ampere, Milliampere, Ohm, Kilohm, Megohm,
        Watt, Kilowatt, BtuPerHour, Percent, PartsPerMillion, Second, Minute, Hour, Day,
        Microfarad, Nanofarad,
    ];
}
