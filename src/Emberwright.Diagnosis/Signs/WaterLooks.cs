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
            Stated("pump-feel", "Circulating pump, hand on it?", ["pump in test mode", "circulating pump", "pump", "circulator", "pump running", "heating pump"],
                Out("flow", "hums, flow to be felt", .84, ["flow", "runs", "normal", "vibrates", "running", "warm", "works", "runs smoothly", "pumping"]),
                Out("gurgles", "hums with gurgling", .05, ["gurgle", "air", "bubbles", "gurgling", "gurgle in the pipe"]),
                Out("hums", "hums without flow", .05, ["hums", "humming", "no flow", "warm no flow", "hums but"]),
                Out("still", "no motion", .06, ["no vibration", "still", "dead", "silent", "no motion", "does not turn", "stopped", "seized", "not running", "no sound", "cold", "no flow noise"])),
            Stated("return-pipe", "Return pipe at the stove, once warm?", ["return pipe", "return"],
                Out("warm", "warm", .85, ["warm", "hot"]), Out("cold", "cold while the flow is hot", .15, ["cold", "cool", "stays cold", "stone cold", "barely warm"], ["radiators are cold"])),
            Stated("bleed", "High point and pump bled, cooled?", ["bled", "bleed", "high vent", "vented", "air vent", "bleed screw", "bled high point", "high point bled", "vent the system", "radiator bled"],
                Out("water", "water at once", .92, ["water", "only water", "no air"]), Out("hiss", "a long hiss", .08, ["hiss", "air", "hissing", "spits", "lots of air", "air came", "long"])),
            Stated("water-valves", "Valves and strainer of the circuit?", ["valves", "strainer", "isolating valve", "filter in the circuit", "shut off valve", "strainer in the circuit"],
                Out("open", "open and clean", .93, ["open", "clean"]), Out("shut", "one shut or blocked", .07, ["shut", "closed", "blocked", "dirty", "isolating valve shut",
                    "half shut", "turned off", "full of sludge", "sludge", "clogged", "stuck"], ["valve was shut", "valve is shut", "valve closed", "isolating valve is shut",
                    "strainer full", "strainer blocked", "filter blocked"])),
            Stated("return-valve", "Return-temperature valve: does it open as it warms?", ["return valve", "mixing valve", "return temperature valve", "thermostatic valve", "anti condensation valve", "loading valve", "return raising valve"],
                Out("moves", "opens", .95, ["opens", "moves", "right"]), Out("stuck", "stuck", .05, ["stuck", "stays", "does not open", "does not move", "jammed", "stays closed",
                    "no change", "wide open cold"])),
            Stated("jacket", "Jacket walls in the firebox?", ["jacket", "boiler walls", "water jacket", "walls of the water jacket", "heat exchanger wet", "walls of the boiler"],
                Out("dry", "dry ash", .9, ["dry", "ash", "clean"]), Out("tarry", "wet or tarry", .1, ["tar", "wet", "sticky", "shiny", "condensate", "creosote", "dripping",
                    "shiny black", "brown drips", "moist"], ["wet tar on the walls", "tar on the walls", "chimney drips", "drips from the chimney", "condensation in the firebox",
                    "wet inside the firebox"])),
            Stated("relief", "Relief valve's outlet?", ["relief valve", "relief", "safety valve", "overpressure valve", "relief pipe"],
                Out("dry", "dry", .93, ["dry"]), Out("drips", "drips or marked", .07, ["drip", "wet", "lime", "runs", "dripping", "weeps", "leaks", "opens", "pours"],
                    ["relief valve drips", "relief valve opens", "safety valve drips", "relief valve leaking", "safety valve leaks"])),
            Stated("pressure-swing", "System pressure cold to hot?", ["pressure swing", "pressure cold to hot", "pressure when hot", "pressure hot", "pressure from cold to hot", "hot pressure"],
                Out("narrow", "rises by less than 0.8 bar", .93, ["narrow", "normal", "little"]), Out("wide", "swings wide", .07, ["wide", "3 bar", "swings", "rises fast", "2 9",
                    "2 8", "climbs to", "shoots up", "to 3"], ["pressure climbs to 3", "pressure goes to 3"])),
            Stated("vessel-tap", "Expansion vessel's valve pressed: air or water?", ["expansion vessel", "vessel valve", "expansion vessel valve", "air valve of the vessel", "schrader", "vessel", "vessel air valve"],
                Out("air", "air", .985, ["air"]), Out("water", "water", .015, ["water", "wet", "water comes", "spits water", "water out", "squirts", "spurts"],
                    ["water comes out of the air valve", "water from the vessel valve"])),
            Stated("water-gauge", "Gauge of the water system, cold?", ["water gauge", "pressure gauge of the system", "system pressure", "manometer", "water pressure gauge", "pressure gauge"],
                Out("right", "where it belongs", .93, ["right", "normal"]), Out("low", "low", .07, ["low", "zero", "falls", "drops", "0 4 bar", "0 5 bar", "0 3 bar", "below 1",
                    "empty"], ["pressure keeps falling", "have to top up", "loses water pressure", "loses pressure", "keeps losing pressure", "pressure drops every",
                    "top it up every", "keeps dropping pressure", "pressure falls", "topping up", "pressure is low"])),
            Stated("water-leak", "Any water?", ["water leak", "leak", "puddle", "water on the floor", "any leak", "leaks"],
                Out("dry", "dry", .95, ["dry", "none"]), Out("pipework", "at the pipework", .035, ["pipe", "joint", "valve", "fitting", "union", "under the stove", "radiator",
                    "wet floor"], ["drips from a joint", "leak at a joint", "puddle under the stove"]),
                Out("firebox", "in firebox or ash pan", .015, ["firebox", "ash pan", "inside the stove", "firebox wet", "hissing in the fire", "ash wet"], ["water in the ash pan",
                    "water in the firebox", "water in the ash", "ash is wet", "wet ash in the pan", "water drips into the fire"])),
            Stated("hold-pressure", "Stove isolated: does it hold its pressure?", ["isolate and hold", "hold pressure", "isolated", "stove isolated", "isolated stove", "pressure held", "pressure test of the stove"],
                Out("holds", "holds", .97, ["holds", "steady"]), Out("falls", "falls", .03, ["falls", "drops", "falling", "lost", "sinks", "goes down"])),
            Stated("safety-thermostat-button", "Button of the safety thermostat?", ["safety thermostat"],
                Out("in", "in, not tripped", .92, ["in", "not tripped"]), Out("up", "up, tripped", .08, ["up", "tripped", "out", "popped", "had tripped", "button up"],
                    ["safety thermostat tripped", "safety thermostat has tripped"])),
            Stated("water-shown", "Water temperature shown, against a thermometer on the flow?", ["water temperature shown", "shown water temperature"],
                Out("right", "right", .95, ["right", "same"]), Out("off", "off", .05, ["off", "too high", "too low", "wrong"])),
        }.Select(s => s with { Patterns = Hydronic }),
    ];
}
