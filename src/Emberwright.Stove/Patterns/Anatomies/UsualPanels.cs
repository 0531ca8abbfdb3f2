using Emberwright.Stove.Faults;
using static Emberwright.Stove.Patterns.Anatomies.UsualFasteners;

namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>Access that most stoves share; typical, from memory.</summary>
internal static class UsualPanels
{
    public static AccessPanel TeeCap(string where) => new(
        "tee-cap", "cap of the clean-out tee", where, "the foot of the rising vent, where everything swept down lies",
        [ByHand(FastenerKind.Twist, 1)], [Area.Vent], [Cautions.MakeSafe, Cautions.Ash, Cautions.Monoxide], Origin.Typical)
    { Gasket = "tee-cap-seal" };

    public static AccessPanel Grate(string name, string where, params string[] after) => new(
        "burn-pot", name, where, "the air box below, the igniter's mouth and the pot's seat", [], [Area.BurnPot, Area.Ignition],
        [Cautions.MakeSafe, Cautions.Ash], Origin.Typical)
    { After = after };

    public static AccessPanel Feeder(string where, params Fastener[] fasteners) => new(
        "feed-cover", "cover of auger and feed motor", where, "feed motor, its coupling and the auger's upper bearing", fasteners,
        [Area.Feed], [Cautions.MakeSafe, Cautions.Auger], Origin.Typical);

    public static AccessPanel Controls(string where, params Fastener[] fasteners) => new(
        "control-cover", "cover of the control board", where, "board, fuse, terminals and the switches' leads", fasteners,
        [Area.Electrical, Area.Interlocks], [Cautions.MakeSafe, Cautions.Live], Origin.Typical);

    public static AccessPanel Blower(string where, params Fastener[] fasteners) => new(
        "blower-plate", "motor plate of the combustion blower", where, "the wheel and the inside of the housing", fasteners,
        [Area.CombustionBlower], [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre, Cautions.Sealant], Origin.Typical)
    { Gasket = "blower-plate-gasket" };

    public static AccessPanel RoomAir(string where, params Fastener[] fasteners) => new(
        "room-air-plate", "plate of the room-air blower", where, "the room-air blower's inlet and wheel", fasteners,
        [Area.RoomAirBlower], [Cautions.MakeSafe], Origin.Typical);
}
