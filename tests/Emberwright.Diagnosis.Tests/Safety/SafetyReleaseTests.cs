using Emberwright.Diagnosis.Safety;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Safety;

/// <summary>
/// Each safety stop with its threshold, where that comes from and who may release it; and what it takes to release an
/// evacuation. Common practice, no source, unless a limit is named.
/// </summary>
public class SafetyReleaseTests
{
    /// <summary>Rule; thresholds in SI, none where something seen is enough; a word of who releases it; a word of its source.</summary>
    private static readonly (string Rule, double[] Thresholds, string Who, string Source)[] Table =
    [
        ("co-evacuate", [70], "physician", "UL 2034"),
        ("co-alarm", [], "technician", "EN 50291"),
        ("hopper-smoke", [], "technician", "common practice"),
        ("co-ventilate", [35], "technician", "35 ppm"),
        ("co-rise", [5], "technician", "outdoor air"),
        ("burn-back", [], "technician", "common practice"),
        ("feed-will-not-stop", [], "technician", "common practice"),
        ("reversed-draft", [], "technician", "common practice"),
        ("spillage", [], "outside-air supply", "4 Pa"),
        ("cracked-exchanger", [], "owner", "common practice"),
        ("safety-device-bridged", [], "removed the bridge", "common practice"),
        ("wrong-fuse", [], "technician", "common practice"),
        ("scorched-wiring", [], "electrician", "common practice"),
        ("cleanout-cap-off", [], "technician", "common practice"),
        ("pressure-side-leak", [], "smoke test", "common practice"),
        ("broken-glass-or-latch", [], "technician", "common practice"),
        ("ignition-thump", [], "technician", "common practice"),
        ("vent-burning", [], "chimney sweep", "common practice"),
        ("vent-fire", [540], "chimney sweep", "UL 103"),
        ("repeated-over-temperature", [], "technician", "common practice"),
        ("water-jacket-leak", [], "owner", "common practice"),
        ("vent-hot-near-combustibles", [77], "authority", "50 K"),
    ];

    [Fact]
    public void Every_rule_has_its_threshold_its_source_and_who_may_release_it()
    {
        Assert.Equal(Table.Select(t => t.Rule).Order(), SafetyRules.All.Select(r => r.Id).Order());
        foreach (var (id, thresholds, who, source) in Table)
        {
            var rule = SafetyRules.Find(id)!;
            Assert.Equal(thresholds, rule.Triggers.OfType<Reaches>().Select(r => r.AtLeast));
            Assert.Contains(who, rule.ReleasedBy, StringComparison.Ordinal);
            Assert.Contains(source, rule.Source, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Just_below_its_threshold_no_reading_calls()
    {
        foreach (var rule in SafetyRules.All)
            foreach (var reaches in rule.Triggers.OfType<Reaches>())
                foreach (var place in reaches.Places)
                {
                    var observable = new Observable(reaches.Measure, place, Condition.HighBurn);
                    Assert.Contains(SafetyStops.Standing([new ReadingEvidence("r", 0, observable, reaches.AtLeast)]), s => s.Rule == rule.Id);
                    Assert.DoesNotContain(SafetyStops.Standing([new ReadingEvidence("r", 0, observable, reaches.AtLeast - 0.01)]), s => s.Rule == rule.Id);
                }
    }

    [Theory]
    [InlineData("co-evacuate")]
    [InlineData("co-alarm")]
    public void An_evacuation_ends_when_the_room_is_proved_clear_on_high_and_in_shutdown_and_everybody_is_well(string id)
    {
        Evidence called = id == "co-alarm" ? new SignEvidence("1", 0, Complaints.Sign, Complaints.CoAlarm) : new SignEvidence("1", 0, "ill", "yes");
        Evidence done = new ActionEvidence("2", 1, "replace-blower-gasket");
        Evidence well = new SignEvidence("3", 1, "ill", "no");
        Evidence high = Co("4", 1, Condition.HighBurn, 0), low = Co("5", 1, Shutdown, 0);
        bool Stands(params Evidence[] later) => SafetyStops.Standing([called, done, .. later]).Any(s => s.Rule == id);
        Assert.False(Stands(well, high, low));
        Assert.True(Stands(well, high));
        Assert.True(Stands(well, low));
        Assert.True(Stands(well));
        Assert.True(Stands(well, high, low, Co("6", 1, Condition.HighBurn, 9)));
        Assert.True(Stands(well, high with { Epoch = 0 }, low));
        Assert.Equal(id == "co-evacuate", Stands(high, low));
    }

    [Fact]
    public void Seventy_parts_per_million_are_released_by_no_single_reading()
    {
        Evidence called = Co("1", 0, Condition.HighBurn, 90);
        Assert.Contains(SafetyStops.Standing([called, Co("2", 1, Condition.HighBurn, 0)]), s => s.Rule == "co-evacuate");
        Assert.DoesNotContain(SafetyStops.Standing([called, Co("2", 1, Condition.HighBurn, 0), Co("3", 1, Shutdown, 0)]), s => s.Rule == "co-evacuate");
    }

    [Theory]
    [InlineData(DamperInsert.Id, false, -3.9, false)]
    [InlineData(DamperInsert.Id, false, -4.1, true)]
    [InlineData(SealedCombustion.Id, true, -7.9, false)]
    [InlineData(SealedCombustion.Id, true, -8.1, true)]
    [InlineData(SealedCombustion.Id, false, -4.1, true)]
    public void A_house_too_far_below_outdoors_is_a_stop_by_the_reading_itself(string pattern, bool outsideAir, double pa, bool stops)
    {
        var stove = new StoveCase(PatternLibrary.Find(pattern)!, null, new Site(OutsideAir: outsideAir), new History());
        var evidence = SensorReadings.Judged([new ReadingEvidence("r", 0, new Observable(Measure.Pressure, Places.House, Condition.BlowerOff), pa)], stove);
        Assert.Equal(stops, SafetyStops.Standing(evidence).Any(s => s.Rule == "spillage" && s.Evidence == "r"));
    }

    [Theory]
    [InlineData("The pipe is glowing red and roars", "vent-burning")]
    [InlineData("Smoke is coming from the hopper", "hopper-smoke")]
    [InlineData("There is smoke coming up out of the pellet hopper", "hopper-smoke")]
    [InlineData("I opened the lid and smoke came out", "hopper-smoke")]
    [InlineData("The CO alarm is sounding", "co-alarm")]
    [InlineData("The detector in the hall beeps, the one for carbon monoxide", "co-alarm")]
    [InlineData("The kids feel sick when it runs", "co-alarm")]
    [InlineData("Sparks and flames come out of the chimney", "vent-burning")]
    [InlineData("There was a roaring noise and the stovepipe was red", "vent-burning")]
    [InlineData("My wife has a headache since it burns", "co-alarm")]
    public void The_telephone_branch_comes_before_any_question(string said, string rule)
    {
        var found = Lexicon.Read(said, DamperInsert.Id).Found.Select((f, k) => new SignEvidence($"{k}", 0, f.Sign, f.Outcome));
        var stop = SafetyStops.Standing([.. found])[0];
        Assert.Equal(Urgency.Evacuate, SafetyRules.Find(stop.Rule)!.Urgency);
        Assert.Contains(SafetyStops.Standing([.. found]), s => s.Rule == rule);
    }

    [Theory]
    [InlineData("It roars, drops low, roars again, and there are black bits in the ash.")]
    [InlineData("The hopper is full, the fire went out.")]
    [InlineData("The pipe is too hot to touch.")]
    [InlineData("No smoke, the hopper is full and nobody is ill.")]
    [InlineData("The chimney was swept and there is no fire.")]
    public void Nothing_is_taken_for_an_emergency_that_is_none(string said) =>
        Assert.DoesNotContain(
            SafetyStops.Standing([.. Lexicon.Read(said, DamperInsert.Id).Found.Select((f, k) => new SignEvidence($"{k}", 0, f.Sign, f.Outcome))]),
            s => SafetyRules.Find(s.Rule)!.Urgency == Urgency.Evacuate);

    private static Condition Shutdown => new(FireState.Shutdown, BlowerState.On, OpeningState.Closed);

    private static ReadingEvidence Co(string id, int epoch, Condition condition, double ppm) =>
        new(id, epoch, new Observable(Measure.CarbonMonoxide, Places.Room, condition), ppm);
}
