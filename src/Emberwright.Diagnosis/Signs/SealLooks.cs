using Emberwright.Stove;
using static Emberwright.Diagnosis.Signs.Wording;

namespace Emberwright.Diagnosis.Signs;

/// <summary>What paper, smoke and eyes show of doors, gaskets and joints.</summary>
internal static class SealLooks
{
    public static IReadOnlyList<Sign> Signs { get; } =
    [
        Graded("door-paper", "Paper strip round the fuel door?", ["paper strip round the door", "paper strip", "door gasket", "door rope", "door seal", "paper"], Parameter.DoorLeak, [1.2], 0.5,
            Out("grips", "grips all round", .88, ["grips", "holds", "tight", "tears", "sound"]),
            Out("slides", "slides out somewhere", .12, ["slides", "pulls out", "loose", "falls", "gap", "worn", "flat", "missing"], ["paper slides", "door does not seal"])),
        Graded("ash-door-paper", "Paper strip at the ash door?", ["ash door", "ash pan", "ash drawer"], Parameter.AshDoorLeak, [1.2], 0.5,
            Out("grips", "grips", .93, ["grips", "holds", "tight", "sound"]),
            Out("slides", "slides out", .07, ["slides", "loose", "open", "gap", "worn", "ajar"], ["ash door was open", "ash pan not in"])),
        Graded("lid-seal", "Seal of the hopper lid?", ["hopper lid seal", "lid seal", "lid gasket"], Parameter.LidLeak, [1.2], 0.5,
            Out("sound", "sound", .94, ["sound", "good", "whole", "tight"]),
            Out("worn", "worn or missing", .06, ["worn", "missing", "torn", "flat", "hard"])),
        Stated("hopper-tape", "Tape on the hopper seam: does the firebox vacuum rise?", ["tape on the hopper", "hopper taped", "seam taped"],
            Out("no-change", "no change", .94, ["no change", "same"]),
            Out("stronger", "vacuum rises", .06, ["rises", "stronger", "more", "up"])),
        Stated("glass", "The glass?", ["glass"],
            Out("clear", "clear or light grey", .55, ["clear", "clean", "light", "grey", "white"], ["clear glass", "glass stays clear"]),
            Out("brown", "brown", .2, ["brown", "tan", "yellow"]),
            Out("black", "black within a day", .2, ["black", "soot", "dark"], ["glass is black", "black glass", "glass black", "glass goes black"]),
            Out("streak", "a black streak from one edge", .05, ["streak", "one edge", "one corner", "stripe"])),
        Stated("glass-whole", "Is the glass whole and its gasket sound?", ["glass", "pane"],
            Out("whole", "whole", .97, ["whole", "sound", "intact"]),
            Out("gasket-worn", "gasket worn", .02, ["gasket worn", "rattles", "loose"]),
            Out("cracked", "cracked", .01, ["cracked", "broken", "crack", "chipped"], ["glass is cracked", "glass broke", "broken glass"])),
        Stated("latch", "Latch and hinge?", ["latch", "hinge", "door handle"],
            Out("holds", "pull the door home", .96, ["holds", "fine", "tight", "good"]),
            Out("loose", "loose or worn", .04, ["loose", "worn", "broken", "sags", "play"], ["latch is loose", "door wont stay shut"])),
        Stated("exchanger-crack", "Exchanger and firebox walls, with a lamp?", ["crack", "firebox walls", "weld", "exchanger wall"],
            Out("sound", "sound", .985, ["sound", "none", "no"]),
            Out("crack", "a crack", .015, ["crack", "split", "burnt through", "hole", "warped open"], ["cracked firebox", "cracked exchanger"])),
        Stated("exhaust-cover", "Covers of the ash passages, shut?", ["cover gasket", "clean out cover", "covers refitted", "panel seal"],
            Out("tight", "tight", .96, ["tight", "sealed", "fine"]),
            Out("leaks", "leak or sit askew", .04, ["leak", "askew", "no gasket", "missing", "gap"])),
        Stated("blower-gasket", "Gasket of the combustion blower?", ["gasket of the combustion blower", "blower gasket", "exhaust fan gasket"],
            Out("sound", "sound", .92, ["sound", "new", "whole", "good"]),
            Out("torn", "torn, missing or old", .08, ["torn", "missing", "reused", "old one", "split", "hard", "burnt"])),
        Graded("pencil-flange", "Smoke pencil round the blower flange, fan only?", ["smoke pencil round the blower flange", "blower flange", "flange", "smoke pencil round the blower"], Parameter.BlowerGasketLeak, [1.5], 0.5,
            Out("still", "smoke stays", .96, ["stays", "still", "steady", "nothing"]),
            Out("blown", "blown away", .04, ["blown", "away", "puffs", "moves"])),
        Graded("pencil-joints", "Smoke pencil along the vent's joints, fan only?", ["smoke pencil along the vent", "vent joints", "joints", "pipe joints"], Parameter.VentLeak, [1.5], 0.5,
            Out("still", "smoke stays", .96, ["stays", "still", "steady", "nothing", "tight", "sealed"]),
            Out("blown", "blown away", .04, ["blown", "away", "puffs", "moves", "leak", "soot streak"])),
        Graded("pencil-door", "Smoke pencil round door and lid, fan only?", ["smoke pencil round the door", "smoke pencil at the door", "smoke at the door"], Parameter.DoorLeak, [1.2], 0.6,
            Out("still", "smoke stays", .85, ["stays", "still", "nothing"]),
            Out("drawn", "drawn in", .15, ["drawn", "sucked", "pulled in", "in"])),
        Stated("pencil-intake", "Smoke pencil at the intake, blower off?", ["smoke pencil at the intake", "intake blower off"],
            Out("in", "still or drawn in", .93, ["in", "still", "stays"]),
            Out("out", "pushed out", .07, ["out", "pushed", "blown"])),
        Stated("feed-tube-look", "Feed tube and hopper bottom?", ["feed tube", "hopper bottom", "drop tube"],
            Out("clean", "clean", .97, ["clean", "fine"]),
            Out("scorched", "scorched", .03, ["scorched", "burnt", "charred", "black", "tar"], ["burn back", "charred pellets in the hopper"])),
    ];
}
