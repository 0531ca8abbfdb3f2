using System.Text.Json;
using System.Text.Json.Serialization;
using Emberwright.Visits;
using Emberwright.Visits.Fouling;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli.Json;

internal sealed record ForecastDocument
{
    public required string Engine { get; init; }
    public required string Stove { get; init; }
    public required string Day { get; init; }
    public required string From { get; init; }
    public required IReadOnlyList<string> Visits { get; init; }
    public required JsonFuelUse Fuel { get; init; }
    public required IReadOnlyList<JsonAreaForecast> Areas { get; init; }
    public required JsonNextDue Due { get; init; }

    public static string Text(ForecastDocument document) => JsonSerializer.Serialize(document, JsonOf.Options);

    public static JsonNextDue NextDue(FoulingForecast forecast) => new(
        Date(forecast.Due), Date(forecast.DateTo(0.1)), Date(forecast.DateTo(0.5)), Date(forecast.DateTo(0.9)), Date(forecast.DueByFouling),
        FoulingForecast.AcceptedRisk, EnumWords.Of(forecast.First.Growth.Prior.Passage));

    public static JsonAreaForecast Area(AreaForecast area, DateOnly day)
    {
        var (low, middle, high) = area.Restriction(area.Use.TonnesBetween(area.From, day));
        return new(
            EnumWords.Of(area.Growth.Prior.Passage), PassageWords.Of(area.Growth.Prior.Passage),
            new(R(low), R(middle), R(high), RestrictionWords.Of(area.Growth.Prior.Passage, middle)),
            new(R(area.Growth.Quantile(0.1)), R(area.Growth.Quantile(0.5)), R(area.Growth.Quantile(0.9))),
            area.Growth.Seasons.Count, PassageWords.RestsOn(area.Growth), R(Deposit.Share(area.Limit)), area.Why,
            new(R(area.TonnesTo(0.1)), R(area.TonnesTo(0.5)), R(area.TonnesTo(0.9))),
            new(Date(area.DateTo(0.1)), Date(area.DateTo(0.5)), Date(area.DateTo(0.9))));
    }

    public static string? Date(DateOnly? date) => date?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static double R(double value) => Math.Round(value, 4);
}

internal sealed record JsonFuelUse(double TonnesPerYear, double LnSd, string Basis, IReadOnlyList<double> MonthShares);

internal sealed record JsonAreaForecast(
    string Area, string Name, JsonInterval Today, JsonThree GrowthPerTonne, int Seasons, string RestsOn, double Limit, string Why,
    JsonThree TonnesToLimit, JsonThreeDates DateOfLimit);

internal sealed record JsonThree(double Low, double Median, double High);

internal sealed record JsonThreeDates(string? Early, string? Likely, string? Late);

internal sealed record JsonNextDue(
    [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] string? On, string? Early, string? Likely, string? Late, string? ByFouling,
    double AcceptedRisk, string FirstArea);
