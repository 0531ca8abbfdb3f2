using Emberwright.Diagnosis;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Patterns;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Visits.Tests;

/// <summary>Codes, counters and settings written in a visit file reach the diagnosis.</summary>
public class StovesOwnEvidenceTests
{
    private const string Head = """
        {"format": "emberwright-visit", "version": 1, "visit": "own-evidence"}
        {"at": "2026-01-14T09:30:00-05:00", "author": "R. Sorrel", "kind": "appliance", "body": {"pattern": "damper-insert", "card": {"pattern": "damper-insert", "codes": [{"code": "2 blinks", "meaning": "fire not proved"}], "parameters": [{"parameter": "P7", "value": "3", "changes": "feed"}]}}}

        """;

    private static (Visit Visit, IReadOnlyList<Problem> Problems) Read(string lines)
    {
        var file = VisitFile.Read(Head + lines);
        return (Visit.Fold(file.Journal), file.Problems);
    }

    [Fact]
    public void Hours_since_the_service_tell_the_fuel_burned()
    {
        var (visit, problems) = Read("""{"kind": "counter", "body": {"counter": "service hours", "value": "700 h"}}""");
        Assert.Empty(problems);
        var levels = DamperInsert.Pattern.Levels;
        var (low, high) = (levels[Stove.FireState.Low].FeedKgPerH, levels[Stove.FireState.High].FeedKgPerH);
        // Between what the lowest and the highest setting would have burned, nearer the lowest.
        Assert.InRange(visit.History().TonnesSinceCleaning!.Value, 0.7 * low, 0.7 * (low + high) / 2);
    }

    [Fact]
    public void Hours_in_all_less_those_at_the_service_do_so_too_and_a_stated_mass_goes_before()
    {
        const string Counter = """{"kind": "counter", "body": {"counter": "hours", "value": 4200}}""";
        var by = Read(Counter + "\n" + """{"kind": "history", "body": {"hoursAtService": 3500}}""").Visit.History().TonnesSinceCleaning;
        Assert.Equal(Read("""{"kind": "counter", "body": {"counter": "hours-since-service", "value": 700}}""").Visit.History().TonnesSinceCleaning, by);
        Assert.Null(Read(Counter).Visit.History().TonnesSinceCleaning);
        Assert.Equal(0.4, Read(Counter + "\n" + """{"kind": "history", "body": {"hoursAtService": 3500, "fuelSinceService": "400 kg"}}""").Visit.History().TonnesSinceCleaning);
    }

    [Fact]
    public void A_counter_that_is_no_number_is_kept_and_named()
    {
        var (visit, problems) = Read("""{"kind": "counter", "body": {"counter": "hours", "value": "4,200"}}""");
        var problem = Assert.Single(problems);
        Assert.Equal("4,200", problem.Value);
        Assert.Equal("4,200", visit.Of<CounterBody>().Single().Body.Value);
        Assert.DoesNotContain(visit.Evidence(), e => e is CounterEvidence);
    }

    [Fact]
    public void Codes_are_looked_up_on_the_card_and_settings_held_against_it()
    {
        var (visit, _) = Read("""
            {"kind": "code", "body": {"code": "two flashes"}}
            {"kind": "code", "body": {"code": "9 blinks"}}
            {"kind": "parameter", "body": {"parameter": "P7", "value": "3", "before": "6"}}
            """);
        Assert.Equal(["two flashes: fire not proved", "9 blinks: not on this card"], Findings.CodesOf(visit).Select(c => c.InWords));
        Assert.Equal("6", visit.Evidence().OfType<ParameterEvidence>().Single().Value);
        var findings = Findings.Steps(visit, DamperInsert.Pattern, []).Last().Findings!;
        Assert.Contains(findings.Evidence, e => e is SignEvidence { Sign: "code", Outcome: Alarms.NoFire });
        Assert.Contains(findings.Evidence, e => e is SignEvidence { Sign: "feed-trim", Outcome: "above" });
        Assert.Contains(findings.Beliefs.Notes, n => n.Contains("9 blinks: not on this card", StringComparison.Ordinal));
    }
}
