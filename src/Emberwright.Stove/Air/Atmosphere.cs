// What pressure does the air have at a given height above sea level?
//   p = p0 · (1 − L·h/T0)^(g·M/(R·L))
// p0 101 325 Pa, T0 288.15 K, L 0.0065 K/m, g 9.80665 m/s², M 0.0289644 kg/mol, R 8.31432 J/(mol·K),
// h geopotential height, m.
// Valid −5000 … 11 000 m (the troposphere); here −400 … 5000 m, outside it an error.
// Assumes the standard day; weather moves pressure by about ±2 %.
// Source: U.S. Standard Atmosphere, 1976 (NOAA/NASA/USAF), eq. 33a.
// Worked value: 2000 m → 79 501 Pa, 3000 m → 70 121 Pa (table I, geometric height, within 0.01 %).
namespace Emberwright.Stove.Air;

/// <summary>The standard atmosphere of 1976 up to the heights where people heat with stoves.</summary>
public static class Atmosphere
{
    /// <summary>Acceleration of gravity, m/s².</summary>
    public const double GravityMPerS2 = 9.80665;

    /// <summary>Specific gas constant of dry air, J/(kg·K).</summary>
    public const double AirGasConstant = 287.053;

    /// <summary>Lowest height accepted, m.</summary>
    public const double LowestM = -400;

    /// <summary>Greatest height accepted, m.</summary>
    public const double HighestM = 5000;

    private const double EarthRadiusM = 6_356_766;

    /// <summary>Ambient pressure at a geometric height above sea level, Pa.</summary>
    /// <param name="altitudeM">Height above sea level, m; −400 … 5000.</param>
    /// <exception cref="InputException">The height is not a number or out of range.</exception>
    public static double PressurePa(double altitudeM)
    {
        InputException.Require(altitudeM, LowestM, HighestM, "altitude", "m", "Give the height of the house above sea level.");
        var geopotentialM = EarthRadiusM * altitudeM / (EarthRadiusM + altitudeM);
        return 101_325 * Math.Pow(1 - (0.0065 * geopotentialM / 288.15), 5.255876);
    }

    /// <summary>Temperature of the standard day at a geometric height, K.</summary>
    /// <param name="altitudeM">Height above sea level, m; −400 … 5000.</param>
    public static double TemperatureK(double altitudeM)
    {
        InputException.Require(altitudeM, LowestM, HighestM, "altitude", "m", "Give the height of the house above sea level.");
        return 288.15 - (0.0065 * EarthRadiusM * altitudeM / (EarthRadiusM + altitudeM));
    }

    /// <summary>Density of dry air, kg/m³, as an ideal gas.</summary>
    /// <param name="pressurePa">Absolute pressure, Pa.</param>
    /// <param name="temperatureK">Temperature, K.</param>
    public static double DensityKgPerM3(double pressurePa, double temperatureK) =>
        pressurePa / (AirGasConstant * temperatureK);
}
