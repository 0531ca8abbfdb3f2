using Emberwright.Diagnosis.Safety;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Safety;

/// <summary>Safety stops: every rule, every trigger, every release. Rules are common practice, no source, unless a limit is named.</summary>
public class SafetyStopTests
{
    public static TheoryData<string, int> EveryTrigger()
    {
        var data = new TheoryData<string, int>();
        foreach (var rule in SafetyRules.All)
            for (var t = 0; t < rule.Triggers.Count; t++) data.Add(rule.Id, t);
        return data;
    }

    public static TheoryData<string, int> EverySeenAgain()
    {
        var data = new TheoryData<string, int>();
        foreach (var rule in SafetyRules.All)
            for (var r = 0; r < rule.Releases.Count; r++)
                if (rule.Releases[r] is SeenAgain) data.Add(rule.Id, r);
        return data;
    }

    [Theory]
    [MemberData(nameof(EveryTrigger))]
    public void Each_trigger_calls_for_its_stop_and_names_the_fact(string id, int trigger)
    {
        var fact = Fact(SafetyRules.Find(id)!.Triggers[trigger], 0);
        var stop = Assert.Single(SafetyStops.Standing([fact]), s => s.Rule == id);
        Assert.Equal(fact.Id, stop.Evidence);
        Assert.NotEmpty(stop.Words);
        Assert.NotEmpty(stop.ReleasedBy);
        Assert.NotEmpty(stop.Source);
    }

    [Theory]
    [MemberData(nameof(EveryTrigger))]
    public void A_stop_outlives_any_number_of_good_readings_and_actions(string id, int trigger)
    {
        Evidence[] evidence =
        [
            Fact(SafetyRules.Find(id)!.Triggers[trigger], 0),
            new ActionEvidence("a", 1, "full-service"),
            new ReadingEvidence("f", 1, new(Measure.Pressure, Places.Firebox, Condition.HighBurn), -25),
            new ReadingEvidence("o", 1, new(Measure.Oxygen, Places.Flue, Condition.HighBurn), 11),
            new SignEvidence("g", 1, "flame", "lively"),
        ];
        Assert.Contains(SafetyStops.Standing(evidence), s => s.Rule == id);
    }

    [Theory]
    [MemberData(nameof(EverySeenAgain))]
    public void The_sound_outcome_releases_only_after_something_was_done(string id, int release)
    {
        var rule = SafetyRules.Find(id)!;
        var sound = (SeenAgain)rule.Releases[release];
        var calls = rule.Triggers.OfType<Seen>().First(t => t.Sign == sound.Sign || sound.Answers.Contains(t.Sign));
        var called = new SignEvidence("1", 0, calls.Sign, calls.Outcome);
        Assert.Contains(SafetyStops.Standing([called, new SignEvidence("2", 0, sound.Sign, sound.Outcome)]), s => s.Rule == id);
        Assert.DoesNotContain(SafetyStops.Standing([called, new SignEvidence("2", 1, sound.Sign, sound.Outcome)]), s => s.Rule == id);
        Assert.Contains(SafetyStops.Standing([called with { Epoch = 2 }, new SignEvidence("2", 1, sound.Sign, sound.Outcome)]), s => s.Rule == id);
    }

    [Theory]
    [InlineData(70, "co-evacuate")]
    [InlineData(69.9, "co-ventilate")]
    [InlineData(35, "co-ventilate")]
    [InlineData(34.9, "co-rise")]
    [InlineData(5, "co-rise")]
    public void Carbon_monoxide_in_the_room_by_its_level(double ppm, string worst) =>
        Assert.Equal(worst, SafetyStops.Standing([Co("c", 0, Places.Room, Condition.HighBurn, ppm)])[0].Rule);

    [Fact]
    public void Below_any_rise_nothing_stands() =>
        Assert.Empty(SafetyStops.Standing([Co("c", 0, Places.Room, Condition.HighBurn, 4.9)]));

    [Fact]
    public void A_small_reading_without_fire_is_not_the_stoves_but_a_high_one_counts_whatever_its_source()
    {
        Assert.Empty(SafetyStops.Standing([Co("c", 0, Places.Room, Condition.BlowerOff, 9)]));
        Assert.Contains(SafetyStops.Standing([Co("c", 0, Places.Room, Condition.BlowerOff, 35)]), s => s.Rule == "co-ventilate");
    }

    [Fact]
    public void Carbon_monoxide_in_the_flue_is_no_stop_of_the_room() =>
        Assert.Empty(SafetyStops.Standing([Co("c", 0, Places.Flue, Condition.HighBurn, 900)]));

    [Fact]
    public void Only_a_reading_at_nought_with_fire_at_the_same_place_ends_a_rise()
    {
        var called = Co("1", 0, Places.Room, Condition.HighBurn, 14);
        Assert.NotEmpty(SafetyStops.Standing([called, new ActionEvidence("a", 1, "full-service")]));
        Assert.NotEmpty(SafetyStops.Standing([called, Co("2", 1, Places.Room, Condition.BlowerOff, 0)]));
        Assert.NotEmpty(SafetyStops.Standing([called, Co("2", 1, Places.WarmAir, Condition.HighBurn, 0)]));
        Assert.NotEmpty(SafetyStops.Standing([called, Co("2", 0, Places.Room, Condition.HighBurn, 0)]));
        Assert.Empty(SafetyStops.Standing([called, Co("2", 1, Places.Room, Condition.HighBurn, 0)]));
    }

    [Fact]
    public void The_most_urgent_comes_first_in_any_order_of_the_evidence()
    {
        Evidence[] evidence = [new SignEvidence("a", 0, "fuse", "wrong"), new SignEvidence("b", 0, "pencil-intake", "out"), new SignEvidence("c", 0, "ill", "yes")];
        var there = SafetyStops.Standing(evidence);
        Assert.Equal(["co-evacuate", "reversed-draft", "wrong-fuse"], there.Select(s => s.Rule));
        Assert.Equal(there, SafetyStops.Standing([.. evidence.Reverse()]));
    }

    [Fact]
    public void No_evidence_no_stop() => Assert.Empty(SafetyStops.Standing([]));

    [Fact]
    public void Every_stop_a_fault_names_exists() =>
        Assert.All(FaultList.All.Where(f => f.SafetyStop is not null), f => Assert.NotNull(SafetyRules.Find(f.SafetyStop!)));

    [Fact]
    public void Every_sign_and_outcome_a_rule_names_exists()
    {
        var signs = SignList.All.ToDictionary(s => s.Id);
        foreach (var rule in SafetyRules.All)
        {
            foreach (var seen in rule.Triggers.OfType<Seen>()) Assert.Contains(signs[seen.Sign].Outcomes, o => o.Id == seen.Outcome);
            foreach (var again in rule.Releases.OfType<SeenAgain>()) Assert.Contains(signs[again.Sign].Outcomes, o => o.Id == again.Outcome);
        }
    }

    [Fact]
    public void Rule_ids_are_unique() => Assert.Equal(SafetyRules.All.Count, SafetyRules.All.Select(r => r.Id).Distinct().Count());

    private static ReadingEvidence Co(string id, int epoch, string place, Condition condition, double ppm) =>
        new(id, epoch, new Observable(Measure.CarbonMonoxide, place, condition), ppm);

    private static Evidence Fact(Trigger trigger, int epoch) => trigger switch
    {
        Seen seen => new SignEvidence("fact", epoch, seen.Sign, seen.Outcome),
        Reaches reaches => new ReadingEvidence("fact", epoch, new Observable(reaches.Measure, reaches.Places[0], Condition.HighBurn), reaches.AtLeast),
        _ => throw new InvalidOperationException($"No example for {trigger}."),
    };
}
