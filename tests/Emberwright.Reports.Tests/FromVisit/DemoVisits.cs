using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.Tests.FromVisit;

/// <summary>The demo's visits, and conclusions as diagnosis might draw them. The numbers are invented; only their way into the report is tested.</summary>
internal static class DemoVisits
{
    public static Visit Load(string name) => Visit.Fold(VisitFile.Read(Text(name)).Journal);

    /// <summary>The file as it lies in the demo.</summary>
    public static string Text(string name) => File.ReadAllText(Path.Combine(Root, "demo", "visits", name + ".jsonl"));

    /// <summary>The same visit with a seal over everything in it.</summary>
    public static Visit Sealed(Visit visit, IReadOnlyDictionary<string, string> figures)
    {
        var at = visit.Journal.Entries[^1].At.AddMinutes(5);
        return Visit.Fold(Factory(visit, at).Append(visit.Journal, Seal.Over(visit.Journal, "0.1.0", figures)));
    }

    /// <summary>The visit with one more entry.</summary>
    public static Visit With(Visit visit, EntryBody body) => Visit.Fold(Factory(visit, visit.Journal.Entries[^1].At.AddMinutes(1)).Append(visit.Journal, body));

    // Ids that do not change from run to run, so that the same test seals the same hash.
    private static EntryFactory Factory(Visit visit, DateTimeOffset at) => new("phone-test", "R. Sorrel", new Stopped(at), _ => new Guid($"00000000-0000-7000-8000-{visit.Journal.Entries.Count:x12}"));

    private sealed class Stopped(DateTimeOffset at) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => at.ToUniversalTime();

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.CreateCustomTimeZone("test", at.Offset, "test", "test");
    }

    public static Beliefs Concluded(Visit visit)
    {
        Band Of(Observable o, double low, double high) => new(o, low, (low + high) / 2, high, 0.9, "pattern");
        Band[] bands =
        [
            Of(new(Measure.Pressure, Places.Firebox, Condition.FanOnly), -34, -23),
            Of(new(Measure.Pressure, Places.BlowerInlet, Condition.FanOnly), -68, -52),
            Of(new(Measure.Pressure, Places.Collar, Condition.FanOnly), 1, 9),
            Of(new(Measure.Pressure, Places.Firebox, Condition.HighBurn), -25, -14),
            Of(new(Measure.Pressure, Places.BlowerInlet, Condition.HighBurn), -70, -55),
            Of(new(Measure.Oxygen, Places.Flue, Condition.HighBurn), 9.5, 13.5),
            Of(new(Measure.CarbonMonoxide, Places.Room, Condition.HighBurn), 0, 9),
        ];
        var comparisons = visit.Readings.Select(r => (Reading: r, Band: bands.FirstOrDefault(b => b.Observable == r.Body.Observable))).Where(r => r.Band is not null)
            .Select(r => new Comparison(r.Reading.Id, r.Reading.Body.Si, r.Band!, Verdict(r.Reading.Body.Si, r.Band!), r.Reading.Epoch)).ToArray();
        return new Beliefs(
            [
                new("ash-passages-full", "Ash passages full", 0.12, 0.004, [new("e1", "Firebox −21 Pa where −34 to −23 Pa is healthy", 6.3)], 0.81),
                new(Suspect.Nothing, "Nothing wrong", 0.3, 0.95, [], 0.12),
            ],
            [
                new(Parameter.Vent, "Vent", new(0.02, 0.10, 0.21), new(0.01, 0.04, 0.09)),
                new(Parameter.AshPassages, "Ash passages", new(0.31, 0.46, 0.58), new(0.01, 0.05, 0.12)),
                new(Parameter.Wheel, "Combustion blower", new(0.01, 0.06, 0.12), new(0.00, 0.03, 0.08)),
                new(Parameter.RoomAir, "Room-air blower", new(0.05, 0.2, 0.4), new(0.01, 0.05, 0.12)),
            ],
            bands, comparisons, new DoubtfulReading("e7", "The collar’s +6 Pa does not fit the rest.", 0.2),
            [new(["ash-passages-full", "exchanger-blocked"], "clean-ash-passages")], false, false, [], ["Wind was not measured at the cap."]);
    }

    private static Verdict Verdict(double value, Band band) =>
        value >= band.Low && value <= band.High ? Diagnosis.Verdict.In
        : band.Observable.Measure == Measure.Pressure && band.High < 0 ? value > band.High ? Diagnosis.Verdict.TooWeak : Diagnosis.Verdict.TooStrong
        : value > band.High ? Diagnosis.Verdict.High : Diagnosis.Verdict.Low;

    private static string Root
    {
        get
        {
            var at = new DirectoryInfo(AppContext.BaseDirectory);
            while (at is not null && !Directory.Exists(Path.Combine(at.FullName, "demo", "visits"))) at = at.Parent;
            return at?.FullName ?? throw new DirectoryNotFoundException($"The folder demo/visits was not found above {AppContext.BaseDirectory}.");
        }
    }
}
