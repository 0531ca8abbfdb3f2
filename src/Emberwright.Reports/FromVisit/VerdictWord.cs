using Emberwright.Diagnosis;
using Emberwright.Reports.Wording;
using Emberwright.Stove;

namespace Emberwright.Reports.FromVisit;

/// <summary>How a reading stands to its band, in one or two words.</summary>
public static class VerdictWord
{
    /// <summary>The word; null when the reading is inside its band.</summary>
    /// <param name="verdict">How it stands.</param>
    /// <param name="measure">What was read: a temperature is hot or cool, not high or low.</param>
    public static string? Of(Verdict verdict, Measure measure) => verdict switch
    {
        Verdict.In => null,
        Verdict.TooWeak => Say.Of("common.too-weak"),
        Verdict.TooStrong => Say.Of("common.too-strong"),
        Verdict.Low => measure == Measure.Temperature ? Say.Of("verdict.cool") : Say.Of("common.low"),
        Verdict.High => measure == Measure.Temperature ? Say.Of("verdict.hot") : Say.Of("common.high"),
    };
}
