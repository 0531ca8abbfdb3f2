using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using static Emberwright.Stove.Patterns.Anatomies.UsualFasteners;

namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>
/// The underfed stove as hands meet it: the exchanger's panel swings down, the combustion blower swings out on a hinge, fines
/// gather under the fire where no look into the firebox shows them. Typical, from memory.
/// </summary>
internal static class UnderfedAnatomy
{
    public static Anatomy Data { get; } = new()
    {
        Panels =
        [
            new("swing-down", "swing-down exchanger panel", "roof of the firebox, hinged at the back", "the exchanger's fins from below",
                [ByHand(FastenerKind.Hinge, 2), ByHand(FastenerKind.Latch, 2)], [Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash, "It drops with its ash: one hand under it, face away."], Origin.Typical) { Gasket = "cover-gasket" },
            new("pot-clean-out", "clean-out plate under the fire pot", "below the fire pot, seen from the ash pan's space", "the chamber under the fire: fines, igniter, its air passage",
                [ByHand(FastenerKind.WingNut, 2)], [Area.BurnPot, Area.Ignition], [Cautions.MakeSafe, Cautions.Ash], Origin.Typical) { Gasket = "pot-clean-out-gasket", After = ["ash-door"] },
            new("ash-door", "ash door and pan", "below the fuel door", "ash pan, and the clean-out plate above it",
                [ByHand(FastenerKind.Hinge, 2), ByHand(FastenerKind.Latch, 2)], [Area.BurnPot], [Cautions.MakeSafe, Cautions.Ash], Origin.Typical) { Gasket = "ash-door-rope" },
            new("rear-shroud", "rear shroud", "back of the cabinet", "both blowers, feeder drive, board",
                [Screws(6, "5/16 in")], [Area.Electrical, Area.Feed], [Cautions.MakeSafe, Cautions.Live], Origin.Typical),
            new("blower-plate", "combustion blower on its hinged plate", "low at the back", "the wheel, the housing, and the end of the exhaust passage",
                [ByHand(FastenerKind.Hinge, 2), ByHand(FastenerKind.ThumbScrew, 1)], [Area.CombustionBlower, Area.AshPassages],
                [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre, "The plate carries the motor's weight on its leads: do not let it hang."], Origin.Typical) { After = ["rear-shroud"], Gasket = "blower-plate-gasket" },
            UsualPanels.RoomAir("low at the back, beside the combustion blower", Screws(4, "5/16 in")) with { After = ["rear-shroud"] },
            new("feed-cover", "feeder's slide plate and drive cover", "behind the hopper, above the feeder", "slide plate, pusher and gearmotor",
                [Screws(4, "5/16 in")], [Area.Feed], [Cautions.MakeSafe, Cautions.Auger], Origin.Typical) { After = ["rear-shroud"] },
            new("feeder-clean-out", "feeder's clean-out cover", "underside of the feeder", "fines under the pusher",
                [ByHand(FastenerKind.WingNut, 2)], [Area.Feed], [Cautions.MakeSafe, Cautions.Auger, "Fines fall out: tray under it. A bare joint here draws air past the fire."], Origin.Typical) { After = ["rear-shroud"] },
            UsualPanels.Controls("in the hopper lid's rim and behind the rear shroud", Screws(2, "No. 2", Drive.CrossRecess)) with { After = ["rear-shroud"] },
            new("flapper", "intake flapper", "in the intake pipe at the back", "the flapper's pin and seat",
                [ByHand(FastenerKind.Band, 1)], [Area.BurnPot], ["It must fall shut by its own weight; no grease."], Origin.Typical),
            UsualPanels.TeeCap("under the tee outside the wall, or behind the stove"),
        ],
        AshTraps =
        [
            new("pot-holes", "grate holes and the chamber under the fire pot", "under the fire", Area.BurnPot,
                "scrape the pot and its auger end, open the holes, then the clean-out plate off and the chamber emptied of fines", ["pot-clean-out"], true, Origin.Typical) { Link = "burn-pot" },
            new("ash-pan", "ash pan", "below the fire pot", Area.BurnPot, "empty; brush the ledges beside it", ["ash-door"], false, Origin.Typical),
            new("exchanger-fins", "exchanger's fins", "above the swing-down panel", Area.AshPassages,
                "panel down, brush between the fins lengthwise, vacuum the panel before it goes up", ["swing-down"], true, Origin.Typical) { Link = "exchanger" },
            new("exhaust-passage", "passage behind the firebox down to the blower", "behind the firebox's back wall", Area.AshPassages,
                "brush down from the exchanger's end, vacuum out at the swung-out blower", ["swing-down", "blower-plate"], true, Origin.Typical) { Link = "ash-passages" },
            UsualTraps.Wheel with { Reach = "swing the plate out, brush every blade on both sides and the housing; do not bend a blade" },
            UsualTraps.Lint,
            UsualTraps.Tee("outside the wall or behind the stove"),
            UsualTraps.Horizontal("through the wall"),
        ],
        Gaskets =
        [
            UsualGaskets.DoorRope("3/4 in"), UsualGaskets.Glass("3/4 in") with { Where = "between glass and door frame on three sides; the gap at the top is the airwash and stays open" },
            UsualGaskets.AshDoor("1/2 in"), UsualGaskets.Lid("hollow rubber profile"),
            UsualGaskets.Covers("under the swing-down panel", GasketForm.Rope, "glass-fibre rope 1/4 in"),
            new("pot-clean-out-gasket", "under the fire pot's clean-out plate", GasketForm.Sheet, "high-temperature fibre sheet", "", SealingSide.Suction, "every few openings, or when it is torn", Origin.Typical) { Link = "ash-door" },
            UsualGaskets.BlowerPlate("high-temperature fibre sheet") with { Where = "round the combustion blower's hinged plate" }, UsualGaskets.BlowerFlange("high-temperature fibre sheet"),
            UsualGaskets.Collar("high-temperature silicone, three screws"), UsualGaskets.TeeCap,
        ],
        Sensors =
        [
            new(ComponentIds.VacuumSwitch, "vacuum switch", SensorKind.VacuumSwitch, "at the back, its hose to a stub in the feeder or firebox wall", "firebox", Origin.Typical) { Through = ["rear-shroud"] },
            new(ComponentIds.ExhaustProbe, "exhaust probe", SensorKind.Probe, "in the blower's outlet, one screw or a gland", "collar", Origin.Typical) { Through = ["rear-shroud"] },
            new(ComponentIds.HighLimitDisc, "high-limit disc", SensorKind.Limit, "on the feeder, manual reset", "feeder", Origin.Typical) { Through = ["rear-shroud"] },
            new(ComponentIds.SpeedSensor, "speed sensor", SensorKind.SpeedSensor, "at the combustion blower's shaft end", "combustion blower", Origin.Typical) { Through = ["rear-shroud"] },
            new(ComponentIds.LidSwitch, "lid switch", SensorKind.LidOrDoorSwitch, "under the hopper lid's rim", "hopper lid", Origin.Typical),
        ],
        HowToFind = UsualCardData.For(
            "on the rear shroud or under the hopper lid",
            "rear shroud off, follow the hose: mostly a stub in the feeder body, which stands at firebox pressure",
            "the switch's own label; the manual's draught page gives the test vacuum at full speed, lowest and highest fuel",
            "on the display; a sticker inside the hopper lid"),
    };
}
