using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Visits.Journal;
using Emberwright.Visits.SigningOff;
using Xunit;

namespace Emberwright.Visits.Tests;

public class DemoVisitTests
{
    private static VisitFile Demo(string name) => VisitFile.Read(Repository.Text("demo", "visits", name + ".jsonl"));

    [Theory]
    [InlineData("healthy-service")]
    [InlineData("nest-in-the-cap")]
    [InlineData("ash-passages-full")]
    public void A_demo_visit_is_written_back_byte_for_byte(string name)
    {
        var text = Repository.Text("demo", "visits", name + ".jsonl");
        Assert.Equal(text, VisitFile.Write(VisitFile.Read(text).Journal));
    }

    [Theory]
    [InlineData("healthy-service")]
    [InlineData("nest-in-the-cap")]
    public void A_clean_demo_visit_reads_without_a_problem(string name) => Assert.Empty(Demo(name).Problems);

    [Fact]
    public void The_careless_demo_visit_has_two_bad_lines_and_loses_nothing_else()
    {
        var file = Demo("ash-passages-full");
        Assert.Collection(
            file.Problems,
            quantity =>
            {
                Assert.Equal(("body.value", "-74,5 Pa"), (quantity.Field, quantity.Value));
                Assert.Contains("comma", quantity.Message, StringComparison.Ordinal);
                Assert.Contains("decimal point", quantity.Remedy, StringComparison.Ordinal);
            },
            json =>
            {
                Assert.Contains("not JSON", json.Message, StringComparison.Ordinal);
                Assert.Equal(23, json.Line);
            });

        var visit = Visit.Fold(file.Journal);
        Assert.Equal(2, visit.Unread.Count());
        Assert.Equal(5, visit.Readings.Count);
        Assert.All(visit.Readings, r => Assert.Equal(Phase.AsFound, r.Phase));
    }

    [Fact]
    public void The_careless_demo_visit_gives_diagnosis_its_stove_and_readings()
    {
        var visit = Visit.Fold(Demo("ash-passages-full").Journal);
        Assert.Equal("damper-insert", visit.Appliance!.Pattern);

        var site = visit.StoveSite();
        Assert.Equal(250, site.AltitudeM);
        Assert.Equal(-2, site.OutdoorC);
        Assert.Equal(20, site.RoomC!.Value, 9);
        Assert.Equal(76.2, site.Vent!.DiameterMm, 9);
        Assert.Equal(5.5, site.Vent.VerticalM);

        var history = visit.History();
        Assert.Equal(70 * 40 * 0.45359237 / 1000, history.TonnesSinceCleaning!.Value, 9);
        Assert.Equal(26, history.MonthsSinceCleaning);
        Assert.False(history.IsService);

        var readings = visit.Evidence().OfType<ReadingEvidence>().ToDictionary(r => r.Observable, r => r.Value);
        Assert.Equal(-0.03 * 249.08891, readings[new(Measure.Pressure, Places.Firebox, Condition.FanOnly)], 6);
        Assert.Equal(-74, readings[new(Measure.Pressure, Places.BlowerInlet, Condition.FanOnly)]);
        Assert.Contains(visit.Evidence().OfType<SignEvidence>(), s => (s.Sign, s.Outcome) == ("complaint", "stops-proving"));
    }

    [Fact]
    public void The_service_demo_visit_holds_as_found_and_as_left_apart()
    {
        var visit = Visit.Fold(Demo("healthy-service").Journal);
        Assert.True(visit.History().IsService);
        Assert.Equal(3, visit.History().LastAsLeft!.Count);
        Assert.All(visit.AsFound, r => Assert.Equal(0, r.Epoch));
        Assert.All(visit.AsLeft, r => Assert.Equal(5, r.Epoch));
        Assert.Equal(-21, visit.AsFound.First().Body.Si);
        var left = visit.LeftWith.Single(r => r.Body.Observable == new Observable(Measure.Pressure, Places.Firebox, Condition.FanOnly));
        Assert.Equal(-26, left.Body.Si);
    }

    [Fact]
    public void The_service_demo_visit_may_be_signed_off()
    {
        var review = SignOff.Review(Visit.Fold(Demo("healthy-service").Journal), VisitKind.Service);
        Assert.Empty(review.Missing);
        Assert.Equal(Decision.Permitted, review.Decision);
    }

    [Theory]
    [InlineData("healthy-service")]
    [InlineData("nest-in-the-cap")]
    [InlineData("ash-passages-full")]
    public void Ids_in_a_demo_visit_stand_in_the_catalogue(string name)
    {
        var visit = Visit.Fold(Demo(name).Journal);
        var catalogue = Catalogue.For(visit.Appliance!.Pattern);
        Assert.All(visit.Evidence().OfType<SignEvidence>(), s =>
            Assert.Contains(s.Outcome, catalogue.Sign(s.Sign)?.Outcomes.Select(o => o.Id) ?? []));
        Assert.All(visit.Evidence().OfType<ActionEvidence>(), a => Assert.NotNull(catalogue.Action(a.Action)));
    }
}
