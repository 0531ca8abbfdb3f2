namespace Emberwright.Stove.Faults;

/// <summary>All faults, each defined once in the file of its family.</summary>
public static class FaultList
{
    /// <summary>Every fault of every pattern, family by family.</summary>
    public static IReadOnlyList<Fault> All { get; } =
    [
        .. Fouling.Faults, .. AirPath.Faults, .. Seals.Faults, .. Blowers.Faults, .. Feed.Faults, .. Ignition.Faults,
        .. Interlocks.Faults, .. Electrical.Faults, .. Sensors.Faults, .. Water.Faults, .. Agitator.Faults, .. SiteAndFuel.Faults,
    ];

    /// <summary>The faults that can occur on a pattern.</summary>
    /// <param name="patternId">Id of the pattern.</param>
    /// <exception cref="ArgumentException">The id names no pattern.</exception>
    public static IReadOnlyList<Fault> On(string patternId)
    {
        PatternIds.Require(patternId);
        return [.. All.Where(f => f.Patterns.Count == 0 || f.Patterns.Contains(patternId))];
    }
}
