using System.Globalization;

namespace Emberwright.Stove.Fire;

/// <summary>
/// What stands out in a flue gas measurement of a pellet stove, most urgent first. The bounds are common practice, no source;
/// the appliance's own figures take precedence.
/// </summary>
internal static class FlueNotes
{
    /// <summary>Sentences; empty when nothing stands out.</summary>
    public static IReadOnlyList<string> Of(FlueOptions o, IReadOnlyList<Figure> figures)
    {
        var notes = new List<string>();
        var oxygen = Get("oxygen-dry").Value;
        if (o.FlueC > 260)
            Note($"Flue gas at {o.FlueC:0} °C is above 260 °C: stop the stove and find out why; look at clearances to combustibles before it runs again.");
        if (o.CarbonMonoxidePpm > 1500)
            Note($"CO of {o.CarbonMonoxidePpm:0} ppm is more than a pellet fire in order gives: measure CO in the room now.");
        if (oxygen < 8)
            Note($"O2 of {oxygen:0.0} % is low: the fire gets little air for its fuel. Look at intake, burn pot, passages, vent and feed.");
        if (oxygen > 17)
            Note($"O2 of {oxygen:0.0} % is high: little fuel, much air, or air leaking in before the probe.");
        var dewPoint = Get("dew-point").Value;
        if (o.FlueC < dewPoint)
            Note($"Flue gas is below its water dew point of {dewPoint:0} °C: it runs wet here.");
        else if (o.FlueC < dewPoint + 15)
            Note($"Flue gas is only {o.FlueC - dewPoint:0} K above its water dew point: it will run wet on the way out.");
        if (o.OxygenPercent is not null && o.CarbonDioxidePercent is { } read)
        {
            var byBalance = Get(o.Basis == Basis.Dry ? "carbon-dioxide-dry" : "carbon-dioxide-wet");
            var allowed = 3 * Math.Sqrt(Math.Pow(o.Uncertainty.CarbonDioxidePercent, 2) + Math.Pow(byBalance.StandardUncertainty, 2));
            if (Math.Abs(read - byBalance.Value) > allowed)
                Note($"CO2 read ({read:0.0} %) and CO2 by balance from O2 ({byBalance.Value:0.0} %) disagree: check zero, leak at the probe, and whether the analyser computes CO2 for another fuel.");
        }
        var air = Get("air-ratio");
        if (air.StandardUncertainty > 0.1 * air.Value)
            Note($"λ is known to ±{air.StandardUncertainty:0.0} only; so near to fresh air a small error in O2 counts much.");
        return notes;

        Figure Get(string id) => figures.First(figure => figure.Id == id);
        void Note(FormattableString text) => notes.Add(text.ToString(CultureInfo.InvariantCulture));
    }
}
