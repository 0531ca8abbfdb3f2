namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>Gaskets that most stoves share; typical, from memory.</summary>
internal static class UsualGaskets
{
    public static Gasket DoorRope(string size) => new(
        "door-rope", "in the channel round the fuel door", GasketForm.Rope, "glass-fibre rope in stove cement", size, SealingSide.Suction,
        "a paper strip slides out anywhere round the door, it is hard, glazed or frayed, or the channel shows", Origin.Typical)
    { Link = "door" };

    public static Gasket Glass(string size) => new(
        "glass-tape", "between glass and door frame", GasketForm.Tape, "glass-fibre tape, adhesive face", size, SealingSide.Suction,
        "the glass is out, or soot streaks start at its edge", Origin.Typical)
    { Link = "door" };

    public static Gasket AshDoor(string size) => new(
        "ash-door-rope", "round the ash door", GasketForm.Rope, "glass-fibre rope", size, SealingSide.Suction,
        "a paper strip slides out, or it is flat and hard", Origin.Typical)
    { Link = "ash-door" };

    public static Gasket Lid(string material) => new(
        "lid-seal", "under the hopper lid", GasketForm.Ring, material, "", SealingSide.Suction,
        "it is set, torn or loose, or the lid rattles shut", Origin.Typical)
    { Link = "lid" };

    public static Gasket Covers(string where, GasketForm form, string material) => new(
        "cover-gasket", where, form, material, "", SealingSide.Suction,
        "every time the covers come off if it tears, otherwise when it no longer springs back", Origin.Typical)
    { Link = "exhaust-covers" };

    public static Gasket BlowerPlate(string material) => new(
        "blower-plate-gasket", "between the combustion blower's motor plate and its housing", GasketForm.Sheet, material, "", SealingSide.Pressure,
        "every time the blower comes out, or soot shows at the joint", Origin.Typical)
    { Link = "blower-gasket" };

    public static Gasket BlowerFlange(string material) => new(
        "blower-flange-gasket", "between the blower's housing and the exhaust outlet", GasketForm.Sheet, material, "", SealingSide.Pressure,
        "every time the housing comes off, or soot shows at the joint", Origin.Typical)
    { Link = "blower-gasket" };

    public static Gasket Collar(string what) => new(
        "collar-seal", "where the vent's first joint slips on the collar", GasketForm.Bead, what, "", SealingSide.Pressure,
        "whenever the joint has been apart, or soot or a smoke pencil shows a leak", Origin.Typical)
    { Link = "vent-joints" };

    public static Gasket TeeCap { get; } = new(
        "tee-cap-seal", "under the cap of the clean-out tee", GasketForm.Ring, "silicone ring", "", SealingSide.Pressure,
        "it is nicked, hard or missing; the cap never goes back without it", Origin.Typical)
    { Link = "vent-joints" };
}
