using System.Text;
using System.Text.Json;
using Xunit;

namespace Emberwright.Cli.Tests;

/// <summary>An attendance typed line by line: what reaches the file, what is said, and that nothing in the file is touched.</summary>
public sealed class AttendCommandTests : IDisposable
{
    private const string Call =
        """
        {"format": "emberwright-visit", "version": 1, "visit": "attend-test"}
        {"at": "2026-01-14T09:00:00-05:00", "author": "R. Sorrel", "kind": "appliance", "body": {"pattern": "damper-insert"}}
        {"kind": "complaint", "body": {"words": "Fans come on, it glows, but not a single pellet drops."}}

        """;

    private readonly string _path = Path.Combine(Path.GetTempPath(), $"emberwright-{Guid.NewGuid():N}.jsonl");

    public void Dispose() => File.Delete(_path);

    private Run Attend(string typed, string file = Call)
    {
        File.WriteAllText(_path, file);
        return Run.OfInput(typed, "attend", _path);
    }

    private List<JsonElement> Written(string file = Call) =>
        [.. File.ReadAllText(_path)[file.Length..].Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => JsonDocument.Parse(l).RootElement)];

    private static string Text(JsonElement entry, string member) => entry.GetProperty("body").TryGetProperty(member, out var v) ? v.GetString()! : "";

    [Fact]
    public void The_next_check_is_said_with_reason_cautions_and_what_comes_first()
    {
        var run = Attend("");

        Assert.Contains("Next: ", run.Out, StringComparison.Ordinal);
        Assert.Contains("Because ", run.Out, StringComparison.Ordinal);
        Assert.Contains("First: ", run.Out, StringComparison.Ordinal);
        Assert.Contains("Caution: ", run.Out, StringComparison.Ordinal);
        Assert.Equal(Call, File.ReadAllText(_path));
    }

    [Fact]
    public void Each_line_is_written_behind_what_was_there_even_when_the_input_just_ends()
    {
        var run = Attend("firebox fan only -0.10 inWC\nvacuum-switch 0 V\nglass: black\n");

        Assert.StartsWith(Call, File.ReadAllText(_path), StringComparison.Ordinal);
        var written = Written();
        Assert.Equal(["reading", "reading", "observation"], written.Select(e => e.GetProperty("kind").GetString()));
        Assert.Equal(("firebox", "-0.10 inWC", "cold, on, closed"), (Text(written[0], "port"), Text(written[0], "value"), Text(written[0], "condition")));
        Assert.Equal(("vacuum-switch", "voltage"), (Text(written[1], "testPoint"), Text(written[1], "quantity")));
        Assert.All(written, e => Assert.Equal("R. Sorrel", e.GetProperty("author").GetString()));
        Assert.Contains("Moved: ", run.Out, StringComparison.Ordinal);
        Assert.Contains("Sign-off still lacks", run.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.Findings, run.Code);
    }

    [Fact]
    public void A_cut_off_last_line_stays_byte_for_byte_and_the_next_entry_is_read()
    {
        var torn = Call + "{\"kind\": \"reading\", \"body\": {\"port\": \"fire";
        var run = Attend("firebox fan only -25 Pa\n", torn);

        Assert.Equal(Encoding.UTF8.GetBytes(torn), File.ReadAllBytes(_path)[..Encoding.UTF8.GetByteCount(torn)]);
        Assert.Equal("-25 Pa", Text(Written(torn).Single(), "value"));
        Assert.Contains("cut off", run.Error, StringComparison.Ordinal);
        var compared = Run.Of("compare", _path, "--json").Json.GetProperty("comparisons").EnumerateArray().Single();
        Assert.Equal(-25, compared.GetProperty("reading").GetDouble(), 6);
    }

    [Fact]
    public void An_answer_by_number_is_that_outcome_of_the_question_asked()
    {
        var run = Attend("take look-hopper\n2\n");

        var entry = Written().Single();
        Assert.Equal(("hopper", "observation"), (Text(entry, "sign"), entry.GetProperty("kind").GetString()));
        var asked = run.Out.Split('\n').Select(l => l.Trim()).First(l => l.StartsWith("2  ", StringComparison.Ordinal))[3..];
        Assert.Equal(Emberwright.Diagnosis.Catalogue.For("damper-insert").Sign("hopper")!.Outcomes[1].Words, asked);
    }

    [Fact]
    public void Taking_back_adds_a_correction_and_the_suspects_stand_as_before()
    {
        Attend("firebox fan only -0.10 inWC\n");
        var before = Run.Of("suspects", _path, "--json").Json.GetProperty("suspects").ToString();
        File.Delete(_path);
        var run = Attend("firebox fan only -0.10 inWC\nvacuum-switch 119 V\nundo\n");

        var written = Written();
        Assert.Equal("correction", written[^1].GetProperty("kind").GetString());
        Assert.Equal(written[1].GetProperty("id").GetString(), Text(written[^1], "withdraws"));
        Assert.Contains("Taken back: vacuum switch 119 V", run.Out, StringComparison.Ordinal);
        Assert.Equal(
            Names(before), Names(Run.Of("suspects", _path, "--json").Json.GetProperty("suspects").ToString()));

        static List<string> Names(string json) =>
            [.. JsonDocument.Parse(json).RootElement.EnumerateArray().Select(s => $"{s.GetProperty("fault")} {s.GetProperty("probability")}")];
    }

    [Fact]
    public void What_was_taken_back_can_be_restored()
    {
        Attend("firebox fan only -25 Pa\nundo\nredo\n");

        Assert.Equal(3, Written().Count);
        Assert.Single(Run.Of("compare", _path, "--json").Json.GetProperty("comparisons").EnumerateArray());
    }

    [Fact]
    public void A_safety_stop_is_shown_as_soon_as_a_reading_calls_for_it_and_the_notice_can_be_written()
    {
        var run = Attend("room co high 80 ppm\nnotice Mrs Larkspur\n");

        Assert.Contains("STOP: Everybody out now", run.Out, StringComparison.Ordinal);
        Assert.True(run.Out.IndexOf("STOP:", StringComparison.Ordinal) > run.Out.IndexOf("Written.", StringComparison.Ordinal));
        Assert.Equal("notice", Written()[1].GetProperty("kind").GetString());
        Assert.Equal("Mrs Larkspur", Text(Written()[1], "readTo"));
    }

    [Theory]
    [InlineData("supply 5,5 V", "decimal")]
    [InlineData("attic 12 Pa", "Places here")]
    [InlineData("flue high 12 %", "o2")]
    [InlineData("collar 160 degC", "condition")]
    [InlineData("xyzzy", "note WORDS")]
    [InlineData("take no-such-check", "find WORDS")]
    [InlineData("notice nobody", "No safety stop")]
    public void What_cannot_be_taken_is_refused_with_what_to_type_and_nothing_is_written(string typed, string remedy)
    {
        var run = Attend(typed + "\n");

        Assert.Contains(remedy, run.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(Call, File.ReadAllText(_path));
    }

    [Fact]
    public void Making_safe_comes_before_opened_work_and_is_written_step_by_step()
    {
        var run = Attend("take clean-ash-passages\nsafe unplugged\n");
        Assert.Contains("unplug, prove dead", run.Out, StringComparison.Ordinal);
        Assert.Equal("unplugged", Text(Written().Single(), "step"));
    }

    [Fact]
    public void A_new_visit_begins_with_its_pattern_and_never_over_a_file_that_is_there()
    {
        var run = Run.OfInput("said not one pellet drops\n", "attend", _path, "--begin", "damper-insert", "--author", "R. Sorrel");
        Assert.Contains("Next: ", run.Out, StringComparison.Ordinal);
        var before = File.ReadAllText(_path);

        var again = Run.OfInput("", "attend", _path, "--begin", "damper-insert");
        Assert.Equal(ExitCodes.BadInput, again.Code);
        Assert.Equal(before, File.ReadAllText(_path));
    }
}
