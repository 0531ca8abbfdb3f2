using Emberwright.Stove.Faults;
using static Emberwright.Diagnosis.Signs.Wording;

namespace Emberwright.Diagnosis.Signs;

/// <summary>What the customer complains of, in the words people use on the telephone.</summary>
internal static class ComplaintSign
{
    public static Sign Sign { get; } = Stated(Complaints.Sign, "What does the stove do, or not do?", ["complaint", "what does it do", "what is wrong"],
        Out(Complaints.Dead, "Dead: no lights, nothing runs", .04, alone:
        [
            "dead", "nothing happens", "no lights", "no lamps", "no power", "no display", "display is blank", "display is dark", "does nothing", "will not turn on", "wont turn on",
            "wont switch on", "will not come on", "trips the breaker", "trips the fuse box", "blows the fuse", "blew the fuse", "kicks the breaker", "no sign of life",
        ]),
        Out(Complaints.NoFeed, "Lights and blowers, but no fuel feeds", .14, alone:
        [
            "no pellets", "not one pellet", "not a single pellet", "no fuel", "wont feed", "will not feed", "doesnt feed", "does not feed", "not feeding", "isnt feeding", "stopped feeding",
            "no pellets drop", "no pellets fall", "pellets dont drop", "pellets do not drop", "pellets dont fall", "pellets not dropping", "then no pellets", "auger doesnt turn", "auger does not turn", "auger not turning",
            "auger wont turn", "auger stopped", "feed motor doesnt turn", "screw doesnt turn", "nothing drops", "nothing falls", "no feed", "nothing comes down", "nothing goes into the pot", "runs out of fuel",
        ]),
        Out(Complaints.NoLight, "Fuel falls, but it does not light", .1, alone:
        [
            "wont light", "will not light", "doesnt light", "does not light", "not lighting", "wont ignite", "doesnt ignite", "does not ignite", "will not ignite", "no ignition", "fails to light", "failed ignition",
            "pellets but no fire", "pellets drop but", "pot fills up", "pot fills with pellets", "fills the pot", "have to light it by hand", "lights only with a firelighter", "no glow", "only smokes", "wont catch", "takes ages to light",
        ]),
        Out(Complaints.StopsProving, "Lights, then stops within about half an hour", .12, alone:
        [
            "lights then goes out", "lights and then goes out", "lights and goes out", "lights then dies", "starts then dies", "lights then shuts down", "starts and shuts down", "goes out after ten minutes", "goes out after a few minutes",
            "quarter of an hour", "after twenty minutes", "after 20 minutes", "after 15 minutes", "after 10 minutes", "ten minutes then", "quits after", "lights fine then", "and it dies", "it lights then", "starts up then goes out", "fails after start", "stops after start",
        ]),
        Out(Complaints.StopsLater, "Runs for hours, then stops", .1, alone:
        [
            "runs for hours", "after an hour", "after two hours", "after a few hours", "after some hours", "goes out in the night", "out in the morning", "shuts off in the night", "stops now and then", "cuts out now and then",
            "runs all evening then", "stops when it is warm", "goes out by itself", "dies in the night", "goes out overnight", "stops after hours", "and goes out",
        ]),
        Out(Complaints.LazyFlame, "Lazy orange flame, black glass", .12, alone:
        [
            "lazy flame", "orange flame", "flame is lazy", "flame is orange", "long flame", "dark flame", "dirty flame", "smoky flame", "flame got taller", "black glass", "glass black", "glass is black", "glass goes black", "glass blackens", "sooty glass", "soot on the glass", "glass sooted", "dirty burn",
        ]),
        Out(Complaints.FierceFlame, "Flame too fierce, pellets pile up or overrun", .04, alone:
        [
            "fierce", "too much flame", "flame too high", "flame too big", "roars", "like a blowtorch", "blow torch", "pellets pile", "piles up", "overfeeds", "over feeding", "too many pellets", "pellets overflow", "pot overflows", "runs over", "fire too big", "huge fire", "feeds too much",
        ]),
        Out(Complaints.SmokeOrSmell, "Smoke or smell in the room", .06, alone:
        [
            "smoke in the room", "smells of smoke", "smell of smoke", "smoke smell", "smoky smell", "it smells", "smells when", "fumes", "smoke comes out", "smokes into", "smoke from the stove", "smoke behind the stove", "room fills with smoke", "stinks", "burning smell", "smell in the room", "smoke out of the door", "soot on the wall", "leaks smoke", "puffs smoke",
        ]),
        Out(Complaints.LittleHeat, "Fire looks right, little heat", .07, alone:
        [
            "no heat", "little heat", "not much heat", "less heat", "not warm", "doesnt heat", "does not heat", "room stays cold", "lukewarm", "no warm air", "blows cold", "cold air from", "hardly any heat", "poor heat", "wont heat the room", "fan doesnt blow", "not heating",
        ]),
        Out(Complaints.TripsLimit, "Overheats or trips its high limit", .03, alone:
        [
            "overheat", "over heats", "over temperature", "overtemperature", "too hot", "hotter and hotter", "trips the limit", "trips its limit", "high limit", "have to press the reset", "reset button", "keeps tripping", "red hot", "got very hot",
        ]),
        Out(Complaints.Noise, "Noise", .04, alone:
        [
            "noise", "noisy", "squeal", "squeaks", "squeaking", "rattle", "rattling", "grinding", "clicking", "clunk", "loud", "hums loudly", "screech", "knocking", "vibrates", "scraping sound", "whining",
        ]),
        Out(Complaints.CoAlarm, "CO alarm sounded, or somebody felt ill", .01, alone:
        [
            "co alarm", "carbon monoxide", "co detector", "monoxide alarm", "headache", "nausea", "felt sick", "feel sick", "dizzy", "alarm for co", "gas alarm",
        ]),
        Out(Complaints.PowerCutSmoke, "Smoke in the room when the power failed", .01, alone:
        [
            "power cut", "power went", "power failure", "power failed", "power outage", "blackout", "lost power", "electricity went", "storm took the power",
        ]),
        Out(Complaints.Boils, "Water boils or bangs, or radiators stay cold", .02, alone:
        [
            "boils", "boiling", "bangs", "banging", "like a kettle", "kettling", "radiators are cold", "radiators stay cold", "radiators cold", "no hot water", "water too hot",
        ]),
        Out(Complaints.EatsFuel, "Burns more fuel than it should", .02, alone:
        [
            "eats bags", "eats pellets", "eats fuel", "burns more pellets", "uses more pellets", "more pellets than", "too many bags", "goes through pellets", "uses a lot of pellets", "more bags",
        ]),
        Out(Complaints.AutomaticOnly, "Starts by hand, never by its thermostat", .01, alone:
        [
            "in automatic it never", "not in automatic", "thermostat wont start", "thermostat doesnt start", "only in manual", "only starts by hand", "never starts by itself", "doesnt start by itself", "timer doesnt start", "wont start on the thermostat", "ignores the thermostat",
        ]),
        Out(Complaints.AlarmShown, "Shows an alarm, stops or refuses", .04, alone:
        [
            "alarm", "alarms", "error", "error code", "fault code", "shows a fault", "alarm code", "blinking code", "flashes a code", "warning on the display",
        ]),
        Out(Complaints.HopperSmoke, "Smoke from the hopper", .003, alone:
        [
            "smoke from the hopper", "hopper smokes", "smoke out of the hopper", "hopper is smoking", "smoke in the hopper", "hopper on fire", "pellets glow in the hopper", "burning in the hopper", "smoke when i open the lid",
        ]),
        Out(Complaints.WillNotStop, "Feeds or runs on after it is switched off", .01, alone:
        [
            "wont stop", "will not stop", "doesnt stop", "does not stop", "keeps feeding", "feeds after", "wont shut down", "will not shut down", "wont turn off", "never shuts off", "runs on and on", "keeps running after",
        ]),
        Out(Complaints.Due, "Due for service, nothing wrong", .017, alone:
        [
            "due", "service", "annual service", "yearly service", "yearly clean", "annual clean", "nothing wrong", "works fine", "no complaint", "check over", "tune up", "cleaning due",
        ]));
}
