using Emberwright.Stove;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Journal;

/// <summary>
/// Files as version 1 wrote them. They must load forever: when one of these fails, the reader is wrong, never the file.
/// </summary>
public class ReleasedVersionTests
{
    private static string Text(string name) => Repository.Text("tests", "Emberwright.Visits.Tests", "Fixtures", "v1", name + ".jsonl");

    [Theory]
    [InlineData("every-kind")]
    [InlineData("sealed")]
    public void Is_written_back_byte_for_byte(string name) => Assert.Equal(Text(name), VisitFile.Write(VisitFile.Read(Text(name)).Journal));

    [Fact]
    public void Every_kind_of_version_1_is_still_understood()
    {
        var file = VisitFile.Read(Text("every-kind"));
        Assert.Empty(file.Problems);
        Assert.DoesNotContain(file.Journal.Entries, e => e.Body is UnknownBody);
        var visit = Visit.Fold(file.Journal);
        Assert.Empty(visit.Dangling);
        Assert.Equal(VisitKind.Breakdown, visit.Call!.VisitKind);
        Assert.Equal(-28, visit.Readings[0].Body.Si);
        Assert.Equal(70 * 40 * 0.45359237 / 1000, visit.History().TonnesSinceCleaning!.Value, 9);
    }

    [Fact]
    public void A_file_written_by_hand_is_understood_whole()
    {
        var file = VisitFile.Read(Text("by-hand"));
        Assert.Empty(file.Problems);
        var visit = Visit.Fold(file.Journal);
        Assert.Equal(18 * 0.3048, visit.StoveSite().Vent!.VerticalM, 12);
        Assert.Equal(
            [
                (Measure.Pressure, "firebox", Condition.FanOnly), (Measure.Pressure, "blower-inlet", Condition.FanOnly),
                (Measure.Voltage, "vacuum-switch", Condition.FanOnly), (Measure.Oxygen, "flue", Condition.HighBurn),
                (Measure.Pressure, "firebox", Condition.DoorOpen), (Measure.Pressure, "firebox", Condition.FanOnly),
            ],
            visit.Readings.Select(r => (r.Body.Measure, r.Body.Place, r.Body.Condition)));
        Assert.Equal([-0.03 * 25.4 * 9.80665, -74, 120, 11.8, 0, -27], visit.Readings.Select(r => Math.Round(r.Body.Si, 9)), (a, b) => Math.Abs(a - b) < 1e-6);
        Assert.Equal(2, visit.AsLeft.Count());
    }

    // Computed apart from this code: SHA-256 of "visit\n1\nline", version 8 and variant bits set as RFC 9562 says.
    [Fact]
    public void Derived_ids_never_change() =>
        Assert.Equal("a049f647-dfd5-8ee4-9acf-ad4c5ba84303", VisitFile.Read(Text("by-hand")).Journal.Entries[0].Id);

    [Fact]
    public void A_damaged_file_gives_up_nothing_that_can_be_read()
    {
        var file = VisitFile.Read(Text("damaged"));
        Assert.Equal([3, 4, 5, 6, 8, 9, 10], file.Problems.Select(p => p.Line));
        var visit = Visit.Fold(file.Journal);
        Assert.Equal(-7, Assert.Single(visit.Readings).Body.Si);
        Assert.Equal(20, visit.StoveSite().RoomC);
        Assert.Equal("moon-phase", Assert.Single(visit.Unknown).Body.Kind);
        Assert.Equal(9, file.Journal.Entries.Count);
    }

    [Fact]
    public void A_seal_of_version_1_still_holds()
    {
        var seal = Seal.Check(VisitFile.Read(Text("sealed")).Journal);
        Assert.NotNull(seal);
        Assert.True(seal.Intact);
        Assert.Equal("72 % shut", seal.Body.Figures["ash passages as found"]);
        Assert.IsType<NoteBody>(Assert.Single(seal.Addenda).Body);
    }
}
