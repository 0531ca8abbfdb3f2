using static Emberwright.Diagnosis.Signs.Wording;

namespace Emberwright.Diagnosis.Signs;

/// <summary>What is heard and smelled.</summary>
internal static class NoiseAndSmell
{
    public static IReadOnlyList<Sign> Signs { get; } =
    [
        Stated("noise", "What does it sound like?", ["noise", "sound", "what does it sound like"],
            Out("none", "nothing unusual", .78, ["none", "nothing", "normal"]),
            Out("squeal", "a squeal", .04, ["squeal", "squeak", "screech"], ["squealing", "squeaking", "screeching"]),
            Out("rattle", "a rattle", .03, ["rattle", "vibrate", "buzz"], ["rattling"]),
            Out("grind", "grinding", .03, ["grind", "scrape", "crunch"], ["grinding"]),
            Out("click", "clicking or clunking", .05, ["click", "clunk", "tick", "knock"], ["clicking noise", "it clicks", "it clunks", "clunking"]),
            Out("hum", "a hum", .03, ["hum", "drone"], ["humming"]),
            Out("thump", "a thump when it lights", .01, ["thump", "boom", "puff", "bang at start"], ["lights with a thump", "lights with a bang", "boom when it lights"]),
            Out("gurgle", "gurgling", .02, ["gurgle", "bubble"], ["gurgling"]),
            Out("bang", "banging in the water", .01, ["banging", "kettle", "hammer"], ["banging like a kettle", "like a kettle", "water hammer"])),
        Stated("smell", "What does it smell of?", ["smell", "odour"],
            Out("none", "nothing", .82, ["none", "nothing", "no"]),
            Out("smoke", "smoke", .09, ["smoke", "soot", "exhaust", "fumes"], ["smells of smoke", "smell of smoke", "fumes"]),
            Out("hot-electrical", "hot plastic, electrical", .03, ["plastic", "electric", "fishy", "rubber"], ["smells of burnt plastic", "electrical smell"]),
            Out("hot-pellets", "scorched pellets at the hopper", .02, ["scorched", "burnt wood", "hopper"], ["smoke from the hopper", "smells burnt at the hopper"]),
            Out("paint", "paint, new or dust burning off", .04, ["paint", "new", "dust"], ["paint smell"])),
    ];
}
