namespace Emberwright.Stove.Quantities;

/// <summary>
/// A unit people write: base value = (written value − <see cref="Zero"/>) × <see cref="Scale"/>.
/// It is not a dimension: inWC and Pa are two units of pressure.
/// </summary>
/// <param name="Symbol">Symbol as printed, e.g. <c>inWC</c>, <c>°F</c>.</param>
/// <param name="Dimension">The kind of quantity it measures.</param>
/// <param name="Scale">Base units in one of this unit; above 0.</param>
/// <param name="Zero">What this unit shows where the base unit shows 0 (32 for °F); 0 for all but temperatures.</param>
public sealed record Unit(string Symbol, Dimension Dimension, double Scale, double Zero = 0)
{
    /// <summary>Turns a value written in this unit into the dimension's base unit.</summary>
    public double ToBase(double written) => (written - Zero) * Scale;

    /// <summary>Turns a value in the dimension's base unit into this unit.</summary>
    public double FromBase(double baseValue) => baseValue / Scale + Zero;

    /// <summary>The symbol.</summary>
    public override string ToString() => Symbol;
}
