namespace Emberwright.Visits.Journal;

/// <summary>Causes for which a reading may stay out of its band.</summary>
public enum Cause
{
    /// <summary>The owner refused the work, in writing.</summary>
    WorkRefused,
    /// <summary>The place could not be reached safely.</summary>
    NoAccess,
    /// <summary>A part is on order.</summary>
    PartOnOrder,
    /// <summary>Wind or temperature of the day.</summary>
    WeatherToday,
    /// <summary>The instrument cannot resolve it.</summary>
    InstrumentLimit,
}

/// <summary>What a reading out of its band means for the user.</summary>
public enum Consequence
{
    /// <summary>A passage or the vent stays restricted.</summary>
    RestrictionRemains,
    /// <summary>The stove stands nearer to a safety switch's limit than it should.</summary>
    MarginReduced,
    /// <summary>The stove may be used only as written.</summary>
    UseLimited,
    /// <summary>The reading says little; the stove is otherwise proved.</summary>
    ReadingUncertain,
}

/// <summary>Why a reading is out of its band: a cause and a consequence, both from a short list.</summary>
/// <param name="Entry">Id of the reading's entry; null for every reading of the place.</param>
/// <param name="Place">Port or test point, when no entry is named.</param>
/// <param name="Cause">The cause; null when the words give none of the list.</param>
/// <param name="Consequence">The consequence; null likewise.</param>
/// <param name="Words">Further words; they explain nothing alone.</param>
public sealed record ExplanationBody(
    string? Entry = null, string? Place = null, Cause? Cause = null, Consequence? Consequence = null, string? Words = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "explanation";

    internal static ExplanationBody Read(BodyReader r) =>
        new(r.Text("entry"), r.Text("place"), r.Choice<Cause>("cause"), r.Choice<Consequence>("consequence"), r.Text("words"));

    internal override void Write(BodyWriter w)
    {
        w.Text("entry", Entry);
        w.Text("place", Place);
        w.Choice("cause", Cause);
        w.Choice("consequence", Consequence);
        w.Text("words", Words);
    }
}
