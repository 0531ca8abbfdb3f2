using Emberwright.Reports.Wording;
using Emberwright.Stove;

namespace Emberwright.Reports.FromVisit;

/// <summary>Names of places and measures as a technician says them.</summary>
public static class ObservableName
{
    /// <summary>"Firebox", "Oxygen, dry", "Exhaust": enough to tell readings of one condition apart.</summary>
    public static string Of(Observable observable) => (observable.Measure, observable.Place) switch
    {
        (Measure.Oxygen, Places.Flue) => Say.Of("reading.oxygen-dry"),
        (Measure.CarbonDioxide, Places.Flue) => Say.Of("reading.carbon-dioxide-dry"),
        (Measure.CarbonMonoxide, Places.Flue) => Say.Of("reading.carbon-monoxide-flue"),
        (Measure.CarbonMonoxide, Places.Room) => Say.Of("reading.carbon-monoxide-room"),
        (Measure.Temperature, Places.Collar) => Say.Of("reading.exhaust"),
        (Measure.Temperature, Places.WarmAir) => Say.Of("reading.warm-air"),
        (Measure.Temperature, Places.Room) => Say.Of("reading.room"),
        (Measure.Voltage, Places.Supply) => Say.Of("reading.supply"),
        (Measure.Pressure, Places.Collar) => Say.Of("reading.vent-collar"),
        (Measure.Pressure, Places.House) => Say.Of("reading.house-against-outdoors"),
        (Measure.Voltage, var place) => Say.Of("reading.volts", Words(place)),
        (Measure.Resistance, var place) => Say.Of("reading.ohms", Words(place)),
        (Measure.Current, var place) => Say.Of("reading.current", Words(place)),
        (Measure.Capacitance, var place) => Say.Of("reading.capacitance", Words(place)),
        (_, var place) => Capital(Words(place)),
    };

    /// <summary>The same word with a capital first letter.</summary>
    public static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    private static string Words(string place) => Say.Term(place.Replace('-', ' '));
}
