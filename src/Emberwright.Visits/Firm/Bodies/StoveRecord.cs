using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>A paper or picture that belongs to a stove: manual, diagram, permit, another trade's certificate.</summary>
/// <param name="What">What it is.</param>
/// <param name="File"><see cref="Blob"/> reference to it, when it is kept here.</param>
/// <param name="Number">Its number.</param>
/// <param name="By">Who issued it.</param>
/// <param name="On">When.</param>
/// <param name="Until">Until when it holds.</param>
public sealed record StovePaper(string What, string? File = null, string? Number = null, string? By = null, DateOnly? On = null, DateOnly? Until = null)
{
    internal static StovePaper Read(BodyReader r)
    {
        var file = r.Text("file");
        if (file is not null && !Blob.IsReference(file))
            file = r.Report<string>("file", file, "This does not name bytes.", "Write sha256: and 64 lower-case hexadecimal digits.");
        return new(r.Required("what", "Say what it is: manual, permit, certificate."), file, r.Text("number"), r.Text("by"), r.Date("on"), r.Date("until"));
    }

    internal void Write(BodyWriter w)
    {
        w.Text("what", What);
        w.Text("file", File);
        w.Text("number", Number);
        w.Text("by", By);
        w.Date("on", On);
        w.Date("until", Until);
    }
}

/// <summary>A distance to something that burns, as measured and as the listing asks.</summary>
/// <param name="From">From which side of the stove or vent to what.</param>
/// <param name="Measured">As measured.</param>
/// <param name="Required">As the label or the listing asks.</param>
public sealed record Clearance(string From, Quantity Measured, Quantity? Required = null)
{
    /// <summary>True when it is smaller than asked for.</summary>
    public bool IsShort => Required is { } required && Measured.Si < required.Si;

    internal static Clearance Read(BodyReader r)
    {
        var measured = r.Quantity("measured", Dimension.Length);
        if (measured is null) r.Refuse("measured", "", "The distance is missing.", "Write it with its unit, such as 3 in.");
        return new(r.Required("from", "Say between what it was measured."), measured ?? default, r.Quantity("required", Dimension.Length));
    }

    internal void Write(BodyWriter w)
    {
        w.Text("from", From);
        w.Quantity("measured", Measured);
        w.Quantity("required", Required);
    }
}

/// <summary>
/// What the firm keeps of a stove beside its visits. A stove known only from visits has no record; both are joined by
/// maker and serial number or by a <see cref="Joined"/> entry.
/// </summary>
/// <param name="Id">Id.</param>
/// <param name="Customer">Id of the customer's record.</param>
/// <param name="Pattern">Pattern id.</param>
/// <param name="Maker">Maker.</param>
/// <param name="Model">Model.</param>
/// <param name="Serial">Serial number.</param>
/// <param name="Label">Further words of the rating label.</param>
/// <param name="Place">Where in the house it stands.</param>
/// <param name="VentClass">Class of the vent, as its label says.</param>
/// <param name="Clearances">Distances measured.</param>
/// <param name="Papers">Documents, permits, certificates.</param>
public sealed record StoveRecord(
    string Id, string? Customer = null, string? Pattern = null, string? Maker = null, string? Model = null, string? Serial = null,
    string? Label = null, string? Place = null, string? VentClass = null, IReadOnlyList<Clearance>? Clearances = null,
    IReadOnlyList<StovePaper>? Papers = null) : RecordBody(Id)
{
    /// <inheritdoc/>
    public override string Kind => "stove";

    /// <inheritdoc/>
    public override string Title => string.Join(' ', new[] { Said(Maker), Said(Model) }.OfType<string>()) is { Length: > 0 } title ? title : "A stove";

    /// <inheritdoc/>
    public bool Equals(StoveRecord? other) => other is not null
        && (Id, Customer, Pattern, Maker, Model, Serial, Label) == (other.Id, other.Customer, other.Pattern, other.Maker, other.Model, other.Serial, other.Label)
        && (Place, VentClass) == (other.Place, other.VentClass)
        && Lists.Same(Clearances, other.Clearances) && Lists.Same(Papers, other.Papers);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Customer, Maker, Serial, Place);

    internal static StoveRecord Read(BodyReader r) => new(
        ReadId(r), r.Text("customer"), r.Text("pattern"), r.Text("maker"), r.Text("model"), r.Text("serial"), r.Text("label"), r.Text("place"),
        r.Text("ventClass"), r.Has("clearances") ? r.Objects("clearances", Clearance.Read) : null,
        r.Has("papers") ? r.Objects("papers", StovePaper.Read) : null);

    private protected override void WriteMembers(BodyWriter w)
    {
        w.Text("customer", Customer);
        w.Text("pattern", Pattern);
        w.Text("maker", Maker);
        w.Text("model", Model);
        w.Text("serial", Serial);
        w.Text("label", Label);
        w.Text("place", Place);
        w.Text("ventClass", VentClass);
        if (Clearances is not null) w.List("clearances", Clearances, (one, writer) => one.Write(writer));
        if (Papers is not null) w.List("papers", Papers, (one, writer) => one.Write(writer));
    }
}
