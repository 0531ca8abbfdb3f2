namespace Emberwright.Field.Entering;

/// <summary>
/// What a number typed far from its healthy band may have been meant to be. It only asks: the number typed can always be
/// saved, for a stove far out of order gives numbers far out of the band.
/// </summary>
/// <param name="Question">The question, such as "Did the point slip?".</param>
/// <param name="Reason">Why it is asked.</param>
/// <param name="Likely">The number that would lie near the band, in the unit of the instrument.</param>
public sealed record Plausibility(string Question, string Reason, double Likely)
{
    /// <summary>How far beyond the band, in band widths, a number is still not worth a question.</summary>
    private const double Tolerated = 4;

    /// <summary>How far beyond the band, in band widths, a corrected number still counts as near.</summary>
    private const double Near = 1;

    /// <summary>Looks at a number typed; null when nothing suggests a slip.</summary>
    /// <param name="typed">The number, in the unit of the instrument.</param>
    /// <param name="low">Lower end of the healthy band, same unit.</param>
    /// <param name="high">Upper end of the healthy band, same unit.</param>
    /// <param name="otherUnit">Symbol of the unit the meter may stand on instead, or null.</param>
    /// <param name="fromOther">Turns a number in that other unit into the unit of the instrument.</param>
    public static Plausibility? Of(double typed, double low, double high, string? otherUnit = null, Func<double, double>? fromOther = null)
    {
        if (Beyond(typed, low, high) <= Tolerated) return null;
        if (IsNear(-typed, low, high))
            return new(T("Plausibility.is-the-sign-right"), typed > 0 ? T("Plausibility.below-the-room-is-written-with") : T("Plausibility.above-the-room-is-written-without"), -typed);
        foreach (var factor in (ReadOnlySpan<double>)[0.1, 10, 0.01, 100])
        {
            if (IsNear(typed * factor, low, high))
                return new(T("Plausibility.did-the-point-slip"), factor < 1 ? T("Plausibility.many-times-what-is-expected") : T("Plausibility.a-small-part-of-what-is"), typed * factor);
        }
        if (otherUnit is not null && fromOther is not null && IsNear(fromOther(typed), low, high))
            return new(T("Plausibility.does-the-meter-read", otherUnit), T("Plausibility.as-it-would-be-near-the", otherUnit), fromOther(typed));
        return null;
    }

    private static bool IsNear(double value, double low, double high) => Beyond(value, low, high) <= Near;

    private static double Beyond(double value, double low, double high)
    {
        var width = high - low;
        if (!(width > 0) || !double.IsFinite(value)) return 0;
        return Math.Max(0, Math.Max(low - value, value - high)) / width;
    }
}
