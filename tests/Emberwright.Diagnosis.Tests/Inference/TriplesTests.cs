using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Inference;

/// <summary>Three faults at once, each of which shows in evidence of its own.</summary>
public class TriplesTests
{
    private static readonly string[] Dead = ["igniter-dead", "room-blower-dead", "feed-motor-dead"];

    /// <summary>Each of the three motors and heaters reads open, has its voltage, and is seen to do nothing: no two faults explain it.</summary>
    private static readonly Evidence[] ThreeAtOnce =
    [
        new SignEvidence("c", 0, Complaints.Sign, Complaints.NoLight),
        .. from part in new[] { ComponentIds.Igniter, ComponentIds.RoomAirBlower, ComponentIds.FeedMotor }
           select new ReadingEvidence($"ohm {part}", 0, new Observable(Measure.Resistance, part, Condition.BlowerOff), double.PositiveInfinity),
        .. from fault in Dead
           from symptom in Bench.Catalogue.Fault(fault)!.Symptoms.Where(s => s.Sign != Complaints.Sign && s.Probability > 0.5 && Bench.Catalogue.Sign(s.Sign) is { Margin: null })
           where Dead.All(other => other == fault || Bench.Catalogue.Fault(other)!.Symptoms.All(s => s.Sign != symptom.Sign))
           select new SignEvidence($"{fault} {symptom.Sign}", 0, symptom.Sign, symptom.Outcome),
    ];

    [Fact]
    public void Three_dead_parts_are_three_faults()
    {
        var told = Diagnose.Infer(Bench.Case, ThreeAtOnce, Bench.Catalogue);
        var threes = told.Posterior!.Candidates.Where(c => c.Hypothesis.Kind == HypothesisKind.Triple).Sum(c => c.Weight);
        Assert.True(threes > 0.5, $"threes {threes}, {string.Join(", ", ThreeAtOnce.Select(e => e.Id))}");
        foreach (var id in Dead) Assert.True(told.Beliefs!.Suspects.Single(s => s.Fault == id).Probability > 0.5, id);
    }

    [Fact]
    public void Where_pairs_suffice_no_threes_are_worked_out()
    {
        var posterior = Diagnose.Infer(Bench.Case, [.. ThreeAtOnce.Take(2)], Bench.Catalogue).Posterior!;
        Assert.DoesNotContain(posterior.Candidates, c => c.Hypothesis.Kind == HypothesisKind.Triple && c.Weight > 0.02);
    }

    /// <summary>p = 0.01 and odds of 19 to 1: −e·p·ln p = 0.1252, 1/(1 + 19·0.1252) = 0.296 (by hand).</summary>
    [Fact]
    public void A_misfit_seldom_met_makes_an_unlisted_cause_at_least_so_probable()
    {
        Assert.Equal(0.296, MisfitAlarm.LeastUnlisted(0.01, 0.05), 0.001);
        Assert.Equal(0, MisfitAlarm.LeastUnlisted(0.4, 0.05));
        Assert.True(MisfitAlarm.Sounds(0.05) && !MisfitAlarm.Sounds(0.2));
    }

    /// <summary>Readings that no listed cause brings about: the port before the blower above the room's, the others usual.</summary>
    [Fact]
    public void Where_no_listed_cause_fits_none_is_certain()
    {
        ReadingEvidence Pa(string place, double value) => new(place, 0, new Observable(Measure.Pressure, place, Condition.FanOnly), value);
        var beliefs = Diagnose.Run(Bench.Case, [new SignEvidence("c", 0, Complaints.Sign, Complaints.LazyFlame), Pa(Places.Firebox, -28), Pa(Places.BlowerInlet, 20), Pa(Places.Collar, -45)], Bench.Catalogue);
        Assert.True(beliefs.NoListedCauseFits);
        Assert.All(beliefs.Suspects.Where(s => s.Fault != Suspect.Unlisted), s => Assert.True(s.Probability < 0.9, $"{s.Fault} {s.Probability}"));
    }
}
