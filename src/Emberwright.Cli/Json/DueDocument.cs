using System.Text.Json;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli.Json;

internal sealed record DueDocument(string Engine, string Day, IReadOnlyList<JsonDue> Due)
{
    public static string Text(DueDocument document) => JsonSerializer.Serialize(document, JsonOf.Options);

    public static JsonDue Of(DueItem item, DateOnly today) => new(
        item.Stove, item.Last.Customer, item.Last.Address, item.Last.Pattern, EnumWords.Of(item.For), ForecastDocument.Date(item.On)!, ForecastDocument.Date(item.Agreed),
        item.IsSoonerThanAgreed, item.Basis, item.Minutes,
        item.Forecast is { } f ? new JsonDueForecast(ForecastDocument.Date(f.Due)!, ForecastDocument.Date(f.Early), ForecastDocument.Date(f.Likely), ForecastDocument.Date(f.Late), f.Area, f.RestsOn) : null,
        item.Last.Visit, ForecastDocument.Date(item.Asked?.On), item.AskAgain(today));
}

internal sealed record JsonDue(
    string Stove, string? Customer, string? Address, string? Pattern, string For, string On, string? Agreed, bool SoonerThanAgreed, string? Basis, double Minutes,
    JsonDueForecast? Forecast, string LastVisit, string? Asked, bool AskAgain);

internal sealed record JsonDueForecast(string Due, string? Early, string? Likely, string? Late, string Area, string RestsOn);
