using Emberwright.Diagnosis;
using Emberwright.Reports.Pages;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Emberwright.Visits.SigningOff;

namespace Emberwright.Reports.FromVisit;

/// <summary>What the customer's page says of a visit: may the stove be used, what was found, done, and is to be done.</summary>
internal sealed class CustomerPage(Visit visit, Beliefs? beliefs, SignOffReview review)
{
    // From here a cause is said as found; below, the page says that it is not certain. Our own choice.
    private const double Likely = 0.5;

    private readonly NoticeBody? notice = visit.Of<NoticeBody>().LastOrDefault()?.Body is { Lifted: false } standing ? standing : null;

    public Answer Answer => (notice, beliefs?.Stops) switch
    {
        ({ } stands, _) => new(Use.No, Sentence(stands.Reason)),
        (null, [var stop, ..]) => new(Use.No, Sentence(stop.Words)),
        _ when visit.Seal is null => new(Use.NotDecided, "The visit is not closed yet."),
        _ when review.Limitations.Count > 0 => new(Use.YesWithLimits, string.Join(' ', review.Limitations)),
        _ => new(Use.Yes, "It was cleaned, measured and proved as this report shows."),
    };

    public IEnumerable<string> Found
    {
        get
        {
            foreach (var complaint in visit.Of<ComplaintBody>()) yield return $"You told us: “{complaint.Body.Words}”";
            if (beliefs is null) yield break;
            var causes = beliefs.Suspects.Where(s => s.Fault is not (Suspect.Nothing or Suspect.Unlisted) && s.AsFound >= Likely).Take(3).ToArray();
            if (causes.Length > 0) yield return $"We found: {string.Join("; ", causes.Select(c => Lower(c.Name)))}.";
            else if (beliefs.NoListedCauseFits) yield return "What we measured fits no cause that we know. We look further.";
            else if (visit.AsFound.Any() && beliefs.Comparisons.Where(c => c.Epoch == 0).All(c => c.Verdict == Verdict.In)) yield return "Everything we measured before the work was as it should be.";
            else if (visit.Of<ComplaintBody>().Any()) yield return "What we measured does not settle on one cause.";
        }
    }

    public IEnumerable<string> Did
    {
        get
        {
            var done = visit.Of<ActionBody>().Where(a => a.Body.Done).Select(a => CatalogueWords.ActionName(a.Body.Action)).Distinct().ToArray();
            if (done.Length > 0) yield return Sentence(string.Join(". ", done));
            var parts = visit.Of<PartBody>().Where(p => p.Body.Use is null or "fitted").Select(p => p.Body.Part).ToArray();
            if (parts.Length > 0) yield return $"Fitted: {string.Join(", ", parts)}.";
            if (done.Length == 0 && visit.Readings.Count > 0) yield return "We measured the stove. Nothing was changed on it.";
        }
    }

    public IEnumerable<string> ShouldDo
    {
        get
        {
            if (notice is not null || beliefs?.Stops.Count > 0)
            {
                yield return "Do not plug it in, and do not burn anything in it.";
                if (notice?.ReleasedBy is { } who) yield return $"It may be used again only after this was released by: {who}.";
            }
            if (visit.Of<HandoverBody>().LastOrDefault() is { } shown)
                foreach (var thing in shown.Body.Shown) yield return Sentence(thing);
            yield return "Smell of smoke, or the CO alarm sounds? Everyone out, then the emergency number, then us.";
        }
    }

    public NextDue? Next => visit.Of<DueBody>().LastOrDefault()?.Body is { } due
        ? new(due.On.ToString("d MMMM yyyy"), due.Basis ?? "", Likely: due.On)
        : null;

    public IEnumerable<Signed> Signatures
    {
        get
        {
            if (visit.Seal is { } seal) yield return new(visit.Call?.Technician ?? seal.Entry.Author, "technician", seal.Entry.At);
            foreach (var signature in visit.Of<SignatureBody>())
                yield return new(
                    signature.Body.Name ?? visit.Customer?.Name ?? "", EnumWords.Of(signature.Body.Role),
                    signature.Body.Absent ? null : signature.At, signature.Body.Absent);
        }
    }

    private static string Sentence(string words) => words.Length == 0 || words[^1] is '.' or '!' or '?' ? words : words + ".";

    private static string Lower(string words) => words.Length > 1 && char.IsUpper(words[0]) && !char.IsUpper(words[1]) ? char.ToLowerInvariant(words[0]) + words[1..] : words;
}
