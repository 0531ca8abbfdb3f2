using static Emberwright.Diagnosis.Signs.Wording;

namespace Emberwright.Diagnosis.Signs;

/// <summary>What is heard and smelled.</summary>
internal static class NoiseAndSmell
{
    public static IReadOnlyList<Sign> Signs { get; } =
    [
        Stated("noise", "What does it sound like?", ["noise", "sound", "what does it sound like", "noises", "what noise", "sounds"],
            Out("none", "nothing unusual", .78, ["none", "nothing", "normal"]),
            Out("squeal", "a squeal", .04, ["squeal", "squeak", "screech", "squealing", "chirp", "whine", "squeaks"], ["squealing", "squeaking", "screeching", "squeals", "squeaks",
                "chirping", "whines"]),
            Out("rattle", "a rattle", .03, ["rattle", "vibrate", "buzz", "vibration", "buzzing", "vibrates"], ["rattling", "rattles", "rattle", "vibrates", "buzzing"]),
            Out("grind", "grinding", .03, ["grind", "scrape", "crunch", "grinding", "rubbing", "growl"], ["grinding", "grinds", "rubbing noise", "scraping noise", "it scrapes", "scraping sound"]),
            Out("click", "clicking or clunking", .05, ["click", "clunk", "tick", "knock", "ticking", "clunking", "knocking"], ["clicking noise", "it clicks", "it clunks",
                "clunking", "ticking", "clunks"]),
            Out("hum", "a hum", .03, ["hum", "drone", "humming", "droning"], ["humming", "hums"]),
            Out("thump", "a thump when it lights", .01, ["thump", "boom", "puff", "bang at start", "pop", "explosion", "whoomp", "whump", "bangs at start"], ["lights with a thump",
                "lights with a bang", "boom when it lights", "thump when it lights", "bang when it lights", "loud bang at start", "lights with a boom", "puff when it lights",
                "whoomph", "explosive"]),
            Out("gurgle", "gurgling", .02, ["gurgle", "bubble", "gurgling", "bubbling", "trickle"], ["gurgling", "gurgles", "bubbling"]),
            Out("bang", "banging in the water", .01, ["banging", "kettle", "hammer", "knocking in the pipes", "bangs"], ["banging like a kettle", "like a kettle", "water hammer",
                "bangs in the pipes", "bangs like"])),
        Stated("smell", "What does it smell of?", ["smell", "odour"],
            Out("none", "nothing", .82, ["none", "nothing", "no"]),
            Out("smoke", "smoke", .09, ["smoke", "soot", "exhaust", "fumes", "smoky", "burning wood", "campfire"], ["smells of smoke", "smell of smoke", "fumes",
                "smells like smoke", "smell smoke", "smoky smell", "smells smoky", "exhaust smell"]),
            Out("hot-electrical", "hot plastic, electrical", .03, ["plastic", "electric", "fishy", "rubber", "burnt plastic", "burning rubber", "ozone", "wiring",
                "hot wires"], ["smells of burnt plastic", "electrical smell", "smells of plastic", "smells of hot plastic", "smell of burnt plastic", "burning plastic",
                "smells electrical", "burning rubber"]),
            Out("hot-pellets", "scorched pellets at the hopper", .02, ["scorched", "burnt wood", "hopper"], ["smoke from the hopper", "smells burnt at the hopper"]),
            Out("paint", "paint, new or dust burning off", .04, ["paint"], ["paint smell"])),
    ];
}
