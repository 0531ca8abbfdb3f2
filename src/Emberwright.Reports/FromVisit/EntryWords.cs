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
        ReadingBody r => $"{ObservableName.Of(r.Observable)} {r.Written}, {ConditionText.Say(r.Condition)}",
        ComplaintBody c => $"“{c.Words}”",
        AnswerBody a => $"{CatalogueWords.Question(a.Question)} {CatalogueWords.Outcome(a.Question, a.Outcome)}",
        ObservationBody o => $"{CatalogueWords.Question(o.Sign)} {CatalogueWords.Outcome(o.Sign, o.Outcome)}",
        SafeBody s => SafeWords.Done(s.Step),
        ActionBody { Done: true } a => CatalogueWords.ActionName(a.Action),
        ActionBody a => $"{CatalogueWords.ActionName(a.Action)}: not done{(a.Reason is { } reason ? ", " + NotDoneWords.Of(reason) : "")}",
        PhotoBody p => $"Photo{(p.Area is { } area ? " of " + AreaName.Of(area).ToLowerInvariant() : "")}{(p.Moment is { } moment ? ", " + EnumWords.Of(moment) : "")}{(p.Caption is { } caption ? ": " + caption : "")}",
        NoteBody n => n.Words,
        PartBody p => $"{p.Part} {p.Number} {p.Use}".TrimEnd(),
        CodeBody { Meaning: null } c => $"Code {codes?.FirstOrDefault(m => m.Shown == c.Code)?.InWords ?? c.Code}",
        CodeBody c => $"Code {c.Code} {c.Meaning}".TrimEnd(),
        ConsentBody c => $"{c.About}: {(c.Given ? "agreed" : "refused")} {c.Amount}".TrimEnd(),
        ProofBody p => $"{ObservableName.Capital(EnumWords.Of(p.Proof).Replace('-', ' '))}: {EnumWords.Of(p.Outcome).Replace('-', ' ')}",
        FireBody f => FireWords.Of(f.Moment),
        NoticeBody n => $"{(n.Lifted ? "Stop-use notice lifted" : "Stop-use notice")}: {n.Reason}",
        SignatureBody s => s.Absent ? $"{ObservableName.Capital(EnumWords.Of(s.Role))} not there to sign" : $"Signed by {s.Name} ({EnumWords.Of(s.Role)})",
        DueBody d => $"Due {d.On:d MMMM yyyy}",
        SealBody => "Signed off",
        CorrectionBody { Replacement: null } => "Taken back",
        CorrectionBody c => $"Corrected to: {Of(c.Replacement!, codes)}",
        ApplianceBody a => $"Stove: {a.Maker} {a.Model} {a.Name}".TrimEnd(),
        SiteBody => "Site",
        CustomerBody c => $"Customer: {c.Name}",
        VisitBody v => $"Visit: {EnumWords.Of(v.VisitKind)}",
        HistoryBody => "History",
        InstrumentBody i => $"Instrument: {i.Name}",
        CounterBody c => $"{c.Counter} {c.Value}",
        ParameterBody p => $"{p.Parameter} {p.Value}",
        ExplanationBody => "Reading explained",
        HandoverBody h => $"Shown: {string.Join(", ", h.Shown)}",
        UnreadBody u => $"A line that could not be read: {string.Join(' ', u.Problems)}",
        _ => ObservableName.Capital(body.Kind),
    };
}
