namespace Emberwright.Visits.Journal;

/// <summary>Whose stove it is. Each member is the words themselves or a <see cref="Blob"/> reference to them.</summary>
/// <param name="Name">Name.</param>
/// <param name="Address">Address.</param>
/// <param name="Phone">Telephone.</param>
public sealed record CustomerBody(string? Name = null, string? Address = null, string? Phone = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "customer";

    internal static CustomerBody Read(BodyReader r) => new(r.Text("name"), r.Text("address"), r.Text("phone"));

    internal override EntryBody WithPersonal(Func<string, string> each) => new CustomerBody(Each(Name, each), Each(Address, each), Each(Phone, each));

    internal override void Write(BodyWriter w)
    {
        w.Text("name", Name);
        w.Text("address", Address);
        w.Text("phone", Phone);
    }
}
