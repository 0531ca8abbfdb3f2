// Question: what does a CO reading mean in another unit or at another dilution?
// Equations: mg/m³ = ppm·M/V_m;  at 13 % O2: c·(21 − 13)/(21 − O2);  air-free: c·20.9/(20.9 − O2).
// Symbols: M 28.010 g/mol; V_m molar volume, 22.414 l/mol at 0 °C and 101325 Pa; O2 percent of dry flue gas.
// Validity: O2 up to 20.5 %; nearer to air the factor grows past all use (InputException).
// Assumption: dilution by air changes O2 and CO alike. 21 and 20.9 are the figures of the two conventions, not of the same air.
// Sources: EN 14785 and EN 16510 (reference 13 % O2, with 21); ANSI Z21 and ASHRAE usage of "air-free" (with 20.9); from memory.
// Worked values: 200 ppm at 10 % O2 → 250 mg/m³ → 181.8 mg/m³ at 13 %; 87 ppm at 5 % O2 → 114 ppm air-free.

namespace Emberwright.Stove.Fire;

/// <summary>Conversions of carbon monoxide readings. ppm are by volume; in flue gas dry.</summary>
public static class CarbonMonoxide
{
    /// <summary>Concentration in mg per normal cubic metre (0 °C, 101325 Pa) of the gas the ppm were read in.</summary>
    public static double NormalMgPerM3(double ppm) => ppm * 1e3 * MolarMass.CarbonMonoxide / (1e3 * GasMix.NormalMolarVolumeM3);

    /// <summary>ppm of a concentration in mg per normal cubic metre; the inverse of <see cref="NormalMgPerM3"/>.</summary>
    public static double PpmFromNormal(double mgPerM3) => mgPerM3 / NormalMgPerM3(1);

    /// <summary>Concentration in mg/m³ at a temperature and pressure, as room air limits state it.</summary>
    /// <param name="ppm">ppm by volume.</param>
    /// <param name="temperatureK">Air temperature, K.</param>
    /// <param name="pressurePa">Absolute pressure, Pa.</param>
    public static double MgPerM3(double ppm, double temperatureK, double pressurePa) =>
        ppm * MolarMass.CarbonMonoxide * pressurePa / (GasMix.MolarGasConstant * temperatureK);

    /// <summary>ppm of a concentration in mg/m³ at a temperature and pressure; the inverse of <see cref="MgPerM3"/>.</summary>
    public static double PpmFromMgPerM3(double mgPerM3, double temperatureK, double pressurePa) =>
        mgPerM3 / MgPerM3(1, temperatureK, pressurePa);

    /// <summary>The same flue gas diluted to 13 % O2 (or strengthened to it), in the unit given.</summary>
    /// <param name="concentration">ppm or mg/m³, dry.</param>
    /// <param name="oxygenDry">O2 in the same dry flue gas, volume share; 0 … 0.205.</param>
    /// <exception cref="InputException">O2 outside its range.</exception>
    public static double AtThirteenPercent(double concentration, double oxygenDry) =>
        concentration * (21 - 13) / (21 - Oxygen(oxygenDry));

    /// <summary>The same flue gas with all excess air taken out ("air-free"), in the unit given.</summary>
    /// <param name="concentration">ppm or mg/m³, dry.</param>
    /// <param name="oxygenDry">O2 in the same dry flue gas, volume share; 0 … 0.205.</param>
    /// <exception cref="InputException">O2 outside its range.</exception>
    public static double AirFree(double concentration, double oxygenDry) =>
        concentration * 20.9 / (20.9 - Oxygen(oxygenDry));

    private static double Oxygen(double oxygenDry) => InputException.Require(100 * oxygenDry, 0, 20.5, "oxygen", "% (dry)",
        "So near to fresh air a corrected CO means nothing; move the probe into the core of the flue gas.");
}
