namespace Emberwright.Visits.Journal;

/// <summary>The first line of a visit file.</summary>
/// <param name="Visit">Id of the visit.</param>
/// <param name="Version">Highest version of the format used in the file.</param>
/// <param name="Line">The line as first written.</param>
public sealed record VisitHeader(string Visit, int Version, string Line)
{
    /// <summary>Name of the format, in the field <c>format</c>.</summary>
    public const string Format = "emberwright-visit";

    /// <summary>The version this build writes and the highest it knows.</summary>
    public const int CurrentVersion = 1;

    /// <summary>The header of a new visit file.</summary>
    public static VisitHeader For(string visit) => new(visit, CurrentVersion, BodyWriter.Object(w =>
    {
        w.Text("format", Format);
        w.Number("version", CurrentVersion);
        w.Text("visit", visit);
    }));
}
