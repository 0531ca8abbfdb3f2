using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using static Emberwright.Stove.Patterns.Anatomies.UsualFasteners;

namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>
/// The thermocouple-proved freestanding stove as hands meet it: side doors give the blowers, the firebox wall hides an ash
/// chamber. Typical, from memory.
/// </summary>
internal static class ThermocoupleFreestandingAnatomy
{
    public static Anatomy Data { get; } = new()
    {
        Panels =
        [
            new("side-doors", "side doors, left and right", "both sides of the cabinet", "combustion blower on the right, room-air blower and feed motor on the left",
                [ByHand(FastenerKind.Hinge, 4), ByHand(FastenerKind.Magnet, 4)], [Area.CombustionBlower, Area.RoomAirBlower, Area.Feed], [Cautions.MakeSafe], Origin.Typical),
            UsualPanels.Grate("burn pot", "in the firebox, slides forward off the feed chute"),
            new("fire-wall", "firebox wall (fire-brick or steel panel)", "back of the firebox", "the covers of the hidden ash chamber",
                [Screws(2, "5/16 in")], [Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash, "Brick panels break: lift, do not lever."], Origin.Typical) { After = ["burn-pot"] },
            new("chamber-covers", "covers of the hidden ash chamber, left and right", "low in the wall behind the fire-wall", "the ash chamber between the tubes' lower end and the combustion blower",
                [Screws(2, "5/16 in"), ByHand(FastenerKind.Hook, 2)], [Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre], Origin.Typical) { After = ["fire-wall"], Gasket = "cover-gasket" },
            new("scraper", "pull rod of the tube scraper", "knob above the door", "nothing: it scrapes the tubes from outside",
                [], [Area.AshPassages], [Cautions.Hot, "Only with the stove cold: a plate left pulled out half shuts the tubes."], Origin.Typical),
            UsualPanels.Blower("behind the right side door", Screws(6, "5/16 in")) with { After = ["side-doors"] },
            UsualPanels.RoomAir("behind the left side door", Screws(2, "5/16 in")) with { After = ["side-doors"] },
            UsualPanels.Feeder("behind the left side door, at the auger's lower end", Screws(4, "5/16 in")) with { After = ["side-doors"] },
            UsualPanels.Controls("top of the left side, behind the control plate", Screws(2, "No. 2", Drive.CrossRecess)),
            UsualPanels.TeeCap("under the tee outside the wall, or behind the stove"),
        ],
        AshTraps =
        [
            UsualTraps.Pot("lift the pot out, scrape the crust off its bottom, open every hole with a drill bit held in the fingers"),
            new("tubes", "exchanger tubes and the scraper plate", "roof of the firebox", Area.AshPassages,
                "work the rod full stroke ten times, then brush each tube from below; see that the plate comes home", ["scraper"], false, Origin.Typical) { Link = "exchanger" },
            new("hidden-chamber", "hidden ash chamber", "behind the firebox wall, at floor level", Area.AshPassages,
                "wall out, both covers off, vacuum the full width: a centimetre or two of soot after a year; brush towards the blower and vacuum again", ["fire-wall", "chamber-covers"], true, Origin.Typical) { Link = "ash-passages" },
            new("ash-pan", "ash pan and the sill under it", "below the firebox, behind the ash door", Area.BurnPot, "empty, vacuum the sill so that the pan goes home and its door shuts", [], false, Origin.Typical),
            UsualTraps.Wheel,
            UsualTraps.Lint,
            UsualTraps.Tee("outside the wall or behind the stove"),
            UsualTraps.Horizontal("through the wall"),
        ],
        Gaskets =
        [
            UsualGaskets.DoorRope("3/4 in"), UsualGaskets.Glass("1 in, folded over the edge"), UsualGaskets.AshDoor("1/2 in"), UsualGaskets.Lid("silicone or foam profile"),
            UsualGaskets.Covers("under the covers of the hidden ash chamber", GasketForm.Sheet, "ceramic-paper sheet"),
            UsualGaskets.BlowerPlate("high-temperature fibre sheet"), UsualGaskets.BlowerFlange("high-temperature fibre sheet"),
            UsualGaskets.Collar("high-temperature silicone, three screws"), UsualGaskets.TeeCap,
        ],
        Sensors =
        [
            new(ComponentIds.VacuumSwitch, "vacuum switch", SensorKind.VacuumSwitch, "behind the right side door; its hose runs to a stub in the firebox wall", "firebox", Origin.Typical) { Through = ["side-doors"] },
            new(ComponentIds.Thermocouple, "thermocouple", SensorKind.Thermocouple, "in a ceramic sleeve through the pot's rim, tip in the flame; pushed home until it stops", "firebox", Origin.Typical) { Through = ["burn-pot"] },
            new(ComponentIds.HighLimitDisc, "high-limit disc", SensorKind.Limit, "on the back of the firebox, resets itself", "firebox", Origin.Typical) { Through = ["side-doors"] },
            new(ComponentIds.RoomAirDisc, "room-air-blower disc", SensorKind.FanDisc, "on the exchanger's outer wall", "exchanger-end", Origin.Typical) { Through = ["side-doors"] },
            new(ComponentIds.LidSwitch, "lid switch", SensorKind.LidOrDoorSwitch, "at the hopper's rim", "hopper lid", Origin.Typical),
        ],
        HowToFind = UsualCardData.For(
            "on the back of the cabinet or inside a side door",
            "open the right side door and follow the hose: mostly a stub in the firebox wall, sometimes the blower's inlet duct",
            "the switch's own label or moulding, in inWC, Pa or mbar",
            "on the inside of the hopper lid; blinks of one lamp are counted over one full pause"),
    };
}
