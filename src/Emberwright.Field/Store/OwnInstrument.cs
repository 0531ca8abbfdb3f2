using Emberwright.Stove;
using Emberwright.Visits.Firm;

namespace Emberwright.Field.Store;

/// <summary>
/// An instrument of the firm's book as an entry of a reading needs it: taken for every reading of its kind. It is not the
/// record, which is read only where the book is open.
/// </summary>
/// <param name="Tool">Its kind.</param>
/// <param name="Name">The name that readings carry.</param>
/// <param name="Until">Until when its calibration holds; null when not known.</param>
public sealed record OwnInstrument(Tool Tool, string Name, DateOnly? Until)
{
    /// <summary>The kind with which something is read.</summary>
    public static Tool? For(Observable what) => (what.Measure, what.Place) switch
    {
        (Measure.Pressure, _) => Emberwright.Visits.Firm.Tool.Gauge,
        (Measure.Voltage or Measure.Resistance or Measure.Current, _) => Emberwright.Visits.Firm.Tool.Meter,
        (Measure.CarbonMonoxide, Places.Room or Places.WarmAir) => Emberwright.Visits.Firm.Tool.CoMeter,
        (Measure.Oxygen or Measure.CarbonDioxide or Measure.CarbonMonoxide, _) => Emberwright.Visits.Firm.Tool.Analyser,
        (Measure.Temperature, Places.Collar) => Emberwright.Visits.Firm.Tool.Analyser,
        (Measure.Temperature, _) => Emberwright.Visits.Firm.Tool.Thermometer,
        (Measure.Capacitance, _) => Emberwright.Visits.Firm.Tool.Meter,
        (Measure.Speed or Measure.Feed or Measure.Duration or Measure.Flow, _) => null,
    };
}
