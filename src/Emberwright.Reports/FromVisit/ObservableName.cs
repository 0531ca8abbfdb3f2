using Emberwright.Stove;

namespace Emberwright.Reports.FromVisit;

/// <summary>Names of places and measures as a technician says them.</summary>
public static class ObservableName
{
    /// <summary>"Firebox", "Oxygen, dry", "Exhaust": enough to tell readings of one condition apart.</summary>
    public static string Of(Observable observable) => (observable.Measure, observable.Place) switch
    {
        (Measure.Oxygen, Places.Flue) => "Oxygen, dry",
        (Measure.CarbonDioxide, Places.Flue) => "Carbon dioxide, dry",
        (Measure.CarbonMonoxide, Places.Flue) => "Carbon monoxide, flue",
        (Measure.CarbonMonoxide, Places.Room) => "Carbon monoxide, room",
        (Measure.Temperature, Places.Collar) => "Exhaust",
        (Measure.Temperature, Places.WarmAir) => "Warm air",
        (Measure.Temperature, Places.Room) => "Room",
        (Measure.Voltage, Places.Supply) => "Supply",
        (Measure.Pressure, Places.Collar) => "Vent collar",
        (Measure.Pressure, Places.House) => "House against outdoors",
        (Measure.Voltage, var place) => $"Volts, {Words(place)}",
        (Measure.Resistance, var place) => $"Ohms, {Words(place)}",
        (Measure.Current, var place) => $"Current, {Words(place)}",
        (Measure.Capacitance, var place) => $"Capacitance, {Words(place)}",
        (_, var place) => Capital(Words(place)),
    };

    /// <summary>The same word with a capital first letter.</summary>
    public static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    private static string Words(string place) => place.Replace('-', ' ');
}
