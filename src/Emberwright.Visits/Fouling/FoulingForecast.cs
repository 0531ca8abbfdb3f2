using Emberwright.Stove;

namespace Emberwright.Visits.Fouling;

/// <summary>
/// How a stove fouls and when it is due. A date that was agreed is another thing: that one stands in the visit.
/// </summary>
/// <param name="Areas">Each area that fouls.</param>
public sealed record FoulingForecast(IReadOnlyList<AreaForecast> Areas)
{
    /// <summary>The chance of a limit passed unseen that a due date may leave.</summary>
    public const double AcceptedRisk = 0.2;

    /// <summary>Longest time between two services, months, whatever the forecast: makers and insurers ask for a yearly one (common practice, no source).</summary>
    public const int MostMonths = 12;

    /// <summary>Probability that any area has passed its limit by a date; areas are taken as independent.</summary>
    public double Passed(DateOnly date) => 1 - Areas.Aggregate(1.0, (sound, area) => sound * (1 - area.Passed(date)));

    /// <summary>The area that is likeliest to be the first.</summary>
    public AreaForecast First => Areas.MinBy(area => area.TonnesTo(0.5))!;

    /// <summary>The day by which the chance that some area has passed its limit reaches a probability; null when more than thirty years away.</summary>
    public DateOnly? DateTo(double probability)
    {
        if (Areas.Count == 0) return null;
        var from = Areas[0].From;
        var (low, high) = (from.DayNumber, from.AddYears(30).DayNumber);
        if (Passed(from) >= probability) return from;
        if (Passed(DateOnly.FromDayNumber(high)) < probability) return null;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (Passed(DateOnly.FromDayNumber(middle)) < probability) low = middle;
            else high = middle;
        }

        return DateOnly.FromDayNumber(high);
    }

    /// <summary>When to come: before the chance of a limit passed exceeds <see cref="AcceptedRisk"/>.</summary>
    public DateOnly? DueByFouling => DateTo(AcceptedRisk);

    /// <summary>The due date by fouling or the yearly service, whichever is sooner.</summary>
    public DateOnly? Due => Areas.Count == 0 ? null
        : DueByFouling is { } due && due < Yearly ? due : Yearly;

    private DateOnly Yearly => Areas[0].From.AddMonths(MostMonths);

    /// <summary>Sets up a forecast.</summary>
    /// <param name="growths">How fast each area fouls.</param>
    /// <param name="today">How fouled each is; one that is not given is taken as serviced well: x = 0.07 ± 0.05.</param>
    /// <param name="limits">The limit of each and why.</param>
    /// <param name="use">The household's fuel.</param>
    /// <param name="day">Today.</param>
    public static FoulingForecast Of(
        IEnumerable<Growth> growths, IReadOnlyDictionary<Parameter, Deposit> today, IReadOnlyDictionary<Parameter, FoulingEnd> limits,
        FuelUse use, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(growths);
        ArgumentNullException.ThrowIfNull(today);
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(use);
        return new([.. growths.Where(growth => limits.ContainsKey(growth.Prior.Passage)).Select(growth => Area(growth))]);

        AreaForecast Area(Growth growth)
        {
            var (limit, why) = limits[growth.Prior.Passage];
            return new(growth, today.GetValueOrDefault(growth.Prior.Passage, Serviced), limit, why, use, day);
        }
    }

    private static readonly Deposit Serviced = new(0.07, 0.05);
}
