using System.Text;

namespace Emberwright.Visits.Journal;

/// <summary>Writes the members of an enumeration as lower-case words with hyphens, and reads them with spaces too.</summary>
public static class EnumWords
{
    /// <summary>The member as written in files, e.g. <c>ash-passages</c>.</summary>
    public static string Of<T>(T value) where T : struct, Enum
    {
        var words = new StringBuilder();
        foreach (var letter in value.ToString())
        {
            if (char.IsAsciiLetterUpper(letter) && words.Length > 0) words.Append('-');
            words.Append(char.ToLowerInvariant(letter));
        }

        return words.ToString();
    }

    /// <summary>The member of a word; null when there is none.</summary>
    public static T? Find<T>(string? word) where T : struct, Enum
    {
        if (word is null) return null;
        var wanted = word.Trim().Replace(' ', '-');
        foreach (var value in Enum.GetValues<T>())
            if (Of(value).Equals(wanted, StringComparison.OrdinalIgnoreCase)) return value;
        return null;
    }

    /// <summary>All words, for messages.</summary>
    public static string All<T>() where T : struct, Enum => string.Join(", ", Enum.GetValues<T>().Select(Of));
}
