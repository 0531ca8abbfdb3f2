using Emberwright.Stove;

namespace Emberwright.Visits.Journal;

/// <summary>What the customer complains of, in the customer's words.</summary>
/// <param name="Words">The words.</param>
/// <param name="Sign">Sign id, when the words were matched to one.</param>
/// <param name="Outcome">Outcome id of that sign.</param>
public sealed record ComplaintBody(string Words, string? Sign = null, string? Outcome = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "complaint";

    internal static ComplaintBody Read(BodyReader r) =>
        new(r.Required("words", "Write what the customer says."), r.Text("sign"), r.Text("outcome"));

    internal override void Write(BodyWriter w)
    {
        w.Text("words", Words);
        w.Text("sign", Sign);
        w.Text("outcome", Outcome);
    }
}

/// <summary>An answer to a question: the id of a sign with its outcome, or free words.</summary>
/// <param name="Question">Sign id, or the question in words.</param>
/// <param name="Outcome">Outcome id, or the answer in words.</param>
/// <param name="Words">The answer in the customer's own words, beside an outcome id.</param>
public sealed record AnswerBody(string Question, string Outcome, string? Words = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "answer";

    internal static AnswerBody Read(BodyReader r) =>
        new(r.Required("question", "Write the question, or its id."), r.Required("outcome", "Write the answer, or its id."), r.Text("words"));

    internal override void Write(BodyWriter w)
    {
        w.Text("question", Question);
        w.Text("outcome", Outcome);
        w.Text("words", Words);
    }
}

/// <summary>Something seen, heard, smelled or felt: a sign with its outcome, or free words.</summary>
/// <param name="Sign">Sign id, or what was looked at in words.</param>
/// <param name="Outcome">Outcome id, or what was found in words.</param>
/// <param name="Area">Where.</param>
/// <param name="Words">Further words.</param>
public sealed record ObservationBody(string Sign, string Outcome, Area? Area = null, string? Words = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "observation";

    internal static ObservationBody Read(BodyReader r) => new(
        r.Required("sign", "Write what was looked at, or its id."), r.Required("outcome", "Write what was found, or its id."),
        r.Choice<Area>("area"), r.Text("words"));

    internal override void Write(BodyWriter w)
    {
        w.Text("sign", Sign);
        w.Text("outcome", Outcome);
        w.Choice("area", Area);
        w.Text("words", Words);
    }
}

/// <summary>Anything worth keeping that has no kind of its own.</summary>
/// <param name="Words">The words.</param>
/// <param name="Area">Where, if anywhere.</param>
public sealed record NoteBody(string Words, Area? Area = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "note";

    internal static NoteBody Read(BodyReader r) => new(r.Required("words", "Write the note."), r.Choice<Area>("area"));

    internal override void Write(BodyWriter w)
    {
        w.Text("words", Words);
        w.Choice("area", Area);
    }
}
