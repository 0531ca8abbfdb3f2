// What does a layer of ash or soot leave of a passage?
//   round part        A = π(d − 2t)²/4                D_h = d − 2t
//   rectangular part  A = (w − 2t)(h − 2t)            D_h = 2(w − 2t)(h − 2t)/(w + h − 4t)
//   roughness         ε = max(ε_clean, t/3), at most 5 % of D_h
//   conductance       G/G_clean = (A/A_c)·√( (ψ_c·L/D_c + Σζ) / (ψ·L/D_h + Σζ) )       at equal mass flow
// t thickness on every wall, d diameter, w and h sides, m; A free cross-section, m²; D_h hydraulic diameter, m; ψ friction
// factor at Re = 4ṁ·D_h/(...) of that flow; L length, m; Σζ loss coefficients. ln(G/G_clean) is the passage's parameter.
// Valid until the layer meets itself; then nothing is left (1 % of the short side is kept, so that a solve still exists).
// Assumes an even layer on all walls; ash that lies on a floor chokes a flat passage more than this says.
// Source: geometry; hydraulic diameter 4A/perimeter and friction as in Friction; roughness of a third of the layer and its
// limit: from memory, no source.
// Worked value: round, d 76 mm, t 5 mm → D_h 66 mm, A/A_c (66/76)² = 0.754.
namespace Emberwright.Stove.Air;

/// <summary>A passage with a layer on its walls.</summary>
/// <param name="ThicknessM">Thickness of the layer, m.</param>
/// <param name="AreaM2">Free cross-section left, m².</param>
/// <param name="HydraulicDiameterM">Hydraulic diameter left, m.</param>
/// <param name="RoughnessM">Roughness of the layer, m.</param>
/// <param name="AreaShare">Cross-section left over the clean one, –.</param>
/// <param name="ConductanceShare">Flow conductance left over the clean one, –.</param>
public sealed record Deposit(
    double ThicknessM, double AreaM2, double HydraulicDiameterM, double RoughnessM, double AreaShare, double ConductanceShare)
{
    private const double LeastShareOfSide = 0.01;
    private const double RoughnessPerThickness = 1.0 / 3;
    private const double MostRelativeRoughness = 0.05;

    /// <summary>Restriction as the service areas count it: 1 − conductance left.</summary>
    public double Restriction => 1 - ConductanceShare;

    /// <summary>A layer in a passage.</summary>
    /// <param name="passage">The clean passage.</param>
    /// <param name="thicknessM">Thickness on every wall, 0 … 0.1 m.</param>
    /// <param name="massFlowKgPerS">Flow at which friction is compared, kg/s; &gt; 0.</param>
    /// <param name="temperatureK">Gas temperature, K.</param>
    public static Deposit In(Passage passage, double thicknessM, double massFlowKgPerS, double temperatureK)
    {
        ArgumentNullException.ThrowIfNull(passage);
        InputException.Require(thicknessM, 0, 0.1, "deposit", "m", "Give the layer's thickness on one wall; a centimetre is much.");
        InputException.Require(massFlowKgPerS, 1e-6, 1, "flow", "kg/s", "Give the gas flow through the passage, some grams a second.");
        var shape = passage.Shape ?? PassageShape.Round;
        var (cleanM2, cleanM) = Left(shape, passage.AreaM2, 0);
        var (areaM2, diameterM) = Left(shape, passage.AreaM2, thicknessM);
        var roughnessM = Math.Min(Math.Max(passage.RoughnessM, RoughnessPerThickness * thicknessM), MostRelativeRoughness * diameterM);
        var viscosity = Viscosity.OfAir(temperatureK);
        double Zeta(double area, double diameter, double roughness) => passage.Loss + (passage.LengthM == 0 ? 0
            : Friction.Factor(massFlowKgPerS * diameter / (area * viscosity), roughness / diameter) * passage.LengthM / diameter);
        var share = areaM2 / cleanM2;
        var conductance = share * Math.Sqrt(Zeta(cleanM2, cleanM, passage.RoughnessM) / Zeta(areaM2, diameterM, roughnessM));
        return new Deposit(thicknessM, areaM2, diameterM, roughnessM, share, conductance);
    }

    private static (double AreaM2, double HydraulicM) Left(PassageShape shape, double cleanM2, double thicknessM)
    {
        var side = shape.ShortSideM(cleanM2);
        var shortM = Math.Max(side - (2 * thicknessM), LeastShareOfSide * side);
        if (shape.IsRound)
        {
            return (shape.Count * Math.PI * shortM * shortM / 4, shortM);
        }

        var longM = (side * shape.Aspect) - (side - shortM);
        return (shape.Count * shortM * longM, 2 * shortM * longM / (shortM + longM));
    }
}
