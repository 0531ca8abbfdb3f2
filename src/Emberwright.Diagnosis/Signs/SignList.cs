namespace Emberwright.Diagnosis.Signs;

/// <summary>All signs of the catalogue, each defined once.</summary>
public static class SignList
{
    /// <summary>Every sign of every pattern.</summary>
    public static IReadOnlyList<Sign> All { get; } =
    [
        ComplaintSign.Sign, EmergencySign.Sign, .. Answers.Signs, .. AirLooks.Signs, .. SealLooks.Signs, .. FeedAndIgnitionLooks.Signs,
        .. BlowerAndElectricLooks.Signs, .. NoiseAndSmell.Signs, .. Tries.Signs, .. WaterLooks.Signs, .. ReadingSigns.Signs, .. StoveCounters.Signs,
    ];

    /// <summary>The signs that can be had on a pattern.</summary>
    /// <param name="patternId">Pattern id.</param>
    public static IReadOnlyList<Sign> On(string patternId) => [.. All.Where(s => s.IsOn(patternId))];
}
