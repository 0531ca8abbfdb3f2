using static Emberwright.Diagnosis.Signs.Wording;

namespace Emberwright.Diagnosis.Signs;

/// <summary>
/// What is asked on the telephone before anything else. It is no clue to a fault and moves no suspect: any outcome but the
/// first calls for a stop and for people to leave.
/// </summary>
internal static class EmergencySign
{
    public const string Id = "emergency";
    public const string None = "none";
    public const string Alarm = "alarm";
    public const string Unwell = "unwell";
    public const string HopperSmoke = "hopper-smoke";
    public const string VentGlows = "vent-glows";

    public static Sign Sign { get; } = Stated(Id, "Before anything else: does a CO alarm sound, is anybody unwell, does the hopper smoke, does the pipe roar or glow?",
        ["emergency", "anything urgent", "danger now"],
        Out(None, "none of these", .976, ["none", "no", "nothing"]),
        Out(Alarm, "a CO alarm sounds", .01, ["alarm sounds", "alarm is sounding", "detector beeps"]),
        Out(Unwell, "somebody has a headache or feels sick", .005, ["headache", "sick", "nausea", "unwell"]),
        Out(HopperSmoke, "smoke comes from the hopper", .005, ["hopper smokes", "smoke from the hopper"]),
        Out(VentGlows, "the pipe roars or glows", .004, ["roars", "glows", "red hot pipe"], ["chimney fire", "chimney is on fire", "pipe is glowing", "pipe glows", "vent glows",
            "pipe roars", "pipe is roaring", "vent is roaring"]));
}
