namespace Emberwright.Visits.Journal;

/// <summary>The first line of a journal's file.</summary>
/// <param name="Visit">Id of the visit, or of the firm where it is the firm's book.</param>
/// <param name="Version">Highest version of the format used in the file.</param>
/// <param name="Line">The line as first written.</param>
public sealed record VisitHeader(string Visit, int Version, string Line)
{
    /// <summary>Which kind of journal it heads.</summary>
    public JournalFormat Format { get; init; } = JournalFormat.Visit;

    /// <summary>The header of a new visit file.</summary>
    public static VisitHeader For(string visit) => For(visit, JournalFormat.Visit);

    /// <summary>The header of a new journal.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="format">Its format.</param>
    public static VisitHeader For(string id, JournalFormat format)
    {
        ArgumentNullException.ThrowIfNull(format);
        return new(id, format.CurrentVersion, BodyWriter.Object(w =>
        {
            w.Text("format", format.Name);
            w.Number("version", format.CurrentVersion);
            w.Text(format.IdMember, id);
        }))
        { Format = format };
    }
}
