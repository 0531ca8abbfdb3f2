namespace Emberwright.Visits.Journal;

/// <summary>The kinds of entry this version knows, each with the reader of its body.</summary>
public static class EntryKinds
{
    private static readonly Dictionary<string, Func<BodyReader, EntryBody>> Readers = new(StringComparer.Ordinal)
    {
        ["appliance"] = ApplianceBody.Read,
        ["site"] = SiteBody.Read,
        ["customer"] = CustomerBody.Read,
        ["visit"] = VisitBody.Read,
        ["history"] = HistoryBody.Read,
        ["complaint"] = ComplaintBody.Read,
        ["answer"] = AnswerBody.Read,
        ["observation"] = ObservationBody.Read,
        ["reading"] = ReadingBody.Read,
        ["code"] = CodeBody.Read,
        ["counter"] = CounterBody.Read,
        ["parameter"] = ParameterBody.Read,
        ["action"] = ActionBody.Read,
        ["part"] = PartBody.Read,
        ["labour"] = LabourBody.Read,
        ["photo"] = PhotoBody.Read,
        ["note"] = NoteBody.Read,
        ["consent"] = ConsentBody.Read,
        ["safe"] = SafeBody.Read,
        ["proof"] = ProofBody.Read,
        ["fire"] = FireBody.Read,
        ["notice"] = NoticeBody.Read,
        ["instrument"] = InstrumentBody.Read,
        ["explanation"] = ExplanationBody.Read,
        ["due"] = DueBody.Read,
        ["handover"] = HandoverBody.Read,
        ["correction"] = CorrectionBody.Read,
        ["erased"] = ErasedBody.Read,
        ["signature"] = SignatureBody.Read,
        ["seal"] = SealBody.Read,
    };

    /// <summary>Names of the known kinds.</summary>
    public static IReadOnlyCollection<string> Names => Readers.Keys;

    internal static EntryBody Read(string kind, BodyReader body, string json) =>
        Readers.TryGetValue(kind, out var read) ? read(body) : new UnknownBody(kind, json);
}
