// Question: at which vapour pressure does water condense at a temperature, and the other way round?
// Equations (region 4): β²ϑ² + n₁β²ϑ + n₂β² + n₃βϑ² + n₄βϑ + n₅β + n₆ϑ² + n₇ϑ + n₈ = 0,
//   β = p^¼ (p in MPa), ϑ = T + n₉/(T − n₁₀); solved for p or for T in closed form.
// Validity: 273.15 … 647.096 K. Down to 243.15 K the equation is continued over supercooled water, there within 0.1 % of
//   Murphy & Koop (2005); colder or hotter is an InputException.
// Source: IAPWS R7-97(2012), Industrial Formulation 1997, equations 29 to 31.
// Worked value: 300 K → 3536.589 Pa.

namespace Emberwright.Stove.Fire;

/// <summary>Saturation of water vapour over liquid water (IAPWS-IF97).</summary>
public static class Saturation
{
    private const double N1 = 0.11670521452767e4, N2 = -0.72421316703206e6, N3 = -0.17073846940092e2, N4 = 0.12020824702470e5;
    private const double N5 = -0.32325550322333e7, N6 = 0.14915108613530e2, N7 = -0.48232657361591e4, N8 = 0.40511340542057e6;
    private const double N9 = -0.23855557567849, N10 = 0.65017534844798e3;
    private const string Remedy = "Check temperature and units.";

    /// <summary>Saturation pressure, Pa.</summary>
    /// <param name="temperatureK">Temperature, K; 243.15 … 647.096.</param>
    /// <exception cref="InputException">Temperature outside its range.</exception>
    public static double PressurePa(double temperatureK)
    {
        InputException.Require(temperatureK, 243.15, 647.096, "temperature", "K", Remedy);
        var theta = temperatureK + N9 / (temperatureK - N10);
        var a = theta * theta + N1 * theta + N2;
        var b = N3 * theta * theta + N4 * theta + N5;
        var c = N6 * theta * theta + N7 * theta + N8;
        var beta = 2 * c / (-b + Math.Sqrt(b * b - 4 * a * c));
        return 1e6 * beta * beta * beta * beta;
    }

    /// <summary>Saturation temperature (dew point of vapour at that partial pressure), K.</summary>
    /// <param name="vapourPressurePa">Partial pressure of water vapour, Pa; 50.9 … 22.06e6.</param>
    /// <exception cref="InputException">Pressure outside its range.</exception>
    public static double TemperatureK(double vapourPressurePa)
    {
        InputException.Require(vapourPressurePa, 50.9, 22.065e6, "vapour pressure", "Pa", Remedy);
        var beta = Math.Sqrt(Math.Sqrt(vapourPressurePa * 1e-6));
        var e = beta * beta + N3 * beta + N6;
        var f = N1 * beta * beta + N4 * beta + N7;
        var g = N2 * beta * beta + N5 * beta + N8;
        var d = 2 * g / (-f - Math.Sqrt(f * f - 4 * e * g));
        return (N10 + d - Math.Sqrt((N10 + d) * (N10 + d) - 4 * (N9 + N10 * d))) / 2;
    }

    /// <summary>Dew point of a flue gas, K: below it a wall runs wet.</summary>
    /// <param name="gas">Flue gas.</param>
    /// <param name="pressurePa">Absolute pressure, Pa.</param>
    /// <exception cref="InputException">Vapour pressure outside its range.</exception>
    public static double DewPointK(FlueGas gas, double pressurePa) => TemperatureK(gas.WaterWet * pressurePa);

    /// <summary>Water vapour per dry air, kg/kg, of air at a relative humidity.</summary>
    /// <param name="relative">Relative humidity, 0 … 1.</param>
    /// <param name="temperatureK">Air temperature, K.</param>
    /// <param name="pressurePa">Absolute pressure, Pa.</param>
    /// <exception cref="InputException">Humidity or temperature outside its range.</exception>
    public static double HumidityKgPerKg(double relative, double temperatureK, double pressurePa)
    {
        InputException.Require(100 * relative, 0, 100, "relative humidity", "%", "Give percent relative humidity; a heated room has 30 to 50.");
        var vapour = relative * PressurePa(temperatureK);
        return MolarMass.Water / CombustionAir.DryMole.MassKg * vapour / (pressurePa - vapour);
    }
}
