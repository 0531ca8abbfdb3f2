// Question:    how much fuel will this stove have burned by a date, and when will it have burned a given amount?
// Equations:   F(a, b) = U · Σ over months of share_m · (days of the month within a…b)/(days of the month).
// Symbols:     U fuel of a whole year, t; share_m share of the year burned in month m, Σ = 1.
// Validity:    U above 0; dates at most 30 years apart, beyond which no date is given.
// Assumptions: every year is like the next; within a month the use is even.
// Source:      shares in proportion to heating degree days where those are given; the built-in ones are a cool temperate
//              winter of the northern half, from memory.
// Worked:      1.5 t a year, 1 January to 1 February: 0.19 × 1.5 = 0.285 t.
using Emberwright.Stove;

namespace Emberwright.Visits.Fouling;

/// <summary>The fuel a household burns in a year and how it spreads over the months.</summary>
public sealed record FuelUse
{
    private const int MostYears = 30;
    private static readonly double[] CoolTemperate = [.19, .16, .14, .08, .03, 0, 0, 0, .02, .08, .13, .17];

    /// <summary>States a household's use.</summary>
    /// <param name="tonnesPerYear">Fuel of a whole year, t; 0.01…20.</param>
    /// <param name="lnSd">How far a year may differ, ln; 0…1.5.</param>
    /// <param name="monthShares">Twelve shares from January on, or degree days, or anything in proportion; null for a cool temperate winter.</param>
    /// <param name="basis">What it rests on, in words.</param>
    /// <exception cref="InputException">A number makes no sense.</exception>
    public FuelUse(double tonnesPerYear, double lnSd = 0.25, IReadOnlyList<double>? monthShares = null, string basis = "stated")
    {
        TonnesPerYear = InputException.Require(tonnesPerYear, 0.01, 20, "fuel per year", "t", "Count the bags of a winter: 50 bags of 40 lb are 0.91 t.");
        LnSd = InputException.Require(lnSd, 0, 1.5, "spread of fuel per year", "", "0.25 is usual: one year in three differs by more than a quarter.");
        var shares = monthShares ?? CoolTemperate;
        if (shares.Count != 12 || shares.Any(s => !(s >= 0)) || !(shares.Sum() > 0))
            throw new InputException("month shares", $"{string.Join(" ", shares)} given, twelve numbers from 0 up and not all 0 needed", "Give heating degree days of January to December.");
        var sum = shares.Sum();
        MonthShares = [.. shares.Select(s => s / sum)];
        Basis = basis;
    }

    /// <summary>Fuel of a whole year, t.</summary>
    public double TonnesPerYear { get; }

    /// <summary>How far a year may differ, ln.</summary>
    public double LnSd { get; }

    /// <summary>Share of the year burned in January … December.</summary>
    public IReadOnlyList<double> MonthShares { get; }

    /// <summary>What it rests on.</summary>
    public string Basis { get; }

    /// <summary>Fuel expected to burn between two dates, t.</summary>
    public double TonnesBetween(DateOnly from, DateOnly to)
    {
        var sum = 0.0;
        for (var at = from; at < to;)
        {
            var days = DateTime.DaysInMonth(at.Year, at.Month);
            var next = new DateOnly(at.Year, at.Month, 1).AddMonths(1);
            if (next > to) next = to;
            sum += MonthShares[at.Month - 1] * (next.DayNumber - at.DayNumber) / days;
            at = next;
        }

        return TonnesPerYear * sum;
    }

    /// <summary>The day by which an amount has burned; null when that is more than thirty years away.</summary>
    public DateOnly? DateAfter(DateOnly from, double tonnes)
    {
        if (tonnes <= 0) return from;
        var (low, high) = (from.DayNumber, from.AddYears(MostYears).DayNumber);
        if (TonnesBetween(from, DateOnly.FromDayNumber(high)) < tonnes) return null;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (TonnesBetween(from, DateOnly.FromDayNumber(middle)) < tonnes) low = middle;
            else high = middle;
        }

        return DateOnly.FromDayNumber(high);
    }
}
