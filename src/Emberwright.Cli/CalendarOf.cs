using Emberwright.Visits.Firm;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace Emberwright.Cli;

/// <summary>Due dates as an iCalendar file.</summary>
internal static class CalendarOf
{
    public static string Items(IEnumerable<DueItem> items, DateTimeOffset stamp, DateOnly today)
    {
        var calendar = new Ical.Net.Calendar { ProductId = "-//Emberwright//Due list//EN" };
        foreach (var item in items)
        {
            var day = item.Soonest < today ? today : item.Soonest;
            calendar.Events.Add(new CalendarEvent
            {
                Uid = CalendarFile.Uid(item),
                DtStamp = new CalDateTime(stamp.UtcDateTime, "UTC"),
                DtStart = new CalDateTime(day),
                DtEnd = new CalDateTime(day.AddDays(1)),
                Summary = CalendarFile.Summary(item),
                Location = item.Last.Address ?? "",
                Description = CalendarFile.Description(item),
                Transparency = TransparencyType.Transparent,
            });
        }

        return new CalendarSerializer().SerializeToString(calendar) ?? "";
    }
}
