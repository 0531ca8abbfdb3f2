namespace Emberwright.Stove.Patterns;

/// <summary>All patterns the tool knows.</summary>
public static class PatternLibrary
{
    /// <summary>Every pattern, in the order they are shown.</summary>
    public static IReadOnlyList<Pattern> All { get; } =
    [
        DamperInsert.Pattern,
        ThermocoupleFreestanding.Pattern,
        Underfed.Pattern,
        SealedCombustion.Pattern,
        Hydronic.Pattern,
        MultiFuelAgitator.Pattern,
    ];

    /// <summary>Finds a pattern by id, name or synonym, whatever the case; null when none fits.</summary>
    /// <param name="words">Id, name or other word for it; a name that begins with or continues a pattern's name is taken too.</param>
    public static Pattern? Find(string words)
    {
        var wanted = words.Trim();
        bool Is(string text) => string.Equals(text, wanted, StringComparison.OrdinalIgnoreCase);
        bool Begins(string longer, string shorter) => longer.StartsWith(shorter, StringComparison.OrdinalIgnoreCase);
        return All.FirstOrDefault(p => Is(p.Id) || Is(p.Name) || p.Synonyms.Any(Is))
            ?? (wanted.Length < 8 ? null : All.FirstOrDefault(p => Begins(p.Name, wanted) || Begins(wanted, p.Name)));
    }
}
