using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;

namespace Emberwright.Visits.Firm;

/// <summary>
/// How long a service of a pattern takes: a full service as the catalogue has it, the test fire and the papers; or what
/// the firm's own visits took once there are enough of them.
/// </summary>
public static class ServiceMinutes
{
    // Half an hour on high and its shutdown, with the papers written meanwhile (common practice, no source).
    private const double TestFire = 45;
    private const double MakingSafe = 15;
    private const int EnoughVisits = 5;

    /// <summary>Minutes, and what they rest on.</summary>
    /// <param name="pattern">Pattern id; null for a stove not known.</param>
    /// <param name="own">Minutes on site of the firm's own services of this pattern.</param>
    public static (double Minutes, string Basis) Of(string? pattern, IReadOnlyCollection<double> own)
    {
        ArgumentNullException.ThrowIfNull(own);
        if (own.Count >= EnoughVisits) return (Math.Round(own.Order().ElementAt(own.Count / 2) / 5) * 5, $"based on {own.Count} of your visits");
        var areas = (ActionList.All.Where(a => pattern is null || a.IsOn(pattern)))
            .Where(a => a.Id is "clean-ash-passages" or "clean-combustion-blower" or "clean-vent" or "clean-room-air-blower" or "clean-burn-pot")
            .Sum(a => a.Minutes);
        return (Math.Round((areas + MakingSafe + TestFire) / 5) * 5, "the areas' usual times and a test fire");
    }
}
