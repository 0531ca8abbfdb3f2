namespace Emberwright.Reports.Pictures;

/// <summary>
/// Round steps for an axis: 1, 2 or 5 times a power of ten.
/// </summary>
/// <param name="Step">Distance between ticks.</param>
/// <param name="Low">First tick, at or below the data.</param>
/// <param name="High">Last tick, at or above the data.</param>
internal readonly record struct Ticks(double Step, double Low, double High)
{
    /// <summary>Ticks around a range, about <paramref name="count"/> steps.</summary>
    public static Ticks Around(double low, double high, int count)
    {
        var raw = Math.Max(high - low, 1e-9) / count;
        var power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        var step = power * (raw / power) switch { <= 1.0001 => 1, <= 2.0001 => 2, <= 5.0001 => 5, _ => 10 };
        return new(step, Math.Floor(low / step + 1e-9) * step, Math.Ceiling(high / step - 1e-9) * step);
    }

    /// <summary>Decimals the step needs.</summary>
    public int Decimals => Math.Max(0, -(int)Math.Floor(Math.Log10(Step) + 1e-9));

    /// <summary>The ticks inside a range.</summary>
    public IEnumerable<double> Between(double low, double high)
    {
        for (var i = Math.Ceiling(low / Step - 1e-9); i * Step <= high + 1e-9 * Step; i++)
            yield return i == 0 ? 0 : i * Step;
    }
}
