using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits;

/// <summary>What diagnosis needs of a visit.</summary>
public static class VisitEvidence
{
    /// <summary>
    /// The facts that bear on what is wrong, in order: readings, signs, actions. Free words become signs and actions
    /// where the lexicon of the stove's pattern knows them; without a pattern only ids count.
    /// </summary>
    public static IReadOnlyList<Evidence> Evidence(this Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var pattern = visit.Appliance is { } appliance ? PatternLibrary.Find(appliance.Pattern)?.Id : null;
        return [.. visit.Facts.SelectMany((fact, i) => Unwritten(visit, i).Concat(Evidence(fact, pattern)))];
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
            past?.TonnesSinceService ?? TonnesByCounter(visit),
            visit.Day is { } day ? past?.MonthsBefore(day) : past?.MonthsSinceService,
            past?.LastAsLeft is { Count: > 0 } last ? [.. last.Select((r, i) => new ReadingEvidence($"last-as-left-{i + 1}", 0, r.Observable, r.Si))] : null,
            visit.Call?.VisitKind == VisitKind.Service && !visit.Of<ComplaintBody>().Any(),
            visit.Day?.Month);
    }

    // The board's own hours since the service, or its hours in all less those it showed then.
    private static double? TonnesByCounter(Visit visit)
    {
        if (visit.Appliance is not { } appliance || PatternLibrary.Find(appliance.Pattern) is not { } pattern) return null;
        double? Shown(string counter) => visit.Facts
            .Where(f => f.Epoch == 0).Select(f => f.Body).OfType<CounterBody>().LastOrDefault(c => Counters.Find(c.Counter) == counter)?.Number;
        var hours = Shown(Counters.HoursSinceService) ?? Shown(Counters.Hours) - visit.Past?.HoursAtService;
        return hours is >= 0 and <= 100_000 ? FuelByHours.Tonnes(pattern, hours.Value) : null;
    }

    // A reading said to be as left, with no work written down before it: any cleaning may have been done.
    private static IEnumerable<Evidence> Unwritten(Visit visit, int at) =>
        visit.Facts[at] is { Body: ReadingBody, Epoch: 1 } fact && (at == 0 || visit.Facts[at - 1].Epoch == 0)
            ? [new ActionEvidence(fact.Id, fact.Epoch, ActionList.FullService)]
            : [];

    // A code is the maker's; what it means is what counts.
    private const string CodeSign = "code";
    private const string TestRunSign = "runs-now";
    private const string CodeTopic = "alarm code";

    private static IEnumerable<Evidence> Evidence(Fact<EntryBody> fact, string? pattern) => fact.Body switch
    {
        ReadingBody reading => [new ReadingEvidence(fact.Id, fact.Epoch, reading.Observable, reading.Si)],
        ActionBody { Done: true } action => [new ActionEvidence(fact.Id, fact.Epoch, Deed(action, pattern)), .. Signs(fact, Said(action.Action, action.Outcome, pattern))],
        ComplaintBody { Outcome: { } outcome } complaint => [new SignEvidence(fact.Id, fact.Epoch, complaint.Sign ?? Complaints.Sign, outcome), .. Signs(fact, Beside(Told(complaint.Words, pattern), complaint.Sign ?? Complaints.Sign))],
        ComplaintBody complaint => Signs(fact, Told(complaint.Words, pattern)),
        AnswerBody answer => Signs(fact, Stated(answer.Question, answer.Outcome, pattern) ?? Said(answer.Question, answer.Outcome, pattern)),
        ObservationBody seen => Signs(fact, Stated(seen.Sign, seen.Outcome, pattern) ?? Said(seen.Sign, seen.Outcome, pattern)),
        CodeBody { Meaning: null } code => [new CodeEvidence(fact.Id, fact.Epoch, code.Code)],
        CounterBody { Number: { } value } counter => [new CounterEvidence(fact.Id, fact.Epoch, Counters.Find(counter.Counter) ?? counter.Counter, value)],
        ParameterBody setting => [new ParameterEvidence(fact.Id, fact.Epoch, setting.Parameter, setting.Before ?? setting.Value)],
        CodeBody { Meaning: { } meaning } => Signs(fact, Stated(CodeSign, meaning, pattern) ?? Said(CodeTopic, meaning, pattern)),
        _ => [],
    };

    // An id has no spaces; words nearly always do, and diagnosis passes over a sign it does not know.
    private static SignOutcome[]? Stated(string sign, string outcome, string? pattern) =>
        sign.Contains(' ') || outcome.Contains(' ') ? null
        : pattern is null || Catalogue.For(pattern).Sign(sign) is { } known && known.Outcomes.Any(o => o.Id == outcome) ? [new SignOutcome(sign, outcome)]
        : Said(sign, outcome, pattern) is var said && said.Any() ? [.. said] : [new SignOutcome(sign, outcome)];

    private static IEnumerable<SignOutcome> Said(string text, string? pattern) =>
        pattern is null ? [] : Lexicon.Read(text, pattern).Found;

    // That it ran again, told with the complaint, is how it comes and goes: nobody has tried it since.
    private static IEnumerable<SignOutcome> Told(string words, string? pattern) => Said(words, pattern).Where(s => s.Sign != TestRunSign);

    private static IEnumerable<SignOutcome> Said(string what, string? outcome, string? pattern) =>
        pattern is null || string.IsNullOrWhiteSpace(outcome) ? [] : Lexicon.Read(what, outcome, pattern).Found;

    // The customer's words say more than the outcome chosen for them; the outcome chosen stands for its own sign.
    private static IEnumerable<SignOutcome> Beside(IEnumerable<SignOutcome> found, string sign) => found.Where(s => s.Sign != sign);

    private static string Deed(ActionBody action, string? pattern) =>
        pattern is not null && action.Action.Contains(' ') ? Lexicon.ReadAction(action.Action, pattern)?.Id ?? action.Action : action.Action;

    private static IEnumerable<Evidence> Signs(Fact<EntryBody> fact, IEnumerable<SignOutcome> found) =>
        found.Select(s => new SignEvidence(fact.Id, fact.Epoch, s.Sign, s.Outcome));

    // Without diameter and rise a run says nothing that the pattern's own does not.
    private static VentRun? Run(VentBody? vent) => vent is { Diameter: { } diameter, Vertical: { } vertical }
        ? new VentRun(
            diameter.Si * 1000, vent.Horizontal?.Si ?? 0, vertical.Si, vent.Elbows90 ?? 0, vent.Elbows45 ?? 0, vent.Tees ?? 0,
            vent.Terminal ?? "vertical-cap", vent.Lining ?? "rigid", vent.Insulated ?? false)
        : null;
}
