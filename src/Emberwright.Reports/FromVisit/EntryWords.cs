using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>One entry in a line of words, as the record at the foot of the visit shows it.</summary>
public static class EntryWords
{
    /// <summary>The line.</summary>
    /// <param name="body">What the entry says.</param>
    /// <param name="codes">What the stove's card says of alarm codes, where it is known.</param>
    public static string Of(EntryBody body, IReadOnlyList<CodeMeaning>? codes = null) => body switch
    {
        ReadingBody r => $"{ObservableName.Of(r.Observable)} {r.Written}, {ConditionWords.Of(r.Condition)}",
        ComplaintBody c => $"“{c.Words}”",
        AnswerBody a => $"{CatalogueWords.Question(a.Question)} {CatalogueWords.Outcome(a.Question, a.Outcome)}",
        ObservationBody o => $"{CatalogueWords.Question(o.Sign)} {CatalogueWords.Outcome(o.Sign, o.Outcome)}",
        SafeBody s => SafeWords.Done(s.Step),
        ActionBody { Done: true } a => CatalogueWords.ActionName(a.Action),
        ActionBody a => a.Reason is { } reason ? Say.Of("entry.not-done-2", CatalogueWords.ActionName(a.Action), NotDoneWords.Of(reason)) : Say.Of("entry.not-done", CatalogueWords.ActionName(a.Action)),
        PhotoBody p => Photo(p),
        NoteBody n => n.Words,
        PartBody p => string.Join(", ", new[] { $"{p.Part} {p.Number} {p.Use}".TrimEnd(), FigureRows.PartWords(p) }.Where(w => w.Length > 0)),
        LabourBody l => $"{CatalogueWords.ActionName(l.Work)}: {l.Time}",
        CodeBody { Meaning: null } c => Say.Of("entry.code-2", codes?.FirstOrDefault(m => m.Shown == c.Code)?.InWords ?? c.Code),
        CodeBody c => Say.Of("entry.code", c.Code, c.Meaning).TrimEnd(),
        ConsentBody c => (c.Given ? Say.Of("entry.agreed", c.About, c.Amount) : Say.Of("entry.refused", c.About, c.Amount)).TrimEnd(),
        ProofBody p => $"{ObservableName.Capital(Say.Term(EnumWords.Of(p.Proof).Replace('-', ' ')))}: {Say.Term(EnumWords.Of(p.Outcome).Replace('-', ' '))}",
        FireBody f => FireWords.Of(f.Moment),
        NoticeBody n => n.Lifted ? Say.Of("entry.stop-use-notice-lifted", n.Reason) : Say.Of("entry.stop-use-notice", n.Reason),
        SignatureBody s => s.Absent ? Say.Of("entry.not-there-to-sign", ObservableName.Capital(Say.Term(EnumWords.Of(s.Role)))) : Say.Of("entry.signed-by", s.Name, Say.Term(EnumWords.Of(s.Role))),
        DueBody d => Say.Of("entry.due", Say.Day(d.On)),
        SealBody => Say.Of("entry.signed-off"),
        CorrectionBody { Replacement: null } => Say.Of("entry.taken-back"),
        CorrectionBody c => Say.Of("entry.corrected-to", Of(c.Replacement!, codes)),
        ApplianceBody a => Say.Of("entry.stove", a.Maker, a.Model, a.Name).TrimEnd(),
        SiteBody => Say.Of("entry.site"),
        CustomerBody c => Say.Of("entry.customer", c.Name),
        VisitBody v => Say.Of("entry.visit", Say.Term(EnumWords.Of(v.VisitKind))),
        HistoryBody => Say.Of("entry.history"),
        InstrumentBody i => Say.Of("entry.instrument", i.Name),
        CounterBody c => $"{c.Counter} {c.Value}",
        ParameterBody p => $"{p.Parameter} {p.Value}",
        ExplanationBody => Say.Of("entry.reading-explained"),
        HandoverBody h => Say.Of("entry.shown", string.Join(", ", h.Shown)),
        UnreadBody u => Say.Of("entry.a-line-that-could-not-be-read", string.Join(' ', u.Problems)),
        _ => ObservableName.Capital(body.Kind),
    };

    private static string Photo(PhotoBody photo)
    {
        var what = photo.Area is { } area ? Say.Of("entry.photo-of", AreaName.Of(area).ToLowerInvariant()) : Say.Of("entry.photo");
        if (photo.Moment is { } moment) what += $", {Say.Term(EnumWords.Of(moment))}";
        return photo.Caption is { } caption ? $"{what}: {caption}" : what;
    }
}
