namespace Emberwright.Stove.Controls.Wirings;

/// <summary>The wirings of the pattern library.</summary>
public static class WiringLibrary
{
    private static readonly Dictionary<string, Wiring> ByPattern =
        new[]
        {
            DamperInsertWiring.Create(), ThermocoupleFreestandingWiring.Create(), UnderfedWiring.Create(),
            SealedCombustionWiring.Create(), HydronicWiring.Create(), MultiFuelWiring.Create(),
        }.ToDictionary(w => w.Pattern, StringComparer.Ordinal);

    /// <summary>All wirings.</summary>
    public static IReadOnlyCollection<Wiring> All => ByPattern.Values;

    /// <summary>The wiring of a pattern.</summary>
    /// <param name="patternId">Id of the pattern.</param>
    /// <exception cref="CircuitException">No wiring has that id.</exception>
    public static Wiring For(string patternId) => ByPattern.TryGetValue(patternId, out var wiring) ? wiring
        : throw new CircuitException($"No wiring for pattern '{patternId}'; there are: {string.Join(", ", ByPattern.Keys)}.");
}
