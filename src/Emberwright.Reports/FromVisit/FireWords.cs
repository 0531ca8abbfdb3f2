using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>The moments of a test fire in words.</summary>
public static class FireWords
{
    /// <summary>What happened.</summary>
    public static string Of(FireMoment moment) => moment switch
    {
        FireMoment.Called => "Start pressed",
        FireMoment.Flame => "First flame",
        FireMoment.High => "Burning on high",
        FireMoment.Shutdown => "Off pressed",
        FireMoment.Stopped => "Blowers stopped by themselves",
    };
}
