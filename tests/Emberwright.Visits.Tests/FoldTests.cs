using CsCheck;
using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Visits.Journal;
using Emberwright.Visits.Tests.Journal;
using Xunit;

namespace Emberwright.Visits.Tests;

public class FoldTests
{
    private static VisitFile File(params string[] entries) =>
        VisitFile.Read(string.Join('\n', [VisitHeader.For("v").Line, """{"at":"2026-01-14T09:00:00-05:00","kind":"note","body":{"words":"begun"}}""", .. entries]) + "\n");

    private static Visit Of(params string[] entries)
    {
        var file = File(entries);
        Assert.Empty(file.Problems);
        return Visit.Fold(file.Journal);
    }

    private static string Firebox(string value, string id = "r", string more = "") =>
        $$"""{"id":"{{id}}","kind":"reading","body":{"port":"firebox","condition":"fan only","value":"{{value}}"{{more}} } }""";

    private static string Entry(string kind, string body, string? id = null, string? device = null) =>
        "{" + (id is null ? "" : $"\"id\":\"{id}\",") + (device is null ? "" : $"\"device\":\"{device}\",") + $"\"kind\":\"{kind}\",\"body\":{body}}}";

    private static string Replace(string target, string value, string id) =>
        Entry("correction", $$"""{"replaces":"{{target}}","kind":"reading","body":{"port":"firebox","condition":"fan only","value":"{{value}}"} }""", id);

    private static string Withdraw(string target, string id) => Entry("correction", $$"""{"withdraws":"{{target}}"}""", id);

    [Fact]
    public void Actions_split_the_visit_into_epochs_and_phases()
    {
        var visit = Of(
            Firebox("-7 Pa", "a"), Entry("action", """{"action":"clean-ash-passages","area":"ash-passages"}"""),
            Firebox("-20 Pa", "b"), Entry("action", """{"action":"clean-vent","area":"vent","done":false,"reason":"no-access"}"""),
            Entry("action", """{"action":"clean-combustion-blower","area":"combustion blower"}"""), Firebox("-27 Pa", "c"));
        Assert.Equal([0, 1, 2], visit.Readings.Select(r => r.Epoch));
        Assert.Equal([Phase.AsFound, Phase.AsLeft, Phase.AsLeft], visit.Readings.Select(r => r.Phase));
        Assert.Equal("c", Assert.Single(visit.LeftWith).Id);
        Assert.Equal(
            [("clean-ash-passages", 1), ("clean-combustion-blower", 2)],
            visit.Evidence().OfType<ActionEvidence>().Select(a => (a.Action, a.Epoch)));
    }

    [Fact]
    public void A_stated_phase_stands() =>
        Assert.Equal(Phase.AsLeft, Assert.Single(Of(Firebox("-27 Pa", "a", ",\"phase\":\"as-left\"")).Readings).Phase);

    [Fact]
    public void A_correction_puts_the_right_body_where_the_wrong_one_stood()
    {
        var visit = Of(Firebox("-70 Pa"), Entry("action", """{"action":"clean-vent"}"""), Replace("r", "-7 Pa", "c1"));
        var reading = Assert.Single(visit.Readings);
        Assert.Equal((-7, 0, Phase.AsFound, true), (reading.Body.Si, reading.Epoch, reading.Phase, reading.Fact.Corrected));
        Assert.Contains("-70 Pa", VisitFile.Write(visit.Journal), StringComparison.Ordinal);
    }

    [Fact]
    public void The_latest_correction_decides() =>
        Assert.Equal(-9, Assert.Single(Of(Firebox("-70 Pa"), Replace("r", "-7 Pa", "c1"), Replace("r", "-9 Pa", "c2")).Readings).Body.Si);

    [Fact]
    public void A_correction_of_a_correction_reaches_the_entry() =>
        Assert.Equal(-9, Assert.Single(Of(Firebox("-70 Pa"), Replace("r", "-7 Pa", "c1"), Replace("c1", "-9 Pa", "c2")).Readings).Body.Si);

    [Fact]
    public void A_withdrawn_entry_is_no_fact_but_stays_in_the_journal()
    {
        var visit = Of(Firebox("-70 Pa"), Withdraw("r", "w"));
        Assert.Empty(visit.Readings);
        Assert.Equal(3, visit.Journal.Entries.Count);
    }

    [Fact]
    public void A_withdrawn_action_begins_no_epoch() =>
        Assert.Equal(0, Of(Entry("action", """{"action":"clean-vent"}""", "a"), Withdraw("a", "w"), Firebox("-7 Pa")).Epoch);

    [Fact]
    public void Withdrawing_a_correction_restores_what_it_corrected()
    {
        Assert.Equal(-70, Assert.Single(Of(Firebox("-70 Pa"), Replace("r", "-7 Pa", "c"), Withdraw("c", "w")).Readings).Body.Si);
        Assert.Equal(-70, Assert.Single(Of(Firebox("-70 Pa"), Withdraw("r", "w1"), Withdraw("w1", "w2")).Readings).Body.Si);
        Assert.Empty(Of(Firebox("-70 Pa"), Withdraw("r", "w1"), Withdraw("w1", "w2"), Withdraw("w2", "w3")).Readings);
    }

    [Fact]
    public void A_correction_of_an_entry_that_is_not_here_waits()
    {
        var visit = Of(Firebox("-70 Pa"), Replace("elsewhere", "-7 Pa", "c"), Replace("itself", "-1 Pa", "itself"));
        Assert.Equal(["c", "itself"], visit.Dangling.Select(e => e.Id));
        Assert.Equal(-70, Assert.Single(visit.Readings).Body.Si);
    }

    [Fact]
    public void Facts_of_the_site_add_up_member_by_member()
    {
        var visit = Of(
            Entry("site", """{"altitude":"250 m","vent":{"diameter":"3 in","vertical":"5 m"}}"""),
            Entry("site", """{"outdoor":"28 °F","vent":{"vertical":"5.5 m","tees":1}}"""));
        var site = visit.StoveSite();
        Assert.Equal((250, 5.5, 1), (site.AltitudeM, site.Vent!.VerticalM, site.Vent.Tees));
        Assert.Equal(-2.222, site.OutdoorC!.Value, 3);
        Assert.Empty(visit.Differences);
    }

    [Fact]
    public void Where_two_devices_differ_both_are_shown_and_the_latest_is_used()
    {
        var visit = Of(
            Entry("site", """{"altitude":"250 m","room":"20 °C"}""", "s1", "phone"),
            Entry("site", """{"altitude":"260 m","room":"20 °C"}""", "s2", "laptop"));
        var difference = Assert.Single(visit.Differences);
        Assert.Equal("site.altitude", difference.Member);
        Assert.Equal([("250 m", "phone", "s1"), ("260 m", "laptop", "s2")], difference.Claims.Select(c => (c.Value, c.Device, c.Entry)));
        Assert.Equal(260, visit.StoveSite().AltitudeM);
    }

    [Fact]
    public void A_correction_settles_a_difference()
    {
        var visit = Of(
            Entry("site", """{"altitude":"250 m"}""", "s1", "phone"),
            Entry("site", """{"altitude":"260 m"}""", "s2", "laptop"),
            Entry("correction", """{"replaces":"s2","kind":"site","body":{"altitude":"250 m"}}"""));
        Assert.Empty(visit.Differences);
        Assert.Equal(250, visit.StoveSite().AltitudeM);
    }

    [Fact]
    public void History_counts_fuel_by_mass_or_by_bags_of_a_stated_mass()
    {
        Assert.Equal(1.3, Of(Entry("history", """{"fuelSinceService":"1.3 t"}""")).History().TonnesSinceCleaning!.Value, 12);
        Assert.Equal(0.9, Of(Entry("history", """{"bagsSinceService":60,"bag":"15 kg"}""")).History().TonnesSinceCleaning!.Value, 12);
        var vague = File(Entry("history", """{"bagsSinceService":60}"""));
        Assert.Equal("body.bag", Assert.Single(vague.Problems).Field);
        Assert.Null(Visit.Fold(vague.Journal).History().TonnesSinceCleaning);
    }

    [Fact]
    public void Months_are_counted_from_the_last_service_to_the_day_of_the_visit() =>
        Assert.Equal(12, Of(Entry("history", """{"lastService":"2025-01-14"}""")).History().MonthsSinceCleaning!.Value, 1);

    [Fact]
    public void Signs_reach_diagnosis_by_id()
    {
        var visit = Of(
            Entry("complaint", """{"words":"it dies","outcome":"stops-proving"}"""),
            Entry("observation", """{"sign":"glass","outcome":"black"}"""),
            Entry("code", """{"code":"E3","meaning":"low-draught"}"""));
        Assert.Equal(
            [("complaint", "stops-proving"), ("glass", "black"), ("code", "low-draught")],
            visit.Evidence().OfType<SignEvidence>().Select(s => (s.Sign, s.Outcome)));
    }

    [Fact]
    public void Free_words_reach_diagnosis_once_the_pattern_is_known()
    {
        var twigs = Entry("observation", """{"sign":"the cap","outcome":"full of twigs"}""");
        var insert = Entry("appliance", """{"pattern":"damper-insert"}""");

        Assert.Empty(Of(twigs).Evidence());
        Assert.Contains(Of(insert, twigs).Evidence().OfType<SignEvidence>(), s => (s.Sign, s.Outcome) == ("cap-look", "nest"));
    }

    [Fact]
    public void Kinds_not_known_are_counted_and_not_guessed_at() =>
        Assert.Equal("readng", Assert.Single(Of(Entry("readng", """{"port":"firebox"}""")).Unknown).Body.Kind);

    [Fact]
    public void The_same_entries_give_the_same_visit_in_whatever_order_they_arrived() =>
        SomeEntries.Story.Sample(story =>
        {
            var j = SomeEntries.Play(story);
            var (one, two) = (Visit.Fold(j[0].Merge(j[1]).Merge(j[2])), Visit.Fold(j[2].Merge(j[0]).Merge(j[1])));
            return one.Facts.SequenceEqual(two.Facts) && one.StoveSite() == two.StoveSite() && one.Epoch == two.Epoch
                && one.Differences.Select(d => d.Member).SequenceEqual(two.Differences.Select(d => d.Member));
        });
}
