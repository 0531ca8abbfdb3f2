using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>A part by its number. How many lie on the van is counted apart: see <see cref="Counted"/>.</summary>
/// <param name="Id">Id; the part's number where it has one.</param>
/// <param name="Name">What it is.</param>
/// <param name="Number">Its number.</param>
/// <param name="SupersededBy">The number that took its place.</param>
/// <param name="Equivalents">Numbers of parts that do the same: rotation, shaft, speed, disc temperature alike.</param>
/// <param name="Price">Price, in the firm's currency; 0…100,000.</param>
/// <param name="Keep">How many should lie on the van; fewer puts it on the reorder list.</param>
/// <param name="Tag">Return or warranty tag that stands open on one of them.</param>
/// <param name="Fits">What it fits, in words.</param>
public sealed record Part(
    string Id, string? Name = null, string? Number = null, string? SupersededBy = null, IReadOnlyList<string>? Equivalents = null,
    double? Price = null, int? Keep = null, string? Tag = null, string? Fits = null) : RecordBody(Id)
{
    /// <inheritdoc/>
    public override string Kind => "part";

    /// <inheritdoc/>
    public override string Title => string.Join(' ', new[] { Said(Name), Said(Number) }.OfType<string>()) is { Length: > 0 } title ? title : "No name yet";

    /// <inheritdoc/>
    public bool Equals(Part? other) => other is not null
        && (Id, Name, Number, SupersededBy, Price, Keep, Tag, Fits) == (other.Id, other.Name, other.Number, other.SupersededBy, other.Price, other.Keep, other.Tag, other.Fits)
        && Lists.Same(Equivalents, other.Equivalents);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Name, Number, Price, Keep);

    internal static Part Read(BodyReader r) => new(
        ReadId(r), r.Text("name"), r.Text("number"), r.Text("supersededBy"), r.Has("equivalents") ? r.Texts("equivalents") : null,
        r.Number("price", 0, 100_000), r.Count("keep"), r.Text("tag"), r.Text("fits"));

    private protected override void WriteMembers(BodyWriter w)
    {
        w.Text("name", Name);
        w.Text("number", Number);
        w.Text("supersededBy", SupersededBy);
        if (Equivalents is not null) w.TextList("equivalents", Equivalents);
        w.Number("price", Price);
        w.Number("keep", Keep);
        w.Text("tag", Tag);
        w.Text("fits", Fits);
    }
}

/// <summary>How many of a part lay on the van when somebody counted. What visits fit afterwards is taken off.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Count">How many.</param>
public sealed record Counted(string Part, int Count) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "counted";

    internal static Counted Read(BodyReader r)
    {
        var part = r.Required("part", "Name the part by its id.");
        if (r.Count("count") is { } count) return new(part, count);
        r.Refuse("count", "", "It is not said how many there are.", "Add \"count\": a whole number, 0 or more.");
        return new(part, 0);
    }

    internal override void Write(BodyWriter writer)
    {
        writer.Text("part", Part);
        writer.Number("count", Count);
    }
}
