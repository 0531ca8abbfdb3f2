using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Visiting;

/// <summary>One thing that can be read, with what is healthy and what was read: a row of the table, and a slot to fill.</summary>
/// <param name="Observable">What.</param>
/// <param name="Band">Its healthy band today, if the model reaches it.</param>
/// <param name="Reading">Today's latest reading of this phase, if any.</param>
/// <param name="Verdict">How that reading stands to the band.</param>
/// <param name="LastLeft">Value as left at the last visit, in the measure's own unit.</param>
public sealed record ReadingRow(Observable Observable, Band? Band, Reading? Reading, Verdict? Verdict, double? LastLeft)
{
    private static readonly (Measure, string)[] Usual =
    [
        (Measure.Pressure, Places.Firebox), (Measure.Pressure, Places.BlowerInlet), (Measure.Pressure, Places.Collar),
        (Measure.Oxygen, Places.Flue), (Measure.CarbonMonoxide, Places.Flue), (Measure.Temperature, Places.Collar),
        (Measure.Temperature, Places.WarmAir), (Measure.CarbonMonoxide, Places.Room), (Measure.Voltage, Places.Supply),
    ];

    /// <summary>The rows of one condition and phase: what is usually read, in the order of work, then whatever else was read.</summary>
    public static IReadOnlyList<ReadingRow> Of(Visit visit, Beliefs? beliefs, Condition condition, Phase phase)
    {
        var read = visit.Readings.Where(r => r.Phase == phase && r.Body.Condition == condition).ToArray();
        var usual = Usual.Select(u => new Observable(u.Item1, u.Item2, condition)).Where(o => IsReadable(o, beliefs) || read.Any(r => r.Body.Observable == o));
        return [.. usual.Union(read.Select(r => r.Body.Observable)).Select(o => Row(visit, beliefs, o, read))];
    }

    /// <summary>The conditions in which anything was read in a phase, and the one to begin with.</summary>
    public static IReadOnlyList<Condition> Conditions(Visit visit, Phase phase) =>
        [.. visit.Readings.Where(r => r.Phase == phase && r.Body.Measure is not (Measure.Voltage or Measure.Resistance or Measure.Current)).Select(r => r.Body.Condition).Append(Condition.FanOnly).Distinct()];

    // Supply and CO in the room are read on every visit, whether or not the model has a band for them.
    private static bool IsReadable(Observable observable, Beliefs? beliefs) =>
        beliefs?.Bands.Any(band => band.Observable == observable) == true
        || observable is { Measure: Measure.CarbonMonoxide, Place: Places.Room }
        || observable is { Measure: Measure.Voltage, Place: Places.Supply, Condition.Fire: FireState.Cold };

    private static ReadingRow Row(Visit visit, Beliefs? beliefs, Observable observable, Reading[] read)
    {
        var reading = read.LastOrDefault(r => r.Body.Observable == observable);
        var comparison = reading is null ? null : beliefs?.Comparisons.FirstOrDefault(c => c.Evidence == reading.Id);
        return new(
            observable,
            comparison?.Band ?? beliefs?.Bands.FirstOrDefault(band => band.Observable == observable),
            reading,
            comparison?.Verdict,
            visit.Past?.LastAsLeft?.LastOrDefault(r => r.Observable == observable)?.Si);
    }

    /// <summary>The address of the page where this reading is entered.</summary>
    public static string Address(string visit, Observable observable, Phase phase) =>
        $"visit/{visit}/reading?what={MeasureUnits.Name(observable.Measure)}&at={Uri.EscapeDataString(observable.Place)}&state={Uri.EscapeDataString(ConditionText.Format(observable.Condition))}&phase={EnumWords.Of(phase)}";
}
