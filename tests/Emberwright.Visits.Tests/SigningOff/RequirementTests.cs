using Emberwright.Diagnosis;
using Emberwright.Visits.Journal;
using Emberwright.Visits.SigningOff;
using Xunit;

namespace Emberwright.Visits.Tests.SigningOff;

public class RequirementTests
{
    private static Visit Of(params string[] entries) => Visit.Fold(VisitFile.Read(string.Join('\n',
        [VisitHeader.For("v").Line, """{"at":"2026-02-10T09:00:00-05:00","kind":"note","body":{"words":"begun"}}""", .. entries]) + "\n").Journal);

    private static string Entry(string kind, string body) => $$"""{"kind":"{{kind}}","body":{{body}}}""";

    private static IReadOnlyList<string> Missing(VisitKind kind, params string[] entries) =>
        [.. SignOff.Review(Of(entries), kind).Missing.Select(m => m.Id)];

    [Theory]
    [InlineData(VisitKind.Service, "made-safe as-found four-areas as-left test-fire proofs next-due customer")]
    [InlineData(VisitKind.Breakdown, "complaint made-safe as-found four-areas as-left test-fire proofs next-due customer")]
    [InlineData(VisitKind.Inspection, "identified label-photo vent-described clearances vent-class as-found customer")]
    [InlineData(VisitKind.Commissioning, "identified vent-described clearances as-left test-fire proofs flue-as-left handover next-due customer")]
    [InlineData(VisitKind.Warranty, "identified label-photo complaint made-safe as-found warranty-part as-left test-fire proofs customer")]
    [InlineData(VisitKind.Decommissioning, "identified made-safe vent-capped fuel-removed fault-photo customer")]
    public void An_empty_visit_lacks_what_its_kind_requires_in_the_order_of_the_work(VisitKind kind, string expected) =>
        Assert.Equal(expected.Split(' '), Missing(kind).Distinct());

    [Fact]
    public void An_inspection_asks_for_no_cleaning_and_no_fire()
    {
        Assert.Empty(Missing(VisitKind.Inspection,
            Entry("appliance", """{"pattern":"damper-insert","serial":"1"}"""),
            Entry("photo", $$"""{"blob":"{{Blob.ReferenceTo([1])}}","caption":"label"}"""),
            Entry("site", """{"vent":{"diameter":"3 in","vertical":"5.5 m"}}"""),
            Entry("observation", """{"sign":"clearances","outcome":"side 230 mm, rear 150 mm"}"""),
            Entry("observation", """{"sign":"vent-class","outcome":"listed pellet vent, joints sealed"}"""),
            Entry("reading", """{"port":"firebox","condition":"fan only","value":"-27 Pa"}"""),
            Entry("signature", """{"role":"customer","name":"x"}""")));
    }

    [Theory]
    [InlineData("no-access", true)]
    [InlineData("not-fitted", true)]
    [InlineData("owner-refused", false)]
    [InlineData("out-of-service", false)]
    public void An_area_may_stay_undone_for_a_reason_of_the_list(string reason, bool accepted)
    {
        var action = Entry("action", $$"""{"action":"clean-vent","area":"vent","done":false,"reason":"{{reason}}"}""");
        Assert.Equal(accepted ? 3 : 4, Missing(VisitKind.Service, action).Count(id => id == "four-areas"));
    }

    [Theory]
    [InlineData("3 ppm", "40 min", "CO meter", true)]
    [InlineData("0 ppm", "20 min", "CO meter", true)]
    [InlineData("0 ppm", "40 min", "other", true)]
    [InlineData("0 ppm", "40 min", "CO meter", false)]
    public void The_test_fire_needs_half_an_hour_no_rise_and_a_meter_zeroed_outdoors(string co, string after, string instrument, bool lacks)
    {
        var missing = Missing(VisitKind.Service,
            Entry("instrument", """{"name":"CO meter","calibratedUntil":"2026-12-31","zeroedOutdoors":true}"""),
            Entry("reading", $$"""{"port":"room","quantity":"co","condition":"high","value":"{{co}}","after":"{{after}}","instrument":"{{instrument}}","phase":"as-left"}"""));
        Assert.Equal(lacks, missing.Contains("test-fire"));
    }

    [Fact]
    public void Co_in_shutdown_is_asked_for_when_smoke_was_complained_of()
    {
        Assert.Contains("shutdown-co", Missing(VisitKind.Breakdown, Entry("complaint", """{"words":"smells","outcome":"smoke-smell"}""")));
        Assert.DoesNotContain("shutdown-co", Missing(VisitKind.Breakdown, Entry("complaint", """{"words":"no feed","outcome":"no-feed"}""")));
    }

    [Fact]
    public void An_instrument_out_of_date_does_not_count()
    {
        string[] Entries(string until) =>
        [
            Entry("instrument", $$"""{"name":"gauge","calibratedUntil":"{{until}}"}"""),
            Entry("reading", """{"port":"firebox","condition":"fan only","value":"-27 Pa","instrument":"gauge","phase":"as-left"}"""),
        ];
        Assert.Contains("instruments", Missing(VisitKind.Service, Entries("2026-02-09")));
        Assert.DoesNotContain("instruments", Missing(VisitKind.Service, Entries("2026-02-10")));
    }

    [Fact]
    public void A_failed_proof_is_missing_until_it_passes()
    {
        var failed = Entry("proof", """{"proof":"lid-open","outcome":"failed"}""");
        var passed = Entry("proof", """{"proof":"lid-open","outcome":"passed"}""");
        Assert.Contains(SignOff.Review(Of(failed), VisitKind.Service).Missing, m => m.Words.StartsWith("Failed: Prove that the feed stops with the hopper lid", StringComparison.Ordinal));
        Assert.DoesNotContain(SignOff.Review(Of(failed, passed), VisitKind.Service).Missing, m => m.Words.Contains("lid", StringComparison.Ordinal));
    }

    [Fact]
    public void A_standing_safety_stop_outvotes_every_good_reading()
    {
        var visit = Of();
        var stop = new StandingStop("bridged-switch", "Remove the bridge over the vacuum switch.", visit.Facts[0].Id, "this firm", "common practice, no source");
        Assert.Contains(SignOff.Review(visit, VisitKind.Service, null, [stop]).Missing, m => m.Id == "stops" && m.Words.Contains("bridge", StringComparison.Ordinal));
    }

    [Fact]
    public void A_lifted_notice_brings_back_the_ordinary_list()
    {
        var notice = Entry("notice", """{"reason":"lid switch bridged","releasedBy":"this firm","readTo":"owner","signed":true}""");
        var lifted = Entry("notice", """{"reason":"lid switch replaced","lifted":true}""");
        Assert.DoesNotContain("four-areas", Missing(VisitKind.Service, notice));
        Assert.Contains("four-areas", Missing(VisitKind.Service, notice, lifted));
    }
}
