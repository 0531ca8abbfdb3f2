using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using static Emberwright.Stove.Patterns.Anatomies.UsualFasteners;

namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>
/// The hydronic stove as hands meet it: tubes through the water jacket reached from the top with their turbulators, an ash
/// door at the foot, pump and expansion vessel behind the side panels. Typical, from memory.
/// </summary>
internal static class HydronicAnatomy
{
    public static Anatomy Data { get; } = new()
    {
        Panels =
        [
            new("side-panels", "side panels, left and right", "cladding of the cabinet", "pump, vessel and valves on the left; blower, feed motor and board on the right",
                [Screws(6, "4 mm", Drive.HexSocket), ByHand(FastenerKind.Hook, 4)], [Area.Electrical, Area.Water, Area.CombustionBlower, Area.Feed], [Cautions.MakeSafe, Cautions.Live], Origin.Typical),
            new("tube-cover", "cover of the tubes", "under the top plate", "the tubes of the water jacket with their turbulators",
                [Nuts(4, "13 mm")], [Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre, "Lift the turbulators straight; note which way up they hang."], Origin.Typical) { Gasket = "cover-gasket" },
            UsualPanels.Grate("burner", "in the chamber, lifts out; the notch faces the igniter"),
            new("ash-door", "ash door", "below the fuel door", "ash pan and the lower end of the tubes",
                [ByHand(FastenerKind.Hinge, 2), ByHand(FastenerKind.Latch, 1)], [Area.BurnPot, Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash], Origin.Typical) { Gasket = "ash-door-rope" },
            new("ash-inspection", "lower inspection plate", "behind the ash pan", "the ash passage from the tubes to the combustion blower",
                [ByHand(FastenerKind.WingNut, 2)], [Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre], Origin.Typical) { After = ["ash-door"], Gasket = "inspection-gasket" },
            UsualPanels.Blower("behind the right side panel, low", Nuts(4, "10 mm")) with { After = ["side-panels"] },
            UsualPanels.Feeder("behind the right side panel", Screws(3, "5 mm", Drive.HexSocket)) with { After = ["side-panels"] },
            UsualPanels.Controls("behind the right side panel, upper half", Screws(4, "No. 2", Drive.CrossRecess)) with { After = ["side-panels"] },
            new("pump-head", "pump head", "behind the left side panel", "the pump's wheel",
                [Screws(4, "5 mm", Drive.HexSocket)], [Area.Water], [Cautions.MakeSafe, Cautions.Water, "Shut the isolating valves and let the pressure off first."], Origin.Typical) { After = ["side-panels"], Gasket = "pump-seal" },
            new("vessel-valve", "valve of the expansion vessel", "behind the left side panel, under a cap", "the vessel's gas side, to test and set its charge",
                [ByHand(FastenerKind.Twist, 1)], [Area.Water], [Cautions.Water, "Test the charge with the water side let down."], Origin.Typical) { After = ["side-panels"] },
            UsualPanels.TeeCap("behind the stove, at the foot of the vent"),
        ],
        AshTraps =
        [
            UsualTraps.Pot("lift the burner out, open its holes, vacuum its seat and the igniter's tube"),
            new("ash-pan", "ash pan", "behind the ash door", Area.BurnPot, "empty; brush the ledges beside it", ["ash-door"], false, Origin.Typical),
            new("tubes", "tubes and turbulators", "vertical, through the water jacket", Area.AshPassages,
                "work the scraper lever, then cover off, turbulators out, a brush through each tube; tar needs it warm, not hot", ["tube-cover"], true, Origin.Typical) { Link = "exchanger" },
            new("lower-passage", "ash passage at the tubes' foot", "behind the ash pan", Area.AshPassages,
                "plate off, rake and vacuum towards the blower", ["ash-inspection"], true, Origin.Typical) { Link = "ash-passages" },
            UsualTraps.Wheel,
            UsualTraps.Tee("behind the stove"),
        ],
        Gaskets =
        [
            UsualGaskets.DoorRope("12 mm"), UsualGaskets.Glass("8 × 2 mm"), UsualGaskets.AshDoor("10 mm"), UsualGaskets.Lid("silicone profile"),
            UsualGaskets.Covers("under the cover of the tubes", GasketForm.Rope, "glass-fibre rope 10 mm"),
            new("inspection-gasket", "under the lower inspection plate", GasketForm.Sheet, "ceramic-paper sheet 3 mm", "", SealingSide.Suction, "whenever the plate has been off", Origin.Typical) { Link = "exhaust-covers" },
            UsualGaskets.BlowerPlate("ceramic-paper sheet 3 mm"), UsualGaskets.BlowerFlange("ceramic-paper sheet 3 mm"),
            UsualGaskets.Collar("silicone ring of the vent"), UsualGaskets.TeeCap,
            new("pump-seal", "between pump head and body, and in its unions", GasketForm.Ring, "rubber ring; flat fibre in the unions", "1 in", SealingSide.Water, "whenever it has been apart, or wet", Origin.Typical),
        ],
        Sensors =
        [
            new(ComponentIds.VacuumSwitch, "vacuum switch", SensorKind.VacuumSwitch, "behind the right side panel; its hose runs to a stub in the chamber wall", "firebox", Origin.Typical) { Through = ["side-panels"] },
            new(ComponentIds.ExhaustProbe, "exhaust probe", SensorKind.Probe, "in the blower's outlet, in a gland", "collar", Origin.Typical) { Through = ["side-panels"] },
            new(ComponentIds.WaterProbe, "water probe", SensorKind.Probe, "in a pocket at the top of the jacket", "water jacket", Origin.Typical) { Through = ["side-panels"] },
            new(ComponentIds.SafetyThermostat, "safety thermostat", SensorKind.Limit, "bulb in the same pocket; reset button at the back under a cap", "water jacket", Origin.Typical),
            new(ComponentIds.HighLimitDisc, "high-limit thermostat of the hopper", SensorKind.Limit, "bulb on the hopper's bottom, manual reset", "hopper", Origin.Typical) { Through = ["side-panels"] },
            new(ComponentIds.SpeedSensor, "speed sensor", SensorKind.SpeedSensor, "at the combustion blower's shaft end", "combustion blower", Origin.Typical) { Through = ["side-panels"] },
            new(ComponentIds.RoomProbe, "room probe", SensorKind.Probe, "at the back, low, on a lead", "room", Origin.Typical),
            new(ComponentIds.DoorSwitch, "door switch", SensorKind.LidOrDoorSwitch, "at the door's catch", "door", Origin.Typical),
        ],
        HowToFind =
        [
            .. UsualCardData.For(
                "at the back, low, beside the water connections",
                "right side panel off, follow the hose from the switch; on hydronic stoves it is the chamber",
                "the switch's own label or moulding, in Pa",
                "on the display; the manual's alarm table"),
            new("documents (water side)", "fill pressure, vessel charge, return valve's opening temperature", "label of vessel and valve; the installer's sheet",
                "manometer cold: usually 1 to 1.5 bar; vessel charge with the water side let down; return pipe by contact thermometer as it warms", "usual values", Origin.Typical),
        ],
    };
}
