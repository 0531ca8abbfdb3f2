using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>What somebody is qualified for.</summary>
/// <param name="What">The qualification.</param>
/// <param name="Number">Its number.</param>
/// <param name="Until">Until when it holds; null when it does not end.</param>
public sealed record Qualification(string What, string? Number = null, DateOnly? Until = null)
{
    /// <summary>True when it has run out by a day.</summary>
    public bool IsOver(DateOnly day) => Until < day;

    internal static Qualification Read(BodyReader r) => new(r.Required("what", "Name the qualification."), r.Text("number"), r.Date("until"));

    internal void Write(BodyWriter w)
    {
        w.Text("what", What);
        w.Text("number", Number);
        w.Date("until", Until);
    }
}

/// <summary>Somebody who works for the firm.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name as it stands under entries.</param>
/// <param name="Phone">Telephone.</param>
/// <param name="Qualifications">What they are qualified for.</param>
public sealed record Person(string Id, string? Name = null, string? Phone = null, IReadOnlyList<Qualification>? Qualifications = null) : RecordBody(Id)
{
    /// <inheritdoc/>
    public override string Kind => "person";

    /// <inheritdoc/>
    public override string Title => Said(Name) ?? "No name yet";

    /// <inheritdoc/>
    public bool Equals(Person? other) => other is not null && (Id, Name, Phone) == (other.Id, other.Name, other.Phone) && Lists.Same(Qualifications, other.Qualifications);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Name, Phone);

    internal static Person Read(BodyReader r) =>
        new(ReadId(r), r.Text("name"), r.Text("phone"), r.Has("qualifications") ? r.Objects("qualifications", Qualification.Read) : null);

    private protected override void WriteMembers(BodyWriter w)
    {
        w.Text("name", Name);
        w.Text("phone", Phone);
        if (Qualifications is not null) w.List("qualifications", Qualifications, (one, writer) => one.Write(writer));
    }
}
