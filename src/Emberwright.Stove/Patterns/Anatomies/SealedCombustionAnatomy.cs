using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using static Emberwright.Stove.Patterns.Anatomies.UsualFasteners;

namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>
/// The sealed-combustion stove as hands meet it: clad in panels, every joint to the room gasketed, inspection covers under the
/// lining plates of the chamber. Typical, from memory.
/// </summary>
internal static class SealedCombustionAnatomy
{
    public static Anatomy Data { get; } = new()
    {
        Panels =
        [
            new("side-panels", "side panels, left and right", "cladding of the cabinet", "blowers, feed motor, pressure sensor, board",
                [Screws(4, "4 mm", Drive.HexSocket), ByHand(FastenerKind.Hook, 4)], [Area.Electrical, Area.CombustionBlower, Area.RoomAirBlower, Area.Feed],
                [Cautions.MakeSafe, Cautions.Live, "Painted and ceramic panels scratch and chip: blanket, gloves."], Origin.Typical),
            UsualPanels.Grate("burner (brazier)", "in the chamber, lifts out; the notch faces the igniter"),
            new("lining", "lining plates of the chamber", "back and sides of the chamber", "the exchanger's lower end and the inspection covers",
                [ByHand(FastenerKind.Hook, 3)], [Area.AshPassages], [Cautions.MakeSafe, "Vermiculite plates break like biscuit: ease them out, never with a vacuum's nozzle."], Origin.Typical) { After = ["burn-pot"] },
            new("inspection-covers", "inspection covers, left and right", "foot of the chamber's back wall", "the ash passages down to the combustion blower",
                [Screws(4, "8 mm")], [Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre], Origin.Typical) { After = ["lining"], Gasket = "cover-gasket" },
            new("top-plug", "plugs of the exchanger's upper end", "under the top plate", "the exchanger's vertical passages from above",
                [Screws(4, "8 mm")], [Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre], Origin.Typical) { Gasket = "cover-gasket" },
            UsualPanels.Blower("behind the right side panel, low", Nuts(4, "8 mm")) with { After = ["side-panels"] },
            UsualPanels.RoomAir("behind the lower front, a long cross-flow wheel", Screws(4, "7 mm")) with { After = ["side-panels"] },
            UsualPanels.Feeder("behind the left side panel", Screws(3, "5 mm", Drive.HexSocket)) with { After = ["side-panels"] },
            UsualPanels.Controls("behind the right side panel, upper half", Screws(2, "No. 2", Drive.CrossRecess)) with { After = ["side-panels"] },
            new("intake-pipe", "intake pipe's joint", "at the back, 50 mm pipe from outdoors", "the intake and its grating outdoors",
                [new Fastener(FastenerKind.Band, Drive.HexHead, "7 mm", 1, Origin.Typical)], [Area.BurnPot], ["Left loose it draws room air and the stove is no longer sealed."], Origin.Typical),
            new("tee-cap", "cap of the lower tee, with its drain", "behind the stove, at the foot of the twin-wall vent", "the foot of the rising vent: ash, and condensate",
                [ByHand(FastenerKind.Twist, 1)], [Area.Vent], [Cautions.MakeSafe, Cautions.Ash, Cautions.Monoxide], Origin.Typical) { Gasket = "tee-cap-seal" },
        ],
        AshTraps =
        [
            UsualTraps.Pot("lift the burner out, open its holes, vacuum its seat and the igniter's tube"),
            new("exchanger", "exchanger's vertical passages", "behind the lining plates, up to the top plugs", Area.AshPassages,
                "plugs off, brush down each passage with a round brush", ["lining", "top-plug"], true, Origin.Typical) { Link = "exchanger" },
            new("back-pocket", "ash pocket at the foot of the back wall", "behind the inspection covers", Area.AshPassages,
                "covers off both sides, vacuum to the blower's inlet with a thin hose", ["inspection-covers"], true, Origin.Typical) { Link = "ash-passages" },
            UsualTraps.Wheel,
            UsualTraps.Lint,
            UsualTraps.Tee("behind the stove"),
            new("intake-grating", "grating of the air intake outdoors", "outside wall", Area.BurnPot, "clear leaves, webs, lint and snow", [], true, Origin.Typical) { Link = "intake" },
        ],
        Gaskets =
        [
            UsualGaskets.DoorRope("10 mm") with { ReplaceWhen = "a paper strip slides out anywhere, or every second service: the set point hides a leak" },
            UsualGaskets.Glass("8 × 2 mm"), UsualGaskets.Lid("silicone ring, compressed by the lid's catch"),
            UsualGaskets.Covers("under the inspection covers and top plugs", GasketForm.Sheet, "ceramic-paper sheet 3 mm"),
            UsualGaskets.BlowerPlate("ceramic-paper sheet 3 mm"), UsualGaskets.BlowerFlange("silicone ring"),
            UsualGaskets.Collar("silicone ring of the twin-wall vent"), UsualGaskets.TeeCap,
            new("intake-ring", "in the socket of the intake pipe", GasketForm.Ring, "silicone ring", "50 mm", SealingSide.Suction, "it is missing or hard", Origin.Typical) { Link = "intake" },
        ],
        Sensors =
        [
            new(ComponentIds.PressureSensor, "pressure sensor", SensorKind.PressureSensor, "on or beside the board; its hose runs to a stub in the chamber wall", "firebox", Origin.Typical) { Through = ["side-panels"] },
            new(ComponentIds.ExhaustProbe, "exhaust probe", SensorKind.Probe, "in the blower's outlet, in a gland", "collar", Origin.Typical) { Through = ["side-panels"] },
            new(ComponentIds.SpeedSensor, "speed sensor", SensorKind.SpeedSensor, "at the combustion blower's shaft end", "combustion blower", Origin.Typical) { Through = ["side-panels"] },
            new(ComponentIds.HighLimitDisc, "high-limit thermostat", SensorKind.Limit, "bulb on the hopper's bottom, reset button at the back under a cap", "hopper", Origin.Typical) { Through = ["side-panels"] },
            new(ComponentIds.RoomProbe, "room probe", SensorKind.Probe, "at the back, low, on a lead", "room", Origin.Typical),
            new(ComponentIds.LidSwitch, "lid switch", SensorKind.LidOrDoorSwitch, "at the hopper's catch", "hopper lid", Origin.Typical),
            new(ComponentIds.DoorSwitch, "door switch", SensorKind.LidOrDoorSwitch, "at the door's catch", "door", Origin.Typical),
        ],
        HowToFind = UsualCardData.For(
            "at the back, low, beside the mains inlet",
            "right side panel off, follow the hose from the sensor; on sealed stoves it is the chamber",
            "parameter list of the board (technician's menu), in Pa; save it before a board is swapped",
            "on the display; the manual's alarm table"),
    };
}
