namespace Emberwright.Field.Words;

/// <summary>One word of the trade as this app uses it.</summary>
/// <param name="Id">Stable id, the anchor of its entry.</param>
/// <param name="Name">The word.</param>
/// <param name="Meaning">What it means here, in a sentence or two.</param>
/// <param name="Also">Other words people use for it.</param>
public sealed record Term(string Id, string Name, string Meaning, params string[] Also);

/// <summary>Every word the screens use that a newcomer might ask about. Meanings are common practice, no source, unless the entry says otherwise.</summary>
public static class Glossary
{
    private static readonly string[] Ids =
    [
        "appliance", "area", "as-found", "as-left", "ash-passages", "blower-inlet", "burn-pot", "check", "co-room", "combustion-blower", "condition",
        "damper", "exchanger", "fan-only", "feed", "firebox", "healthy", "high-limit", "hopper", "igniter", "intake", "journal", "lambda", "margin",
        "pattern", "port", "pressure-profile", "proof", "proof-of-fire", "restriction", "room-air-blower", "run-on", "seal", "sensing-hose", "stop-use",
        "stove-card", "suspect", "tee", "test-fire", "test-point", "three-state", "thermocouple", "vacuum-switch", "vent", "vent-collar"
    ];

    /// <summary>All entries, by name, in the language of this phone.</summary>
    public static IReadOnlyList<Term> All { get; } =
        [.. Ids.Select(id => new Term(id, T($"word.{id}"), T($"word.{id}.means"), List($"word.{id}.also"))).OrderBy(term => term.Name, StringComparer.OrdinalIgnoreCase)];

    /// <summary>The entry of an id.</summary>
    /// <exception cref="KeyNotFoundException">No entry goes by it.</exception>
    public static Term Of(string id) => All.FirstOrDefault(term => term.Id == id) ?? throw new KeyNotFoundException($"No word goes by '{id}'.");
}
