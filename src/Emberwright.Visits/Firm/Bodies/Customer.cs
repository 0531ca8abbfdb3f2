using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>
/// A customer. Name, address, telephone and mail are the words themselves or a <see cref="Blob"/> reference to them,
/// so that a person can be erased; see <see cref="Erased"/>.
/// </summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="Address">Address.</param>
/// <param name="Phone">Telephone.</param>
/// <param name="Mail">Electronic mail.</param>
/// <param name="Access">How one gets in: keys, dogs, parking.</param>
/// <param name="FuelPerYear">Fuel the household burns in a year, such as 1.2 t.</param>
public sealed record Customer(
    string Id, string? Name = null, string? Address = null, string? Phone = null, string? Mail = null, string? Access = null,
    Stove.Quantities.Quantity? FuelPerYear = null) : RecordBody(Id)
{
    /// <inheritdoc/>
    public override string Kind => "customer";

    /// <inheritdoc/>
    public override string Title => Said(Name) ?? "No name yet";

    /// <summary>References to words kept as blobs.</summary>
    public IEnumerable<string> References => new[] { Name, Address, Phone, Mail }.OfType<string>().Where(Blob.IsReference);

    /// <summary>The same with references replaced by their words; words that were erased are null.</summary>
    /// <param name="words">Gives the words of a reference, null when they are gone.</param>
    public Customer With(Func<string, string?> words) => this with
    {
        Name = TextBlob.Resolve(Name, words),
        Address = TextBlob.Resolve(Address, words),
        Phone = TextBlob.Resolve(Phone, words),
        Mail = TextBlob.Resolve(Mail, words),
    };

    internal static Customer Read(BodyReader r) => new(
        ReadId(r), r.Text("name"), r.Text("address"), r.Text("phone"), r.Text("mail"), r.Text("access"),
        r.Quantity("fuelPerYear", Stove.Quantities.Dimension.Mass));

    internal override EntryBody WithPersonal(Func<string, string> each) =>
        this with { Name = Each(Name, each), Address = Each(Address, each), Phone = Each(Phone, each), Mail = Each(Mail, each) };

    private protected override void WriteMembers(BodyWriter w)
    {
        w.Text("name", Name);
        w.Text("address", Address);
        w.Text("phone", Phone);
        w.Text("mail", Mail);
        w.Text("access", Access);
        w.Quantity("fuelPerYear", FuelPerYear);
    }
}
