namespace Emberwright.Visits.Journal;

/// <summary>A moment of the test fire; the entry's own time is when it came.</summary>
public enum FireMoment
{
    /// <summary>The start was pressed.</summary>
    Called,
    /// <summary>The first flame.</summary>
    Flame,
    /// <summary>Set to high, and burning there.</summary>
    High,
    /// <summary>Off was pressed.</summary>
    Shutdown,
    /// <summary>The blowers stopped by themselves.</summary>
    Stopped,
}

/// <summary>One moment of the test fire. It is not a reading: what was measured then has entries of its own.</summary>
/// <param name="Moment">Which moment.</param>
public sealed record FireBody(FireMoment Moment) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "fire";

    internal static FireBody Read(BodyReader r) => new(r.RequiredChoice<FireMoment>("moment"));

    internal override void Write(BodyWriter w) => w.Choice<FireMoment>("moment", Moment);
}
