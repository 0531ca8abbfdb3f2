namespace Emberwright.Stove.Patterns;

/// <summary>Where a number the tool computes with comes from.</summary>
public enum OriginKind
{
    /// <summary>Read on this appliance with an instrument.</summary>
    Measured,
    /// <summary>Typed in by the technician.</summary>
    Entered,
    /// <summary>From the card of this make and model.</summary>
    Card,
    /// <summary>From the pattern; any stove of the family.</summary>
    Pattern,
    /// <summary>Computed from others.</summary>
    Derived,
}

/// <summary>The kind of origin and the source in words.</summary>
/// <param name="Kind">Measured, entered, card, pattern or derived.</param>
/// <param name="Source">The source, e.g. a standard, "common practice, no source" or "from memory, no source".</param>
public sealed record Origin(OriginKind Kind, string Source)
{
    /// <summary>A pattern's number remembered as plausible, without a source.</summary>
    public static Origin Memory { get; } = new(OriginKind.Pattern, "from memory, no source");

    /// <summary>What is usual on stoves of a family, remembered: any one make may differ.</summary>
    public static Origin Typical { get; } = new(OriginKind.Pattern, "typical, from memory");

    /// <summary>From the card of this make and model.</summary>
    public static Origin OnCard { get; } = new(OriginKind.Card, "stove card");

    /// <summary>A pattern's number fitted so that the clean stove reads what such stoves read.</summary>
    public static Origin Fitted { get; } = new(OriginKind.Pattern, "fitted to usual clean readings; these from memory, no source");
}

/// <summary>One number the stove is computed from, with its origin.</summary>
/// <param name="Name">What it is, in the trade's words.</param>
/// <param name="Value">Value in the unit.</param>
/// <param name="Unit">Unit; empty for a pure number.</param>
/// <param name="Origin">Where it comes from.</param>
public sealed record Input(string Name, double Value, string Unit, Origin Origin);
