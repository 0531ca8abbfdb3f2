namespace Emberwright.Stove.Fire;

/// <summary>
/// What a flue gas measurement gave and on which fuel. At least one of O2 and CO2 is needed; with both, O2 counts and CO2
/// is checked against it. Units as analysers print them.
/// </summary>
public sealed record FlueOptions
{
    /// <summary>Fuel as fired; softwood pellets of grade A1 unless said otherwise.</summary>
    public Fuel Fuel { get; init; } = Fuels.PelletsA1;

    /// <summary>O2, % by volume.</summary>
    public double? OxygenPercent { get; init; }

    /// <summary>CO2, % by volume.</summary>
    public double? CarbonDioxidePercent { get; init; }

    /// <summary>CO, ppm by volume, undiluted as read; null when not measured.</summary>
    public double? CarbonMonoxidePpm { get; init; }

    /// <summary>Whether the gas readings count water vapour.</summary>
    public Basis Basis { get; init; } = Basis.Dry;

    /// <summary>Flue gas temperature, °C; 0 … 600.</summary>
    public double FlueC { get; init; } = double.NaN;

    /// <summary>Room (combustion air) temperature, °C; −30 … 50.</summary>
    public double RoomC { get; init; } = 20;

    /// <summary>Absolute pressure, Pa; 50 000 … 110 000.</summary>
    public double PressurePa { get; init; } = 101_325;

    /// <summary>Relative humidity of the combustion air, %; 0 … 100.</summary>
    public double HumidityPercent { get; init; } = 40;

    /// <summary>Fuel burned, kg/h; null leaves powers and flows out.</summary>
    public double? FuelKgPerHour { get; init; }

    /// <summary>How sure the readings are.</summary>
    public FlueUncertainty Uncertainty { get; init; } = new();
}

/// <summary>
/// Standard uncertainties of the readings, in the unit of the reading. The defaults are those of an electrochemical analyser
/// in service (half of the tolerances of EN 50379-2, from memory) and of a fuel by its grade.
/// </summary>
/// <param name="OxygenPercent">O2, points.</param>
/// <param name="CarbonDioxidePercent">CO2, points.</param>
/// <param name="CarbonMonoxideRelative">CO, share of the reading.</param>
/// <param name="CarbonMonoxidePpm">CO, ppm, added in quadrature.</param>
/// <param name="FlueK">Flue temperature, K: instrument and place of the probe.</param>
/// <param name="RoomK">Room temperature, K.</param>
/// <param name="Moisture">Fuel moisture, share as fired.</param>
/// <param name="HumidityPercent">Relative humidity of the air, points.</param>
/// <param name="FuelRelative">Fuel rate, share of itself.</param>
public sealed record FlueUncertainty(
    double OxygenPercent = 0.15,
    double CarbonDioxidePercent = 0.15,
    double CarbonMonoxideRelative = 0.05,
    double CarbonMonoxidePpm = 10,
    double FlueK = 3,
    double RoomK = 1,
    double Moisture = 0.01,
    double HumidityPercent = 10,
    double FuelRelative = 0.03);
