// Question:    how does a due date get into anybody's calendar?
// Form:        iCalendar, RFC 5545: a VCALENDAR with one all-day VEVENT for each date; lines folded at 75 octets (3.1),
//              text escaped (3.3.11), line ends CR LF.
// Validity:    dates only, no times and no zones; an appointment with an hour would need a zone's definition.
// Source:      RFC 5545. Checked in tests by a library that reads it.
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Emberwright.Visits.Firm;

/// <summary>Due dates as an iCalendar file.</summary>
public static class CalendarFile
{
    private const int MostOctets = 75;

    /// <summary>The file.</summary>
    /// <param name="items">What is due.</param>
    /// <param name="stamp">When it is written.</param>
    /// <param name="today">Today; what is late stands today.</param>
    public static string Of(IEnumerable<DueItem> items, DateTimeOffset stamp, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(items);
        var text = new StringBuilder();
        void Line(string line) => text.Append(Folded(line)).Append("\r\n");
        Line("BEGIN:VCALENDAR");
        Line("VERSION:2.0");
        Line("PRODID:-//Emberwright//Due list//EN");
        foreach (var item in items)
        {
            var day = item.Soonest < today ? today : item.Soonest;
            Line("BEGIN:VEVENT");
            Line($"UID:{Uid(item)}");
            Line($"DTSTAMP:{stamp.UtcDateTime.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture)}");
            Line($"DTSTART;VALUE=DATE:{Date(day)}");
            Line($"DTEND;VALUE=DATE:{Date(day.AddDays(1))}");
            Line($"SUMMARY:{Escaped(Summary(item))}");
            if (item.Last.Address is { } address) Line($"LOCATION:{Escaped(address)}");
            Line($"DESCRIPTION:{Escaped(Description(item))}");
            Line("TRANSP:TRANSPARENT");
            Line("END:VEVENT");
        }

        Line("END:VCALENDAR");
        return text.ToString();
    }

    /// <summary>The same date of the same stove keeps its identity, so that a calendar that has it is not given it twice.</summary>
    public static string Uid(DueItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{item.Stove} {item.For} {item.Last.Visit}")))[..32] + "@emberwright";
    }

    /// <summary>The event's title.</summary>
    public static string Summary(DueItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return $"{item.For switch { DueForService => "Service", Journal.DueFor.Return => "Return", _ => "Call" }}: {item.Last.Customer ?? "stove"}";
    }

    /// <summary>What stands below the title.</summary>
    public static string Description(DueItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return string.Join('\n', new[]
        {
            string.Join(' ', new[] { item.Last.Maker, item.Last.Model }.Where(w => !string.IsNullOrEmpty(w))),
            item.Last.Phone, item.Basis, string.Create(CultureInfo.InvariantCulture, $"About {item.Minutes:0} minutes."),
        }.Where(l => !string.IsNullOrEmpty(l)));
    }

    private const Journal.DueFor DueForService = Journal.DueFor.Service;

    private static string Date(DateOnly day) => day.ToString("yyyyMMdd", CultureInfo.InvariantCulture);

    private static string Escaped(string text) =>
        text.Replace("\\", "\\\\").Replace(";", "\\;").Replace(",", "\\,").Replace("\r\n", "\\n").Replace("\n", "\\n");

    // A folded line goes on after CR LF and a space; a letter of several octets is never cut.
    private static string Folded(string line)
    {
        var made = new StringBuilder();
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                made.Append("\r\n ");
                octets = 1;
            }

            made.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }

        return made.ToString();
    }
}
