using Emberwright.Field.Store;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;

namespace Emberwright.Field;

/// <summary>Writes values in the units this phone is set to, to the resolution of a technician's instruments.</summary>
public sealed class Readout(Preferences preferences)
{
    /// <summary>The unit a measure is shown and typed in, and the instrument's step in it.</summary>
    public (Unit Unit, double Step) Shown(Measure measure) => Shown(measure, preferences.Units);

    /// <summary>The unit of the other system when it differs, for a meter that stands on it; null when both are the same.</summary>
    public Unit? Other(Measure measure)
    {
        var other = Shown(measure, preferences.Units == UnitSystem.Us ? UnitSystem.Si : UnitSystem.Us).Unit;
        return other == Shown(measure).Unit ? null : other;
    }

    /// <summary>Value and unit.</summary>
    /// <param name="value">In the measure's own unit.</param>
    /// <param name="measure">What it is.</param>
    public string Text(double value, Measure measure) => $"{Number(value, measure)} {Shown(measure).Unit.Symbol}";

    /// <summary>A reading as it was typed where its unit is the one shown, and converted where it is not.</summary>
    public string Text(ReadingBody reading) => reading.Value.Unit == Shown(reading.Measure).Unit
        ? Local.Signs(reading.Written.Replace('-', QuantityFormat.Minus))
        : Text(reading.Si, reading.Measure);

    /// <summary>The number alone.</summary>
    /// <param name="value">In the measure's own unit.</param>
    /// <param name="measure">What it is.</param>
    public string Number(double value, Measure measure) => Local.Signs(QuantityFormat.Number(In(value, measure), Shown(measure).Step));

    /// <summary>A range, "−26…−18".</summary>
    /// <param name="low">Lower end in the measure's own unit.</param>
    /// <param name="high">Upper end.</param>
    /// <param name="measure">What it is.</param>
    public string Range(double low, double high, Measure measure) => $"{Number(low, measure)}…{Number(high, measure)}";

    /// <summary>The same value in the other system's unit, or null when both systems share it.</summary>
    /// <param name="value">In the measure's own unit.</param>
    /// <param name="measure">What it is.</param>
    public string? Twin(double value, Measure measure)
    {
        if (Other(measure) is not { } other) return null;
        var step = Shown(measure, preferences.Units == UnitSystem.Us ? UnitSystem.Si : UnitSystem.Us).Step;
        return $"{Local.Signs(QuantityFormat.Number(other.FromBase(MeasureUnits.Of(measure).ToBase(value)), step))} {other.Symbol}";
    }

    /// <summary>The number in the unit shown.</summary>
    /// <param name="value">In the measure's own unit.</param>
    /// <param name="measure">What it is.</param>
    public double In(double value, Measure measure) => Shown(measure).Unit.FromBase(MeasureUnits.Of(measure).ToBase(value));

    /// <summary>A number typed in the unit shown, in the measure's own unit.</summary>
    /// <param name="typed">In the unit shown.</param>
    /// <param name="measure">What it is.</param>
    public double Own(double typed, Measure measure) => MeasureUnits.Of(measure).FromBase(Shown(measure).Unit.ToBase(typed));

    // A field manometer resolves 0.001 inWC, a tenth of the ordinary gauge's step (common practice, no source).
    private static (Unit Unit, double Step) Shown(Measure measure, UnitSystem system) =>
        measure == Measure.Pressure && system == UnitSystem.Us ? (Units.InchOfWater, 0.001) : MeasureUnits.Shown(measure, system);
}
