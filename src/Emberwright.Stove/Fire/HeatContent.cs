// Question: how much heat does a given amount of gas hold above 25 °C, and how fast does that grow with temperature?
// Equation: the Shomate equation summed over the gases of the mixture, H(T) = Σ nᵢ·hᵢ(T), dH/dT = Σ nᵢ·cpᵢ(T).
// Symbols: H in J; T in K; n in mol. Zero at 298.15 K.
// Validity: 200 … 2000 K. Beyond either end H runs on straight with the end's heat capacity, so that a Newton step may
//   stray without breaking; whoever reports a figure checks IsWithinRange.
// Assumptions: ideal gas, no dissociation. The tables of neighbouring ranges differ by a few J/mol at the join; the upper
//   range is shifted so that H is continuous (at most 6 J/mol, less than 0.02 % of H there).
// Source: see Shomate.cs.
// Worked value: one mole of O2 at 500 K holds 6084 J and has cp 31.091 J/K (JANAF).

namespace Emberwright.Stove.Fire;

/// <summary>
/// Heat held by a fixed amount of gas as a function of temperature, above 25 °C, without the latent heat of its water vapour.
/// Built once per mixture; evaluating allocates nothing.
/// </summary>
public sealed class HeatContent
{
    /// <summary>Lowest temperature of the tables used, K.</summary>
    public const double LeastK = 200;

    /// <summary>Highest temperature of the tables used, K.</summary>
    public const double MostK = 2000;

    private static readonly double[] Joins = [500, 700, 1200, 1300, 1700, MostK];

    private readonly Shomate[] ranges = new Shomate[Joins.Length];

    /// <summary>Heat content of an amount of gas.</summary>
    /// <param name="amount">The gas, mol; scale it to 1 kg or 1 mol for specific values.</param>
    public HeatContent(GasMix amount)
    {
        for (var i = 0; i < Joins.Length; i++) ranges[i] = Sum(amount, Joins[i]);
        Shift(0, -Enthalpy(ranges[0], 298.15));
        for (var i = 1; i < ranges.Length; i++)
            Shift(i, Enthalpy(ranges[i - 1], Joins[i - 1]) - Enthalpy(ranges[i], Joins[i - 1]));
    }

    /// <summary>True when the tables cover the temperature.</summary>
    public static bool IsWithinRange(double temperatureK) => temperatureK is >= LeastK and <= MostK;

    /// <summary>Heat above 25 °C, J.</summary>
    /// <param name="temperatureK">Gas temperature, K.</param>
    /// <param name="heatCapacityJPerK">Receives dH/dT, J/K.</param>
    public double At(double temperatureK, out double heatCapacityJPerK)
    {
        var inside = Math.Clamp(temperatureK, LeastK, MostK);
        ref readonly var range = ref RangeFor(inside);
        heatCapacityJPerK = HeatCapacity(range, inside);
        return Enthalpy(range, inside) + heatCapacityJPerK * (temperatureK - inside);
    }

    /// <summary>Heat above 25 °C, J.</summary>
    public double At(double temperatureK) => At(temperatureK, out _);

    /// <summary>Heat capacity at constant pressure, J/K.</summary>
    public double HeatCapacityAt(double temperatureK)
    {
        var inside = Math.Clamp(temperatureK, LeastK, MostK);
        return HeatCapacity(RangeFor(inside), inside);
    }

    /// <summary>The temperature at which the gas holds this heat, K. H rises strictly with T, so there is exactly one.</summary>
    /// <param name="heatJ">Heat above 25 °C, J.</param>
    public double TemperatureK(double heatJ)
    {
        var temperature = 298.15 + heatJ / HeatCapacityAt(298.15);
        for (var i = 0; i < 50; i++)
        {
            var step = (heatJ - At(temperature, out var capacity)) / capacity;
            temperature += step;
            if (Math.Abs(step) < 1e-9 * Math.Abs(temperature)) break;
        }
        return temperature;
    }

    private ref readonly Shomate RangeFor(double temperatureK)
    {
        var i = 0;
        while (i < ranges.Length - 1 && temperatureK > ranges[i].UpToK) i++;
        return ref ranges[i];
    }

    private void Shift(int range, double byJ) => ranges[range] = ranges[range] with { F = ranges[range].F + byJ / 1000 };

    private static double HeatCapacity(in Shomate s, double temperatureK)
    {
        var t = temperatureK / 1000;
        return s.A + t * (s.B + t * (s.C + t * s.D)) + s.E / (t * t);
    }

    private static double Enthalpy(in Shomate s, double temperatureK)
    {
        var t = temperatureK / 1000;
        return 1000 * (t * (s.A + t * (s.B / 2 + t * (s.C / 3 + t * s.D / 4))) - s.E / t + s.F);
    }

    private static Shomate Sum(GasMix amount, double upToK)
    {
        var sum = new Shomate(upToK, 0, 0, 0, 0, 0, 0);
        foreach (var gas in Enum.GetValues<Gas>())
        {
            var n = amount[gas];
            if (n == 0) continue;
            var s = RangeOf(gas, upToK);
            sum = new(upToK, sum.A + n * s.A, sum.B + n * s.B, sum.C + n * s.C, sum.D + n * s.D, sum.E + n * s.E, sum.F + n * s.F);
        }
        return sum;
    }

    private static Shomate RangeOf(Gas gas, double upToK)
    {
        foreach (var s in Shomate.Of(gas))
            if (upToK <= s.UpToK) return s;
        throw new ArgumentOutOfRangeException(nameof(upToK), upToK, $"No Shomate range of {gas} reaches so far.");
    }
}
