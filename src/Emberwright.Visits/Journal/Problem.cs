namespace Emberwright.Visits.Journal;

/// <summary>
/// What is wrong with one line of a visit file and how to mend it. It is not a fault of the stove.
/// The line itself is kept as it stands.
/// </summary>
/// <param name="Line">Line number in the file, from 1; 0 when it belongs to no line.</param>
/// <param name="Field">The field, as a path such as <c>body.vent.diameter</c>; empty for the whole line.</param>
/// <param name="Value">The value as written.</param>
/// <param name="Message">What is wrong with it.</param>
/// <param name="Remedy">What to write instead.</param>
public sealed record Problem(int Line, string Field, string Value, string Message, string Remedy)
{
    /// <summary>One sentence for a terminal or a screen.</summary>
    public override string ToString() =>
        $"Line {Line}{(Field.Length > 0 ? $", {Field}" : "")}: {Message} {Remedy}{(Value.Length > 0 ? $" (It says: {Value})" : "")}";
}
