// How hard does wind press on a wall, or draw at it, where a horizontal vent ends?
//   Cp(θ) = Cp(0)·ln[ 1.248 − 0.703·sin(θ/2) − 1.175·sin²θ + 0.131·sin³(2θG) + 0.769·cos(θ/2) + 0.07·G²·sin²(θ/2)
//                     + 0.717·cos²(θ/2) ],   Cp(0) = 0.6,   G = ln(side ratio)
// Cp mean pressure coefficient of the wall, – ; θ angle between wind and the wall's outward normal, 0 … 180°; side ratio:
// width of this wall over that of its neighbour, –.
// Valid for low-rise rectangular houses, standing free, side ratio 0.25 … 4. Near a corner or roof edge it differs.
// Source: Swami & Chandra, Correlations for pressure distribution on buildings, ASHRAE Trans. 94 (1988), in the form of the
// EnergyPlus Engineering Reference; coefficients from memory.
// Worked value: θ 0 → 0.6 (the bracket is 2.734, its logarithm 1.006).
namespace Emberwright.Stove.Vent;

/// <summary>Mean wind pressure coefficient of a low-rise house's wall.</summary>
public static class WallPressure
{
    private const double Normal = 0.6;

    /// <summary>Coefficient of a wall the wind meets at right angles.</summary>
    public static double Windward { get; } = Normal;

    /// <summary>Coefficient at an angle.</summary>
    /// <param name="angleDeg">Angle between wind and the wall's outward normal, 0 … 180°.</param>
    /// <param name="sideRatio">Width of this wall over its neighbour's, 0.25 … 4.</param>
    public static double Coefficient(double angleDeg, double sideRatio = 1)
    {
        InputException.Require(angleDeg, 0, 180, "wind angle", "°", "0 blows straight at the wall, 180 at the opposite one.");
        InputException.Require(sideRatio, 0.25, 4, "side ratio", "", "Width of this wall over that of its neighbour.");
        var a = angleDeg * Math.PI / 180;
        var g = Math.Log(sideRatio);
        var (half, whole) = (Math.Sin(a / 2), Math.Sin(a));
        var cos = Math.Cos(a / 2);
        return Normal * Math.Log(1.248 - (0.703 * half) - (1.175 * whole * whole) + (0.131 * Math.Pow(Math.Sin(2 * a * g), 3))
            + (0.769 * cos) + (0.07 * g * g * half * half) + (0.717 * cos * cos));
    }
}
