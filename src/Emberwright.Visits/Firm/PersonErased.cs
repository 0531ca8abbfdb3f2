// Question: which of the texts that the firm keeps tell who a person is?
// Rule:     the name, each address and its street, each telephone and mail as they stand in the book and in visits, in any
//           case; and each word of the name of four letters or more by itself, outside labels and constructions.
// Validity: words the firm wrote down as those of the person. What free text says of them in other words ("her brother at
//           the mill") no rule finds: such notes are to be read.
// Source:   own convention.
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>A person who asked to be erased, by the words the firm knows them by.</summary>
public sealed class PersonErased
{
    private const int FewestLetters = 4;
    private readonly string[] whole;
    private readonly string[] parts;

    /// <summary>A person.</summary>
    /// <param name="names">Names the person goes by.</param>
    /// <param name="addresses">Addresses.</param>
    /// <param name="others">Telephones and mail.</param>
    /// <param name="spared">Names that stay where they share a word with the person's: those who work for the firm.</param>
    public PersonErased(IEnumerable<string?> names, IEnumerable<string?> addresses, IEnumerable<string?> others, IEnumerable<string>? spared = null)
    {
        Names = Clean(names);
        Addresses = Clean(addresses);
        Others = Clean(others);
        whole = [.. Names.Concat(Addresses).Concat(Addresses.Select(a => a.Split([',', '\n'])[0].Trim())).Concat(Others).Where(w => w.Length >= FewestLetters).Distinct().OrderByDescending(w => w.Length)];
        var stay = (spared ?? []).SelectMany(Words).ToHashSet(StringComparer.OrdinalIgnoreCase);
        parts = [.. Names.SelectMany(Words).Where(w => w.Length >= FewestLetters && !stay.Contains(w)).Distinct()];
    }

    /// <summary>Names.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>Addresses.</summary>
    public IReadOnlyList<string> Addresses { get; }

    /// <summary>Telephones and mail.</summary>
    public IReadOnlyList<string> Others { get; }

    /// <summary>Whether a visit was to this person: the name is theirs, and nothing known of address and telephone says otherwise.</summary>
    public bool IsOf(VisitSummary visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        if (!Among(Names, visit.Customer)) return false;
        return Addresses.Count + Others.Count == 0 || visit.Address is null && visit.Phone is null || Among(Addresses, visit.Address) || Among(Others, visit.Phone);
    }

    /// <summary>A text without the person's words.</summary>
    /// <param name="text">The text.</param>
    /// <param name="parts">True to take the words of the name out one by one too.</param>
    public string Erase(string text, bool parts = true)
    {
        ArgumentNullException.ThrowIfNull(text);
        foreach (var words in whole) text = text.Replace(words, PersonalWords.Erased, StringComparison.OrdinalIgnoreCase);
        if (parts) foreach (var word in this.parts) text = WithoutWord(text, word);
        return text;
    }

    // As written and as a name in the middle of a sentence; "vale" in lower case is a valley and stays.
    private static string WithoutWord(string text, string word)
    {
        for (var at = text.IndexOf(word, StringComparison.Ordinal); at >= 0; at = text.IndexOf(word, at, StringComparison.Ordinal))
        {
            var end = at + word.Length;
            var alone = (at == 0 || !char.IsLetterOrDigit(text[at - 1])) && (end == text.Length || !char.IsLetterOrDigit(text[end]));
            if (alone) text = text[..at] + PersonalWords.Erased + text[end..];
            at += alone ? PersonalWords.Erased.Length : word.Length;
            if (at >= text.Length) break;
        }

        return text;
    }

    private static bool Among(IReadOnlyList<string> known, string? text) => text is not null && known.Any(k => StoveKey.Plain(k) == StoveKey.Plain(text));

    private static string[] Clean(IEnumerable<string?> texts) => [.. texts.Select(t => PersonalWords.Known(t?.Trim())).OfType<string>().Distinct()];

    private static string[] Words(string name) => name.Split([' ', ',', '.', '-', '’', '\''], StringSplitOptions.RemoveEmptyEntries);
}
