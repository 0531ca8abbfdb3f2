using Emberwright.Stove.Faults;
using static Emberwright.Diagnosis.Signs.Wording;

namespace Emberwright.Diagnosis.Signs;

/// <summary>What is seen, felt and heard of the water side.</summary>
internal static class WaterLooks
{
    private static readonly string[] Hydronic = [PatternIds.Hydronic];

    public static IReadOnlyList<Sign> Signs { get; } =
    [
        .. new[]
        {
            Stated("pump-feel", "Circulating pump, hand on it?", ["pump in test mode", "circulating pump", "pump"],
                Out("flow", "hums, flow to be felt", .84, ["flow", "runs", "normal", "vibrates"]),
                Out("gurgles", "hums with gurgling", .05, ["gurgle", "air", "bubbles"]),
                Out("hums", "hums without flow", .05, ["hums", "humming", "no flow"]),
                Out("still", "no motion", .06, ["no vibration", "still", "dead", "silent", "no motion"])),
            Stated("return-pipe", "Return pipe at the stove, once warm?", ["return pipe", "return"],
                Out("warm", "warm", .85, ["warm", "hot"]), Out("cold", "cold while the flow is hot", .15, ["cold", "cool"], ["radiators are cold"])),
            Stated("bleed", "High point and pump bled, cooled?", ["bled", "bleed", "high vent"],
                Out("water", "water at once", .92, ["water"]), Out("hiss", "a long hiss", .08, ["hiss", "air"])),
            Stated("water-valves", "Valves and strainer of the circuit?", ["valves", "strainer"],
                Out("open", "open and clean", .93, ["open", "clean"]), Out("shut", "one shut or blocked", .07, ["shut", "closed", "blocked", "dirty"], ["valve was shut"])),
            Stated("return-valve", "Return-temperature valve: does it open as it warms?", ["return valve", "mixing valve"],
                Out("moves", "opens", .95, ["opens", "moves", "right"]), Out("stuck", "stuck", .05, ["stuck", "stays"])),
            Stated("jacket", "Jacket walls in the firebox?", ["jacket", "boiler walls"],
                Out("dry", "dry ash", .9, ["dry", "ash", "clean"]), Out("tarry", "wet or tarry", .1, ["tar", "wet", "sticky", "shiny"])),
            Stated("relief", "Relief valve's outlet?", ["relief valve", "relief"],
                Out("dry", "dry", .93, ["dry"]), Out("drips", "drips or marked", .07, ["drip", "wet", "lime", "runs"], ["relief valve drips"])),
            Stated("pressure-swing", "System pressure cold to hot?", ["pressure swing", "pressure cold to hot"],
                Out("narrow", "rises by less than 0.8 bar", .93, ["narrow", "normal", "little"]), Out("wide", "swings wide", .07, ["wide", "3 bar", "swings", "rises fast"])),
            Stated("vessel-tap", "Expansion vessel's valve pressed: air or water?", ["expansion vessel", "vessel valve"],
                Out("air", "air", .96, ["air"]), Out("water", "water", .04, ["water", "wet"])),
            Stated("water-gauge", "Gauge of the water system, cold?", ["water gauge", "pressure gauge of the system"],
                Out("right", "where it belongs", .93, ["right", "normal"]), Out("low", "low", .07, ["low", "zero", "falls"], ["pressure keeps falling", "have to top up"])),
            Stated("water-leak", "Any water?", ["water leak", "leak", "puddle"],
                Out("dry", "dry", .95, ["dry", "none"]), Out("pipework", "at the pipework", .035, ["pipe", "joint", "valve"]),
                Out("firebox", "in firebox or ash pan", .015, ["firebox", "ash pan", "inside the stove"], ["water in the ash pan", "water in the firebox"])),
            Stated("hold-pressure", "Stove isolated: does it hold its pressure?", ["isolate and hold", "hold pressure", "isolated"],
                Out("holds", "holds", .97, ["holds", "steady"]), Out("falls", "falls", .03, ["falls", "drops"])),
            Stated("safety-thermostat-button", "Button of the safety thermostat?", ["safety thermostat"],
                Out("in", "in, not tripped", .92, ["in", "not tripped"]), Out("up", "up, tripped", .08, ["up", "tripped", "out"])),
            Stated("water-shown", "Water temperature shown, against a thermometer on the flow?", ["water temperature shown", "shown water temperature"],
                Out("right", "right", .95, ["right", "same"]), Out("off", "off", .05, ["off", "too high", "too low", "wrong"])),
        }.Select(s => s with { Patterns = Hydronic }),
    ];
}
