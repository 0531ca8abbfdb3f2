// Question:    what do the firm's own closed visits say of causes, parts, comebacks and minutes?
// Counted:     a cause counts as found when it was held likely as found (0.7 or more) and no longer after the work (0.3 or
//              less): the work itself is the witness, not the belief alone, so that beliefs do not feed themselves.
//              A part was good when an action that renews it was done and every fault it cures was held unlikely as
//              found (less than 0.2). A comeback is a breakdown at the same stove within 30 days of a closed visit.
// Validity:    closed visits with conclusions in their seal; others count among the visits only.
// Source:      the thresholds are the firm's own convention, no source.
using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>What was counted of one pattern: how often each cause was found in how many visits.</summary>
/// <param name="Pattern">Pattern id.</param>
/// <param name="Visits">Closed visits with a conclusion.</param>
/// <param name="Unclear">Those of them in which nothing was confirmed.</param>
/// <param name="Found">Times each cause was confirmed by what cured it; <c>nothing</c> stands for a sound stove.</param>
public sealed record PatternCounts(string Pattern, int Visits, int Unclear, IReadOnlyDictionary<string, int> Found);

/// <summary>A part renewed that was probably good.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Action">Id of the action.</param>
/// <param name="Probability">The highest probability of any fault it cures, as found.</param>
public sealed record GoodPart(VisitSummary Visit, string Action, double Probability);

/// <summary>A breakdown soon after a closed visit.</summary>
/// <param name="First">The visit before.</param>
/// <param name="Again">The one that came too soon.</param>
/// <param name="Cause">What the first had found; <c>nothing</c> when it found nothing.</param>
public sealed record Comeback(VisitSummary First, VisitSummary Again, string Cause);

/// <summary>How long a check or an action took.</summary>
/// <param name="Work">Id of the check or action.</param>
/// <param name="Times">How often it was timed.</param>
/// <param name="Median">Median, minutes.</param>
public sealed record MinutesTaken(string Work, int Times, double Median);

/// <summary>What the firm's closed visits teach. Derived; what diagnosis does with the counts is its own matter.</summary>
/// <param name="Patterns">Counts by pattern.</param>
/// <param name="GoodParts">Good parts renewed.</param>
/// <param name="Comebacks">Comebacks.</param>
/// <param name="Minutes">Minutes of each check and action timed three times or more.</param>
public sealed record Learning(
    IReadOnlyList<PatternCounts> Patterns, IReadOnlyList<GoodPart> GoodParts, IReadOnlyList<Comeback> Comebacks, IReadOnlyList<MinutesTaken> Minutes)
{
    private const double LikelyFound = 0.7;
    private const double CuredNow = 0.3;
    private const double UnlikelyFound = 0.2;
    private const int ComebackDays = 30;
    private const int EnoughTimes = 3;

    // Shorter is two entries written together, longer a lunch between them.
    private const double ShortestMinutes = 0.2;
    private const double LongestMinutes = 180;

    /// <summary>Learns from visits; those that are not closed are passed over.</summary>
    public static Learning Of(IEnumerable<VisitSummary> visits)
    {
        ArgumentNullException.ThrowIfNull(visits);
        var all = visits.ToArray();
        var closed = all.Where(v => v is { State: VisitState.SignedOff, Pattern: not null }).ToArray();
        return new(
            [.. closed.Where(v => v.Causes.Count > 0).GroupBy(v => v.Pattern!).OrderBy(g => g.Key, StringComparer.Ordinal).Select(Counts)],
            [.. closed.SelectMany(GoodPartsOf).OrderByDescending(g => g.Visit.Day)],
            [.. ComebacksOf(all)],
            Timed(closed));
    }

    /// <summary>Minutes of each check and action that closed visits timed three times or more.</summary>
    public static IReadOnlyList<MinutesTaken> Timed(IEnumerable<VisitSummary> visits) =>
    [
        .. visits.Where(v => v.State == VisitState.SignedOff).SelectMany(v => v.Work).Where(w => w.Minutes is > ShortestMinutes and < LongestMinutes)
            .GroupBy(w => w.Action).Where(g => g.Count() >= EnoughTimes)
            .Select(g => new MinutesTaken(g.Key, g.Count(), g.Select(w => w.Minutes).Order().ElementAt(g.Count() / 2)))
            .OrderByDescending(m => m.Times).ThenBy(m => m.Work, StringComparer.Ordinal),
    ];

    /// <summary>The causes that a visit confirmed by curing them; <c>nothing</c> for a sound stove; none when unclear.</summary>
    public static IReadOnlyList<string> Confirmed(VisitSummary visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return
        [
            .. visit.Causes.Where(c => c.Fault == Suspect.Nothing ? c.AsFound >= LikelyFound : c.AsFound >= LikelyFound && c.Now <= CuredNow).Select(c => c.Fault),
        ];
    }

    /// <summary>How often each cause was confirmed in each quarter of a year, by the quarter's first day.</summary>
    public static IReadOnlyList<(DateOnly Quarter, string Cause, int Times)> OverTime(IEnumerable<VisitSummary> visits)
    {
        ArgumentNullException.ThrowIfNull(visits);
        return
        [
            .. visits.Where(v => v is { State: VisitState.SignedOff, Day: not null })
                .SelectMany(v => Confirmed(v).Where(c => c != Suspect.Nothing).Select(c => (Quarter: new DateOnly(v.Day!.Value.Year, (v.Day.Value.Month - 1) / 3 * 3 + 1, 1), Cause: c)))
                .GroupBy(p => p).Select(g => (g.Key.Quarter, g.Key.Cause, g.Count())).OrderBy(p => p.Quarter).ThenBy(p => p.Cause, StringComparer.Ordinal),
        ];
    }

    private static PatternCounts Counts(IGrouping<string, VisitSummary> visits)
    {
        var confirmed = visits.Select(Confirmed).ToArray();
        return new(visits.Key, confirmed.Length, confirmed.Count(c => c.Count == 0),
            confirmed.SelectMany(c => c).GroupBy(c => c).OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count()));
    }

    private static IEnumerable<GoodPart> GoodPartsOf(VisitSummary visit)
    {
        if (visit.Causes.Count == 0) yield break;
        foreach (var (id, _) in visit.Work)
        {
            if (ActionList.All.FirstOrDefault(a => a.Id == id) is not { Kind: RemedyKind.Replace } action) continue;
            var highest = action.Cures.Select(fault => visit.Causes.FirstOrDefault(c => c.Fault == fault)?.AsFound ?? 0).DefaultIfEmpty().Max();
            if (highest < UnlikelyFound) yield return new(visit, id, highest);
        }
    }

    private static IEnumerable<Comeback> ComebacksOf(VisitSummary[] visits)
    {
        foreach (var stove in visits.Where(v => v.Day is not null).GroupBy(v => v.Stove))
        {
            var dated = stove.OrderBy(v => v.Day).ThenBy(v => v.Booked).ToArray();
            foreach (var (first, again) in dated.Zip(dated.Skip(1)))
                if (first.State == VisitState.SignedOff && again.Kind == VisitKind.Breakdown && again.Day!.Value.DayNumber - first.Day!.Value.DayNumber <= ComebackDays)
                    yield return new(first, again, Confirmed(first) is [var cause, ..] ? cause : Suspect.Nothing);
        }
    }
}
