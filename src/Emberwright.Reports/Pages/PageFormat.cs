namespace Emberwright.Reports.Pages;

/// <summary>Size of the paper and its margins, points (1/72 in).</summary>
/// <param name="Name">Its name.</param>
/// <param name="Width">Width, pt.</param>
/// <param name="Height">Height, pt.</param>
public sealed record PageFormat(string Name, double Width, double Height)
{
    /// <summary>8.5 × 11 in.</summary>
    public static PageFormat Letter { get; } = new("US Letter", 612, 792);

    /// <summary>210 × 297 mm (ISO 216).</summary>
    public static PageFormat A4 { get; } = new("A4", 210 / 25.4 * 72, 297 / 25.4 * 72);

    /// <summary>Left and right margin, pt.</summary>
    public double Side { get; init; } = 46;

    /// <summary>Upper margin, pt.</summary>
    public double Top { get; init; } = 36;

    /// <summary>Lowest line of the text area; the footer stands below it.</summary>
    public double Bottom => Height - 44;

    /// <summary>Width of the text area, pt.</summary>
    public double Measure => Width - 2 * Side;
}
