using Emberwright.Visits.Journal;

namespace Emberwright.DemoFirm;

/// <summary>A visit to come: whose, when, what for.</summary>
internal sealed record Appointment(int Household, DateOnly Day, VisitKind Kind, string? Job);

/// <summary>Lays the visits of a year out: services before and after the season, breakdowns in it, some comebacks.</summary>
internal static class Year
{
    // Shares of the year's calls, January first: services are done out of season, breakdowns come with the cold.
    private static readonly double[] Services = [3, 3, 6, 10, 12, 8, 7, 10, 16, 14, 8, 3];
    private static readonly double[] Breakdowns = [17, 14, 11, 6, 2, 0, 0, 1, 5, 14, 16, 14];

    public static IReadOnlyList<Appointment> Of(Chance chance, int households, int visits, DateOnly last)
    {
        var made = new List<Appointment>();
        for (var i = 0; i < households && made.Count < visits; i++) made.Add(One(chance, i, last, chance.Happens(0.3)));
        while (made.Count < visits)
        {
            var before = chance.Of(made);
            if (before.Kind == VisitKind.Breakdown && chance.Happens(0.35) && before.Day.AddDays(6) <= last)
                made.Add(new(before.Household, before.Day.AddDays(chance.Whole(4, 24)) is var again && again <= last ? again : last, VisitKind.Breakdown, $"TV-{made.Count:0000}"));
            else if (One(chance, before.Household, last, chance.Happens(0.55)) is var other && made.All(a => a.Household != other.Household || Math.Abs(a.Day.DayNumber - other.Day.DayNumber) > 35))
                made.Add(other);
        }

        return [.. made.OrderBy(a => a.Day).ThenBy(a => a.Household)];
    }

    private static Appointment One(Chance chance, int household, DateOnly last, bool breakdown)
    {
        var first = last.AddYears(-1).AddDays(1);
        while (true)
        {
            var month = chance.Weighted([.. Enumerable.Range(0, 12)], m => (breakdown ? Breakdowns : Services)[m]) + 1;
            var year = new DateOnly(last.Year, month, 1) > last ? last.Year - 1 : last.Year;
            var day = new DateOnly(year, month, chance.Whole(1, DateTime.DaysInMonth(year, month)));
            if (day < first || day > last || day.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday) continue;
            var kind = breakdown ? VisitKind.Breakdown : chance.Happens(0.05) ? VisitKind.Inspection : VisitKind.Service;
            return new(household, day, kind, null);
        }
    }
}
