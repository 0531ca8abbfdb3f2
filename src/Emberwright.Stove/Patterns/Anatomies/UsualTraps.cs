namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>Places where ash settles on every stove; typical, from memory.</summary>
internal static class UsualTraps
{
    public static AshTrap Pot(string reach) => new(
        "pot-holes", "burn pot's holes and the air box under it", "bottom and sides of the pot", Area.BurnPot, reach, ["burn-pot"], false,
        Origin.Typical)
    { Link = "burn-pot" };

    public static AshTrap Wheel { get; } = new(
        "wheel", "blades and housing of the combustion blower", "behind the motor plate", Area.CombustionBlower,
        "take the motor plate out, brush every blade on both sides and the housing to bare metal; do not bend a blade", ["blower-plate"], true,
        Origin.Typical);

    public static AshTrap Tee(string where) => new(
        "tee", "clean-out tee", where, Area.Vent, "last of all, after sweeping from above: cap off, empty, cap back with its seal", ["tee-cap"],
        true, Origin.Typical)
    { Link = "vent" };

    public static AshTrap Horizontal(string where) => new(
        "vent-horizontal", "horizontal part of the vent", where, Area.Vent, "brush through from the tee or the terminal; ash lies along its bottom",
        ["tee-cap"], true, Origin.Typical)
    { Link = "vent" };

    public static AshTrap Lint { get; } = new(
        "lint", "lint and hair in the room-air blower", "inlet and wheel; dust, not ash", Area.RoomAirBlower,
        "brush and blow out, outdoors if the blower can come out", ["room-air-plate"], false, Origin.Typical);
}
