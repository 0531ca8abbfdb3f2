using Emberwright.Diagnosis;

namespace Emberwright.Visits.Fouling;

/// <summary>
/// What one visit tells of a stove's fouling. It is not the visit: only the state of its areas and the fuel told.
/// </summary>
/// <param name="Day">The day of the visit.</param>
/// <param name="Areas">Each area as found and as left.</param>
/// <param name="ReadAsFound">True when something was read before any work.</param>
/// <param name="ReadAsLeft">True when something was read after the work.</param>
/// <param name="TonnesSince">Fuel burned since the last full service, t; null when nobody told.</param>
/// <param name="MonthsSince">Months since the last full service; null when not known.</param>
public sealed record AreasSeen(
    DateOnly Day, IReadOnlyList<RestrictionEstimate> Areas, bool ReadAsFound, bool ReadAsLeft, double? TonnesSince, double? MonthsSince)
{
    /// <summary>What a visit tells; null when it has no day.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="areas">What was concluded of its areas, then or now.</param>
    public static AreasSeen? Of(Visit visit, IReadOnlyList<RestrictionEstimate> areas)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return visit.Day is { } day
            ? new(day, areas, visit.AsFound.Any(), visit.AsLeft.Any(), visit.Past?.TonnesSinceService, visit.Past?.MonthsBefore(day))
            : null;
    }
}
