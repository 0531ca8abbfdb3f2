using System.Globalization;
using System.Text.Json;
using Xunit;

namespace Emberwright.Cli.Tests;

public class ForecastCommandTests
{
    [Fact]
    public void A_forecast_of_one_visit_rests_on_what_is_usual_and_comes_within_the_year()
    {
        var run = Run.Of("forecast", Run.Demo("healthy-service"), "--day", "2026-05-01", "--json");

        Assert.Equal(ExitCodes.Ok, run.Code);
        var areas = run.Json.GetProperty("areas").EnumerateArray().ToList();
        Assert.All(areas, area => Assert.Equal(0, area.GetProperty("seasons").GetInt32()));
        Assert.All(areas, area => Rising(area.GetProperty("tonnesToLimit"), "low", "median", "high"));
        // Served on 21 April 2026: the yearly service is the latest there can be.
        var due = Date(run.Json.GetProperty("due"), "on");
        Assert.InRange(due, new DateOnly(2026, 5, 1), new DateOnly(2027, 4, 21));
        // 1.1 t since 16 April 2025, a year and five days before.
        Assert.Equal(1.1 * 365.2425 / 370, run.Json.GetProperty("fuel").GetProperty("tonnesPerYear").GetDouble(), 0.01);
    }

    [Fact]
    public void More_fuel_a_year_brings_every_date_forward_and_leaves_the_fuel_to_the_limit()
    {
        var little = Run.Of("forecast", Run.Demo("healthy-service"), "--day", "2026-05-01", "--fuel-per-year", "0.6t", "--json").Json;
        var much = Run.Of("forecast", Run.Demo("healthy-service"), "--day", "2026-05-01", "--fuel-per-year", "5280lb", "--json").Json;

        Assert.True(Date(much.GetProperty("due"), "likely") < Date(little.GetProperty("due"), "likely"));
        foreach (var (a, b) in little.GetProperty("areas").EnumerateArray().Zip(much.GetProperty("areas").EnumerateArray()))
            Assert.Equal(a.GetProperty("tonnesToLimit").GetProperty("median").GetDouble(), b.GetProperty("tonnesToLimit").GetProperty("median").GetDouble(), 1e-9);
    }

    [Fact]
    public void A_stove_past_its_date_is_a_finding() =>
        Assert.Equal(ExitCodes.Findings, Run.Of("forecast", Run.Demo("healthy-service"), "--day", "2028-01-01").Code);

    [Fact]
    public void Two_stoves_are_refused_and_both_are_named()
    {
        var run = Run.Of("forecast", Run.Demo("healthy-service"), Run.Demo("nest-in-the-cap"));

        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains("healthy-service.jsonl", run.Error, StringComparison.Ordinal);
        Assert.Contains("nest-in-the-cap.jsonl", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--day", "first of May", "year-month-day")]
    [InlineData("--fuel-per-year", "50 bags", "--fuel-per-year")]
    [InlineData("--degree-days", "1,2,3", "twelve")]
    public void An_option_that_cannot_be_read_says_what_to_write(string option, string value, string remedy)
    {
        var run = Run.Of("forecast", Run.Demo("healthy-service"), option, value);

        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains(remedy, run.Error, StringComparison.Ordinal);
    }

    private static void Rising(JsonElement of, params string[] names)
    {
        var values = names.Select(n => of.GetProperty(n).GetDouble()).ToArray();
        Assert.Equal(values.Order(), values);
    }

    private static DateOnly Date(JsonElement of, string name) =>
        DateOnly.ParseExact(of.GetProperty(name).GetString()!, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
