using Emberwright.Reports.Wording;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>The moments of a test fire in words.</summary>
public static class FireWords
{
    /// <summary>What happened.</summary>
    public static string Of(FireMoment moment) => moment switch
    {
        FireMoment.Called => Say.Of("fire.start-pressed"),
        FireMoment.Flame => Say.Of("fire.first-flame"),
        FireMoment.High => Say.Of("fire.burning-on-high"),
        FireMoment.Shutdown => Say.Of("fire.off-pressed"),
        FireMoment.Stopped => Say.Of("fire.blowers-stopped-by-themselves"),
    };
}
