namespace Emberwright.Visits.Journal;

/// <summary>
/// What tells one kind of journal from another: the name in its header and the kinds of entry it knows. Everything else
/// (order, merging, corrections, lines that cannot be read) is the same for all.
/// </summary>
public sealed class JournalFormat
{
    private readonly Func<string, BodyReader, string, EntryBody> read;

    private JournalFormat(string name, string idMember, int currentVersion, IReadOnlyList<UpcastStep> upcasts, Func<string, BodyReader, string, EntryBody> read) =>
        (Name, IdMember, CurrentVersion, Upcasts, this.read) = (name, idMember, currentVersion, upcasts, read);

    /// <summary>The journal of one visit.</summary>
    public static JournalFormat Visit { get; } = new("emberwright-visit", "visit", 1, Upcasting.Released, EntryKinds.Read);

    /// <summary>The firm's book: what it keeps beside its visits.</summary>
    public static JournalFormat Firm { get; } = new("emberwright-firm", "firm", 1, [], Visits.Firm.FirmKinds.Read);

    /// <summary>The name, in the header's member <c>format</c>.</summary>
    public string Name { get; }

    /// <summary>The header's member with the journal's id.</summary>
    public string IdMember { get; }

    /// <summary>The version this build writes and the highest it knows.</summary>
    public int CurrentVersion { get; }

    internal IReadOnlyList<UpcastStep> Upcasts { get; }

    internal EntryBody Read(string kind, BodyReader body, string json) => read(kind, body, json);
}
