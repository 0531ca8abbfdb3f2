using System.Text;

namespace Emberwright.Visits.Journal;

/// <summary>
/// Words about a person, kept as bytes beside the journal so that they can be erased. The bytes are 32 random
/// hexadecimal digits, a line feed and the words: without the digits a short text such as a telephone number could be
/// found again by trying all.
/// </summary>
public static class TextBlob
{
    private const int SaltDigits = 32;

    /// <summary>The bytes to keep.</summary>
    /// <param name="words">The words.</param>
    /// <param name="salt">Sixteen random bytes.</param>
    public static byte[] Bytes(string words, ReadOnlySpan<byte> salt)
    {
        if (salt.Length * 2 != SaltDigits) throw new ArgumentException($"The salt has {salt.Length} bytes; it needs {SaltDigits / 2}.", nameof(salt));
        return Encoding.UTF8.GetBytes($"{Convert.ToHexStringLower(salt)}\n{words}");
    }

    /// <summary>The words in kept bytes; null when these are no such bytes.</summary>
    public static string? Words(ReadOnlySpan<byte> bytes) =>
        bytes.Length > SaltDigits && bytes[SaltDigits] == (byte)'\n' ? Encoding.UTF8.GetString(bytes[(SaltDigits + 1)..]) : null;

    /// <summary>The words themselves, or those a reference stands for; null when they are gone or there are none.</summary>
    /// <param name="text">Words or a reference.</param>
    /// <param name="words">Gives the words of a reference.</param>
    public static string? Resolve(string? text, Func<string, string?> words)
    {
        ArgumentNullException.ThrowIfNull(words);
        return string.IsNullOrEmpty(text) ? null : Blob.IsReference(text) ? words(text) : text;
    }
}
