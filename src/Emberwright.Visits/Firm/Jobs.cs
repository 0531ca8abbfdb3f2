using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>One matter of a customer over one or more visits: the return with the part, the call-back, the warranty.</summary>
/// <param name="Id">The job's id, or the visit's where it belongs to none.</param>
/// <param name="Visits">Its visits, by day.</param>
public sealed record Job(string Id, IReadOnlyList<VisitSummary> Visits)
{
    /// <summary>True while a visit is not signed off or a return is agreed that has not been.</summary>
    public bool IsOpen => Visits.Any(v => v.State != VisitState.SignedOff) || Visits[^1].Due?.For == DueFor.Return;

    /// <summary>Parts ordered and not fitted since.</summary>
    public IReadOnlyList<PartUsed> Waiting =>
    [
        .. Visits.SelectMany(v => v.Parts).Where(p => p.Use?.Contains("order", StringComparison.OrdinalIgnoreCase) == true)
            .Where(p => !Visits.SelectMany(v => v.Parts).Any(f => f.IsFitted && f.Use is not null && f.At > p.At && (f.Number ?? f.Part) == (p.Number ?? p.Part))),
    ];

    /// <summary>Minutes on site over all its visits.</summary>
    public double Minutes => Visits.Sum(v => v.MinutesOnSite ?? 0);
}

/// <summary>Puts visits together into jobs.</summary>
public static class Jobs
{
    /// <summary>The jobs, those with the latest visit first. A visit without a job's id is a job of its own.</summary>
    public static IReadOnlyList<Job> Of(IEnumerable<VisitSummary> visits)
    {
        ArgumentNullException.ThrowIfNull(visits);
        return
        [
            .. visits.GroupBy(v => string.IsNullOrWhiteSpace(v.Job) ? "visit/" + v.Visit : v.Job)
                .Select(g => new Job(g.Key, [.. g.OrderBy(v => v.Day).ThenBy(v => v.Booked)]))
                .OrderByDescending(j => j.Visits[^1].Day),
        ];
    }
}
