using Emberwright.Stove.Faults;
using static Emberwright.Diagnosis.Signs.Wording;

namespace Emberwright.Diagnosis.Signs;

/// <summary>What happens when a part is tried: by hand, on its own supply, on a bench.</summary>
internal static class Tries
{
    private static readonly string[] Turns = ["turns", "runs", "smooth", "free", "full", "right"];
    private static readonly string[] Slow = ["slow", "weak", "tired", "half"];
    private static readonly string[] Stalls = ["stalls", "stops", "hums", "stuck", "springs"];
    private static readonly string[] Dead = ["dead", "nothing", "does not turn", "open", "no movement"];

    public static IReadOnlyList<Sign> Signs { get; } =
    [
        Stated("runs-now", "Started again: does it now do what it should?", ["started again", "test run", "does it run now", "test fire", "restart", "restarted", "started after", "run after", "tried again", "test start"],
            Out("runs", "runs as it should", .93, ["runs", "lights normally", "right", "good", "fine", "steady", "normal", "fine now", "as it should", "works", "burns well",
                "feeds again", "lights"], ["runs as it should", "lights normally", "runs fine now", "works again", "feed pulses return", "lights and runs"]),
            Out("same", "the same as before", .07, ["same", "fails", "no change", "no better", "as before", "fails again", "the same"], ["still the same", "fails as before",
                "no difference", "no better", "just the same"])),
        Stated("disc-click", "High-limit disc: does its reset click?", ["reset button on the high limit disc", "high limit disc pressed", "high limit reset", "reset button", "high limit disc", "reset on the limit", "limit reset", "reset of the limit disc", "reset pressed", "limit disc reset", "red reset button"],
            Out("silent", "no click, it was closed", .9, ["no click", "silent", "nothing", "already in"]),
            Out("clicks", "clicks", .08, ["clicks", "click", "clicked", "clicked in", "pops in", "went in"], ["reset clicked", "reset clicks", "clicked when pressed", "button clicked"]),
            Out("clicks-again", "clicks, then opens again cool", .02, ["again", "opens again", "trips again", "pops again", "trips again at once"])),
        Stated("lid-plunger", "Lid switch pressed by hand: does it feed?", ["lid switch plunger", "plunger", "lid switch pressed", "lid switch by hand", "lid switch pressed by finger", "press the lid switch"],
            Out("no-change", "no change", .97, ["no change", "nothing", "same"]),
            Out("feeds", "feeds", .03, ["feed", "turns", "0 v", "runs", "starts", "feeds", "feed starts", "motor turns", "auger turns", "pellets drop", "works"])),
        Stated("door-plunger", "Door switch pressed by hand: does it feed?", ["door switch plunger", "door switch pressed", "door switch by hand", "door switch pressed by finger", "press the door switch", "door switch held in"],
            Out("no-change", "no change", .97, ["no change", "nothing", "same"]),
            Out("feeds", "feeds", .03, ["feed", "turns", "0 v", "runs", "starts", "feeds", "feed starts", "motor turns", "auger turns", "pellets drop", "works"])) with
        { Patterns = PatternIds.DoorSwitch },
        Stated("thermostat-joined", "Thermostat terminals joined for a moment?", ["thermostat terminals", "terminals joined", "thermostat joined", "terminals bridged for a moment", "jumper on the thermostat terminals", "thermostat wires joined"],
            Out("no-change", "no change", .96, ["no change", "nothing"]),
            Out("starts", "starts", .04, ["starts", "start", "runs", "lights", "lights up", "runs at once", "comes on"])),
        Stated("hose-off-test", "Hose taken off the vacuum switch while feeding?", ["hose off test", "hose taken off", "hose pulled off"],
            Out("stops", "feed stops", .98, ["stops", "stopped"]),
            Out("feeds-on", "feeds on", .02, ["feeds on", "keeps feeding", "does not stop", "continues"])),
        Stated("switch-pump", "Vacuum switch on a hand pump: closes where its label says?", ["vacuum switch with hand pump", "hand pump", "switch on a pump", "vacuum switch on a hand pump", "switch on a hand pump", "hand pump and gauge", "vacuum switch tested"],
            Out("right", "closes and opens as labelled", .94, ["right", "as labelled", "as label", "on its rating"]),
            Out("late", "closes late", .02, ["late", "too strong", "twice", "past its label", "0 17", "needs", "much later", "only at", "higher than", "above its label", "stronger"]),
            Out("never-closes", "never closes", .025, ["never closes", "stays open", "does not close", "will not close", "wont close", "open at any", "no click"]),
            Out("never-opens", "never opens", .015, ["never opens", "stays closed", "welded", "does not open", "stuck closed", "stays on", "sticks closed"])),
        Stated("disc-bench", "Disc on a hot plate or at a hot wall: acts where marked?", ["disc on a hot plate", "hot plate", "disc bench", "disc heated", "disc in hot water", "disc tested", "disc warmed"],
            Out("right", "acts where marked", .94, ["right", "as marked", "in tolerance"]),
            Out("never", "never closes", .03, ["never closes", "stays open", "open at any", "stays open hot", "does not close"]),
            Out("early", "opens too early", .02, ["early", "too soon", "low", "opens at"]),
            Out("stuck", "never opens", .01, ["never opens", "stays closed", "welded"])),
        Stated("feed-motor-alone", "Feed motor alone on its own supply?", ["motor alone", "feed motor alone", "coupling undone", "feed motor on its own supply", "motor on its own supply", "auger motor alone", "feed motor on a test lead", "motor on a test lead", "motor on a fused test lead"],
            Out("turns", "turns smoothly, holds against the hand", .9, [.. Turns, "fine", "smoothly", "2 0 rpm", "steady", "well", "holds"]), Out("stalls",
                "stalls or slips under the hand", .06, [.. Stalls, "slips"]), Out("dead", "dead", .04, [.. Dead, "does nothing", "silent", "not a sound", "no sound"])),
        Stated("combustion-blower-alone", "Combustion blower alone on its own supply?", ["combustion blower alone", "exhaust fan alone", "blower alone", "blower on its own supply", "blower on a test lead", "combustion blower on a test lead", "exhaust fan on a test lead", "combustion blower on its own supply"],
            Out("turns", "full speed", .88, Turns), Out("slow", "slow", .05, [.. Slow, "slowly", "1900", "low speed"]), Out("stalls", "hums, stuck", .03, Stalls),
            Out("dead", "dead", .025, [.. Dead, "does nothing", "silent", "no sound"]), Out("binds-warm", "runs, binds when warm", .015, ["binds", "warm", "hot", "stops warm",
                "slows as it warms", "after ten minutes stops"])),
        Stated("room-blower-alone", "Room-air blower alone on its own supply?", ["room air blower alone", "room blower alone", "convection fan alone", "room air blower on a test lead", "room air blower on its own supply", "convection fan on a test lead"],
            Out("turns", "full speed", .92, Turns), Out("slow", "slow", .045, [.. Slow, .. Stalls]), Out("dead", "dead", .035, [.. Dead, "does nothing", "silent", "no sound", "does not start"])),
        Stated("igniter-alone", "Igniter alone on its own supply, at most 90 s?", ["igniter alone", "igniter on its own supply", "igniter on a test lead", "igniter on a fused test lead", "igniter on test lead", "igniter on its own"],
            Out("glows", "glows", .87, ["glows", "red", "bright", "hot", "orange", "red hot", "cherry"]), Out("dull", "glows dull", .03, ["dull", "weak"]), Out("dark",
                "stays dark", .1, ["dark", "dead", "nothing", "no glow", "stays cold", "does not glow", "no heat", "black"])),
        Stated("earth-ohms", "Ohms to earth, unplugged, part by part?", ["ohms to earth", "to earth", "insulation", "insulation test", "megger", "leak to earth", "rcd", "ground fault", "earth leakage"],
            Out("clear", "all clear", .95, ["clear", "open", "none", "megohm"]), Out("igniter", "the igniter or its lead leaks", .02, ["igniter", "igniter leaks",
                "igniter to earth", "igniter low", "igniter 0"], ["trips when the igniter", "when the igniter comes on it trips", "rcd trips when the igniter",
                "trips when igniter"]),
            Out("wiring", "the wiring leaks", .015, ["wiring", "wire", "lead"]), Out("blower", "a motor leaks", .015, ["blower", "motor"])),
        Stated("capacitance", "Run capacitor's capacitance against its label?", ["run capacitor", "capacitor", "capacitance"],
            Out("right", "within its tolerance", .93, ["right", "within"]), Out("low", "low", .07, ["low", "half", "bulged", "too low", "lost", "weak", "open", "bulging", "leaking"])) with
        { Patterns = [PatternIds.Sealed, PatternIds.Hydronic] },
        Stated("speed-pulses", "Speed sensor's pulses, wheel turned by hand?", ["speed sensor", "sensor pulses", "encoder", "hall sensor", "speed signal"],
            Out("pulses", "pulses", .96, ["pulses", "yes"]), Out("none", "none", .04, ["none", "no pulses", "dead", "no signal", "zero", "missing", "nothing"])) with
        { Patterns = PatternIds.ExhaustProbe },
        Stated("window-open", "With a window open: better?", ["window open", "window", "open window", "door to outside open", "opening a window", "window is open"],
            Out("no-change", "no change", .92, ["no change", "same", "no"]),
            Out("better", "better", .08, ["better", "yes", "clears", "gone", "stops", "improves", "cures", "burns better", "goes away", "normal", "draws again"],
                ["better with a window open", "fine with the window open", "stops when i open a window", "better when a window is open", "window open it is fine",
                "opening a window helps", "open a window and it"])),
        Stated("hood-on", "With hood and fans on: worse?", ["hood on", "fans on", "hood full", "extract fans on", "hood test", "extractor on", "fan test", "extract fan on", "kitchen hood on"],
            Out("no-change", "no change", .9, ["no change", "same", "no"]),
            Out("worse", "worse", .1, ["worse", "yes", "smoke", "weaker", "spills", "smells", "alarm", "drops", "collapses", "pulls"], ["when the hood is on it", "with the hood on it"])),
        Stated("agitator", "The agitator?", ["agitator", "stirrer"],
            Out("turns", "turns", .9, ["turns", "moves"]),
            Out("still", "stands still", .07, ["still", "standing", "does not turn", "stopped", "not turning", "stuck", "standing still", "stands"], ["agitator stands still",
                "agitator does not turn", "agitator standing still", "stirrer does not turn", "agitator stopped"]),
            Out("clunks", "clunks or jerks", .03, ["clunk", "jerk", "knock", "jerks", "bangs", "knocks"])) with
        { Patterns = [PatternIds.MultiFuel] },
        Stated("agitator-hand", "Agitator turned by hand, cold?", ["agitator by hand", "turn the agitator", "agitator turned by hand", "agitator by hand cold", "stirrer by hand"],
            Out("free", "free", .9, ["free", "turns"]), Out("locks", "locks", .1, ["lock", "stuck", "jam", "locked", "wont turn", "jammed", "hard", "blocked"])) with
        { Patterns = [PatternIds.MultiFuel] },
        Stated("agitator-pin", "Agitator's drive pin?", ["drive pin", "agitator pin"],
            Out("whole", "whole", .95, ["whole", "fine", "bent", "not broken"]), Out("sheared", "sheared", .05, ["sheared", "broken", "gone", "missing", "snapped", "fell out"],
                ["drive pin sheared", "pin sheared"])) with
        { Patterns = [PatternIds.MultiFuel] },
        Stated("agitator-alone", "Agitator motor alone on its own supply?", ["agitator motor alone"],
            Out("turns", "turns", .93, [.. Turns, "fine", "smoothly"]), Out("dead", "dead", .07, Dead)) with
        { Patterns = [PatternIds.MultiFuel] },
    ];
}
