using Xunit;

namespace Emberwright.Cli.Tests;

public class VentCommandTests
{
    [Fact]
    public void Six_cases_a_rule_and_a_list_to_confirm()
    {
        var json = Run.Of("vent", Run.Demo("healthy-service"), "--json").Json;

        Assert.Equal(6, json.GetProperty("cases").GetArrayLength());
        // 0.3 m + 5.5 m / 2 + one tee, by hand.
        Assert.Equal((0.3 / 0.3048) + (5.5 / 0.3048 / 2) + 5, json.GetProperty("equivalentLengthFt").GetDouble(), 0.01);
        Assert.All(json.GetProperty("terminations").EnumerateArray(), t => Assert.Equal("common practice, no source", t.GetProperty("origin").GetString()));
        Assert.Contains("not a judgement of compliance", json.GetProperty("caution").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_gale_is_too_much_and_calm_is_not()
    {
        Assert.Equal(ExitCodes.Ok, Run.Of("vent", Run.Demo("healthy-service"), "--wind", "0").Code);
        var gale = Run.Of("vent", Run.Demo("healthy-service"), "--wind", "40mph");

        Assert.Equal(ExitCodes.Findings, gale.Code);
        Assert.Contains("No diameter sold", gale.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wind_that_is_none_is_refused() =>
        Assert.Contains("furlong", Run.Of("vent", Run.Demo("healthy-service"), "--wind", "3furlong").Error, StringComparison.Ordinal);
}
