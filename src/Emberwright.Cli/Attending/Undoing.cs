using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli.Attending;

/// <summary>Taking back what was written: by a correction, so that both stay in the file.</summary>
internal static class Undoing
{
    private const string Reason = "taken back at the stove";

    /// <summary>The correction that takes back the last fact that stands and was written about the stove; null when there is none.</summary>
    public static (CorrectionBody Correction, EntryBody Taken)? Last(Visit visit)
    {
        var last = visit.Facts.LastOrDefault(f => f.Body is not (ApplianceBody or SiteBody or CustomerBody or VisitBody or HistoryBody or SignatureBody));
        return last is null ? null : (new CorrectionBody(last.Id, null, Reason), last.Body);
    }

    /// <summary>The correction that restores what was last taken back here; null when nothing was.</summary>
    public static CorrectionBody? Restore(VisitJournal journal)
    {
        var withdrawn = journal.Entries.Select(e => e.Body).OfType<CorrectionBody>().Where(c => c.Replacement is null).Select(c => c.Target).ToHashSet();
        var last = journal.Entries.LastOrDefault(e => e.Body is CorrectionBody { Replacement: null, Reason: Reason } && !withdrawn.Contains(e.Id));
        return last is null ? null : new CorrectionBody(last.Id, null, "restored");
    }

    /// <summary>An entry in a few words.</summary>
    public static string Said(EntryBody body) => body switch
    {
        ReadingBody r => $"{r.Place.Replace('-', ' ')} {r.Written}",
        AnswerBody a => $"{a.Question}: {a.Outcome}",
        ObservationBody o => $"{o.Sign}: {o.Outcome}",
        ActionBody a => a.Action,
        ComplaintBody c => c.Words,
        NoteBody n => n.Words,
        SafeBody s => EnumWords.Of(s.Step).Replace('-', ' '),
        ProofBody p => $"{EnumWords.Of(p.Proof)} {EnumWords.Of(p.Outcome)}",
        _ => body.Kind,
    };
}
