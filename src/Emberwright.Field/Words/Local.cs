using System.Globalization;
using System.Text.RegularExpressions;
using Emberwright.Stove.Quantities;

namespace Emberwright.Field.Words;

/// <summary>
/// Numbers and dates as this phone's region writes them, on screens only: journals, files and papers stay as they are.
/// The runtime itself knows no regions here, which saves the phone 2.6 MB.
/// </summary>
public static partial class Local
{
    // By the pattern with the day first, as the screens ask for it, the pattern with the month first.
    private static readonly Dictionary<string, string> MonthFirst = new()
    {
        ["d MMM"] = "MMM d",
        ["d MMMM"] = "MMMM d",
        ["d MMM yyyy"] = "MMM d, yyyy",
        ["d MMMM yyyy"] = "MMMM d, yyyy",
        ["dddd d MMMM"] = "dddd, MMMM d",
        ["dddd d MMMM yyyy"] = "dddd, MMMM d, yyyy",
    };

    /// <summary>The region in use.</summary>
    public static Region Region { get; private set; } = Region.All[0];

    /// <summary>The region's signs with the month names of the language.</summary>
    public static CultureInfo Culture { get; private set; } = Made();

    /// <summary>Chooses the region, after the language.</summary>
    public static void In(Region region)
    {
        Region = region;
        Culture = Made();
    }

    /// <summary>A day, a month or a time.</summary>
    /// <param name="day">The day.</param>
    /// <param name="pattern">Its parts with the day first and 24 hours, such as <c>d MMMM yyyy</c>; the region may turn them round.</param>
    public static string Written(DateTime day, string pattern) => day.ToString(Turned(pattern), Culture);

    /// <summary>A day.</summary>
    public static string Written(DateOnly day, string pattern) => day.ToString(Turned(pattern), Culture);

    /// <summary>A number; <paramref name="pattern"/> as .NET writes it, such as <c>0.0</c>.</summary>
    public static string Number(double value, string pattern) => value.ToString(pattern, Culture);

    /// <summary>A number written with a point, and every one in a sentence, with the region's decimal sign.</summary>
    public static string Signs(string text) => Region.Decimal == '.' ? text : PointInNumber().Replace(text, Region.Decimal.ToString());

    /// <summary>
    /// What was typed, with a decimal point: a comma is one where the region has it so, and elsewhere when it cannot part thousands.
    /// </summary>
    public static string Typed(string text) => Region.Decimal == ',' || !CommaOfThousands().IsMatch(text) ? CommaInNumber().Replace(text, ".") : text;

    private static string Turned(string pattern)
    {
        var parts = pattern.Split(", HH:mm", 2);
        var (day, time) = pattern == "HH:mm" ? ("", "HH:mm")
            : pattern.EndsWith(", HH:mm", StringComparison.Ordinal) ? (parts[0], ", HH:mm")
            : pattern.EndsWith(" HH:mm", StringComparison.Ordinal) ? (pattern[..^6], " HH:mm")
            : (pattern, "");
        if (Region.MonthFirst && MonthFirst.TryGetValue(day, out var turned)) day = turned;
        return day + (Region.TwelveHours ? time.Replace("HH:mm", "h:mm tt", StringComparison.Ordinal) : time);
    }

    private static CultureInfo Made()
    {
        var made = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        made.NumberFormat.NumberDecimalSeparator = Region.Decimal.ToString();
        made.NumberFormat.NegativeSign = QuantityFormat.Minus.ToString();
        string[] months = List("date.months"), shortly = List("date.months-short");
        made.DateTimeFormat.MonthNames = made.DateTimeFormat.MonthGenitiveNames = [.. months, ""];
        made.DateTimeFormat.AbbreviatedMonthNames = made.DateTimeFormat.AbbreviatedMonthGenitiveNames = [.. shortly, ""];
        made.DateTimeFormat.DayNames = List("date.days");
        return made;
    }

    [GeneratedRegex(@"(?<=\d)\.(?=\d)")]
    private static partial Regex PointInNumber();

    [GeneratedRegex(@"(?<=\d),(?=\d)")]
    private static partial Regex CommaInNumber();

    [GeneratedRegex(@"(?<!\d)[1-9]\d{0,2}(,\d{3})+(?!\d)")]
    private static partial Regex CommaOfThousands();
}

/// <summary>Days and times as the region writes them.</summary>
public static class LocalDays
{
    /// <summary>A day; <paramref name="pattern"/> has the day first, the region may turn it round.</summary>
    public static string Local(this DateOnly day, string pattern) => Words.Local.Written(day, pattern);

    /// <summary>A day where there is one, else nothing.</summary>
    public static string? Local(this DateOnly? day, string pattern) => day?.Local(pattern);

    /// <summary>A moment on its own clock; <paramref name="pattern"/> has the day first and 24 hours.</summary>
    public static string Local(this DateTimeOffset at, string pattern) => Words.Local.Written(at.DateTime, pattern);
}
