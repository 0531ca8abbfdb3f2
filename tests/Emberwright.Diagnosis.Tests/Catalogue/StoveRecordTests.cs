using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Diagnosis.Tests.CatalogueTests;

/// <summary>Codes, counters and settings of the stove itself as evidence (common practice, no source, unless said otherwise).</summary>
public class StoveRecordTests
{
    private static readonly StoveCard Card = new()
    {
        Pattern = PatternIds.Damper,
        Codes = [new CardCode("2 blinks", "no fire"), new CardCode("E7", "something of the maker's")],
        Parameters =
        [
            new CardParameter("P7", "3") { Changes = ParameterEffect.Feed, PercentPerStep = 5 },
            new CardParameter("F2", "1") { Changes = ParameterEffect.BlowerSpeed, PercentPerStep = -4 },
        ],
    };

    private static StoveCase Stove(StoveCard? card) => new(PatternLibrary.All.Single(p => p.Id == PatternIds.Damper), card, new Site(), new History());

    private static string[] Judged(StoveCard? card, params Evidence[] evidence) =>
        [.. SensorReadings.Judged(evidence, Stove(card)).Select(e => e is SignEvidence s ? $"{s.Sign}={s.Outcome}" : e.GetType().Name).Order(StringComparer.Ordinal)];

    private static double Probability(string fault, StoveCard? card, params Evidence[] evidence)
    {
        var beliefs = Diagnose.Run(Stove(card), evidence, Catalogue.For(PatternIds.Damper));
        return beliefs.Suspects.FirstOrDefault(s => s.Fault == fault)?.Probability ?? 0;
    }

    [Theory]
    [InlineData("two flashes", "code=no-fire")]
    [InlineData("E7", "CodeEvidence")]
    [InlineData("E8", "CodeEvidence")]
    public void A_code_means_what_the_card_says_and_nothing_else(string shown, string judged) =>
        Assert.Equal([judged], Judged(Card, new CodeEvidence("c", 0, shown)));

    [Fact]
    public void Without_a_card_plain_words_are_read_and_blinks_are_not()
    {
        Assert.Equal(["code=low-draught"], Judged(null, new CodeEvidence("c", 0, "LOW DRAUGHT")));
        Assert.Equal(["CodeEvidence"], Judged(null, new CodeEvidence("c", 0, "3 blinks")));
    }

    [Fact]
    public void A_code_that_is_not_on_the_card_is_kept_and_said()
    {
        var beliefs = Diagnose.Run(Stove(Card), [new CodeEvidence("c", 0, "E8")], Catalogue.For(PatternIds.Damper));
        Assert.Contains(beliefs.Notes, n => n.Contains("E8: not on this card", StringComparison.Ordinal));
    }

    [Fact]
    public void Failed_starts_count_since_the_service_and_not_over_a_lifetime()
    {
        Assert.Equal(["CounterEvidence", "failed-starts=many"], Judged(null, new CounterEvidence("a", 0, Counters.StartsSinceService, 40), new CounterEvidence("b", 0, Counters.FailedSinceService, 12)));
        Assert.Equal(["CounterEvidence", "igniter-starts=many"], Judged(null, new CounterEvidence("a", 0, Counters.Starts, 2400), new CounterEvidence("b", 0, Counters.FailedStarts, 120)));
    }

    [Fact]
    public void Shares_of_failed_starts_agree_with_a_simulation()
    {
        var random = new Random(3);
        foreach (var q in new[] { 0.0, 0.4, 1.0 })
        {
            var counted = new double[3];
            const int Trials = 40_000;
            for (var t = 0; t < Trials; t++)
            {
                var m = 1;
                while (m < 50 && random.NextDouble() > 0.2) m++;
                var failed = Enumerable.Range(0, 50).Count(i => random.NextDouble() < (i < m ? q : 0.02));
                counted[CounterSymptoms.Class(failed, 50)]++;
            }
            var computed = CounterSymptoms.Failed(q);
            for (var c = 0; c < 3; c++) Assert.Equal(counted[c] / Trials, computed[c], 0.01);
        }
    }

    [Fact]
    public void A_setting_off_the_cards_moves_the_wrong_setting_and_its_direction_the_feed()
    {
        var found = new ParameterEvidence("p", 0, "p7", "6");
        Assert.Equal(["feed-trim=above", "settings=changed"], Judged(Card, found));
        Assert.Equal(["blower-trim=below", "settings=changed"], Judged(Card, new ParameterEvidence("p", 0, "F2", "2")));
        var complaint = new SignEvidence("k", 0, Complaints.Sign, Complaints.FierceFlame);
        Assert.True(Probability("settings-wrong", Card, complaint, found) > 2 * Probability("settings-wrong", Card, complaint));
        Assert.True(Probability("feed-trim-high", Card, complaint, found) > 2 * Probability("feed-trim-high", Card, complaint));
        Assert.True(Probability("feed-trim-low", Card, complaint, found) < Probability("feed-trim-low", Card, complaint) + 1e-3);
    }

    [Fact]
    public void All_settings_read_and_right_clear_the_wrong_setting()
    {
        Evidence[] right = [new SignEvidence("k", 0, Complaints.Sign, Complaints.FierceFlame), new ParameterEvidence("p", 0, "P7", "3"), new ParameterEvidence("q", 0, "F2", "1.0")];
        Assert.Contains("settings=right", Judged(Card, right));
        Assert.DoesNotContain("settings=right", Judged(Card, right[..2]));
        Assert.True(Probability("settings-wrong", Card, right) < 0.3 * Probability("settings-wrong", Card, right[0]));
    }

    [Fact]
    public void An_old_igniter_that_failed_is_likelier_than_a_new_one()
    {
        Evidence complaint = new SignEvidence("k", 0, Complaints.Sign, Complaints.NoLight);
        Assert.True(Probability("igniter-dead", null, complaint, new CounterEvidence("s", 0, Counters.Starts, 3100))
            > Probability("igniter-dead", null, complaint, new CounterEvidence("s", 0, Counters.Starts, 200)));
    }

    [Fact]
    public void A_choked_passage_foretells_the_alarm_its_board_would_show() // the thermocouple stove's board watches the vacuum switch
    {
        var fault = Catalogue.For(PatternIds.Thermocouple).Fault("exchanger-blocked")!;
        var shown = fault.Symptoms.Where(s => s.Sign == "code").ToDictionary(s => s.Outcome, s => s.Probability);
        Assert.True(shown[Alarms.LowDraught] > 0.4, $"{shown[Alarms.LowDraught]}");
        Assert.True(shown[Alarms.LowDraught] > 3 * shown.GetValueOrDefault(Alarms.NoFire, 0.001));
    }
}
