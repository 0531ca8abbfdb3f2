using Emberwright.Diagnosis.Signs;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Diagnosis.Tests.CatalogueTests;

/// <summary>
/// Calls and findings as people put them, made up for these tests, each with what a technician hears in it (common practice,
/// no source). Those that must not be heard are here as well.
/// </summary>
public class SayingsTests
{
    [Theory]
    [InlineData("Plays up when it blows from the west. Otherwise fine. It just stops feeding.", "happens", "weather")]
    [InlineData("Lights fine, burns half an hour, then goes out every time. Blows cold after that.", "complaint", Complaints.StopsProving)]
    [InlineData("Nothing at all. No lights, no fans.", "complaint", Complaints.Dead)]
    [InlineData("It keeps dropping pellets even when I turn it off. The pot overflows.", "complaint", Complaints.WillNotStop)]
    [InlineData("Flame is lazy and orange. It got slowly worse.", "onset", "gradual")]
    [InlineData("Stops after a while. Does it more on cold nights.", "complaint", Complaints.StopsLater)]
    [InlineData("Weak flame, dirty glass, then it quits.", "complaint", Complaints.LazyFlame)]
    [InlineData("It won't light by itself. With a bit of gel and a match it burns fine.", "lit-by-hand", "burns")]
    [InlineData("The blue hose was off when I looked.", "hose", "off")]
    [InlineData("It burns, but the room stays cold. The fan hardly blows.", "warm-air-change", "weaker")]
    [InlineData("Feeds, but no flame. Pellets just pile up in the pot.", "complaint", Complaints.NoLight)]
    [InlineData("Clinkers every day since I bought a pallet from the hardware store. Lots of dust in the bag.", "fuel", "dusty")]
    [InlineData("Since the new door gasket it won't start feeding.", "work-done", "repair")]
    [InlineData("Flames up into the tube, smoke comes out of the hopper.", "complaint", Complaints.HopperSmoke)]
    [InlineData("It shuts itself off at random. Hit it and it runs again.", "wiggle", "changes")]
    [InlineData("After the power cut it does nothing, display dark.", "complaint", Complaints.Dead)]
    [InlineData("The power went, and the room filled with smoke.", "complaint", Complaints.PowerCutSmoke)]
    [InlineData("Weak draft alarm. It was fine last winter.", "code", "low-draught")]
    [InlineData("Brand new install, never ran right.", "onset", "from-new")]
    [InlineData("Starts, then alarm. The glow plug never glows.", "igniter-glow", "dark")]
    [InlineData("Loses water pressure every week.", "water-gauge", "low")]
    [InlineData("We have headaches when it runs.", "ill", "yes")]
    [InlineData("Yearly service please, no complaints.", "complaint", Complaints.Due)]
    [InlineData("Not one pellet drops since the kids sat on the lid.", "lid-history", "hit")]
    [InlineData("It lights with a loud bang at start.", "noise", "thump")]
    [InlineData("The glass stays clear, but the motor hums and nothing comes.", "complaint", Complaints.NoFeed)]
    public void A_call_is_heard(string text, string sign, string outcome) =>
        Assert.Contains(new SignOutcome(sign, outcome), Lexicon.Read(text, PatternOf(sign)).Found);

    [Theory]
    [InlineData("terminal", "plain cap under the eaves, faces west", "terminal-place", "exposed")]
    [InlineData("lamps", "all dark", "lamps", "dark")]
    [InlineData("behind the stove", "soot streak at the pipe joint", "pencil-joints", "blown")]
    [InlineData("air intake outside", "leaves and lint in the mesh", "intake-look", "blocked")]
    [InlineData("combustion blower", "hot, slow to start, stiff shaft", "combustion-blower-run", "slow")]
    [InlineData("vent cap", "bird's nest under the cap", "cap-look", "nest")]
    [InlineData("terminal", "buried in snow", "cap-look", "snow")]
    [InlineData("sensing hose", "split near the switch", "hose", "cracked")]
    [InlineData("room-air blower", "not turning", "room-blower-run", "still")]
    [InlineData("burn pot", "sits turned round, igniter hole at the back", "pot-seat", "turned")]
    [InlineData("feed motor", "hums, gearbox output does not turn", "feed-shaft", "slips")]
    [InlineData("feed motor", "turns with the switch off", "feed-pulse", "always")]
    [InlineData("room-air blower wheel", "thick lint", "room-air-look", "felted")]
    [InlineData("tee", "full to the branch with ash", "tee-look", "full")]
    [InlineData("connectors", "loose spade at the vacuum switch", "connectors", "loose")]
    [InlineData("Sockets", "another lamp on this socket is dead", "socket-lamp", "dead")]
    [InlineData("door gasket, paper strip", "slides out all along the bottom", "door-paper", "slides")]
    [InlineData("vent run", "3 inch, four elbows and 6 m sideways", "vent-route", "long")]
    [InlineData("RCD", "trips when the igniter is switched", "earth-ohms", "igniter")]
    [InlineData("baffle", "lying crooked across the passage", "baffle", "misplaced")]
    [InlineData("auger tube", "polished and worn thin", "auger-look", "worn")]
    [InlineData("a known dry bag", "burns normally", "dry-bag", "better")]
    [InlineData("igniter tube", "packed with ash", "igniter-passage", "ashed")]
    [InlineData("vacuum switch", "bridged with a paper clip", "bridge-wire", "found")]
    public void A_finding_is_read(string what, string seen, string sign, string outcome) =>
        Assert.Contains(new SignOutcome(sign, outcome), Lexicon.Read(what, seen, PatternOf(sign)).Found);

    [Theory]
    [InlineData("The blue hose was off and I pushed it back, it is cracked.", "exchanger-crack")]
    [InlineData("I cleaned the pot.", "pot-content")]
    [InlineData("Auger squeals and then nothing comes.", "auger-hand")]
    [InlineData("After the power cut it beeps.", "power-cut-smoke")]
    [InlineData("It just stops, then starts again later.", "runs-now")]
    [InlineData("Brand new install.", "fuel")]
    [InlineData("Not one pellet drops since we put a basket on the lid.", "nothing")]
    [InlineData("Some days it runs fine.", "exchanger-coat")]
    public void What_was_not_said_is_not_heard(string text, string signOrOutcome) =>
        Assert.DoesNotContain(Lexicon.Read(text, PatternIds.Damper).Found, f => f.Sign == signOrOutcome || f.Outcome == signOrOutcome);

    [Theory]
    [InlineData("combustion blower's wheel", "spins, does not rub", "blower-spin", "rubs")]
    [InlineData("igniter", "does not glow", "igniter-glow", "glows")]
    [InlineData("sensing hose", "not cracked", "hose", "cracked")]
    public void A_denial_is_never_its_opposite(string what, string seen, string sign, string outcome) =>
        Assert.DoesNotContain(new SignOutcome(sign, outcome), Lexicon.Read(what, seen, PatternIds.Damper).Found);

    private static string PatternOf(string sign) =>
        PatternIds.All.First(id => Catalogue.For(id).Signs.Any(s => s.Id == sign));
}
