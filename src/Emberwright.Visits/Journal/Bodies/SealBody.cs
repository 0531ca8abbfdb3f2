namespace Emberwright.Visits.Journal;

/// <summary>
/// Closes a visit: which entries it covers, their hash, and every figure shown that day with the engine that computed
/// it. Entries that arrive later are addenda. See <see cref="Seal"/>.
/// </summary>
/// <param name="Hash">SHA-256 over what is covered, hexadecimal.</param>
/// <param name="Engine">Version of the engine.</param>
/// <param name="Covers">Ids of the entries covered, sorted.</param>
/// <param name="LastSeq">Last seq per device among them.</param>
/// <param name="Figures">Every figure shown, by name, as written.</param>
public sealed record SealBody(
    string Hash, string Engine, IReadOnlyList<string> Covers, IReadOnlyDictionary<string, long> LastSeq,
    IReadOnlyDictionary<string, string> Figures) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "seal";

    internal static SealBody Read(BodyReader r)
    {
        var last = new SortedDictionary<string, long>(StringComparer.Ordinal);
        foreach (var (device, seq) in r.Members("lastSeq"))
            if (seq.ValueKind == System.Text.Json.JsonValueKind.Number && seq.TryGetInt64(out var number)) last[device] = number;
            else r.Refuse("lastSeq", seq.GetRawText(), "A seq is a whole number.", "Leave a seal as it was written; seal again instead.");
        var figures = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, figure) in r.Members("figures"))
            if (figure.ValueKind == System.Text.Json.JsonValueKind.String) figures[name] = figure.GetString()!;
            else r.Refuse("figures", figure.GetRawText(), "A figure is text.", "Leave a seal as it was written; seal again instead.");
        return new(r.Required("hash", "A seal carries its hash."), r.Required("engine", "A seal names its engine."), r.Texts("covers"), last, figures);
    }

    internal override void Write(BodyWriter w)
    {
        w.Text("hash", Hash);
        w.Text("engine", Engine);
        w.Texts("covers", Covers);
        w.Member("lastSeq", m =>
        {
            foreach (var (device, seq) in LastSeq) m.Number(device, seq);
        });
        w.Member("figures", m =>
        {
            foreach (var (name, figure) in Figures) m.Text(name, figure);
        });
    }
}
