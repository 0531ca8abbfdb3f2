using System.ComponentModel;
using System.Globalization;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Fouling;
using Spectre.Console.Cli;

namespace Emberwright.Cli;

/// <summary>What a command about the visits to a stove takes.</summary>
internal class StoveSettings : CommandSettings
{
    [CommandArgument(0, "<FILES>")]
    [Description("Visit files, or folders of them")]
    public required string[] Files { get; init; }

    [CommandOption("--day <DATE>")]
    [Description("The day to reckon from, such as 2026-10-01; today unless given")]
    public string? Day { get; init; }

    [CommandOption("--fuel-per-year <MASS>")]
    [Description("Fuel of a whole year, e.g. 1.2t or 2600lb; from the visits unless given")]
    public string? FuelPerYear { get; init; }

    [CommandOption("--degree-days <TWELVE>")]
    [Description("Heating degree days of January to December, with commas; a cool temperate winter unless given")]
    public string? DegreeDays { get; init; }

    [CommandOption("--json")]
    [Description("Write JSON, as docs/json.md describes")]
    public bool Json { get; init; }

    /// <summary>The day to reckon from.</summary>
    /// <exception cref="InputException">The text is no date.</exception>
    public DateOnly DayOr(TimeProvider time) => Day is null ? DateOnly.FromDateTime(time.GetLocalNow().DateTime) : Date(Day, "--day");

    /// <summary>The household's fuel as stated; null to take it from the visits.</summary>
    /// <param name="told">What the visits tell, for what is not stated.</param>
    /// <exception cref="InputException">A text is no mass or not twelve numbers.</exception>
    public FuelUse? Use(FuelUse told)
    {
        if (FuelPerYear is null && DegreeDays is null) return null;
        var tonnes = told.TonnesPerYear;
        if (FuelPerYear is not null)
        {
            if (!Quantity.TryParse(FuelPerYear, Dimension.Mass, out var mass, out var problem))
                throw new InputException("--fuel-per-year", $"'{FuelPerYear}': {problem!.Message.TrimEnd('.')}", problem.Remedy);
            tonnes = mass.Si / 1000;
        }

        return new FuelUse(tonnes, FuelPerYear is null ? told.LnSd : 0.25, DegreeDays is null ? null : Months(DegreeDays), FuelPerYear is null ? told.Basis : "stated");
    }

    /// <summary>A date given to an option.</summary>
    /// <exception cref="InputException">The text is no date.</exception>
    public static DateOnly Date(string text, string option) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            ? date
            : throw new InputException(option, $"'{text}' is not a date", "Write year-month-day, such as 2026-10-01.");

    private static double[] Months(string text) =>
    [
        .. text.Split(',').Select(part => double.TryParse(part, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new InputException("--degree-days", $"'{part}' is not a number", "Write twelve numbers with commas, January first.")),
    ];
}
