using Emberwright.Stove;
using Emberwright.Stove.Quantities;

namespace Emberwright.Cli;

/// <summary>A measure in the unit the user asked for.</summary>
internal readonly struct Shown(Measure measure, UnitSystem units)
{
    private readonly Unit own = MeasureUnits.Of(measure);
    private readonly (Unit Unit, double Step) shown = MeasureUnits.Shown(measure, units);

    /// <summary>The unit as visit files write it.</summary>
    public string Symbol => shown.Unit.Symbol.Replace("°", "deg").Replace("Ω", "ohm").Replace("³", "3");

    /// <summary>A value of the measure's own unit in the unit shown, to a thousandth of the instrument's step.</summary>
    public double Number(double value)
    {
        var converted = shown.Unit.FromBase(own.ToBase(value));
        var grid = shown.Step / 1000;
        return Math.Round(Math.Round(converted / grid) * grid, 8);
    }

    /// <summary>A value in words: number to the instrument's resolution and unit.</summary>
    public string Text(double value) => QuantityFormat.Format(value, measure, units);

    /// <summary>The number alone, to the instrument's resolution.</summary>
    public string NumberText(double value) => QuantityFormat.Number(shown.Unit.FromBase(own.ToBase(value)), shown.Step);
}
