using System.Globalization;

namespace Emberwright.Reports.Wording;

/// <summary>
/// Says a sentence in the language in use: English, until another is taken for a while by <see cref="In"/>. It is held
/// per flow of work, as a culture is, so that two papers made at once may speak two languages.
/// </summary>
public static class Say
{
    private static readonly AsyncLocal<Language?> InUse = new();

    /// <summary>The language in use.</summary>
    public static Language Language => InUse.Value ?? Language.English;

    /// <summary>Speaks a language until the returned thing is disposed of.</summary>
    /// <param name="language">The language.</param>
    public static IDisposable In(Language language)
    {
        ArgumentNullException.ThrowIfNull(language);
        var before = new Before(InUse.Value);
        InUse.Value = language;
        return before;
    }

    /// <summary>A sentence.</summary>
    /// <param name="name">Its name.</param>
    public static string Of(string name) => Language[name];

    /// <summary>A sentence with what is put into its places.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="parts">What goes into {0}, {1}, …</param>
    public static string Of(string name, params object?[] parts) => string.Format(CultureInfo.InvariantCulture, Language[name], parts);

    /// <summary>A term that comes from elsewhere, by its English words.</summary>
    public static string Term(string english) => Language.Term(english);

    /// <summary>A day: 24 November 2026.</summary>
    public static string Day(DateOnly day) => Of("date.day", day.Day, Of($"month.{day.Month}"), day.Year);

    /// <summary>The day of a moment, where it was.</summary>
    public static string Day(DateTimeOffset at) => Day(DateOnly.FromDateTime(at.DateTime));

    /// <summary>A day in little room: 24 Nov 2026.</summary>
    public static string ShortDay(DateOnly day) => Of("date.day", day.Day, ShortMonth(day.Month), day.Year);

    /// <summary>A month in little room: Nov.</summary>
    public static string ShortMonth(int month) => Of($"month.short.{month}");

    private sealed class Before(Language? language) : IDisposable
    {
        public void Dispose() => InUse.Value = language;
    }
}
