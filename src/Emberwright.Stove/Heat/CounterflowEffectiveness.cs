// How far does gas cool on its way through an exchanger or a duct?
//   P = (T_in − T_out)/(T_in − t_in) = N·φ/(1 + R·N·φ),  φ = (1 − e^−y)/y,  y = N·(1 − R)
// P temperature effectiveness of the gas, –; N = UA/C number of transfer units of the gas, –; R = C/C₂, –;
// C heat capacity rate of the gas, C₂ of the other stream, W/K; UA heat conductance, W/K; t_in other stream's inlet.
// The other stream being surroundings of constant temperature is R = 0, then P = 1 − e^−N (a cooling duct).
// Valid for all N ≥ 0, R ≥ 0; the form has no singularity at R = 1.
// Assumes counterflow and constant UA and heat capacities.
// Source: Kays & London, Compact Heat Exchangers, counterflow relation rewritten for the gas side.
// Worked value: N 3, R 0.5 → P 0.8744 (their table 2-2: ε 0.875).
namespace Emberwright.Stove.Heat;

/// <summary>Temperature effectiveness of the gas side in counterflow.</summary>
public static class CounterflowEffectiveness
{
    /// <summary>Effectiveness P, 0 … 1.</summary>
    /// <param name="transferUnits">N = UA/C, – ; ≥ 0.</param>
    /// <param name="capacityRatio">R = C/C₂, – ; ≥ 0, 0 for constant surroundings.</param>
    public static double Of(double transferUnits, double capacityRatio)
    {
        var f = transferUnits * Phi(transferUnits * (1 - capacityRatio), out _);
        return f / (1 + (capacityRatio * f));
    }

    /// <summary>Effectiveness with its slopes.</summary>
    /// <param name="transferUnits">N = UA/C, –.</param>
    /// <param name="capacityRatio">R = C/C₂, –.</param>
    /// <param name="slopeLnC">dP/d ln C.</param>
    /// <param name="slopeLnUa">dP/d ln UA.</param>
    /// <param name="slopeLnC2">dP/d ln C₂.</param>
    internal static double Of(double transferUnits, double capacityRatio,
        out double slopeLnC, out double slopeLnUa, out double slopeLnC2)
    {
        var n2 = transferUnits * capacityRatio;
        var y = transferUnits - n2;
        var phi = Phi(y, out var phiSlope);
        var f = transferUnits * phi;
        var d = 1 + (capacityRatio * f);
        var d2 = d * d;
        slopeLnC = (-transferUnits * (phi + (transferUnits * phiSlope)) - (f * f * capacityRatio)) / d2;
        slopeLnUa = transferUnits * (phi + (phiSlope * y)) / d2;
        slopeLnC2 = ((transferUnits * phiSlope * n2) + (f * f * capacityRatio)) / d2;
        return f / d;
    }

    /// <summary>Mean over length of the driving temperature difference divided by its value at the inlet: P/(−ln(1−P)).</summary>
    /// <param name="effectiveness">P, 0 … 1.</param>
    /// <param name="slope">Its derivative with respect to P.</param>
    internal static double MeanShare(double effectiveness, out double slope)
    {
        if (effectiveness < 1e-4)
        {
            slope = -0.5 - (effectiveness / 6);
            return 1 - (effectiveness / 2) - (effectiveness * effectiveness / 12);
        }

        var rest = Math.Max(1 - effectiveness, 1e-12);
        var log = -Math.Log(rest);
        slope = rest > 1e-12 ? (log - (effectiveness / rest)) / (log * log) : 0;
        return effectiveness / log;
    }

    private static double Phi(double y, out double slope)
    {
        if (Math.Abs(y) < 1e-4)
        {
            slope = -0.5 + (y / 3);
            return 1 - (y / 2) + (y * y / 6);
        }

        // Far below zero P has reached its limit 1/R; going on would overflow.
        y = Math.Max(y, -60);
        var e = Math.Exp(-y);
        var phi = (1 - e) / y;
        slope = (e - phi) / y;
        return phi;
    }
}
