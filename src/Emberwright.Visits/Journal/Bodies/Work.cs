using Emberwright.Stove;

namespace Emberwright.Visits.Journal;

/// <summary>Why a piece of work that belongs to the visit was not done. Other reasons are none.</summary>
public enum NotDoneReason
{
    /// <summary>It could not be reached safely.</summary>
    NoAccess,
    /// <summary>The owner refused it; a consent entry says so.</summary>
    OwnerRefused,
    /// <summary>The appliance was put out of service instead.</summary>
    OutOfService,
    /// <summary>The appliance has no such part.</summary>
    NotFitted,
}

/// <summary>Something done to the stove, or left undone with the reason. What was done begins a new epoch.</summary>
/// <param name="Action">Action id, e.g. <c>clean-ash-passages</c>, or words.</param>
/// <param name="Area">Where.</param>
/// <param name="Done">False for work left undone.</param>
/// <param name="Reason">Why it was not done.</param>
/// <param name="Outcome">What came of it, in words.</param>
public sealed record ActionBody(
    string Action, Area? Area = null, bool Done = true, NotDoneReason? Reason = null, string? Outcome = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "action";

    internal static ActionBody Read(BodyReader r) => new(
        r.Required("action", "Write what was done, or its id such as clean-ash-passages."), r.Choice<Area>("area"),
        r.Flag("done") ?? true, r.Choice<NotDoneReason>("reason"), r.Text("outcome"));

    internal override void Write(BodyWriter w)
    {
        w.Text("action", Action);
        w.Choice("area", Area);
        w.Flag("done", Done ? null : false);
        w.Choice("reason", Reason);
        w.Text("outcome", Outcome);
    }
}

/// <summary>What state a part was in when it was fitted.</summary>
public enum PartCondition
{
    /// <summary>New.</summary>
    New,
    /// <summary>Used before, and sound.</summary>
    Used,
    /// <summary>Used before and put right.</summary>
    Reconditioned,
}

/// <summary>Where a part came from.</summary>
public enum PartSource
{
    /// <summary>It lay on the van.</summary>
    Van,
    /// <summary>It was ordered for this job.</summary>
    Ordered,
    /// <summary>The customer had it.</summary>
    Customer,
}

/// <summary>A part fitted, removed or ordered.</summary>
/// <param name="Part">What it is.</param>
/// <param name="Number">Its number.</param>
/// <param name="Use">fitted, removed, ordered, returned: in words.</param>
/// <param name="Tag">Return or warranty tag.</param>
/// <param name="Area">Where.</param>
/// <param name="Condition">Its state; null when not stated.</param>
/// <param name="From">Where it came from; null when not stated.</param>
public sealed record PartBody(
    string Part, string? Number = null, string? Use = null, string? Tag = null, Area? Area = null, PartCondition? Condition = null, PartSource? From = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "part";

    internal static PartBody Read(BodyReader r) =>
        new(r.Required("part", "Name the part."), r.Text("number"), r.Text("use"), r.Text("tag"), r.Choice<Area>("area"),
            r.Choice<PartCondition>("condition"), r.Choice<PartSource>("from"));

    internal override void Write(BodyWriter w)
    {
        w.Text("part", Part);
        w.Text("number", Number);
        w.Text("use", Use);
        w.Text("tag", Tag);
        w.Choice("area", Area);
        w.Choice("condition", Condition);
        w.Choice("from", From);
    }
}

/// <summary>Whether a photo shows the state before or after work.</summary>
public enum Moment
{
    /// <summary>Before work.</summary>
    Before,
    /// <summary>After work.</summary>
    After,
}

/// <summary>A photo; its bytes lie beside the journal.</summary>
/// <param name="Photo"><see cref="Blob"/> reference to it.</param>
/// <param name="Area">What area it shows.</param>
/// <param name="Moment">Before or after work.</param>
/// <param name="Caption">What it shows, e.g. <c>label</c>.</param>
public sealed record PhotoBody(string Photo, Area? Area = null, Moment? Moment = null, string? Caption = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "photo";

    internal static PhotoBody Read(BodyReader r)
    {
        var blob = r.Required("blob", "Name the photo's bytes as sha256: and 64 hexadecimal digits.");
        if (blob.Length > 0 && !Blob.IsReference(blob))
            r.Refuse("blob", blob, "This does not name bytes.", "Write sha256: and 64 lower-case hexadecimal digits.");
        return new(blob, r.Choice<Area>("area"), r.Choice<Moment>("moment"), r.Text("caption"));
    }

    internal override void Write(BodyWriter w)
    {
        w.Text("blob", Photo);
        w.Choice("area", Area);
        w.Choice("moment", Moment);
        w.Text("caption", Caption);
    }
}
