namespace Emberwright.Visits.Journal;

/// <summary>
/// Says that a person's words were erased from this visit on request, and what was kept under which reference. Whoever
/// takes this entry in erases the same. What lines stated themselves is replaced in them; see <see cref="Redaction"/>.
/// </summary>
/// <param name="Blobs">References to what was erased.</param>
/// <param name="Asked">Who asked and how, in words.</param>
public sealed record ErasedBody(IReadOnlyList<string> Blobs, string? Asked = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "erased";

    /// <inheritdoc/>
    public bool Equals(ErasedBody? other) => other is not null && Asked == other.Asked && Blobs.SequenceEqual(other.Blobs);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Asked, Blobs.Count);

    internal static ErasedBody Read(BodyReader r)
    {
        var blobs = r.Texts("blobs");
        foreach (var blob in blobs.Where(b => !Blob.IsReference(b)))
            r.Report<string>("blobs", blob, "This does not name bytes.", "Write sha256: and 64 lower-case hexadecimal digits.");
        return new([.. blobs.Where(Blob.IsReference)], r.Text("asked"));
    }

    internal override void Write(BodyWriter w)
    {
        w.Texts("blobs", Blobs);
        w.Text("asked", Asked);
    }
}
