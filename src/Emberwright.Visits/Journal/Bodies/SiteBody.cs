using Emberwright.Stove.Quantities;

namespace Emberwright.Visits.Journal;

/// <summary>Where the stove stands and what the day is like; anything unknown is left out.</summary>
/// <param name="Altitude">Height above sea level.</param>
/// <param name="Outdoor">Outdoor air temperature.</param>
/// <param name="Room">Room air temperature.</param>
/// <param name="Wind">Wind speed.</param>
/// <param name="HousePressure">House against outdoors.</param>
/// <param name="Supply">Mains voltage.</param>
/// <param name="OutsideAir">True when combustion air comes through an outside-air kit.</param>
/// <param name="House">The house in words.</param>
/// <param name="Vent">The vent run.</param>
public sealed record SiteBody(
    Quantity? Altitude = null, Quantity? Outdoor = null, Quantity? Room = null, Quantity? Wind = null,
    Quantity? HousePressure = null, Quantity? Supply = null, bool? OutsideAir = null, string? House = null,
    VentBody? Vent = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "site";

    internal static SiteBody Read(BodyReader r) => new(
        r.Quantity("altitude", Dimension.Length), r.Quantity("outdoor", Dimension.Temperature), r.Quantity("room", Dimension.Temperature),
        r.Quantity("wind", Dimension.Velocity), r.Quantity("housePressure", Dimension.Pressure), r.Quantity("supply", Dimension.Voltage),
        r.Flag("outsideAir"), r.Text("house"), r.Object("vent") is { } vent ? VentBody.Read(vent) : null);

    internal override void Write(BodyWriter w)
    {
        w.Quantity("altitude", Altitude);
        w.Quantity("outdoor", Outdoor);
        w.Quantity("room", Room);
        w.Quantity("wind", Wind);
        w.Quantity("housePressure", HousePressure);
        w.Quantity("supply", Supply);
        w.Flag("outsideAir", OutsideAir);
        w.Text("house", House);
        if (Vent is not null) w.Member("vent", Vent.WriteMembers);
    }
}

/// <summary>A vent run as it was entered. What is missing is taken from the pattern.</summary>
/// <param name="Diameter">Inside diameter.</param>
/// <param name="Horizontal">Horizontal length.</param>
/// <param name="Vertical">Rise.</param>
/// <param name="Elbows90">90° elbows.</param>
/// <param name="Elbows45">45° elbows.</param>
/// <param name="Tees">Tees.</param>
/// <param name="Terminal"><c>vertical-cap</c>, <c>horizontal-hood</c> or <c>open</c>.</param>
/// <param name="Lining"><c>rigid</c>, <c>flexible</c> or <c>masonry</c>.</param>
/// <param name="Insulated">True for an insulated run or one inside a warm chimney.</param>
public sealed record VentBody(
    Quantity? Diameter, Quantity? Horizontal, Quantity? Vertical, int? Elbows90 = null, int? Elbows45 = null,
    int? Tees = null, string? Terminal = null, string? Lining = null, bool? Insulated = null)
{
    internal static VentBody Read(BodyReader r) => new(
        r.Quantity("diameter", Dimension.Length), r.Quantity("horizontal", Dimension.Length), r.Quantity("vertical", Dimension.Length),
        r.Count("elbows90"), r.Count("elbows45"), r.Count("tees"), r.Text("terminal"), r.Text("lining"), r.Flag("insulated"));

    internal void WriteMembers(BodyWriter w)
    {
        w.Quantity("diameter", Diameter);
        w.Quantity("horizontal", Horizontal);
        w.Quantity("vertical", Vertical);
        w.Number("elbows90", Elbows90);
        w.Number("elbows45", Elbows45);
        w.Number("tees", Tees);
        w.Text("terminal", Terminal);
        w.Text("lining", Lining);
        w.Flag("insulated", Insulated);
    }
}
