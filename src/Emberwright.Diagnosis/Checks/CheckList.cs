namespace Emberwright.Diagnosis.Checks;

/// <summary>All checks of the catalogue, each defined once.</summary>
public static class CheckList
{
    /// <summary>Every check of every pattern.</summary>
    public static IReadOnlyList<Check> All { get; } =
    [
        .. AskChecks.Checks, .. LookChecks.Checks, .. AirMeasurements.Checks, .. ElectricalChecks.Checks, .. WaterChecks.Checks, .. CleanChecks.Checks,
    ];

    /// <summary>The checks that can be done on a pattern.</summary>
    /// <param name="patternId">Pattern id.</param>
    public static IReadOnlyList<Check> On(string patternId) => [.. All.Where(c => c.IsOn(patternId))];
}
