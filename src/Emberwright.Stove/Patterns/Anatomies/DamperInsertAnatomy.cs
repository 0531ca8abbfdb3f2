using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using static Emberwright.Stove.Patterns.Anatomies.UsualFasteners;

namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>The damper insert as hands meet it: it stands in a fireplace and slides out for what lies behind. Typical, from memory.</summary>
internal static class DamperInsertAnatomy
{
    public static Anatomy Data { get; } = new()
    {
        Panels =
        [
            new("surround", "surround panels", "round the insert, against the fireplace's face", "the gap beside the body: disc leads, sensing hose, hand-hold for sliding",
                [ByHand(FastenerKind.Clip, 4)], [Area.Interlocks, Area.Electrical], [Cautions.Hot, "Sheet edges cut; lay glass and gilt faces on a blanket."], Origin.Typical),
            new("slide", "body on its rails", "the whole insert, after the surround", "back of the insert: vent adaptor, rear ends of both blowers",
                [Screws(2, "7/16 in")], [Area.Vent, Area.RoomAirBlower, Area.CombustionBlower],
                [Cautions.MakeSafe, "Part the liner at its adaptor first; support the front, the body tips once past the hearth's edge."], Origin.Typical) { After = ["surround"] },
            UsualPanels.Grate("burn pot", "in the firebox, lifts off its seat"),
            new("fire-back", "fire-back panel", "back wall of the firebox", "the exchanger's face and the upper end of the side passages",
                [ByHand(FastenerKind.Latch, 2)], [Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash, "Cast panels crack if dropped or screwed tight cold."], Origin.Typical) { After = ["burn-pot"] },
            new("ash-covers", "ash-passage covers, left and right", "low in both side walls of the firebox, behind the fire-back", "the passages that lead down to the combustion blower",
                [Screws(4, "5/16 in")], [Area.AshPassages], [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre, "Screws rust in: oil, wait, turn both ways."], Origin.Typical) { After = ["fire-back"], Gasket = "cover-gasket" },
            UsualPanels.Blower("low at the right side, behind the surround", Nuts(6, "11/32 in")) with { After = ["surround"] },
            UsualPanels.RoomAir("behind the lower front grille", Screws(2, "5/16 in"), ByHand(FastenerKind.Clip, 2)),
            UsualPanels.Feeder("behind the upper left surround, above the hopper's throat", ByHand(FastenerKind.WingNut, 2)) with { After = ["surround"] },
            UsualPanels.Controls("at the right end of the front, behind the control plate", Screws(2, "1/4 in")),
            UsualPanels.TeeCap("under the liner's adaptor, behind the insert") with { After = ["slide"] },
        ],
        AshTraps =
        [
            UsualTraps.Pot("lift the pot out, scrape it, open every hole; vacuum the air box once it is cold"),
            new("exchanger", "exchanger's passages", "above the fire-back, under the top plate", Area.AshPassages,
                "brush and scrape from below with the fire-back out", ["fire-back"], false, Origin.Typical) { Link = "exchanger" },
            new("side-passages", "ash passages at both sides", "from the exchanger's end down to the blower, behind the covers", Area.AshPassages,
                "covers off both sides, vacuum down to the blower's inlet with a thin hose, brush to bare metal", ["ash-covers"], true, Origin.Typical) { Link = "ash-passages" },
            UsualTraps.Wheel,
            UsualTraps.Lint,
            UsualTraps.Tee("behind the insert, at the liner's foot"),
        ],
        Gaskets =
        [
            UsualGaskets.DoorRope("5/8 in"), UsualGaskets.Glass("1 in, folded over the edge"), UsualGaskets.AshDoor("3/8 in"), UsualGaskets.Lid("silicone profile"),
            UsualGaskets.Covers("under the two ash-passage covers", GasketForm.Tape, "glass-fibre tape 1/8 in"),
            UsualGaskets.BlowerPlate("high-temperature fibre sheet"), UsualGaskets.BlowerFlange("high-temperature fibre sheet"),
            UsualGaskets.Collar("sealant rated for the liner's adaptor, as its listing says"), UsualGaskets.TeeCap,
        ],
        Sensors =
        [
            new(ComponentIds.VacuumSwitch, "vacuum switch", SensorKind.VacuumSwitch, "behind the control plate; its hose runs to a stub in the firebox wall", "firebox", Origin.Typical) { Through = ["control-cover"] },
            new(ComponentIds.ProofDisc, "proof-of-fire disc", SensorKind.ProofDisc, "on the combustion blower's housing, two screws", "collar", Origin.Typical) { Through = ["surround"] },
            new(ComponentIds.HighLimitDisc, "high-limit disc", SensorKind.Limit, "on the feed tube or hopper bottom, manual reset", "feed tube", Origin.Typical) { Through = ["surround"] },
            new(ComponentIds.RoomAirDisc, "room-air-blower disc", SensorKind.FanDisc, "on the exchanger's outer wall", "exchanger-end", Origin.Typical) { Through = ["surround"] },
            new(ComponentIds.LidSwitch, "lid switch", SensorKind.LidOrDoorSwitch, "under the hopper lid's edge", "hopper lid", Origin.Typical),
        ],
        HowToFind = UsualCardData.For(
            "on the side of the hopper or on a plate chained behind the lower grille",
            "look for a metal stub in the firebox wall or on the blower's housing; on inserts it is mostly the firebox",
            "the switch's own label or moulding, in inWC, Pa or mbar",
            "inside the hopper lid or on the control plate; lamps that blink are counted over one full pause"),
    };
}
