namespace Emberwright.Stove.Air;

/// <summary>How a passage's cross-section is made up of equal parts side by side; a part is rectangular or round.</summary>
/// <param name="Count">Number of parts, ≥ 1.</param>
/// <param name="Aspect">Long side over short side of a rectangular part, ≥ 1; not used for round parts.</param>
/// <param name="IsRound">True for round parts.</param>
public sealed record PassageShape(int Count, double Aspect, bool IsRound = false)
{
    /// <summary>One round hole.</summary>
    public static PassageShape Round { get; } = new(1, 1, IsRound: true);

    /// <summary>Short side, or diameter, of a part when all together have a cross-section, m.</summary>
    /// <param name="areaM2">Cross-section of all parts, m².</param>
    public double ShortSideM(double areaM2) =>
        IsRound ? Math.Sqrt(4 * areaM2 / (Math.PI * Count)) : Math.Sqrt(areaM2 / (Count * Aspect));
}
