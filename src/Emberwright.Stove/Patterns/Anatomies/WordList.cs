namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>One word for each value of an enumeration.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
public sealed class WordList<T> where T : struct, Enum
{
    private readonly (T Value, string Word)[] words;

    internal WordList(params (T Value, string Word)[] words) => this.words = words;

    /// <summary>All words, in order.</summary>
    public IReadOnlyList<string> Names => [.. words.Select(w => w.Word)];

    /// <summary>The word of a value.</summary>
    public string Of(T value) => Array.Find(words, w => EqualityComparer<T>.Default.Equals(w.Value, value)).Word;

    /// <summary>The value of a word; null when there is none.</summary>
    public T? Parse(string? word)
    {
        foreach (var (value, known) in words)
        {
            if (known == word)
            {
                return value;
            }
        }

        return null;
    }
}
