using System.Globalization;

namespace Emberwright.Visits.Journal;

/// <summary>Times as RFC 3339 writes them, always with an offset from UTC.</summary>
internal static class Rfc3339
{
    private static readonly string[] Forms =
        ["yyyy-MM-dd'T'HH:mm:ssK", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFK", "yyyy-MM-dd'T'HH:mmK"];

    public static DateTimeOffset? Parse(string? text) =>
        text is not null && HasOffset(text)
        && DateTimeOffset.TryParseExact(text, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? time : null;

    public static string Format(DateTimeOffset time) =>
        time.ToString(time.Millisecond == 0 ? "yyyy-MM-dd'T'HH:mm:sszzz" : "yyyy-MM-dd'T'HH:mm:ss.fffzzz", CultureInfo.InvariantCulture);

    // Without an offset the parser would take this machine's, and the same file would mean two times on two machines.
    private static bool HasOffset(string text) =>
        text.EndsWith('Z') || (text.Length > 6 && text[^6] is '+' or '-' && text[^3] == ':');
}
