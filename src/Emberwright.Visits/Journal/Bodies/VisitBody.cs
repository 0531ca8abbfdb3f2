namespace Emberwright.Visits.Journal;

/// <summary>What a visit is for; it decides what sign-off requires.</summary>
public enum VisitKind
{
    /// <summary>Routine service.</summary>
    Service,
    /// <summary>It will not run, or not well.</summary>
    Breakdown,
    /// <summary>Inspection only: insurer, sale, after a fire.</summary>
    Inspection,
    /// <summary>First start of a new installation.</summary>
    Commissioning,
    /// <summary>Repair on the maker's account.</summary>
    Warranty,
    /// <summary>Taking a stove out of use for good.</summary>
    Decommissioning,
}

/// <summary>Why and by whom the appliance is attended.</summary>
/// <param name="VisitKind">What the visit is for.</param>
/// <param name="Firm">The firm.</param>
/// <param name="Technician">Who attends.</param>
/// <param name="Booked">When it was booked for.</param>
/// <param name="Job">Id of the job it belongs to.</param>
public sealed record VisitBody(
    VisitKind VisitKind, string? Firm = null, string? Technician = null, DateTimeOffset? Booked = null, string? Job = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "visit";

    internal static VisitBody Read(BodyReader r) =>
        new(r.RequiredChoice<VisitKind>("kind"), r.Text("firm"), r.Text("technician"), r.Time("booked"), r.Text("job"));

    internal override void Write(BodyWriter w)
    {
        w.Choice<VisitKind>("kind", VisitKind);
        w.Text("firm", Firm);
        w.Text("technician", Technician);
        w.Time("booked", Booked);
        w.Text("job", Job);
    }
}
