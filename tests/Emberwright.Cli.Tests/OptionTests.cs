using Xunit;

namespace Emberwright.Cli.Tests;

public class OptionTests
{
    [Theory]
    [InlineData("expect")]
    [InlineData("compare")]
    [InlineData("suspects")]
    [InlineData("next")]
    [InlineData("report")]
    [InlineData("attend")]
    [InlineData("practise")]
    [InlineData("call")]
    [InlineData("flue")]
    [InlineData("faults")]
    [InlineData("meter")]
    [InlineData("patterns")]
    public void Help_shows_an_example(string command)
    {
        var run = Run.Of(command, "--help");

        Assert.Equal(ExitCodes.Ok, run.Code);
        Assert.Contains("EXAMPLES", run.Out, StringComparison.Ordinal);
        Assert.Contains($"emberwright {command}", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-such-command")]
    [InlineData("expect")]
    [InlineData("expect", "x.jsonl", "--units", "metric")]
    [InlineData("expect", "x.jsonl", "--no-such-option")]
    [InlineData("report", "x.jsonl", "--page", "a5")]
    [InlineData("faults", "--area", "attic")]
    [InlineData("flue", "--o2", "11")]
    [InlineData("flue", "--o2", "95", "--flue", "160degC")]
    [InlineData("flue", "--o2", "11,5", "--flue", "160degC")]
    [InlineData("meter", "no-such-pattern")]
    [InlineData("meter", "damper-insert", "--from", "nowhere")]
    [InlineData("patterns", "no-such-pattern")]
    public void Bad_input_ends_with_2_and_a_message_on_standard_error(params string[] args)
    {
        var run = Run.Of(args);

        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.NotEmpty(run.Error);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void Patterns_say_how_to_get_at_the_hidden_ash()
    {
        var run = Run.Of("patterns", "thermocouple-freestanding", "--json");
        var pattern = run.Json.GetProperty("patterns")[0];
        var trap = pattern.GetProperty("ashTraps").EnumerateArray().Single(t => t.GetProperty("id").GetString() == "hidden-chamber");
        var through = trap.GetProperty("through").EnumerateArray().Select(t => t.GetString()).ToList();
        var cover = pattern.GetProperty("panels").EnumerateArray().Single(p => p.GetProperty("id").GetString() == "chamber-covers");

        Assert.True(trap.GetProperty("hidden").GetBoolean());
        Assert.Contains("chamber-covers", through);
        Assert.True(cover.GetProperty("fasteners")[0].GetProperty("count").GetInt32() > 0);
        Assert.NotEmpty(cover.GetProperty("cautions").EnumerateArray());
        Assert.Contains("hidden ash chamber", Run.Of("patterns", "thermocouple-freestanding").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Flue_gives_the_textbook_air_ratio()
    {
        // λ = 2 on the fuel "50.50 C, 6.10 H, 42.89 O" has 10.52 % O2, dry: stoichiometry of the fuel's elements.
        var run = Run.Of("flue", "--o2", "10.52", "--flue", "180degC", "--json");

        var ratio = run.Json.GetProperty("figures").EnumerateArray().Single(f => f.GetProperty("id").GetString() == "air-ratio");
        Assert.Equal(2, ratio.GetProperty("value").GetDouble(), 2);
    }

    [Fact]
    public void Flue_takes_both_temperature_scales()
    {
        static double Efficiency(string flue) => Run.Of("flue", "--o2", "11", "--flue", flue, "--json").Json
            .GetProperty("figures").EnumerateArray().Single(f => f.GetProperty("id").GetString() == "efficiency").GetProperty("value").GetDouble();

        Assert.Equal(Efficiency("180degC"), Efficiency("356degF"), 9);
    }

    [Fact]
    public void A_figure_opens_to_its_source()
    {
        Assert.Contains("NIST", Run.Of("flue", "--o2", "11", "--flue", "180degC", "--open", "efficiency").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void An_open_switch_shows_the_supply_across_it_and_a_closed_one_nothing()
    {
        static double Volts(params string[] more) => Run.Of(["meter", "damper-insert", "--state", "igniting", "--from", "vacuum-switch", "--json", .. more]).Json
            .GetProperty("readings")[0].GetProperty("value").GetDouble();

        Assert.InRange(Volts(), 0, 0.5);
        Assert.InRange(Volts("--fault", "vacuum-switch:open"), 115, 125);
    }

    [Fact]
    public void A_card_brings_its_own_supply()
    {
        var card = Path.Combine(Path.GetTempPath(), $"emberwright-{Guid.NewGuid():N}.card.json");
        File.WriteAllText(card, """{"format":"emberwright-card","version":1,"pattern":"damper-insert","name":"Invented Fernhollow 3","wiring":{"supply":"230 V","frequencyHz":50}}""");
        try
        {
            var volts = Run.Of("meter", "damper-insert", "--card", card, "--state", "igniting", "--from", "supply", "--json");
            Assert.InRange(volts.Json.GetProperty("readings")[0].GetProperty("value").GetDouble(), 220, 240);

            var other = Run.Of("meter", "underfed", "--card", card);
            Assert.Equal(ExitCodes.BadInput, other.Code);
            Assert.Contains("damper-insert", other.Error, StringComparison.Ordinal);

            File.WriteAllText(card, """{"format":"emberwright-card","version":1,"pattern":"damper-insert","wiring":{"supply":"9000 V"}}""");
            var wrong = Run.Of("meter", "damper-insert", "--card", card);
            Assert.Equal(ExitCodes.BadInput, wrong.Code);
            Assert.Contains("$.wiring.supply", wrong.Error, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(card);
        }
    }

    [Fact]
    public void Ohms_on_a_live_circuit_are_refused()
    {
        var run = Run.Of("meter", "damper-insert", "--state", "igniting", "--function", "ohms", "--from", "feed-motor");

        Assert.Equal(ExitCodes.Findings, run.Code);
        Assert.Contains("refused", run.Out, StringComparison.Ordinal);
        Assert.Contains("plug", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_can_be_narrowed()
    {
        var all = Run.Of("faults", "--json").Json.GetProperty("faults").GetArrayLength();
        var vent = Run.Of("faults", "--pattern", "damper-insert", "--area", "vent", "--json").Json.GetProperty("faults").GetArrayLength();

        Assert.True(all >= 75);
        Assert.InRange(vent, 3, all - 1);
    }
}
