namespace Emberwright.Stove.Air;

/// <summary>A predicted value with its slopes by unknown and, directly, by parameter; slopes are skipped when empty.</summary>
internal ref struct Reading
{
    private readonly Span<double> byUnknown;
    private readonly Span<double> byParameter;

    public Reading(Span<double> byUnknown, Span<double> byParameter)
    {
        this.byUnknown = byUnknown;
        this.byParameter = byParameter;
        Value = double.NaN;
    }

    public double Value { get; set; }

    public readonly bool WithSlopes => !byUnknown.IsEmpty;

    public readonly void By(int unknown, double slope)
    {
        if (WithSlopes)
        {
            byUnknown[unknown] += slope;
        }
    }

    public readonly void By(Parameter parameter, double slope)
    {
        if (WithSlopes)
        {
            byParameter[(int)parameter] += slope;
        }
    }
}
