using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>
/// Sets members of one record of the firm's book: a person, an instrument, a part, … Members left out stay as they
/// were; an empty text clears one; a list is replaced whole. Several entries with one id are one record.
/// </summary>
/// <param name="Id">Id of the record within its kind.</param>
public abstract record RecordBody(string Id) : EntryBody
{
    private protected const string IdRemedy = "Give the record an id, such as a UUID or the number on it.";

    /// <summary>What it is called on a list.</summary>
    public abstract string Title { get; }

    internal sealed override void Write(BodyWriter writer)
    {
        writer.Text("id", Id);
        WriteMembers(writer);
    }

    private protected abstract void WriteMembers(BodyWriter w);

    private protected static string ReadId(BodyReader r) => r.Required("id", IdRemedy);

    /// <summary>Null for an empty text, which says that a member was cleared.</summary>
    private protected static string? Said(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
