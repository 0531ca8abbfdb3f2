using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Xunit;

namespace Emberwright.Cli.Tests;

public class DueCommandTests
{
    [Fact]
    public void A_date_agreed_is_on_the_list_with_its_letter_and_its_day_in_the_calendar()
    {
        var folder = Directory.CreateTempSubdirectory().FullName;
        var run = Run.Of("due", Run.Demo("healthy-service"), "--day", "2027-05-01", "--agreed-only", "--ics", Path.Combine(folder, "due.ics"), "--letters", folder, "--json");

        Assert.Equal(ExitCodes.Findings, run.Code);
        var due = Assert.Single(run.Json.GetProperty("due").EnumerateArray());
        Assert.Equal("2027-04-20", due.GetProperty("agreed").GetString());
        var day = Assert.Single(Calendar.Load(File.ReadAllText(Path.Combine(folder, "due.ics")))!.Events);
        // Late, so it stands on the day asked for.
        Assert.Equal(new DateOnly(2027, 5, 1), day.DtStart!.Date);
        Assert.Contains(Directory.GetFiles(folder, "*.txt"), f => File.ReadAllText(f).Contains("Ottilie Brandreth", StringComparison.Ordinal));
    }

    [Fact]
    public void Filters_leave_out_what_is_not_wanted()
    {
        Assert.Contains("Nothing is due", Run.Of("due", Run.Demo("healthy-service"), "--day", "2026-05-01", "--agreed-only", "--until", "2026-12-31").Out, StringComparison.Ordinal);
        Assert.Contains("Nothing is due", Run.Of("due", Run.Demo("healthy-service"), "--day", "2026-05-01", "--agreed-only", "--find", "corwin").Out, StringComparison.Ordinal);
        Assert.Contains("Brandreth", Run.Of("due", Run.Demo("healthy-service"), "--day", "2026-05-01", "--agreed-only", "--find", "millrace ln").Out, StringComparison.Ordinal);
    }

    /// <summary>The phone's own writer and the library's are read by the library as the same events.</summary>
    [Fact]
    public void Both_ways_of_writing_a_calendar_say_the_same()
    {
        var last = new VisitSummary { Visit = "v", Stove = "s", Customer = "Ottilie; “Tilly”, Brandreth", Address = "14 Millrace Lane, county of Orrin\\annexe", Maker = new string('ö', 90), Phone = "555\n0114" };
        DueItem[] items =
        [
            new("s", DueFor.Service, new(2027, 4, 20), new(2027, 4, 20), "1.1 t a season; ash passages first", null, last, 150, null),
            new("t", DueFor.FollowUp, new(2026, 1, 1), null, null, null, last with { Address = null }, 5, null),
        ];
        var stamp = new DateTimeOffset(2026, 11, 24, 10, 0, 0, TimeSpan.Zero);
        var ours = Calendar.Load(CalendarFile.Of(items, stamp, new(2026, 11, 24)))!.Events;
        var theirs = Calendar.Load(CalendarOf.Items(items, stamp, new(2026, 11, 24)))!.Events;

        Assert.Equal(theirs.Select(Said), ours.Select(Said));
        Assert.All(CalendarFile.Of(items, stamp, new(2026, 11, 24)).Split("\r\n"), line => Assert.True(System.Text.Encoding.UTF8.GetByteCount(line) <= 75));
    }

    private static (string?, DateOnly, DateOnly?, string?, string?, string?) Said(CalendarEvent e) =>
        (e.Uid, e.DtStart!.Date, e.DtEnd?.Date, e.Summary, string.IsNullOrEmpty(e.Location) ? null : e.Location, e.Description);
}
