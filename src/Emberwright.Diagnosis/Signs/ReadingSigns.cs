using Emberwright.Stove.Faults;
using static Emberwright.Diagnosis.Signs.Wording;

namespace Emberwright.Diagnosis.Signs;

/// <summary>What readings amount to that no part of the virtual stove computes: the room's air, the house, the supply.</summary>
internal static class ReadingSigns
{
    public static IReadOnlyList<Sign> Signs { get; } =
    [
        Stated("room-monoxide", "CO in the room while it burns, against outdoors?", ["co in the room", "room co"],
            Out("none", "none", .95, ["none", "0 ppm", "nothing", "zero"]), Out("rise", "a rise", .05, ["rise", "rises", "climbs", "goes up"], ["carbon monoxide in the room"])),
        Stated("warm-air-monoxide", "CO in the warm air, also after shutdown?", ["co in the warm air", "warm air co"],
            Out("none", "none", .97, ["none", "0 ppm"]), Out("rise", "a rise", .03, ["rise", "rises"])),
        Stated("oxygen-fan", "Flue O2 when the room-air blower is switched on?", ["watching o2", "watching the o2", "o2 with the room air blower", "o2 when the room air blower", "room air blower off on"],
            Out("same", "stays the same", .96, ["same", "unchanged", "steady", "no change"]), Out("rises", "rises by half a point or more", .04, ["rise", "goes up", "jumps", "climbs"],
                ["o2 rises when the room air blower", "o2 rises when the fan starts"])),
        Stated("flange-monoxide", "CO beside the blower's flange while it burns?", ["co at the flange", "co behind the stove"],
            Out("none", "no more than in the room", .93, ["none", "0 ppm"]), Out("rise", "more than in the room", .07, ["rise", "rises"])),
        Stated("house-pressure", "House against outdoors, fans on, windows shut?", ["house against outdoors", "house pressure"],
            Out("within", "within what the stove allows", .92, ["within", "fine"]), Out("deep", "too far below", .08, ["deep", "too low"])),
        Stated("supply-idle", "Volts at the socket, little running?", ["volts at the socket"],
            Out("right", "right", .97, ["right", "normal"]), Out("low", "low", .03, ["low"])),
        Stated("supply-loaded", "Volts at the socket with everything on?", ["volts under load"],
            Out("right", "right", .96, ["right", "normal"]), Out("low", "low", .04, ["low"])),
        Stated("panel-volts", "Volts at the panel at the same time?", ["volts at the panel"],
            Out("right", "right", .97, ["right", "normal"]), Out("low", "low", .03, ["low"])),
        Stated("water-heat", "Water in the stove on a steady fire?", ["water in the stove"],
            Out("right", "as set", .88, ["right", "normal", "steady"]), Out("hot", "too hot", .09, ["hot", "boils"]), Out("cool", "does not get warm", .03, ["cool"])) with
        { Patterns = [PatternIds.Hydronic] },
    ];
}
