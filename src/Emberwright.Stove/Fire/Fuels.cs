namespace Emberwright.Stove.Fire;

/// <summary>
/// Fuels to choose from when no analysis is at hand. The analyses are typical ones; carbon and hydrogen of wood vary by
/// about a percent of themselves, moisture and ash by much more, so those are worth measuring.
/// </summary>
public static class Fuels
{
    private const string Typical = "typical analysis, from memory, no source";

    /// <summary>Softwood pellets within grade A1 of ISO 17225-2; the default.</summary>
    public static Fuel PelletsA1 { get; } = new("wood pellets, grade A1", UltimateAnalysis.ByDifference(50.50, 6.10, 0.10, 0.01, 0.40), 0.07, origin: Typical);

    /// <summary>Pellets within grade A2.</summary>
    public static Fuel PelletsA2 { get; } = new("wood pellets, grade A2", UltimateAnalysis.ByDifference(50.2, 6.0, 0.25, 0.02, 1.0), 0.08, origin: Typical);

    /// <summary>Pellets within grade B.</summary>
    public static Fuel PelletsB { get; } = new("wood pellets, grade B", UltimateAnalysis.ByDifference(49.8, 5.9, 0.6, 0.03, 1.8), 0.09, origin: Typical);

    /// <summary>Pellets that took up water in a damp store, beyond every grade.</summary>
    public static Fuel PelletsWet { get; } = new("wood pellets, damp", PelletsA1.Dry, 0.14, origin: Typical);

    /// <summary>Pellets with much dust: the same wood with bark and sand in the fines. What else dust does (feed, bridging, clinker) is not in an analysis.</summary>
    public static Fuel PelletsDusty { get; } = new("wood pellets, dusty", UltimateAnalysis.ByDifference(50.0, 6.0, 0.15, 0.02, 1.2), 0.08, origin: Typical);

    /// <summary>Red oak sawdust.</summary>
    public static Fuel RedOak { get; } = new("red oak", UltimateAnalysis.OfPercent(49.96, 5.92, 43.77, 0.03, 0.01, 0.31), 0.08,
        origin: "Miles et al., Alkali deposits found in biomass power plants (1995); moisture typical of pellets");

    /// <summary>Shelled corn.</summary>
    public static Fuel Corn { get; } = new("shelled corn", UltimateAnalysis.ByDifference(46.5, 6.6, 1.5, 0.11, 1.4), 0.14, origin: Typical);

    /// <summary>Olive stones, crushed and dried.</summary>
    public static Fuel OliveStones { get; } = new("olive stones", UltimateAnalysis.ByDifference(51.0, 6.1, 0.3, 0.03, 0.8), 0.10, origin: Typical);

    /// <summary>Nut shells.</summary>
    public static Fuel NutShells { get; } = new("nut shells", UltimateAnalysis.ByDifference(51.0, 6.0, 0.4, 0.03, 1.2), 0.09, origin: Typical);

    /// <summary>All of them by id, for files and the terminal.</summary>
    public static IReadOnlyDictionary<string, Fuel> ById { get; } = new Dictionary<string, Fuel>(StringComparer.Ordinal)
    {
        ["pellets-a1"] = PelletsA1,
        ["pellets-a2"] = PelletsA2,
        ["pellets-b"] = PelletsB,
        ["pellets-wet"] = PelletsWet,
        ["pellets-dusty"] = PelletsDusty,
        ["red-oak"] = RedOak,
        ["corn"] = Corn,
        ["olive-stones"] = OliveStones,
        ["nut-shells"] = NutShells,
    };

    /// <summary>The fuel of an id.</summary>
    /// <exception cref="InputException">No such id; the message lists them.</exception>
    public static Fuel Named(string id) => ById.TryGetValue(id, out var fuel)
        ? fuel
        : throw new InputException("fuel", $"\"{id}\" is not known", $"Choose one of {string.Join(", ", ById.Keys)}, or give an analysis of your own.");
}
