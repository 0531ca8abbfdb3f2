// What is the friction factor of a duct?
//   1/√ψ = −2·log10( (ε/D)/3.7 + 2.51/(Re·√ψ) )      turbulent, Re ≥ 4000
//   ψ = 64/Re                                        laminar, Re ≤ 2300
// ψ Darcy friction factor, –; Re Reynolds number, –; ε roughness, m; D hydraulic diameter, m.
// Between 2300 and 4000 the two are blended with a twice-differentiable weight, because the solver needs a
// slope everywhere; no source gives a value there, the regime itself is unsteady.
// Valid ε/D ≤ 0.05 by its data; a sooty liner may pass that and the formula is used as it stands.
// Solved to 1e-10 by Newton's method from Haaland's formula.
// Source: Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; Haaland, J. Fluids Eng. 105 (1983) 89.
// Worked value: Re 1e5, ε/D 1e-4 → 0.018513866.
namespace Emberwright.Stove.Air;

/// <summary>Darcy friction factor of round and nearly round ducts, smooth over all Reynolds numbers.</summary>
public static class Friction
{
    private const double LaminarEnd = 2300;
    private const double TurbulentStart = 4000;
    private const double TwoOverLn10 = 2 / 2.302585092994046;

    /// <summary>Darcy friction factor, –.</summary>
    /// <param name="reynolds">Reynolds number, – ; &gt; 0.</param>
    /// <param name="relativeRoughness">Roughness over hydraulic diameter, –.</param>
    public static double Factor(double reynolds, double relativeRoughness) =>
        Factor(reynolds, relativeRoughness, out _);

    /// <summary>Darcy friction factor and its slope.</summary>
    /// <param name="reynolds">Reynolds number, – ; &gt; 0.</param>
    /// <param name="relativeRoughness">Roughness over hydraulic diameter, –.</param>
    /// <param name="slope">dψ / d ln Re, –.</param>
    public static double Factor(double reynolds, double relativeRoughness, out double slope)
    {
        var laminar = 64 / reynolds;
        if (reynolds <= LaminarEnd)
        {
            slope = -laminar;
            return laminar;
        }

        var turbulent = Colebrook(reynolds, relativeRoughness, out var turbulentSlope);
        if (reynolds >= TurbulentStart)
        {
            slope = turbulentSlope;
            return turbulent;
        }

        const double span = TurbulentStart - LaminarEnd;
        var t = (reynolds - LaminarEnd) / span;
        var weight = t * t * t * (10 + (t * ((6 * t) - 15)));
        var weightSlope = 30 * t * t * (1 - t) * (1 - t) * reynolds / span;
        slope = ((1 - weight) * -laminar) + (weight * turbulentSlope) + (weightSlope * (turbulent - laminar));
        return ((1 - weight) * laminar) + (weight * turbulent);
    }

    private static double Colebrook(double reynolds, double relativeRoughness, out double slope)
    {
        var rough = relativeRoughness / 3.7;
        var f = -1.8 * Math.Log10((6.9 / reynolds) + Math.Pow(rough, 1.11));
        var viscous = 2.51 / reynolds;
        for (var i = 0; i < 3; i++)
        {
            var inside = rough + (viscous * f);
            var residual = f + (TwoOverLn10 * Math.Log(inside));
            f -= residual / (1 + (TwoOverLn10 * viscous / inside));
        }

        var b = rough + (viscous * f);
        var share = TwoOverLn10 * viscous / b;
        var fSlope = share * f / (1 + share);
        var factor = 1 / (f * f);
        slope = -2 * factor * fSlope / f;
        return factor;
    }
}
