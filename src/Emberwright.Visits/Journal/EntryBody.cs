namespace Emberwright.Visits.Journal;

/// <summary>What one entry says. Each kind of entry has one body type; a body never changes.</summary>
public abstract record EntryBody
{
    /// <summary>The kind as written in files.</summary>
    public abstract string Kind { get; }

    internal abstract void Write(BodyWriter writer);

    /// <summary>The same with each of a person's words replaced; a body without such words is itself.</summary>
    internal virtual EntryBody WithPersonal(Func<string, string> each) => this;

    private protected static string? Each(string? words, Func<string, string> each) => string.IsNullOrEmpty(words) ? words : each(words);
}

/// <summary>The body of a kind this version does not know. It is kept and written back untouched.</summary>
/// <param name="UnknownKind">The kind as written.</param>
/// <param name="Json">The body as written.</param>
public sealed record UnknownBody(string UnknownKind, string Json) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => UnknownKind;

    internal override void Write(BodyWriter writer) => writer.Members(Json);
}

/// <summary>
/// A line, or the body of one, that could not be read; the line is kept as it stands. It is not an unknown kind:
/// something in it is wrong, and <see cref="Problems"/> says what.
/// </summary>
/// <param name="StatedKind">The kind as written; empty when the line is not JSON.</param>
/// <param name="Problems">What is wrong.</param>
public sealed record UnreadBody(string StatedKind, IReadOnlyList<Problem> Problems) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => StatedKind;

    internal override void Write(BodyWriter writer) =>
        throw new InvalidOperationException("A line that could not be read is written back as it stands, never anew.");
}
