using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>What kind of instrument it is, and so what is read with it.</summary>
public enum Tool
{
    /// <summary>Pressure gauge.</summary>
    Gauge,
    /// <summary>Meter for volts, ohms and amperes.</summary>
    Meter,
    /// <summary>Flue-gas analyser.</summary>
    Analyser,
    /// <summary>Meter for carbon monoxide in the room.</summary>
    CoMeter,
    /// <summary>Thermometer.</summary>
    Thermometer,
}

/// <summary>An instrument the firm owns. What was brought to one visit is another thing and stands in the visit.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">The name readings use.</param>
/// <param name="Serial">Its serial number.</param>
/// <param name="Measures">What it measures, in words.</param>
/// <param name="CalibratedOn">When it was calibrated last.</param>
/// <param name="CalibratedUntil">Until when that holds.</param>
/// <param name="Tool">Its kind: readings of that kind are put down to it by themselves.</param>
public sealed record Instrument(
    string Id, string? Name = null, string? Serial = null, string? Measures = null, DateOnly? CalibratedOn = null, DateOnly? CalibratedUntil = null, Tool? Tool = null)
    : RecordBody(Id)
{
    /// <inheritdoc/>
    public override string Kind => "instrument";

    /// <inheritdoc/>
    public override string Title => Said(Name) ?? "No name yet";

    /// <summary>True when its calibration has run out by a day; one that is not known has not.</summary>
    public bool IsOverdue(DateOnly day) => CalibratedUntil < day;

    internal static Instrument Read(BodyReader r) => new(
        ReadId(r), r.Text("name"), r.Text("serial"), r.Text("measures"), r.Date("calibratedOn"), r.Date("calibratedUntil"), r.Choice<Tool>("tool"));

    private protected override void WriteMembers(BodyWriter w)
    {
        w.Text("name", Name);
        w.Text("serial", Serial);
        w.Text("measures", Measures);
        w.Date("calibratedOn", CalibratedOn);
        w.Date("calibratedUntil", CalibratedUntil);
        w.Choice("tool", Tool);
    }
}
