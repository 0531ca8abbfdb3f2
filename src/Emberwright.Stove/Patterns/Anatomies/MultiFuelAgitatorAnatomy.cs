using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using static Emberwright.Stove.Patterns.Anatomies.UsualFasteners;

namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>
/// The multi-fuel stove as hands meet it: an agitator through the burn pot, a large ash drawer, corn's sticky ash between the plates and
/// wall thimble. Typical, from memory.
/// </summary>
internal static class MultiFuelAgitatorAnatomy
{
    public static Anatomy Data { get; } = new()
    {
        Panels =
        [
            new("rear-covers", "rear covers, upper and lower", "back of the cabinet", "blowers, feed and agitator motors, board",
                [Screws(8, "5/16 in")], [Area.Electrical, Area.Feed], [Cautions.MakeSafe, Cautions.Live], Origin.Typical),
            UsualPanels.Grate("burn pot with its agitator", "in the firebox; draw the agitator's shaft first"),
            new("agitator-drive", "agitator's shaft and coupling", "from the firebox through the back wall", "shaft, bushing and shear pin",
                [new Fastener(FastenerKind.Clip, Drive.Slot, "", 1, Origin.Typical)], [Area.BurnPot, Area.Feed], [Cautions.MakeSafe, "It starts without warning: unplugged before a hand goes in the pot."], Origin.Typical) { After = ["rear-covers"], Gasket = "agitator-packing" },
            new("baffle", "baffle plate", "roof of the firebox", "the exchanger's folded plates",
                [ByHand(FastenerKind.Hook, 2)], [Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash, "Misplaced it lets the flame past the plates."], Origin.Typical) { After = ["burn-pot"] },
            new("trap-covers", "ash-trap covers, left and right", "beside the firebox, outside, behind the side panels", "the ash passages down to the combustion blower",
                [Screws(6, "5/16 in")], [Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre], Origin.Typical) { Gasket = "cover-gasket" },
            new("ash-door", "ash door and drawer", "below the fuel door", "ash drawer",
                [ByHand(FastenerKind.Hinge, 2), ByHand(FastenerKind.Latch, 1)], [Area.BurnPot], [Cautions.MakeSafe, Cautions.Ash], Origin.Typical) { Gasket = "ash-door-rope" },
            UsualPanels.Blower("low at the back", Nuts(8, "11/32 in")) with { After = ["rear-covers"] },
            UsualPanels.RoomAir("at the back, beside the combustion blower", Screws(4, "5/16 in")) with { After = ["rear-covers"] },
            UsualPanels.Feeder("at the back, above the agitator's motor", Screws(4, "5/16 in")) with { After = ["rear-covers"] },
            UsualPanels.Controls("side of the hopper", Screws(4, "1/4 in")),
            UsualPanels.TeeCap("under the tee outside the wall"),
        ],
        AshTraps =
        [
            UsualTraps.Pot("draw the agitator, knock the clinker out of the pot, open the holes; corn clinker is hard and sharp"),
            new("agitator-bushing", "agitator's bushing", "back wall of the pot", Area.BurnPot, "scrape the shaft and bushing bright until it turns by hand", ["agitator-drive"], true, Origin.Typical),
            new("ash-drawer", "ash drawer", "below the burn pot", Area.BurnPot, "empty; brush the runners so that the door shuts", ["ash-door"], false, Origin.Typical),
            new("plates", "exchanger's plates above the baffle", "roof of the firebox", Area.AshPassages,
                "baffle out, brush between the plates, brush the baffle's upper side", ["baffle"], true, Origin.Typical) { Link = "exchanger" },
            new("side-traps", "ash traps at both sides", "between plates and combustion blower", Area.AshPassages,
                "covers off both sides, scrape: corn ash cakes with moisture", ["trap-covers"], true, Origin.Typical) { Link = "ash-passages" },
            UsualTraps.Wheel,
            UsualTraps.Lint,
            UsualTraps.Tee("outside the wall"),
            UsualTraps.Horizontal("through the wall thimble; corn ash furs it first"),
        ],
        Gaskets =
        [
            UsualGaskets.DoorRope("3/4 in"), UsualGaskets.Glass("1 in, folded over the edge"), UsualGaskets.AshDoor("1/2 in"), UsualGaskets.Lid("foam profile"),
            UsualGaskets.Covers("under the ash-trap covers", GasketForm.Sheet, "high-temperature fibre sheet"),
            new("agitator-packing", "round the agitator's shaft in the back wall", GasketForm.Rope, "graphited rope", "3/16 in", SealingSide.Suction, "the shaft rocks, or smoke shows there at start", Origin.Typical) { Link = "agitator-shaft" },
            UsualGaskets.BlowerPlate("high-temperature fibre sheet"), UsualGaskets.BlowerFlange("high-temperature fibre sheet"),
            UsualGaskets.Collar("high-temperature silicone, three screws"), UsualGaskets.TeeCap,
        ],
        Sensors =
        [
            new(ComponentIds.VacuumSwitch, "vacuum switch", SensorKind.VacuumSwitch, "at the back; its hose runs to a stub in the firebox wall", "firebox", Origin.Typical) { Through = ["rear-covers"] },
            new(ComponentIds.ProofDisc, "proof-of-fire disc", SensorKind.ProofDisc, "on the exhaust outlet, two screws", "collar", Origin.Typical) { Through = ["rear-covers"] },
            new(ComponentIds.HighLimitDisc, "high-limit disc", SensorKind.Limit, "on the feed tube, manual reset", "feed tube", Origin.Typical) { Through = ["rear-covers"] },
            new(ComponentIds.RoomAirDisc, "room-air-blower disc", SensorKind.FanDisc, "on the exchanger's outer wall", "exchanger-end", Origin.Typical) { Through = ["rear-covers"] },
            new(ComponentIds.DoorSwitch, "door switch", SensorKind.LidOrDoorSwitch, "at the fuel door's catch", "door", Origin.Typical),
        ],
        HowToFind =
        [
            .. UsualCardData.For(
                "on the back of the cabinet or the hopper's side",
                "rear covers off, follow the hose: mostly a stub in the firebox wall",
                "the switch's own label or moulding, in inWC or Pa",
                "on the control plate; one lamp that blinks"),
            new("documents (fuels)", "fuels the listing allows, and the pot for each", "label and manual: pellets, shelled corn, others; some need another pot or agitator",
                "ash of a weighed bag; clinker in the pot after a day", "pellets", Origin.Typical),
        ],
    };
}
