namespace Emberwright.Field.Entering;

/// <summary>The few numbers worth offering as buttons for a reading that is probably in order: the healthy band and a little on each side.</summary>
public static class QuickScale
{
    private const int Most = 8;

    /// <summary>The numbers, rising, and the step between them.</summary>
    /// <param name="low">Lower end of the healthy band, in the unit shown.</param>
    /// <param name="high">Upper end.</param>
    /// <param name="step">Step of an ordinary instrument in that unit.</param>
    public static (IReadOnlyList<double> Values, double Step) Around(double low, double high, double step)
    {
        while ((high - low) / step > Most) step *= Coarser(step);
        var first = Math.Floor(low / step + 1e-9) - 1;
        var last = Math.Ceiling(high / step - 1e-9) + 1;
        return ([.. Enumerable.Range(0, (int)(last - first) + 1).Select(n => (first + n) * step)], step);
    }

    // 1, 2, 5, 10, 20 …
    private static double Coarser(double step)
    {
        var lead = step / Math.Pow(10, Math.Floor(Math.Log10(step) + 1e-9));
        return lead is > 1.5 and < 3 ? 2.5 : 2;
    }
}
