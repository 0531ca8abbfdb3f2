using System.Collections.Immutable;
using System.Globalization;
using Emberwright.Diagnosis;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>What the customer's page says of a visit: may the stove be used, what was found, done, and is to be done.</summary>
internal sealed class CustomerPage(Visit visit, Beliefs? beliefs, UnitSystem units, Func<string, ImmutableArray<byte>> pictureOf)
{
    // From here a cause is said as found; below, the page says that it is not certain. Our own choice.
    private const double Likely = 0.5;

    private readonly NoticeBody? notice = visit.Of<NoticeBody>().LastOrDefault()?.Body is { Lifted: false } standing ? standing : null;

    /// <summary>A name or address; one kept apart from the journal is not printed as its reference.</summary>
    public static string Known(string? words) => words is null ? "" : Blob.IsReference(words) ? Say.Of("customer.name-withheld") : words;

    /// <summary>May the stove be used? Yes only on evidence: what it was left with is in band or explained, and no proof failed.</summary>
    public Answer Answer => (notice, beliefs?.Stops, visit.Seal) switch
    {
        ({ } stands, _, _) => new(Use.No, PlainWords.Sentence(stands.Reason)),
        (null, [var stop, ..], _) => new(Use.No, PlainWords.Sentence(Say.Term(stop.Words))),
        _ when visit.Call?.VisitKind == VisitKind.Decommissioning => new(Use.No, Say.Of("customer.it-was-taken-out-of-use-for")),
        _ when Proofs.FirstOrDefault(p => p.Outcome == ProofOutcome.Failed) is { } failed => new(Use.No, Say.Of("customer.a-safety-test-failed-it-did-not", ProofWords.Of(failed.Proof))),
        (null, _, null) => new(Use.NotDecided, Say.Of("customer.the-visit-is-not-closed-yet")),
        (null, _, { Intact: false }) => new(Use.NotDecided, Say.Of("customer.the-record-behind-this-report-was-changed")),
        _ when LeftWith.Length == 0 => new(Use.NotDecided, Say.Of("customer.the-stove-was-not-measured-after-the")),
        _ when Compared.Length == 0 && Proofs.Length == 0 => new(Use.NotDecided, Say.Of("customer.nothing-yet-shows-whether-it-works-as")),
        _ when Unexplained.Length > 0 => new(Use.NotDecided, Say.Of("customer.not-everything-is-as-it-should-be", PlainWords.List(Unexplained))),
        _ when Limits.Length > 0 => new(Use.YesWithLimits, string.Join(' ', Limits)),
        _ => new(Use.Yes, Reasons),
    };

    public IEnumerable<string> Found
    {
        get
        {
            if (visit.Call?.VisitKind is VisitKind.Inspection or VisitKind.Commissioning && VisitRecords.InSentences(visit, units) is { Length: > 0 } installed) yield return installed;
            foreach (var complaint in visit.Of<ComplaintBody>()) yield return Say.Of("customer.you-told-us", complaint.Body.Words);
            if (beliefs is null) yield break;
            var blocked = beliefs.Areas.Select(a => (a.Parameter, Words: PlainWords.Blocked(a))).Where(a => a.Words is not null).ToArray();
            var causes = Causes(blocked.Select(b => b.Parameter)).ToArray();
            if (blocked.Length > 0) yield return string.Join(' ', blocked.Select(b => b.Words));
            if (causes.Length > 0) yield return Say.Of("customer.we-found", PlainWords.List(causes));
            if (blocked.Length + causes.Length > 0) yield break;
            if (beliefs.NoListedCauseFits) yield return Say.Of("customer.what-we-measured-fits-no-cause-that");
            else if (visit.AsFound.Any() && beliefs.Comparisons.Where(c => c.Epoch == 0).All(c => c.Verdict == Verdict.In)) yield return Say.Of("customer.everything-we-measured-before-the-work-was");
            else if (visit.Of<ComplaintBody>().Any()) yield return Say.Of("customer.what-we-measured-does-not-settle-on");
        }
    }

    public IEnumerable<string> Did
    {
        get
        {
            var actions = visit.Of<ActionBody>().Where(a => a.Body.Done).Select(a => a.Body.Action).Distinct().ToArray();
            var parts = visit.Of<PartBody>().Where(p => p.Body.Use is null or "fitted").Select(p => PlainWords.Lower(p.Body.Part)).ToArray();
            List<string> said = [.. PlainWords.Work(actions)];
            if (parts.Length > 0) said.Add(Say.Of("customer.fitted", PlainWords.List(parts)));
            if (actions.Length > 0 && visit.AsLeft.Any()) said.Add(Say.Of("customer.measured-the-stove-again-afterwards"));
            if (RoomCo is { } co)
                said.Add(co < 1 ? Say.Of("customer.measured-carbon-monoxide-in-the-room-while") : Say.Of("customer.measured-carbon-monoxide-in-the-room-ppm", co.ToString("0", CultureInfo.InvariantCulture)));
            if (said.Count > 0) yield return string.Join(' ', said);
            if (actions.Length == 0 && visit.Readings.Count > 0) yield return Say.Of("customer.we-measured-the-stove-nothing-was-changed");
        }
    }

    public IEnumerable<string> ShouldDo
    {
        get
        {
            var use = Answer.Use;
            if (use == Use.No)
            {
                yield return Say.Of("customer.do-not-plug-it-in-and-do");
                if ((notice?.ReleasedBy ?? (beliefs?.Stops is [var first, ..] ? Say.Term(first.ReleasedBy) : null)) is { Length: > 0 } who) yield return Say.Of("customer.it-may-be-used-again-only-after", PlainWords.Sentence(who));
            }

            else if (use == Use.NotDecided)
            {
                yield return Say.Of("customer.leave-it-off-until-we-have-told");
            }
            else
            {
                // Common practice, no source.
                yield return Say.Of("customer.scrape-the-burn-pot-before-you-light");
                yield return Say.Of("customer.ash-can-glow-for-a-day-a");
                if (visit.Of<HandoverBody>().LastOrDefault()?.Body is { Shown.Count: > 0 } handed)
                    yield return Say.Of("customer.as-we-showed-you", PlainWords.List(handed.Shown));
            }

            if (visit.Of<HandoverBody>().LastOrDefault()?.Body.CoAlarmUntil is { } until)
                yield return Say.Of("customer.your-co-alarm-is-good-until-test", Say.Day(until));
            yield return Say.Of("customer.smell-of-smoke-or-the-co-alarm");
        }
    }

    // A stove taken out of use has no next service.
    public NextDue? Next => visit.Of<DueBody>().LastOrDefault()?.Body is { } due && (due.For != DueFor.Service || visit.Call?.VisitKind != VisitKind.Decommissioning)
        ? new(Say.Day(due.On), string.Join(' ', new[] { Purpose(due.For), due.Basis is null ? "" : PlainWords.Sentence(Say.Of("customer.reckoned-from", PlainWords.Lower(due.Basis))) }.Where(w => w.Length > 0))) { Return = due.For != DueFor.Service }
        : null;

    public IEnumerable<Signed> Signatures
    {
        get
        {
            var signatures = visit.Of<SignatureBody>().ToArray();
            if (visit.Seal is { } seal && signatures.All(s => s.Body.Role != Role.Technician))
                yield return new(visit.Call?.Technician ?? seal.Entry.Author, Say.Of("customer.technician"), seal.Entry.At);
            foreach (var signature in signatures)
                yield return new(
                    Known(signature.Body.Name ?? (signature.Body.Role == Role.Customer ? visit.Customer?.Name : visit.Call?.Technician)), Say.Term(EnumWords.Of(signature.Body.Role)),
                    signature.Body.Absent ? null : signature.At, signature.Body.Absent, signature.Body.Image is { } image ? pictureOf(image) : default);
        }
    }

    // What the user must mind: work left undone, and readings left out of band with a consequence. Missing paper is no limit of use.
    private string[] Limits =>
    [
        .. visit.Of<ActionBody>().Where(a => a.Body is { Done: false, Reason: NotDoneReason.NoAccess or NotDoneReason.OwnerRefused })
            .Select(a => Say.Of("customer.not-done", PlainWords.Lower(CatalogueWords.ActionName(a.Body.Action)), NotDoneWords.Of(a.Body.Reason!.Value))).Distinct(),
        .. visit.Of<ExplanationBody>().Select(e => e.Body).Where(e => e.Consequence is Consequence.UseLimited or Consequence.RestrictionRemains or Consequence.MarginReduced)
            .Select(e => PlainWords.Sentence(e.Words ?? ExplanationWords.Of(e.Consequence!.Value))).Distinct(),
    ];

    // The last reading of each kind after the work; an inspection does none, so there every reading counts.
    private Reading[] LeftWith => visit.Call?.VisitKind == VisitKind.Inspection && !visit.AsLeft.Any()
        ? [.. visit.Readings.GroupBy(r => r.Body.Observable).Select(same => same.Last())]
        : [.. visit.LeftWith];

    private Comparison[] Compared => [.. (beliefs?.Comparisons ?? []).Where(c => LeftWith.Any(r => r.Id == c.Evidence))];

    private ProofBody[] Proofs => [.. visit.Of<ProofBody>().GroupBy(p => p.Body.Proof).Select(same => same.Last().Body)];

    private string[] Unexplained =>
    [
        .. Compared.Where(c => c.Verdict != Verdict.In && !visit.Of<ExplanationBody>().Any(e => e.Body is { Cause: not null, Consequence: not null }
                && (e.Body.Entry == c.Evidence || e.Body.Entry is null && e.Body.Place == c.Band.Observable.Place)))
            .Select(c => $"{PlainWords.Lower(ObservableName.Of(c.Band.Observable))} {VerdictWord.Of(c.Verdict, c.Band.Observable.Measure)}").Distinct(),
    ];

    private string Reasons
    {
        get
        {
            List<string> clauses = [];
            if (visit.Of<ActionBody>().Any(a => a.Body.Done && a.Body.Action.StartsWith("clean", StringComparison.Ordinal) || a.Body is { Done: true, Action: Diagnosis.Checks.ActionList.FullService })) clauses.Add(Say.Of("customer.it-is-clean"));
            if (Compared.Any(c => c.Band.Observable.Measure == Measure.Pressure) && Compared.All(c => c.Verdict == Verdict.In)) clauses.Add(Say.Of("customer.it-draws-as-it-should"));
            if (Proofs.Any(p => p.Outcome == ProofOutcome.Passed)) clauses.Add(Say.Of("customer.its-safety-switches-were-tried-and-work"));
            if (RoomCo is < 1) clauses.Add(Say.Of("customer.no-carbon-monoxide-came-into-the-room"));
            return clauses.Count > 0 ? ObservableName.Capital(PlainWords.List(clauses)) + "." : Say.Of("customer.it-was-looked-over-and-measured-as");
        }
    }

    // The highest reading in the room while it was left burning.
    private double? RoomCo => visit.AsLeft.Where(r => r.Body is { Measure: Measure.CarbonMonoxide, Place: Places.Room }).Select(r => (double?)r.Body.Si).Max();

    // Likely faults, without the fouling that is already said in plain words.
    private IEnumerable<string> Causes(IEnumerable<Parameter> said) =>
        from s in beliefs!.Suspects
        where s.Fault is not (Suspect.Nothing or Suspect.Unlisted) && s.AsFound >= Likely
        where FaultList.All.FirstOrDefault(f => f.Id == s.Fault)?.Fouling is not { } fouling || !said.Contains(fouling.Parameter)
        select PlainWords.Lower(Say.Term(s.Name));

    private static string Purpose(DueFor due) => due switch
    {
        DueFor.Service => "",
        DueFor.Return => Say.Of("customer.we-come-back-to-finish-this-job"),
        DueFor.FollowUp => Say.Of("customer.we-call-to-ask-how-it-runs"),
    };
}
