using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>Causes and consequences of a reading left out of its band, in words.</summary>
public static class ExplanationWords
{
    /// <summary>The cause.</summary>
    public static string Of(Cause cause) => cause switch
    {
        Cause.WorkRefused => "The owner refused the work, in writing",
        Cause.NoAccess => "The place could not be reached safely",
        Cause.PartOnOrder => "A part is on order",
        Cause.WeatherToday => "Wind or temperature of the day",
        Cause.InstrumentLimit => "The instrument cannot resolve it",
    };

    /// <summary>The consequence.</summary>
    public static string Of(Consequence consequence) => consequence switch
    {
        Consequence.RestrictionRemains => "A passage or the vent stays restricted",
        Consequence.MarginReduced => "It stands nearer to a switch’s limit than it should",
        Consequence.UseLimited => "It may be used only as written",
        Consequence.ReadingUncertain => "The reading says little; the stove is otherwise proved",
    };
}
