using Emberwright.Stove.Quantities;

namespace Emberwright.Visits.Journal;

/// <summary>What is known of the stove's past.</summary>
/// <param name="AgeYears">Age, years.</param>
/// <param name="FuelSinceService">Fuel burned since the last full service.</param>
/// <param name="BagsSinceService">The same in bags.</param>
/// <param name="Bag">Mass of one bag; 40 lb (18.1 kg) and 15 kg are usual.</param>
/// <param name="LastService">Date of the last full service.</param>
/// <param name="MonthsSinceService">Or months since then.</param>
/// <param name="Fuel">The fuel in words.</param>
/// <param name="LastAsLeft">Readings as left at the last visit.</param>
/// <param name="HoursAtService">What the hour counter showed at the last full service, h.</param>
public sealed record HistoryBody(
    double? AgeYears = null, Quantity? FuelSinceService = null, double? BagsSinceService = null, Quantity? Bag = null,
    DateOnly? LastService = null, double? MonthsSinceService = null, string? Fuel = null,
    IReadOnlyList<ReadingBody>? LastAsLeft = null, double? HoursAtService = null) : EntryBody
{
    private const double DaysPerMonth = 365.2425 / 12;

    /// <inheritdoc/>
    public override string Kind => "history";

    /// <summary>Fuel since the last full service, metric tonnes; null when not known.</summary>
    public double? TonnesSinceService =>
        (FuelSinceService?.Si ?? BagsSinceService * Bag?.Si) / 1000;

    /// <summary>Months between the last full service and a date; null when not known.</summary>
    public double? MonthsBefore(DateOnly date) =>
        LastService is { } last ? (date.DayNumber - last.DayNumber) / DaysPerMonth : MonthsSinceService;

    internal static HistoryBody Read(BodyReader r)
    {
        var bags = r.Number("bagsSinceService", 0, 10_000);
        var bag = r.Quantity("bag", Dimension.Mass);
        if (bags is not null && bag is null && !r.Has("bag"))
            r.Report<string>("bag", "", "Bags are counted but their mass is not stated.", "Add \"bag\": \"40 lb\" or \"15 kg\".");
        return new(r.Number("ageYears", 0, 100), r.Quantity("fuelSinceService", Dimension.Mass), bags, bag, r.Date("lastService"),
            r.Number("monthsSinceService", 0, 1200), r.Text("fuel"), r.Objects("lastAsLeft", ReadingBody.Read),
            r.Number("hoursAtService", 0, 100_000));
    }

    internal override void Write(BodyWriter w)
    {
        w.Number("ageYears", AgeYears);
        w.Quantity("fuelSinceService", FuelSinceService);
        w.Number("bagsSinceService", BagsSinceService);
        w.Quantity("bag", Bag);
        w.Date("lastService", LastService);
        w.Number("monthsSinceService", MonthsSinceService);
        w.Text("fuel", Fuel);
        w.Number("hoursAtService", HoursAtService);
        w.Objects("lastAsLeft", LastAsLeft ?? [], (reading, writer) => reading.Write(writer));
    }
}
