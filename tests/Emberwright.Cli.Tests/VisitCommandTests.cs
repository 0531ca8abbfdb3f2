using System.Text.Json;
using Emberwright.Diagnosis;
using Xunit;

namespace Emberwright.Cli.Tests;

public class VisitCommandTests
{
    private const double PascalPerInchOfWater = 249.08891; // NIST SP 811: inch of water, conventional

    [Fact]
    public void Expect_gives_a_band_for_every_port_fan_only()
    {
        var run = Run.Of("expect", Run.Demo("healthy-service"), "--json");

        Assert.Equal(ExitCodes.Ok, run.Code);
        var bands = run.Json.GetProperty("bands").EnumerateArray().ToList();
        foreach (var port in new[] { "firebox", "blower-inlet", "collar" })
        {
            var band = bands.Single(b => Text(b, "port") == port && Text(b, "quantity") == "pressure" && Text(b, "condition") == "cold, on, closed");
            Assert.Equal("Pa", Text(band, "unit"));
            Assert.True(Number(band, "low") < Number(band, "expected") && Number(band, "expected") < Number(band, "high"));
            Assert.InRange(Number(band, "confidence"), 0.5, 0.999);
        }
    }

    [Fact]
    public void Us_and_si_are_the_same_band_in_other_units()
    {
        var si = Firebox(Run.Of("expect", Run.Demo("healthy-service"), "--json", "--units", "si"));
        var us = Firebox(Run.Of("expect", Run.Demo("healthy-service"), "--json", "--units", "us"));

        Assert.Equal("inWC", Text(us, "unit"));
        Assert.Equal(Number(si, "low") / PascalPerInchOfWater, Number(us, "low"), 4);
        Assert.Equal(Number(si, "high") / PascalPerInchOfWater, Number(us, "high"), 4);
    }

    [Fact]
    public void Compare_tells_which_way_a_reading_is_out()
    {
        var run = Run.Of("compare", Run.Demo("nest-in-the-cap"), "--json");

        Assert.Equal(ExitCodes.Findings, run.Code);
        var verdicts = run.Json.GetProperty("comparisons").EnumerateArray().ToDictionary(c => Text(c, "port"), c => Text(c, "verdict"));
        Assert.Equal("too-weak", verdicts["firebox"]);
        Assert.Equal("too-weak", verdicts["blower-inlet"]);
        Assert.Contains(verdicts["collar"], new[] { "too-strong", "high" });
    }

    [Fact]
    public void A_nest_in_the_cap_is_the_first_suspect()
    {
        var run = Run.Of("suspects", Run.Demo("nest-in-the-cap"), "--json");

        var first = run.Json.GetProperty("suspects")[0];
        Assert.Equal("nest-in-cap", Text(first, "fault"));
        Assert.True(Number(first, "probability") > 0.5);
        Assert.NotEmpty(first.GetProperty("because").EnumerateArray());
        Assert.False(string.IsNullOrWhiteSpace(Text(first, "priorOrigin")));
    }

    [Fact]
    public void Explained_each_prior_stands_beside_its_origin_and_each_restriction_found_beside_left()
    {
        var run = Run.Of("suspects", Run.Demo("nest-in-the-cap"), "--explain");

        Assert.Contains("before any evidence (", run.Out, StringComparison.Ordinal);
        Assert.Matches(@"(open|fair|poor|shut), \d+ % \(\d+–\d+\)", run.Out);
    }

    [Fact]
    public void What_was_found_and_what_is_left_stand_in_one_line()
    {
        var ash = new RestrictionEstimate(Stove.Parameter.AshPassages, "ash passages", new(0.48, 0.62, 0.74), new(0.02, 0.06, 0.13));
        Assert.Equal("poor, 62 % (48–74) → open, 6 % (2–13)", Emberwright.Visits.RestrictionWords.Sentence(ash));
        Assert.Equal("poor, 62 % (48–74)", Emberwright.Visits.RestrictionWords.Sentence(ash with { Now = ash.AsFound }));
    }

    [Fact]
    public void Full_ash_passages_are_the_first_suspect_and_shown_as_an_area()
    {
        var run = Run.Of("suspects", Run.Demo("ash-passages-full"), "--json");

        Assert.Equal("ash-passages-full", Text(run.Json.GetProperty("suspects")[0], "fault"));
        var area = run.Json.GetProperty("areas").EnumerateArray().Single(a => Text(a, "area") == "ash-passages");
        Assert.InRange(Number(area.GetProperty("asFound"), "median"), 0.4, 0.9);
        Assert.Equal("poor", Text(area.GetProperty("asFound"), "word"));
    }

    [Fact]
    public void Next_names_a_check_with_two_alternatives()
    {
        var run = Run.Of("next", Run.Demo("ash-passages-full"), "--json");

        var next = run.Json.GetProperty("nextCheck");
        Assert.False(string.IsNullOrWhiteSpace(Text(next, "because")));
        Assert.True(Number(next, "minutes") > 0 && Number(next, "cost") > 0);
        Assert.Equal(2, next.GetProperty("alternatives").GetArrayLength());
    }

    [Fact]
    public void A_service_with_nothing_wrong_is_not_called_faulty()
    {
        var run = Run.Of("suspects", Run.Demo("healthy-service"), "--json");

        Assert.Equal(ExitCodes.Ok, run.Code);
        Assert.Equal("nothing", Text(run.Json.GetProperty("suspects")[0], "fault"));
    }

    [Fact]
    public void Malformed_lines_are_named_and_the_rest_is_used()
    {
        var run = Run.Of("suspects", Run.Demo("ash-passages-full"), "--json");

        Assert.Equal(ExitCodes.BadInput, run.Code);
        var problems = run.Json.GetProperty("problems").EnumerateArray().ToList();
        Assert.Equal([21, 23], problems.Select(p => p.GetProperty("line").GetInt32()));
        Assert.All(problems, p => Assert.False(string.IsNullOrWhiteSpace(Text(p, "remedy"))));
        Assert.Contains("21", run.Error, StringComparison.Ordinal);
        Assert.Contains("23", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_without_a_stove_says_what_to_add()
    {
        var run = Run.OfInput("{\"format\":\"emberwright-visit\",\"version\":1,\"visit\":\"v\"}\n", "suspects", "-");

        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains("damper-insert", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_file_is_named()
    {
        var run = Run.Of("next", "no-such-visit.jsonl");

        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains("no-such-visit.jsonl", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void Text_carries_no_colour_when_piped()
    {
        foreach (var command in new[] { "expect", "compare", "suspects", "next" })
            Assert.DoesNotContain('\u001b', Run.Of(command, Run.Demo("nest-in-the-cap")).Out);
    }

    [Fact]
    public void The_order_of_lines_does_not_matter()
    {
        var lines = File.ReadAllLines(Run.Demo("nest-in-the-cap"));
        var turned = string.Join('\n', lines.Take(1).Concat(lines.Skip(1).Reverse()));

        Assert.Equal(Run.Of("suspects", Run.Demo("nest-in-the-cap"), "--json").Out, Run.OfInput(turned, "suspects", "-", "--json").Out);
    }

    [Theory]
    [InlineData("healthy-service")]
    [InlineData("ash-passages-full")]
    public void Report_writes_a_pdf(string demo)
    {
        var path = Path.Combine(Path.GetTempPath(), $"emberwright-{Guid.NewGuid():N}.pdf");
        try
        {
            var run = Run.Of("report", Run.Demo(demo), "-o", path, "--json");
            var bytes = File.ReadAllBytes(path);
            Assert.Equal("%PDF"u8.ToArray(), bytes[..4]);
            Assert.True(run.Json.GetProperty("pages").GetInt32() >= 2);
            Run.Of("report", Run.Demo(demo), "-o", path);
            Assert.Equal(bytes, File.ReadAllBytes(path));
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void A_report_that_cannot_be_written_says_where()
    {
        var run = Run.Of("report", Run.Demo("healthy-service"), "-o", "no-such-folder/report.pdf");

        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains("no-such-folder", run.Error, StringComparison.Ordinal);
    }

    private static JsonElement Firebox(Run run) => run.Json.GetProperty("bands").EnumerateArray()
        .First(b => Text(b, "port") == "firebox" && Text(b, "condition") == "cold, on, closed");

    private static string Text(JsonElement e, string field) => e.TryGetProperty(field, out var v) ? v.GetString() ?? "" : "";

    private static double Number(JsonElement e, string field) => e.GetProperty(field).GetDouble();
}
