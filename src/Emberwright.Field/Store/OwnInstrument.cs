using Emberwright.Stove;

namespace Emberwright.Field.Store;

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

/// <summary>An instrument that travels with this phone, named once and then taken for every reading of its kind.</summary>
/// <param name="Tool">Its kind.</param>
/// <param name="Name">The name that readings carry.</param>
/// <param name="Until">Until when its calibration holds; null when not known.</param>
public sealed record OwnInstrument(Tool Tool, string Name, DateOnly? Until)
{
    /// <summary>The kind with which something is read.</summary>
    public static Tool? For(Observable what) => (what.Measure, what.Place) switch
    {
        (Measure.Pressure, _) => Store.Tool.Gauge,
        (Measure.Voltage or Measure.Resistance or Measure.Current, _) => Store.Tool.Meter,
        (Measure.CarbonMonoxide, Places.Room or Places.WarmAir) => Store.Tool.CoMeter,
        (Measure.Oxygen or Measure.CarbonDioxide or Measure.CarbonMonoxide, _) => Store.Tool.Analyser,
        (Measure.Temperature, Places.Collar) => Store.Tool.Analyser,
        (Measure.Temperature, _) => Store.Tool.Thermometer,
        (Measure.Capacitance, _) => Store.Tool.Meter,
        (Measure.Speed or Measure.Feed or Measure.Duration or Measure.Flow, _) => null,
    };
}
