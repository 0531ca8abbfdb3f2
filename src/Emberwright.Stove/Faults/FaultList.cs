namespace Emberwright.Stove.Faults;

/// <summary>All faults, each defined once in the file of its family.</summary>
public static class FaultList
{
    /// <summary>Every fault of every pattern, family by family.</summary>
    public static IReadOnlyList<Fault> All { get; } =
    [
        .. Each(Fouling.Faults, 0.6),
        .. Each([
        .. AirPath.Faults, .. Seals.Faults, .. Blowers.Faults, .. Feed.Faults, .. Ignition.Faults,
        .. Interlocks.Faults, .. Electrical.Faults, .. Sensors.Faults, .. Water.Faults, .. Agitator.Faults, .. SiteAndFuel.Faults,
        ], 0.9),
    ];

    /// <summary>The faults that can occur on a pattern.</summary>
    /// <param name="patternId">Id of the pattern.</param>
    /// <exception cref="ArgumentException">The id names no pattern.</exception>
    public static IReadOnlyList<Fault> On(string patternId)
    {
        PatternIds.Require(patternId);
        return [.. All.Where(f => f.Patterns.Count == 0 || f.Patterns.Contains(patternId))];
    }

    /// <summary>Whatever is wrong shows again when the stove is started, unless it is one that nobody complains of.</summary>
    private static IEnumerable<Fault> Each(IEnumerable<Fault> faults, double again) => faults.Select(f =>
        f.Symptoms.Any(s => s is { Sign: Complaints.Sign, Outcome: Complaints.Due })
            ? f
            : f with { Symptoms = [.. f.Symptoms, new Symptom("runs-now", "same", again)] });
}
