using System.Buffers;
using System.Security.Cryptography;

namespace Emberwright.Visits.Journal;

/// <summary>
/// Reference to bytes kept beside the journal: photos, signatures, names. They can be erased on request while the
/// journal's proof stays whole. Written <c>sha256:</c> and 64 hexadecimal digits.
/// </summary>
public static class Blob
{
    internal const string Prefix = "sha256:";
    private static readonly SearchValues<char> Hexadecimal = SearchValues.Create("0123456789abcdef");

    /// <summary>The reference to these bytes.</summary>
    public static string ReferenceTo(ReadOnlySpan<byte> bytes) => Prefix + Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>True when a text is such a reference and not the thing itself.</summary>
    public static bool IsReference(string? text) =>
        text is not null && text.Length == Prefix.Length + 64 && text.StartsWith(Prefix, StringComparison.Ordinal)
        && text.AsSpan(Prefix.Length).IndexOfAnyExcept(Hexadecimal) < 0;
}
