using Emberwright.Stove;
using static Emberwright.Diagnosis.Signs.Wording;

namespace Emberwright.Diagnosis.Signs;

/// <summary>What is seen along the way of the air: pot, passages, wheel, vent.</summary>
/// <remarks>Cut points are ln of the share left open: −0.16 is 15 %, −0.51 is 40 %, −1.2 is 70 % closed.</remarks>
internal static class AirLooks
{
    private static readonly double[] Grades = [-1.2, -0.51, -0.16];
    private static readonly string[] Shut = ["packed", "solid", "shut", "completely full", "totally blocked", "plugged", "choked", "blocked", "full of ash"];
    private static readonly string[] Poor = ["three quarters full", "three quarter", "mostly full", "half full", "half blocked", "half", "full", "thick", "centimetres"];
    private static readonly string[] Fair = ["some ash", "a little", "thin layer", "light", "quarter full", "dusty"];
    private static readonly string[] Open = ["clean", "clear", "open", "empty", "free", "bare"];

    public static IReadOnlyList<Sign> Signs { get; } =
    [
        Graded("pot-holes", "Burn-pot holes?", ["burn pot holes", "pot holes", "holes", "burn pot", "fire pot", "grate", "brazier"], Parameter.BurnPot, [-0.69, -0.22], 0.2,
            Out("most", "mostly closed", .08, ["mostly closed", "blocked", "closed", "half", "plugged", "clogged", "two thirds"], ["pot holes are blocked", "holes plugged"]),
            Out("part", "partly closed", .27, ["third closed", "third", "part", "some closed", "quarter", "few closed"], ["a third of the holes"]),
            Out("open", "open", .65, ["open", "clear", "clean", "free"], ["pot holes open"])),
        Graded("ash-passages-look", "Ash passages behind their covers?", ["ash passages", "ash traps", "ash chamber", "side passages", "behind the covers", "lower covers", "behind the fire wall"], Parameter.AshPassages, Grades, 0.3,
            Out("shut", "packed", .08, Shut), Out("poor", "more than half full", .17, Poor), Out("fair", "some ash", .35, Fair), Out("open", "clear", .4, Open)),
        Graded("exchanger-look", "Exchanger's passages?", ["exchanger passages", "exchanger tubes", "heat exchanger", "exchanger", "swing down panel", "flue passages"], Parameter.Exchanger, Grades, 0.3,
            Out("shut", "packed", .04, Shut), Out("poor", "more than half full", .14, Poor), Out("fair", "some ash", .37, Fair), Out("open", "open", .45, Open)),
        Graded("exchanger-coat", "Deposit on the exchanger's surfaces?", ["deposit", "fins", "surfaces of the exchanger", "exchanger surfaces", "coating", "swing down panel"], Parameter.Insulation, [-0.36, -0.13], 0.1,
            Out("thick", "thick, several millimetres", .12, ["thick", "5 mm", "4 mm", "3 mm", "millimetres", "heavy", "grey deposit", "crusted"], ["fins under"]),
            Out("coated", "a coat", .38, ["coat", "1 mm", "2 mm", "some", "thin grey"]),
            Out("thin", "thin dust", .5, ["thin", "clean", "bare", "dust"])),
        Graded("wheel-look", "Combustion blower's wheel?", ["blower wheel", "combustion blower wheel", "impeller", "exhaust fan wheel", "draft fan wheel", "wheel of the combustion blower"], Parameter.Wheel, [-0.22, -0.08], 0.07,
            Out("caked", "caked", .12, ["caked", "thick", "packed", "crusted", "heavy", "sooted"]),
            Out("dusted", "dusted", .38, ["dust", "thin", "some", "light"]),
            Out("clean", "clean", .5, ["clean", "bare", "free"])),
        Graded("room-air-look", "Room-air blower's inlet and wheel?", ["room air blower inlet", "room air blower", "room blower", "convection fan", "convection blower", "distribution fan", "distribution blower"], Parameter.RoomAir, [-0.51, -0.16], 0.2,
            Out("felted", "felted over", .12, ["felted", "choked", "hair", "blades not visible", "packed", "blocked", "matted", "thick"]),
            Out("dusty", "dusty", .4, ["dust", "dusty", "some lint", "light"]),
            Out("clean", "clean", .48, ["clean", "free", "fine"])),
        Graded("vent-look", "Inside of the vent?", ["inside of the vent", "stove and flue", "vent", "flue", "chimney", "pipe", "liner"], Parameter.Vent, [-0.69, -0.2], 0.25,
            Out("choked", "choked", .06, ["choked", "blocked", "packed", "half closed", "thick soot", "full"]),
            Out("sooty", "sooty", .4, ["soot", "sooty", "some", "fly ash", "thin"]),
            Out("clean", "clean", .54, ["clean", "clear", "swept", "free"])),
        Stated("cap-look", "Terminal and cap?", ["cap", "terminal", "vent cap", "hood outside"],
            Out("clear", "clear", .87, ["clear", "clean", "free", "open", "fine"]),
            Out("sooted", "sooted", .1, ["soot", "crust", "mesh blocked"]),
            Out("nest", "a nest", .02, ["nest", "bird", "wasps", "twigs", "straw", "leaves"], ["bird nest", "birds in the chimney", "nest in the cap"]),
            Out("snow", "snow or ice", .01, ["snow", "ice", "iced", "drift"], ["snowed in", "snow over the pipe"])),
        Stated("tee-look", "The tee, opened last?", ["tee", "clean out"],
            Out("clean", "little in it", .92, ["clean", "little", "empty", "clear"]),
            Out("full", "full", .06, ["full", "packed", "blocked", "soot"]),
            Out("wet", "water in it", .02, ["water", "wet", "drips"])),
        Stated("tee-cap", "The tee's cap?", ["tee cap", "clean out cap", "cleanout cap", "cap of the tee", "bottom cap"],
            Out("sealed", "on and sealed", .97, ["sealed", "on", "tight", "fitted"]),
            Out("off", "off, loose or without its seal", .03, ["off", "loose", "missing", "without", "fell", "fallen", "lies", "lying", "ground", "floor", "gone", "not sealed", "leaks"], ["clean out cap is off", "tee cap missing", "cap fell off", "cap lies on"])),
        Stated("intake-look", "Air intake and its screen?", ["intake", "air inlet", "inlet screen", "outside air inlet"],
            Out("clear", "clear", .95, ["clear", "clean", "open", "free"]),
            Out("blocked", "blocked", .05, ["blocked", "leaves", "lint", "cobwebs", "closed", "nest", "carpet"], ["leaves in the intake"])),
        Stated("damper", "Air damper?", ["damper", "flapper", "air slide", "air rod"],
            Out("set", "set and free", .93, ["set", "free", "right", "moves"]),
            Out("shut", "stuck or set too far shut", .05, ["stuck", "shut", "closed", "seized", "rusted"], ["damper is stuck"]),
            Out("open", "too far open", .02, ["wide open", "too far open", "off its stop", "too much"])),
        Stated("pot-seat", "How does the burn pot sit?", ["burn pot", "pot", "fire pot", "pot seat", "liner"],
            Out("right", "right way round and flat", .95, ["right", "flat", "seated", "home"]),
            Out("askew", "not down on its ledge", .035, ["askew", "rocks", "not down", "tilted", "lifted", "not seated", "gap"], ["pot not seated", "pot rocks"]),
            Out("turned", "back to front", .015, ["back to front", "turned", "wrong way", "reversed", "backwards"], ["pot back to front", "pot the wrong way round"])),
        Stated("pot-content", "What lies in the pot?", ["in the pot", "burn pot", "pot", "fire pot"],
            Out("ash", "a little ash", .62, ["ash", "clean", "customer scrapes"]),
            Out("heap", "a heap of unburned pellets", .15, ["heap", "full of pellets", "unburned", "unburnt", "piled", "overflowing", "pellets"], ["pot full of pellets", "heap of pellets", "fire builds on one side"]),
            Out("clinker", "clinker", .15, ["clinker", "fused", "crust", "glassy", "stone"], ["clinker in the pot"]),
            Out("empty", "nothing", .08, ["nothing", "empty"])),
        Stated("baffle", "Baffle and fire wall?", ["baffle", "fire wall", "firebrick", "fire brick"],
            Out("seated", "seated", .97, ["seated", "right", "in place", "fine"]),
            Out("misplaced", "out of place", .03, ["misplaced", "fallen", "out of place", "crooked", "missing", "gap"])),
        Stated("terminal-place", "Where does the terminal stand?", ["terminal stand", "place of the terminal", "terminal place", "where is the terminal"],
            Out("sheltered", "where wind can do little", .75, ["sheltered", "fine", "above the ridge"]),
            Out("exposed", "where the wind presses on it", .25, ["exposed", "corner", "windward", "under the eaves", "hill"])),
        Stated("outside-air", "Outside-air hose?", ["outside air hose", "outside air", "fresh air hose", "combustion air hose"],
            Out("none", "there is none", .6, ["none", "no"]),
            Out("on", "on its spigots", .38, ["on", "connected", "tight", "fitted"]),
            Out("off", "off", .02, ["off its spigot", "off", "lying", "disconnected", "split", "loose"], ["outside air hose off", "air hose came off"])),
    ];
}
