using Emberwright.Stove;
using Emberwright.Stove.Quantities;

namespace Emberwright.Visits.Journal;

/// <summary>
/// Time spent on a piece of work, as the technician states it. It is not the time between two entries: nobody writes at the very
/// moment work begins. A later entry on the same work replaces an earlier one.
/// </summary>
/// <param name="Work">Id of the action or check, or words.</param>
/// <param name="Time">How long it took; above 0.</param>
/// <param name="Area">Where.</param>
public sealed record LabourBody(string Work, Quantity Time, Area? Area = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "labour";

    /// <summary>How long it took, minutes.</summary>
    public double Minutes => Time.Si / 60;

    internal static LabourBody Read(BodyReader r)
    {
        var time = r.Quantity("time", Dimension.Duration);
        if (time is null) r.Refuse("time", r.Text("time") ?? "", "It is not said how long the work took.", "Write it with its unit, such as 25 min.");
        else if (time.Value.Si <= 0) r.Refuse("time", r.Text("time") ?? "", "Work takes more than no time.", "Write it with its unit, such as 25 min.");
        return new(r.Required("work", "Write what was done, or its id such as clean-ash-passages."), time ?? new Quantity(1, Units.Minute), r.Choice<Area>("area"));
    }

    internal override void Write(BodyWriter w)
    {
        w.Text("work", Work);
        w.Quantity("time", Time);
        w.Choice("area", Area);
    }
}
