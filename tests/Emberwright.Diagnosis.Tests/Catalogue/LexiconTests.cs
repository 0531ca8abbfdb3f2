using Emberwright.Diagnosis.Signs;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Diagnosis.Tests.CatalogueTests;

/// <summary>Sentences made up for these tests, in the words people use.</summary>
public class LexiconTests
{
    [Theory]
    [InlineData("Nothing happens when I push the button, the display is blank", Complaints.Dead)]
    [InlineData("the exhaust fan runs but the auger won't turn", Complaints.NoFeed)]
    [InlineData("It fills the pot with pellets and never gets going, no glow", Complaints.NoLight)]
    [InlineData("Lights, then goes out after ten minutes", Complaints.StopsProving)]
    [InlineData("runs for hours and then stops", Complaints.StopsLater)]
    [InlineData("a lazy flame, and soot on the glass", Complaints.LazyFlame)]
    [InlineData("the fire pot overflows, feeds too much", Complaints.FierceFlame)]
    [InlineData("there's smoke in the room whenever it's on", Complaints.SmokeOrSmell)]
    [InlineData("Burns well but there is hardly any heat", Complaints.LittleHeat)]
    [InlineData("I have to press the reset button every day, it overheats", Complaints.TripsLimit)]
    [InlineData("a terrible squealing noise", Complaints.Noise)]
    [InlineData("our CO alarm went off last night", Complaints.CoAlarm)]
    [InlineData("We had a blackout and the lounge filled with smoke", Complaints.PowerCutSmoke)]
    [InlineData("the boiler part is banging and the radiators stay cold", Complaints.Boils)]
    [InlineData("smoke from the hopper when I filled it", Complaints.HopperSmoke)]
    [InlineData("it keeps feeding after I switch it off", Complaints.WillNotStop)]
    [InlineData("It is due for its annual service, no complaint", Complaints.Due)]
    public void Complaints_are_understood(string text, string outcome) =>
        Assert.Contains(new SignOutcome(Complaints.Sign, outcome), Lexicon.Read(text, PatternIds.Hydronic).Found);

    [Theory]
    [InlineData("convection fan wheel", "matted with wool, cannot see a blade", "room-air-look", "felted")]
    [InlineData("snap disc on the exhaust: proof of fire disc", "black with soot", "disc-seat", "sooted")]
    [InlineData("vacuum hose", "split at the stub", "hose", "cracked")]
    [InlineData("burn pot", "rocks, ash under one corner", "pot-seat", "askew")]
    [InlineData("heat exchanger", "half blocked", "exchanger-look", "poor")]
    [InlineData("smoke pencil along the vent joints", "puffs out at the second joint", "pencil-joints", "blown")]
    [InlineData("auger turned by hand", "will not budge, jammed", "auger-hand", "locks")]
    [InlineData("fuse", "blown, black inside", "fuse", "blown")]
    [InlineData("Is the hopper filled?", "no, it is empty", "hopper-filled", "no")]
    [InlineData("cap", "clear", "cap-look", "clear")]
    [InlineData("does a window open help", "yes, it clears at once", "window-open", "better")]
    public void Observations_are_understood(string what, string seen, string sign, string outcome) =>
        Assert.Contains(new SignOutcome(sign, outcome), Lexicon.Read(what, seen, PatternIds.Damper).Found);

    [Theory]
    [InlineData("hose", "not split", "cracked")]
    [InlineData("the burn pot", "no clinker", "clinker")]
    public void A_denial_is_not_taken_for_the_thing(string what, string seen, string outcome) =>
        Assert.DoesNotContain(Lexicon.Read(what, seen, PatternIds.Damper).Found, f => f.Outcome == outcome);

    [Fact]
    public void A_longer_topic_hides_the_shorter_one_inside_it() =>
        Assert.DoesNotContain(Lexicon.Read("outside-air hose", "off, on the floor", PatternIds.Sealed).Found, f => f.Sign == "hose");

    [Fact]
    public void What_says_nothing_stays_a_note()
    {
        var reading = Lexicon.Read("firebox", "painted green; my uncle chose the colour", PatternIds.Damper);
        Assert.Empty(reading.Found);
        Assert.Equal(["painted green", "my uncle chose the colour"], reading.Unused);
    }

    [Fact]
    public void What_is_seen_is_never_taken_for_the_complaint() =>
        Assert.DoesNotContain(Lexicon.Read("feed motor", "clicks and rattles, a noise", PatternIds.Damper).Found, f => f.Sign == Complaints.Sign);

    [Theory]
    [InlineData("all four areas cleaned", "full-service")]
    [InlineData("ash traps emptied and brushed", "clean-ash-passages")]
    [InlineData("new vacuum switch fitted", "replace-vacuum-switch")]
    [InlineData("pressed the reset on the limit disc", "cure-high-limit-tripped")]
    [InlineData("auger freed, a nail taken out", "cure-feed-jam")]
    [InlineData("convection fan cleaned", "clean-room-air-blower")]
    [InlineData("door rope renewed", "replace-door-gasket")]
    [InlineData("made tea", null)]
    public void Deeds_are_understood(string text, string? action) => Assert.Equal(action, Lexicon.ReadAction(text, PatternIds.Damper)?.Id);

    [Fact]
    public void Every_phrase_is_lower_case_and_reads_back_as_its_own_outcome()
    {
        var wrong = new List<string>();
        foreach (var pattern in PatternIds.All)
            foreach (var sign in Catalogue.For(pattern).Signs)
                foreach (var outcome in sign.Outcomes)
                    foreach (var phrase in outcome.Alone ?? [])
                    {
                        if (phrase.Any(char.IsUpper)) wrong.Add($"{sign.Id}: '{phrase}' is not lower case");
                        var found = Lexicon.Read(phrase, pattern).Found.Where(f => f.Sign == sign.Id).ToList();
                        if (found.All(f => f.Outcome != outcome.Id)) wrong.Add($"{sign.Id}: '{phrase}' reads as {string.Join(",", found.Select(f => f.Outcome))}, not {outcome.Id}");
                    }

        Assert.Empty(wrong.Distinct());
    }
}
