using CsCheck;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Inference;

/// <summary>What earlier conclusions worked out shortens a conclusion and never changes it.</summary>
public class WorkingsTests
{
    private static readonly Evidence[] Pieces =
    [
        new SignEvidence("c", 0, Complaints.Sign, Complaints.LazyFlame),
        Pa("firebox", Places.Firebox, Condition.FanOnly, -12),
        Pa("inlet", Places.BlowerInlet, Condition.FanOnly, -70),
        Pa("collar", Places.Collar, Condition.FanOnly, 9),
        Pa("hot", Places.Firebox, Condition.HighBurn, -9),
        new ReadingEvidence("switch", 0, new Observable(Measure.Voltage, ComponentIds.VacuumSwitch, Condition.FanOnly), 118),
        new ReadingEvidence("igniter", 0, new Observable(Measure.Resistance, ComponentIds.Igniter, Condition.BlowerOff), 52),
        new ReadingEvidence("feed", 0, new Observable(Measure.Resistance, ComponentIds.FeedMotor, Condition.BlowerOff), double.PositiveInfinity),
        new SignEvidence("ash", 0, "ash-passages-look", "poor"),
        .. Bench.Catalogue.Signs.Where(s => s.Margin is null && s.Id != Complaints.Sign).Take(12).Select(s => new SignEvidence(s.Id, 0, s.Id, s.Outcomes[0].Id)),
        new ActionEvidence("cleaned", 1, "full-service"),
        new ReadingEvidence("after", 1, new Observable(Measure.Pressure, Places.Firebox, Condition.FanOnly), -27),
    ];

    private static readonly Gen<Evidence[]> Orders = Gen.Shuffle(Pieces).Select(Gen.Int[3, 9], (all, count) => all[..count])
        .Where(e => !e.Any(p => p.Epoch == 1) || e.Any(p => p is ActionEvidence));

    [Fact]
    public void One_piece_after_the_other_comes_out_as_all_at_once_in_any_order() => Orders.Sample(
        pieces =>
        {
            var workings = new Workings();
            for (var k = 2; k < pieces.Length; k++) Diagnose.Infer(Bench.Case, [.. Possible(pieces[..k])], Bench.Catalogue, workings);
            var after = Diagnose.Infer(Bench.Case, pieces, Bench.Catalogue, workings).Beliefs!;
            var anew = Diagnose.Infer(Bench.Case, [.. pieces.Reverse()], Bench.Catalogue).Beliefs!;
            Assert.Equal(anew.Suspects.Select(s => s.Fault), after.Suspects.Select(s => s.Fault));
            foreach (var (a, b) in anew.Suspects.Zip(after.Suspects))
            {
                Assert.Equal(a.Probability, b.Probability, 1e-9);
                Assert.Equal(a.AsFound, b.AsFound, 1e-9);
            }
            foreach (var (a, b) in anew.Areas.Zip(after.Areas)) Assert.Equal(a.Now.Median, b.Now.Median, 1e-9);
            Assert.Equal(anew.NoListedCauseFits, after.NoListedCauseFits);
        },
        iter: 12, threads: 1);

    [Fact]
    public void Another_stove_begins_anew()
    {
        var workings = new Workings();
        Evidence[] evidence = [Pieces[0], Pieces[1]];
        Diagnose.Infer(Bench.Case, evidence, Bench.Catalogue, workings);
        var high = Bench.Case with { Site = new Site(AltitudeM: 2000) };
        Assert.Equal(
            Diagnose.Run(high, evidence, Bench.Catalogue).Suspects.Select(s => s.Probability),
            Diagnose.Run(high, evidence, Bench.Catalogue, workings).Suspects.Select(s => s.Probability));
    }

    // Nothing can be read after an action that was not done yet.
    private static IEnumerable<Evidence> Possible(Evidence[] pieces) => pieces.Any(p => p is ActionEvidence) ? pieces : pieces.Where(p => p.Epoch == 0);

    private static ReadingEvidence Pa(string id, string place, Condition condition, double pa) => new(id, 0, new Observable(Measure.Pressure, place, condition), pa);
}
