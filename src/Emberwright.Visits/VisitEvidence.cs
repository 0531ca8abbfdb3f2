using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits;

/// <summary>A sign and its outcome.</summary>
/// <param name="Sign">Sign id.</param>
/// <param name="Outcome">Outcome id.</param>
public readonly record struct SignOutcome(string Sign, string Outcome);

/// <summary>What diagnosis needs of a visit.</summary>
public static class VisitEvidence
{
    /// <summary>
    /// The facts that bear on what is wrong, in order: readings, signs, actions. Free words reach diagnosis only through
    /// <paramref name="signsIn"/>.
    /// </summary>
    /// <param name="visit">The visit.</param>
    /// <param name="signsIn">Finds signs in free words; null finds none.</param>
    public static IReadOnlyList<Evidence> Evidence(this Visit visit, Func<string, IEnumerable<SignOutcome>>? signsIn = null)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return [.. visit.Facts.SelectMany(fact => Evidence(fact, signsIn ?? (_ => [])))];
    }

    /// <summary>The stove to be diagnosed, given its pattern and card.</summary>
    public static StoveCase Case(this Visit visit, Pattern pattern, StoveCard? card = null)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return new StoveCase(pattern, card, visit.StoveSite(), visit.History());
    }

    /// <summary>The site in the engine's units; what is unknown is null. Sea level where no altitude is given.</summary>
    public static Site StoveSite(this Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var site = visit.Site ?? new SiteBody();
        return new Site(
            site.Altitude?.Si ?? 0, site.Outdoor?.Si, site.Room?.Si, site.Wind?.Si, site.HousePressure?.Si, Run(site.Vent),
            site.OutsideAir ?? false, site.Supply?.Si);
    }

    /// <summary>The stove's past in the engine's units.</summary>
    public static History History(this Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var past = visit.Past;
        return new History(
            past?.AgeYears,
            past?.TonnesSinceService,
            visit.Day is { } day ? past?.MonthsBefore(day) : past?.MonthsSinceService,
            past?.LastAsLeft is { Count: > 0 } last ? [.. last.Select((r, i) => new ReadingEvidence($"last-as-left-{i + 1}", 0, r.Observable, r.Si))] : null,
            visit.Call?.VisitKind == VisitKind.Service && !visit.Of<ComplaintBody>().Any());
    }

    // A code is the maker's; what it means is what counts.
    private const string CodeSign = "code";

    private static IEnumerable<Evidence> Evidence(Fact<EntryBody> fact, Func<string, IEnumerable<SignOutcome>> signsIn) => fact.Body switch
    {
        ReadingBody reading => [new ReadingEvidence(fact.Id, fact.Epoch, reading.Observable, reading.Si)],
        ActionBody { Done: true } action => [new ActionEvidence(fact.Id, fact.Epoch, action.Action)],
        ComplaintBody { Outcome: { } outcome } complaint => [new SignEvidence(fact.Id, fact.Epoch, complaint.Sign ?? Complaints.Sign, outcome)],
        ComplaintBody complaint => Signs(fact, signsIn(complaint.Words)),
        AnswerBody answer => Signs(fact, Stated(answer.Question, answer.Outcome) ?? signsIn($"{answer.Question} {answer.Outcome}")),
        ObservationBody seen => Signs(fact, Stated(seen.Sign, seen.Outcome) ?? signsIn($"{seen.Sign} {seen.Outcome}")),
        CodeBody { Meaning: { } meaning } => Signs(fact, Stated(CodeSign, meaning) ?? signsIn(meaning)),
        _ => [],
    };

    // An id has no spaces; words nearly always do, and diagnosis passes over a sign it does not know.
    private static SignOutcome[]? Stated(string sign, string outcome) =>
        sign.Contains(' ') || outcome.Contains(' ') ? null : [new SignOutcome(sign, outcome)];

    private static IEnumerable<Evidence> Signs(Fact<EntryBody> fact, IEnumerable<SignOutcome> found) =>
        found.Select(s => new SignEvidence(fact.Id, fact.Epoch, s.Sign, s.Outcome));

    // Without diameter and rise a run says nothing that the pattern's own does not.
    private static VentRun? Run(VentBody? vent) => vent is { Diameter: { } diameter, Vertical: { } vertical }
        ? new VentRun(
            diameter.Si * 1000, vent.Horizontal?.Si ?? 0, vertical.Si, vent.Elbows90 ?? 0, vent.Elbows45 ?? 0, vent.Tees ?? 0,
            vent.Terminal ?? "vertical-cap", vent.Lining ?? "rigid", vent.Insulated ?? false)
        : null;
}
