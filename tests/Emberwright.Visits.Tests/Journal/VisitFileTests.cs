using System.Text.Json;
using Emberwright.Stove;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Journal;

public class VisitFileTests
{
    private const string Header = """{"format":"emberwright-visit","version":1,"visit":"v-1"}""";
    private const string Firebox = """{"at":"2026-01-14T09:30:00-05:00","author":"R. Sorrel","kind":"reading","body":{"port":"firebox","condition":"fan only","value":"−0.11 inWC"}}""";

    private static VisitFile Read(params string[] lines) => VisitFile.Read(string.Join('\n', [Header, .. lines]) + "\n");

    private static string Reading(string members) =>
        """{"at":"2026-01-14T09:30:00-05:00","kind":"reading","body":{""" + members + "}}";

    [Fact]
    public void A_line_written_by_hand_needs_no_id_device_seq_or_clock()
    {
        var file = Read(Firebox, """{"kind":"note","body":{"words":"dog in the hall"}}""");
        Assert.Empty(file.Problems);
        var (reading, note) = (file.Journal.Entries[0], file.Journal.Entries[1]);
        Assert.Equal(8, Guid.Parse(reading.Id).Version);
        Assert.Equal((Entry.ByHand, 1L), (reading.Device, reading.Seq));
        Assert.Equal((2L, "R. Sorrel", reading.At), (note.Seq, note.Author, note.At));
        Assert.True(note.Clock > reading.Clock);
        Assert.Equal(file.Journal, Read(Firebox, """{"kind":"note","body":{"words":"dog in the hall"}}""").Journal);
    }

    [Fact]
    public void The_same_line_twice_is_two_entries() =>
        Assert.Equal(2, Read(Firebox, Firebox).Journal.Entries.Select(e => e.Id).Distinct().Count());

    [Fact]
    public void Lines_stay_in_the_order_of_the_file_even_when_times_run_backwards()
    {
        var file = Read(Firebox, """{"at":"2026-01-14T09:20:00-05:00","kind":"note","body":{"words":"earlier"}}""");
        Assert.IsType<ReadingBody>(file.Journal.Entries[0].Body);
        Assert.IsType<NoteBody>(file.Journal.Entries[1].Body);
    }

    [Theory]
    [InlineData(""" "port":"firebox","condition":"fan only","value":"-7,5 Pa" """, "body.value")]
    [InlineData(""" "port":"firebox","condition":"fan only","value":"-7.5" """, "body.value")]
    [InlineData(""" "port":"firebox","condition":"fan only","value":"-7.5 V","quantity":"pressure" """, "body.value")]
    [InlineData(""" "port":"firebox","condition":"fan only","quantity":"draught","value":"-7.5 Pa" """, "body.quantity")]
    [InlineData(""" "port":"flue","condition":"high","value":"11.8 %" """, "body.quantity")]
    [InlineData(""" "port":"firebox","condition":"warm","value":"-7.5 Pa" """, "body.condition")]
    [InlineData(""" "port":"firebox","value":"-7.5 Pa" """, "body.condition")]
    [InlineData(""" "condition":"fan only","value":"-7.5 Pa" """, "body.port")]
    [InlineData(""" "port":"firebox","condition":"fan only" """, "body.value")]
    public void A_reading_that_says_too_little_is_reported_and_kept(string members, string field)
    {
        var file = Read(Firebox, Reading(members), Firebox);
        var problem = Assert.Single(file.Problems);
        Assert.Equal((3, field), (problem.Line, problem.Field));
        Assert.NotEmpty(problem.Remedy);
        Assert.Equal(3, file.Journal.Entries.Count);
        Assert.IsType<UnreadBody>(file.Journal.Entries[1].Body);
        Assert.Contains(Reading(members), VisitFile.Write(file.Journal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(""" "condition":"cold, on, closed" """)]
    [InlineData(""" "condition":"fan only" """)]
    [InlineData(""" "condition":{"fire":"cold","blower":"on","opening":"closed"} """)]
    [InlineData(""" "condition":{} """)]
    public void A_condition_may_be_words_or_an_object(string condition)
    {
        var file = Read(Reading(""" "port":"firebox","value":"-29 Pa", """ + condition));
        Assert.Empty(file.Problems);
        var reading = Assert.IsType<ReadingBody>(Assert.Single(file.Journal.Entries).Body);
        Assert.Equal(new Observable(Measure.Pressure, "firebox", Condition.FanOnly), reading.Observable);
    }

    [Fact]
    public void A_wrong_optional_member_leaves_the_rest_usable()
    {
        var file = Read("""{"at":"2026-01-14T09:30:00-05:00","kind":"site","body":{"altitude":"high up","outdoor":"-2 °C","vent":{"diameter":"3 in","vertical":"5.5 m","tees":-1}}}""");
        Assert.Equal(["body.altitude", "body.vent.tees"], file.Problems.Select(p => p.Field));
        var site = Assert.IsType<SiteBody>(Assert.Single(file.Journal.Entries).Body);
        Assert.Null(site.Altitude);
        Assert.Equal(-2, site.Outdoor!.Value.Si);
        Assert.Equal(0.0762, site.Vent!.Diameter!.Value.Si, 12);
    }

    [Fact]
    public void An_unknown_kind_is_kept_byte_for_byte_without_complaint()
    {
        const string Later = """{"kind" : "sound-recording", "v":7, "body":{"blob": "sha256:00", "x":[1.50, null]}}""";
        var file = Read(Firebox, Later);
        Assert.Empty(file.Problems);
        Assert.IsType<UnknownBody>(file.Journal.Entries[1].Body);
        Assert.Equal(Header + "\n" + Firebox + "\n" + Later + "\n", VisitFile.Write(file.Journal));
    }

    [Fact]
    public void A_torn_last_line_is_tolerated()
    {
        var file = VisitFile.Read(Header + "\n" + Firebox + "\n" + Firebox[..40]);
        var problem = Assert.Single(file.Problems);
        Assert.Contains("cut off", problem.Message, StringComparison.Ordinal);
        Assert.Single(Visit.Fold(file.Journal).Readings);
    }

    [Fact]
    public void Line_ends_and_marks_of_other_systems_are_tolerated()
    {
        var file = VisitFile.Read("\uFEFF" + Header + "\r\n\r\n" + Firebox + "\r\n");
        Assert.Empty(file.Problems);
        Assert.Equal(Firebox, Assert.Single(file.Journal.Entries).Line);
    }

    [Fact]
    public void A_missing_header_is_reported_and_the_entries_are_read()
    {
        var file = VisitFile.Read(Firebox + "\n");
        Assert.Contains("header", Assert.Single(file.Problems).Message, StringComparison.Ordinal);
        Assert.Single(file.Journal.Entries);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("nonsense")]
    [InlineData("[1,2]")]
    [InlineData("{\"format\":\"emberwright-visit\"}")]
    public void Whatever_the_text_it_is_a_report_and_not_a_crash(string text) => Assert.NotEmpty(VisitFile.Read(text).Problems);

    [Fact]
    public void A_file_of_a_newer_version_says_so_and_is_still_read()
    {
        var file = VisitFile.Read(Header.Replace("\"version\":1", "\"version\":2", StringComparison.Ordinal) + "\n" + Firebox + "\n");
        Assert.Equal("version", Assert.Single(file.Problems).Field);
        Assert.IsType<ReadingBody>(Assert.Single(file.Journal.Entries).Body);
    }

    [Fact]
    public void A_time_without_an_offset_is_refused()
    {
        var file = Read(Firebox.Replace("-05:00", "", StringComparison.Ordinal));
        Assert.Contains(file.Problems, p => p.Field == "at" && p.Remedy.Contains("-05:00", StringComparison.Ordinal));
    }

    [Fact]
    public void Older_entries_are_cast_up_step_by_step()
    {
        // As if versions 1 and 2 had called a note's words first "text", then "remark".
        UpcastStep Rename(int from, string old, string now) => new(from, (kind, body) =>
            (kind, kind == "note" ? JsonDocument.Parse(body.GetRawText().Replace($"\"{old}\"", $"\"{now}\"", StringComparison.Ordinal)).RootElement : body));
        UpcastStep[] steps = [Rename(0, "text", "remark"), Rename(1, "remark", "words")];
        var file = VisitFile.Read(Header + "\n" + """{"v":0,"at":"2026-01-14T09:30:00Z","kind":"note","body":{"text":"old"}}""", steps);
        Assert.Empty(file.Problems);
        Assert.Equal(new NoteBody("old"), Assert.Single(file.Journal.Entries).Body);
    }
}
