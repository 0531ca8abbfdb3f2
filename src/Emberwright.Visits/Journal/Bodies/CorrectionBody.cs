namespace Emberwright.Visits.Journal;

/// <summary>
/// Puts another body in the place of an earlier entry's, or withdraws that entry. The earlier entry stays in the
/// journal. Withdrawing a correction restores what it corrected.
/// </summary>
/// <param name="Target">Id of the entry corrected.</param>
/// <param name="Replacement">What it should have said; null withdraws it.</param>
/// <param name="Reason">Why.</param>
public sealed record CorrectionBody(string Target, EntryBody? Replacement, string? Reason = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "correction";

    internal static CorrectionBody Read(BodyReader r) => Read(r, EntryKinds.Read);

    internal static CorrectionBody Read(BodyReader r, Func<string, BodyReader, string, EntryBody> readBody)
    {
        var reason = r.Text("reason");
        if (r.Text("withdraws") is { Length: > 0 } withdrawn) return new(withdrawn, null, reason);
        var target = r.Required("replaces", "Name the entry by its id, as \"replaces\" or \"withdraws\".");
        var kind = r.Required("kind", "Name the kind of the new body, such as reading.");
        if (r.Object("body") is { } body)
        {
            var replacement = readBody(kind, body, r.RawObject("body")!);
            if (!body.Unusable) return new(target, replacement, reason);
        }

        r.Refuse("body", "", "The corrected entry has no usable body.", "Write the whole body as it should have been.");
        return new(target, null, reason);
    }

    internal override EntryBody WithPersonal(Func<string, string> each) => Replacement is null ? this : this with { Replacement = Replacement.WithPersonal(each) };

    internal override void Write(BodyWriter w)
    {
        w.Text(Replacement is null ? "withdraws" : "replaces", Target);
        if (Replacement is not null)
        {
            w.Text("kind", Replacement.Kind);
            w.Member("body", Replacement.Write);
        }

        w.Text("reason", Reason);
    }
}
