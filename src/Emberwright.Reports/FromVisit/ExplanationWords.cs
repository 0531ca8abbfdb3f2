using Emberwright.Reports.Wording;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>Causes and consequences of a reading left out of its band, in words.</summary>
public static class ExplanationWords
{
    /// <summary>The cause.</summary>
    public static string Of(Cause cause) => cause switch
    {
        Cause.WorkRefused => Say.Of("explanation.the-owner-refused-the-work-in-writing"),
        Cause.NoAccess => Say.Of("explanation.the-place-could-not-be-reached-safely"),
        Cause.PartOnOrder => Say.Of("explanation.a-part-is-on-order"),
        Cause.WeatherToday => Say.Of("explanation.wind-or-temperature-of-the-day"),
        Cause.InstrumentLimit => Say.Of("explanation.the-instrument-cannot-resolve-it"),
    };

    /// <summary>The consequence.</summary>
    public static string Of(Consequence consequence) => consequence switch
    {
        Consequence.RestrictionRemains => Say.Of("explanation.a-passage-or-the-vent-stays-restricted"),
        Consequence.MarginReduced => Say.Of("explanation.it-stands-nearer-to-a-switchs-limit"),
        Consequence.UseLimited => Say.Of("explanation.it-may-be-used-only-as-written"),
        Consequence.ReadingUncertain => Say.Of("explanation.the-reading-says-little-the-stove-is"),
    };
}
