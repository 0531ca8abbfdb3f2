namespace Emberwright.Stove.Faults;

/// <summary>Ids of the patterns that faults, signs and checks can be confined to.</summary>
public static class PatternIds
{
    /// <summary>All pattern ids.</summary>
    public static IReadOnlyList<string> All => On.All;

    /// <summary>Refuses an id that names no pattern.</summary>
    /// <param name="patternId">Id to test.</param>
    /// <exception cref="ArgumentException">The id names no pattern; the message lists those there are.</exception>
    public static void Require(string patternId)
    {
        if (!All.Contains(patternId))
            throw new ArgumentException($"Pattern is '{patternId}'; it must be one of {string.Join(", ", All)}.", nameof(patternId));
    }
}
