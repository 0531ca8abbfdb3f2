namespace Emberwright.Field.Entering;

/// <summary>
/// The line under a number being typed: where its ends lie and where each value stands on it. Values beyond an end are
/// told apart, never squeezed in.
/// </summary>
/// <param name="Low">Value at the left end, in the unit shown.</param>
/// <param name="High">Value at the right end; above <paramref name="Low"/>.</param>
public readonly record struct GaugeScale(double Low, double High)
{
    /// <summary>Width of the drawing, in its own units; the line keeps 16 clear at each end for an arrow.</summary>
    public const double Width = 358;

    private const double Clear = 16;

    /// <summary>A scale on which the band stands clear, nought is seen, and everything else known fits.</summary>
    /// <param name="low">Lower end of the healthy band.</param>
    /// <param name="high">Upper end of the healthy band.</param>
    /// <param name="others">Other values to show: last visit, as found.</param>
    public static GaugeScale Around(double low, double high, params ReadOnlySpan<double?> others)
    {
        var spread = Math.Max(high - low, Math.Abs(high) * 0.05);
        double least = Math.Min(0, low - 2 * spread), most = Math.Max(0, high + 2 * spread);
        foreach (var other in others)
        {
            if (other is not { } value) continue;
            least = Math.Min(least, value - spread);
            most = Math.Max(most, value + spread);
        }
        return new(least, most);
    }

    /// <summary>Round values to write along the line, from left to right; three to six of them.</summary>
    public IReadOnlyList<double> Ticks()
    {
        var rough = (High - Low) / 4;
        var ten = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var step = ten * (rough / ten < 1.5 ? 1 : rough / ten < 3.5 ? 2 : rough / ten < 7.5 ? 5 : 10);
        var ticks = new List<double>();
        for (var n = Math.Ceiling(Low / step - 1e-9); n * step <= High + 1e-9 * step; n++) ticks.Add(n * step);
        return ticks;
    }

    /// <summary>Where a value stands along the drawing.</summary>
    public double X(double value) => Clear + (Width - 2 * Clear) * (Math.Clamp(value, Low, High) - Low) / (High - Low);

    /// <summary>True when the value lies off the left end.</summary>
    public bool Below(double value) => value < Low;

    /// <summary>True when the value lies off the right end.</summary>
    public bool Above(double value) => value > High;
}
