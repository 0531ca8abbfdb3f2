using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>The firm itself.</summary>
/// <param name="Id">Id; <c>firm</c> where there is one.</param>
/// <param name="Name">Its name.</param>
/// <param name="Address">Its address.</param>
/// <param name="Phone">Its telephone.</param>
/// <param name="Currency">What prices are in, such as USD.</param>
/// <param name="PerMinute">What one minute of work costs, in that currency; 0…100.</param>
/// <param name="Opening">Words every letter begins with below the name; an own sentence of the firm.</param>
public sealed record FirmDetails(
    string Id = FirmDetails.Only, string? Name = null, string? Address = null, string? Phone = null, string? Currency = null,
    double? PerMinute = null, string? Opening = null) : RecordBody(Id)
{
    /// <summary>Id of the one record there is.</summary>
    public const string Only = "firm";

    /// <inheritdoc/>
    public override string Kind => "firm";

    /// <inheritdoc/>
    public override string Title => Said(Name) ?? "The firm";

    internal static FirmDetails Read(BodyReader r) => new(
        ReadId(r), r.Text("name"), r.Text("address"), r.Text("phone"), r.Text("currency"), r.Number("perMinute", 0, 100), r.Text("opening"));

    private protected override void WriteMembers(BodyWriter w)
    {
        w.Text("name", Name);
        w.Text("address", Address);
        w.Text("phone", Phone);
        w.Text("currency", Currency);
        w.Number("perMinute", PerMinute);
        w.Text("opening", Opening);
    }
}
