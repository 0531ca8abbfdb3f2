namespace Emberwright.Stove.Fire;

/// <summary>
/// One figure that can be opened: what it is, how sure it is, by which equation and source it came from which other figures.
/// Figures of one report name each other by id; a figure without inputs was given.
/// </summary>
/// <param name="Id">Stable id, lower case with hyphens.</param>
/// <param name="Name">Name in the trade's words.</param>
/// <param name="Value">Value in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit as printed; empty for a pure number.</param>
/// <param name="Equation">The equation in symbols or words; empty when given.</param>
/// <param name="Source">Source of the equation, or the origin of a given value.</param>
/// <param name="Inputs">Ids of the figures it was computed from.</param>
public sealed record Figure(string Id, string Name, double Value, string Unit, string Equation, string Source, params IReadOnlyList<string> Inputs)
{
    /// <summary>Standard uncertainty in the same unit, from the stated uncertainties of the readings; 0 until worked out.</summary>
    public double StandardUncertainty { get; init; }
}
