namespace Emberwright.Field.Words;

/// <summary>Search that knows the trade's other words: who types "auger motor" finds the feed, who types "draft fan" the combustion blower.</summary>
public static class Synonyms
{
    private static readonly (string Said, string Meant)[] Known =
    [
        .. Glossary.All.SelectMany(term => term.Also.Select(also => (also.ToLowerInvariant(), term.Name.ToLowerInvariant())))
            .Concat(List("search.also").Select(pair => pair.Split(" = ")).Select(pair => (pair[0], pair[1])))
            .Distinct(),
    ];

    /// <summary>True when every word wanted occurs in a text, as it is or by another word for the same thing.</summary>
    /// <param name="text">What is searched.</param>
    /// <param name="wanted">What was typed; nothing matches everything.</param>
    public static bool Match(string text, string wanted) => Match(text, wanted.Trim().ToLowerInvariant(), Known.Length);

    private static bool Match(string text, string wanted, int depth)
    {
        if (wanted.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word => text.Contains(word, StringComparison.OrdinalIgnoreCase))) return true;
        if (depth == 0) return false;
        foreach (var (said, meant) in Known)
            if (wanted.Contains(said, StringComparison.Ordinal) && Match(text, wanted.Replace(said, meant, StringComparison.Ordinal), 0)) return true;
        return false;
    }
}
