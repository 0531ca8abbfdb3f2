using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Inference;

/// <summary>
/// Whole diagnoses on the virtual stove. Facts of the trade are common practice, no source; the stoves are invented.
/// </summary>
public class DiagnoseTests
{
    private const double InWc = 249.089;

    private static readonly StoveCard Card = new()
    {
        Pattern = "damper-insert",
        Healthy =
        [
            new(Pressure(Places.Firebox, Condition.FanOnly), -0.11 * InWc),
            new(Pressure(Places.BlowerInlet, Condition.FanOnly), -0.24 * InWc),
            new(Pressure(Places.Collar, Condition.FanOnly), 0.02 * InWc),
        ],
    };

    private static readonly Catalogue Catalogue = Catalogue.For("damper-insert");

    private static StoveCase Insert(double tonnes = 1.3, bool service = false) =>
        new(DamperInsert.Pattern, Card, new Site(250, -2, null, 1), new History(14, tonnes, null, null, service));

    private static readonly Evidence[] Packed =
    [
        new SignEvidence("complaint", 0, Complaints.Sign, Complaints.NoFeed),
        new ReadingEvidence("firebox", 0, Pressure(Places.Firebox, Condition.FanOnly), -0.03 * InWc),
        new ReadingEvidence("switch", 0, new Observable(Measure.Voltage, "vacuum-switch", Condition.FanOnly), 120),
        new ReadingEvidence("inlet", 0, Pressure(Places.BlowerInlet, Condition.FanOnly), -0.31 * InWc),
        new ReadingEvidence("collar", 0, Pressure(Places.Collar, Condition.FanOnly), -0.01 * InWc),
    ];

    [Fact]
    public void Weak_firebox_strong_inlet_and_an_open_switch_are_packed_passages_not_the_switch()
    {
        var beliefs = Diagnose.Run(Insert(), Packed, Catalogue);
        Assert.Contains(beliefs.Suspects[0].Fault, new[] { "ash-passages-full", "exchanger-blocked" });
        Assert.True(Of(beliefs, "vacuum-switch-open") < 0.1);
        Assert.True(Of(beliefs, "vent-fouled") < 0.1);
        Assert.Equal(Verdict.TooWeak, beliefs.Comparisons.Single(c => c.Evidence == "firebox").Verdict);
        Assert.Equal(Verdict.TooStrong, beliefs.Comparisons.Single(c => c.Evidence == "inlet").Verdict);
        Assert.Equal("firebox", beliefs.Suspects[0].Because[0].Evidence);
    }

    [Fact]
    public void After_cleaning_a_switch_that_stays_open_rises_to_the_top_and_what_was_found_is_remembered()
    {
        Evidence[] evidence =
        [
            .. Packed,
            new ActionEvidence("cleaned", 1, "full-service"),
            new ReadingEvidence("firebox-after", 1, Pressure(Places.Firebox, Condition.FanOnly), -0.11 * InWc),
            new ReadingEvidence("hose-after", 1, Pressure(Places.SwitchHose, Condition.FanOnly), -0.11 * InWc),
            new ReadingEvidence("switch-after", 1, new Observable(Measure.Voltage, "vacuum-switch", Condition.FanOnly), 119),
        ];
        var beliefs = Diagnose.Run(Insert(), evidence, Catalogue);
        Assert.StartsWith("vacuum-switch", beliefs.Suspects[0].Fault, StringComparison.Ordinal);
        Assert.True(Of(beliefs, "vacuum-switch-open") + Of(beliefs, "vacuum-switch-drifted") > 0.9);
        var ash = beliefs.Areas.Single(a => a.Parameter == Parameter.AshPassages);
        Assert.True(ash.AsFound.Median > 0.4 && ash.Now.High < 0.35);
    }

    [Fact]
    public void The_order_of_the_evidence_does_not_matter()
    {
        var there = Diagnose.Run(Insert(), Packed, Catalogue);
        var back = Diagnose.Run(Insert(), [.. Packed.Reverse()], Catalogue);
        Assert.Equal(there.Suspects.Select(s => s.Fault), back.Suspects.Select(s => s.Fault));
        for (var k = 0; k < there.Suspects.Count; k++)
        {
            Assert.Equal(there.Suspects[k].Probability, back.Suspects[k].Probability, 1e-12);
            foreach (var (a, b) in there.Suspects[k].Because.Zip(back.Suspects[k].Because)) Assert.Equal(a.Factor, b.Factor, 1e-10 * a.Factor);
        }
        for (var k = 0; k < there.Areas.Count; k++) Assert.Equal(there.Areas[k].AsFound.Median, back.Areas[k].AsFound.Median, 1e-12);
    }

    [Fact]
    public void Without_evidence_the_prior_comes_back()
    {
        var beliefs = Diagnose.Run(Insert(), [], Catalogue);
        Assert.All(beliefs.Suspects, s => Assert.Equal(s.Prior, s.Probability, 0.012));
        Assert.Empty(beliefs.Comparisons);
        Assert.Empty(beliefs.Stops);
    }

    [Fact]
    public void A_leaking_door_beside_a_third_of_the_holes_closed_is_never_nothing_while_the_complaint_or_carbon_monoxide_remains()
    {
        var stove = new VirtualStove(DamperInsert.Pattern, Card, Insert().Site);
        var parameters = new double[Enum.GetValues<Parameter>().Length];
        parameters[(int)Parameter.DoorLeak] = Math.Log(8);
        parameters[(int)Parameter.BurnPot] = Math.Log(2.0 / 3);
        var cold = stove.Solve(parameters, Condition.FanOnly);
        var high = stove.Solve(parameters, Condition.HighBurn);
        Evidence[] readings =
        [
            .. new[] { Places.Firebox, Places.BlowerInlet, Places.Collar }.Select(p => new ReadingEvidence("c-" + p, 0, Pressure(p, Condition.FanOnly), cold.Value(Measure.Pressure, p))),
            new ReadingEvidence("o2", 0, new Observable(Measure.Oxygen, Places.Flue, Condition.HighBurn), high.Value(Measure.Oxygen, Places.Flue)),
        ];
        var complained = Diagnose.Run(Insert(), [.. readings, new SignEvidence("w", 0, Complaints.Sign, Complaints.LazyFlame)], Catalogue);
        Assert.True(Of(complained, Suspect.Nothing) < 0.5);
        Assert.NotEqual(Suspect.Nothing, complained.Suspects[0].Fault);

        var monoxide = Diagnose.Run(Insert(service: true), [.. readings, new ReadingEvidence("co", 0, new Observable(Measure.CarbonMonoxide, Places.Flue, Condition.HighBurn), 1900)], Catalogue);
        Assert.True(Of(monoxide, Suspect.Nothing) < 0.5);
        Assert.Contains(monoxide.Notes, n => n.Contains("carbon monoxide", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void The_feed_motor_is_rarely_the_part_when_no_fuel_falls()
    {
        var beliefs = Diagnose.Run(Insert(), [new SignEvidence("c", 0, Complaints.Sign, Complaints.NoFeed)], Catalogue);
        Assert.InRange(Of(beliefs, "feed-motor-dead"), 0.02, 0.15);
        Assert.True(beliefs.CannotTell);
    }

    [Fact]
    public void Fouling_is_suspected_by_the_fuel_burned_since_the_last_service()
    {
        Evidence[] complaint = [new SignEvidence("c", 0, Complaints.Sign, Complaints.StopsProving)];
        var long_ = Diagnose.Run(Insert(3), complaint, Catalogue);
        var fresh = Diagnose.Run(Insert(0.05), complaint, Catalogue);
        Assert.True(Of(long_, "ash-passages-full") > 5 * Of(fresh, "ash-passages-full"));
        Assert.True(Of(fresh, "ash-passages-full") < 0.03);
    }

    [Fact]
    public void A_routine_service_in_band_finds_nothing()
    {
        var stove = Insert(0.6, service: true);
        var state = new VirtualStove(stove.Pattern, stove.Card, stove.Site).Solve(new double[Enum.GetValues<Parameter>().Length], Condition.FanOnly);
        Evidence[] evidence =
        [
            new SignEvidence("c", 0, Complaints.Sign, Complaints.Due),
            .. new[] { Places.Firebox, Places.BlowerInlet, Places.Collar }.Select(p => new ReadingEvidence(p, 0, Pressure(p, Condition.FanOnly), state.Value(Measure.Pressure, p))),
        ];
        var beliefs = Diagnose.Run(stove, evidence, Catalogue);
        Assert.Equal(Suspect.Nothing, beliefs.Suspects[0].Fault);
        Assert.All(beliefs.Comparisons, c => Assert.Equal(Verdict.In, c.Verdict));
        Assert.False(beliefs.NoListedCauseFits);
    }

    [Fact]
    public void A_slipped_digit_is_named_as_the_doubtful_reading()
    {
        var state = new VirtualStove(DamperInsert.Pattern, Card, Insert().Site).Solve(new double[Enum.GetValues<Parameter>().Length], Condition.FanOnly);
        Evidence[] evidence =
        [
            new ReadingEvidence("firebox", 0, Pressure(Places.Firebox, Condition.FanOnly), state.Value(Measure.Pressure, Places.Firebox)),
            new ReadingEvidence("inlet", 0, Pressure(Places.BlowerInlet, Condition.FanOnly), state.Value(Measure.Pressure, Places.BlowerInlet)),
            new ReadingEvidence("collar", 0, Pressure(Places.Collar, Condition.FanOnly), 140),
        ];
        var beliefs = Diagnose.Run(Insert(0.5), evidence, Catalogue);
        Assert.Equal("collar", beliefs.Doubtful?.Evidence);
        Assert.True(beliefs.Doubtful!.Probability > 0.5);
    }

    [Fact]
    public void Last_visits_readings_narrow_todays_bands()
    {
        var site = new Site(250, -2, null, 1);
        var state = new VirtualStove(DamperInsert.Pattern, null, site).Solve(new double[Enum.GetValues<Parameter>().Length], Condition.FanOnly);
        ReadingEvidence[] left = [.. new[] { Places.Firebox, Places.BlowerInlet, Places.Collar }.Select(p => new ReadingEvidence(p, 0, Pressure(p, Condition.FanOnly), state.Value(Measure.Pressure, p)))];
        Band Firebox(IReadOnlyList<ReadingEvidence>? before) =>
            Diagnose.Run(new StoveCase(DamperInsert.Pattern, null, site, new History(LastAsLeft: before)), [], Catalogue).Bands.Single(b => b.Observable == Pressure(Places.Firebox, Condition.FanOnly));
        var (without, with) = (Firebox(null), Firebox(left));
        Assert.Equal("pattern", without.Origin);
        Assert.Equal("last visit", with.Origin);
        Assert.True(with.High - with.Low < 0.8 * (without.High - without.Low));
        Assert.InRange(state.Value(Measure.Pressure, Places.Firebox), with.Low, with.High);
    }

    [Fact]
    public void Singles_come_first_and_the_last_slice_is_the_whole()
    {
        var steps = Diagnose.Steps(Insert(), Packed, Catalogue).ToArray();
        var concluded = steps.Where(s => s.Beliefs is not null).ToArray();
        Assert.Equal([DiagnosisStage.Singles, DiagnosisStage.Done], concluded.Select(s => s.Stage));
        Assert.Equal(concluded[0].Beliefs!.Suspects[0].Fault, concluded[1].Beliefs!.Suspects[0].Fault);
        Assert.True(steps.Length > 50);
    }

    [Fact]
    public void Predictions_sharpen_where_something_was_read_already()
    {
        var posterior = Diagnose.Infer(Insert(), Packed, Catalogue).Posterior!;
        Assert.Equal(1, posterior.Explanations.Sum(e => e.Weight), 9);
        var (mean, covariance) = (new double[2], new double[4]);
        posterior.Predict(0, [Pressure(Places.Firebox, Condition.FanOnly), Pressure(Places.Firebox, Condition.DoorOpen)], mean, covariance);
        Assert.Equal(-0.03 * InWc, mean[0], 2.5);
        Assert.True(covariance[0] < 4, $"{covariance[0]}");
        Assert.True(covariance[0] * covariance[3] > covariance[1] * covariance[1]);
    }

    private static Observable Pressure(string place, Condition condition) => new(Measure.Pressure, place, condition);

    private static double Of(Beliefs beliefs, string fault) => beliefs.Suspects.FirstOrDefault(s => s.Fault == fault)?.Probability ?? 0;
}
