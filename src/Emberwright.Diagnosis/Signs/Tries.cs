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
        Stated("runs-now", "Started again: does it now do what it should?", ["started again", "test run", "does it run now", "test fire", "restart"],
            Out("runs", "runs as it should", .93, ["runs", "lights normally", "right", "good", "fine", "steady", "normal"], ["runs again", "runs as it should", "lights normally"]),
            Out("same", "the same as before", .07, ["same", "fails", "no change", "still", "again"], ["still the same", "fails as before"])),
        Stated("disc-click", "High-limit disc: does its reset click?", ["reset button on the high limit disc", "high limit disc pressed", "high limit reset", "reset button", "high limit disc"],
            Out("silent", "no click, it was closed", .9, ["no click", "silent", "nothing", "already in"]),
            Out("clicks", "clicks", .08, ["clicks", "click", "clicked"], ["reset clicked"]),
            Out("clicks-again", "clicks, then opens again cool", .02, ["again", "opens again", "trips again"])),
        Stated("lid-plunger", "Lid switch pressed by hand: does it feed?", ["lid switch plunger", "plunger", "lid switch pressed"],
            Out("no-change", "no change", .97, ["no change", "nothing", "same"]),
            Out("feeds", "feeds", .03, ["feed", "turns", "0 v", "runs", "starts"])),
        Stated("door-plunger", "Door switch pressed by hand: does it feed?", ["door switch plunger", "door switch pressed"],
            Out("no-change", "no change", .97, ["no change", "nothing", "same"]),
            Out("feeds", "feeds", .03, ["feed", "turns", "0 v", "runs", "starts"])) with
        { Patterns = PatternIds.DoorSwitch },
        Stated("thermostat-joined", "Thermostat terminals joined for a moment?", ["thermostat terminals", "terminals joined", "thermostat joined"],
            Out("no-change", "no change", .96, ["no change", "nothing"]),
            Out("starts", "starts", .04, ["starts", "start", "runs", "lights"])),
        Stated("hose-off-test", "Hose taken off the vacuum switch while feeding?", ["hose off test", "hose taken off", "hose pulled off"],
            Out("stops", "feed stops", .98, ["stops", "stopped"]),
            Out("feeds-on", "feeds on", .02, ["feeds on", "keeps feeding", "does not stop", "continues"])),
        Stated("switch-pump", "Vacuum switch on a hand pump: closes where its label says?", ["vacuum switch with hand pump", "hand pump", "switch on a pump"],
            Out("right", "closes and opens as labelled", .94, ["right", "as labelled", "as label", "on its rating"]),
            Out("late", "closes late", .02, ["late", "too strong", "twice", "past its label"]),
            Out("never-closes", "never closes", .025, ["never closes", "stays open", "does not close"]),
            Out("never-opens", "never opens", .015, ["never opens", "stays closed", "welded"])),
        Stated("disc-bench", "Disc on a hot plate or at a hot wall: acts where marked?", ["disc on a hot plate", "hot plate", "disc bench"],
            Out("right", "acts where marked", .94, ["right", "as marked", "in tolerance"]),
            Out("never", "never closes", .03, ["never closes", "stays open"]),
            Out("early", "opens too early", .02, ["early", "too soon", "low"]),
            Out("stuck", "never opens", .01, ["never opens", "stays closed", "welded"])),
        Stated("feed-motor-alone", "Feed motor alone on its own supply?", ["motor alone", "feed motor alone", "coupling undone"],
            Out("turns", "turns smoothly, holds against the hand", .9, Turns), Out("stalls", "stalls or slips under the hand", .06, [.. Stalls, "slips"]), Out("dead", "dead", .04, Dead)),
        Stated("combustion-blower-alone", "Combustion blower alone on its own supply?", ["combustion blower alone", "exhaust fan alone", "blower alone", "blower on its own supply"],
            Out("turns", "full speed", .88, Turns), Out("slow", "slow", .05, Slow), Out("stalls", "hums, stuck", .03, Stalls),
            Out("dead", "dead", .025, Dead), Out("binds-warm", "runs, binds when warm", .015, ["binds", "warm", "hot"])),
        Stated("room-blower-alone", "Room-air blower alone on its own supply?", ["room air blower alone", "room blower alone", "convection fan alone"],
            Out("turns", "full speed", .92, Turns), Out("slow", "slow", .045, [.. Slow, .. Stalls]), Out("dead", "dead", .035, Dead)),
        Stated("igniter-alone", "Igniter alone on its own supply, at most 90 s?", ["igniter alone", "igniter on its own supply", "igniter on a test lead"],
            Out("glows", "glows", .87, ["glows", "red", "bright"]), Out("dull", "glows dull", .03, ["dull", "weak"]), Out("dark", "stays dark", .1, ["dark", "dead", "nothing", "no glow"])),
        Stated("earth-ohms", "Ohms to earth, unplugged, part by part?", ["ohms to earth", "to earth", "insulation"],
            Out("clear", "all clear", .95, ["clear", "open", "none", "megohm"]), Out("igniter", "the igniter or its lead leaks", .02, ["igniter"]),
            Out("wiring", "the wiring leaks", .015, ["wiring", "wire", "lead"]), Out("blower", "a motor leaks", .015, ["blower", "motor"])),
        Stated("capacitance", "Run capacitor's capacitance against its label?", ["run capacitor", "capacitor", "capacitance"],
            Out("right", "within its tolerance", .93, ["right", "within"]), Out("low", "low", .07, ["low", "half", "bulged"])) with
        { Patterns = [PatternIds.Sealed, PatternIds.Hydronic] },
        Stated("speed-pulses", "Speed sensor's pulses, wheel turned by hand?", ["speed sensor", "sensor pulses", "encoder"],
            Out("pulses", "pulses", .96, ["pulses", "yes"]), Out("none", "none", .04, ["none", "no pulses", "dead"])) with
        { Patterns = PatternIds.ExhaustProbe },
        Stated("window-open", "With a window open: better?", ["window open", "window"],
            Out("no-change", "no change", .92, ["no change", "same", "no"]),
            Out("better", "better", .08, ["better", "yes", "clears", "gone"], ["better with a window open", "fine with the window open", "stops when i open a window"])),
        Stated("hood-on", "With hood and fans on: worse?", ["hood on", "fans on", "hood full", "extract fans on"],
            Out("no-change", "no change", .9, ["no change", "same", "no"]),
            Out("worse", "worse", .1, ["worse", "yes", "smoke", "weaker", "spills"])),
        Stated("agitator", "The agitator?", ["agitator", "stirrer"],
            Out("turns", "turns", .9, ["turns", "moves"]),
            Out("still", "stands still", .07, ["still", "standing", "does not turn", "stopped"], ["agitator stands still"]),
            Out("clunks", "clunks or jerks", .03, ["clunk", "jerk", "knock"])) with
        { Patterns = [PatternIds.MultiFuel] },
        Stated("agitator-hand", "Agitator turned by hand, cold?", ["agitator by hand", "turn the agitator"],
            Out("free", "free", .9, ["free", "turns"]), Out("locks", "locks", .1, ["lock", "stuck", "jam"])) with
        { Patterns = [PatternIds.MultiFuel] },
        Stated("agitator-pin", "Agitator's drive pin?", ["drive pin", "agitator pin"],
            Out("whole", "whole", .95, ["whole", "fine", "bent", "not broken"]), Out("sheared", "sheared", .05, ["sheared", "broken", "gone"])) with
        { Patterns = [PatternIds.MultiFuel] },
        Stated("agitator-alone", "Agitator motor alone on its own supply?", ["agitator motor alone"],
            Out("turns", "turns", .93, Turns), Out("dead", "dead", .07, Dead)) with
        { Patterns = [PatternIds.MultiFuel] },
    ];
}
