using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Fouling;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Tests.Firm;

/// <summary>Summaries of visits as tests need them.</summary>
internal static class SomeVisits
{
    public static VisitSummary Of(string visit, string stove, string day, VisitKind kind = VisitKind.Service, VisitState state = VisitState.SignedOff) => new()
    {
        Visit = visit,
        Stove = stove,
        State = state,
        Day = Day(day),
        Kind = kind,
        Pattern = "damper-insert",
        Customer = "Ottilie Brandreth",
        Address = "14 Millrace Lane, county of Orrin",
        Maker = "Fennick & Oar",
        Model = "Hob 40",
    };

    public static DateOnly Day(string day) => DateOnly.ParseExact(day, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    public static DateTimeOffset Noon(string day) => new(Day(day).ToDateTime(new TimeOnly(12, 0)), TimeSpan.FromHours(-5));

    public static PartUsed Fitted(string number, string day) => new("part", number, "fitted", null, Noon(day));

    public static AreasSeen Seen(string day) => new(Day(day),
        [new RestrictionEstimate(Parameter.AshPassages, "Ash passages", new(0.1, 0.25, 0.4), new(0.02, 0.05, 0.1))], true, true, 1.1, 12);
}
