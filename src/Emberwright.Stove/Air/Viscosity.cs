// How viscous is hot air or flue gas?
//   μ = μ0 · (T/T0)^1.5 · (T0 + S)/(T + S)
// μ dynamic viscosity, Pa·s; T temperature, K; μ0 1.716e-5 Pa·s, T0 273.15 K, S 110.4 K.
// Valid 170 … 1900 K within 2 %; outside it the formula is still smooth and is used as it stands.
// Assumes air; flue gas of solid fuel with excess air lies within 3 %.
// Source: Sutherland's law with White's constants (Viscous Fluid Flow, table 1-2), from memory.
// Worked value: 300 K → 1.846e-5 Pa·s.
namespace Emberwright.Stove.Air;

/// <summary>Dynamic viscosity by Sutherland's law.</summary>
public static class Viscosity
{
    /// <summary>Dynamic viscosity of air, Pa·s.</summary>
    /// <param name="temperatureK">Temperature, K.</param>
    public static double OfAir(double temperatureK)
    {
        var ratio = temperatureK / 273.15;
        return 1.716e-5 * ratio * Math.Sqrt(ratio) * (273.15 + 110.4) / (temperatureK + 110.4);
    }

    /// <summary>d ln μ / dT, 1/K.</summary>
    /// <param name="temperatureK">Temperature, K.</param>
    public static double LogSlopePerK(double temperatureK) => (1.5 / temperatureK) - (1 / (temperatureK + 110.4));
}
