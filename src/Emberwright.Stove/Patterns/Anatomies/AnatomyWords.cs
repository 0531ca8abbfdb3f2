namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>The words files use for the kinds of an anatomy: lower case with hyphens.</summary>
public static class AnatomyWords
{
    /// <summary>Kinds of fastener.</summary>
    public static WordList<FastenerKind> Kinds { get; } = new(
        (FastenerKind.Screw, "screw"), (FastenerKind.Nut, "nut"), (FastenerKind.WingNut, "wing-nut"), (FastenerKind.ThumbScrew, "thumb-screw"),
        (FastenerKind.Latch, "latch"), (FastenerKind.Clip, "clip"), (FastenerKind.Magnet, "magnet"), (FastenerKind.Hook, "hook"),
        (FastenerKind.Hinge, "hinge"), (FastenerKind.Band, "band"), (FastenerKind.Twist, "twist"));

    /// <summary>Tools.</summary>
    public static WordList<Drive> Drives { get; } = new(
        (Drive.Hand, "hand"), (Drive.HexHead, "hex-head"), (Drive.CrossRecess, "cross-recess"), (Drive.SquareRecess, "square-recess"),
        (Drive.HexSocket, "hex-socket"), (Drive.Slot, "slot"));

    /// <summary>Forms of gasket.</summary>
    public static WordList<GasketForm> Forms { get; } = new(
        (GasketForm.Rope, "rope"), (GasketForm.Tape, "tape"), (GasketForm.Sheet, "sheet"), (GasketForm.Ring, "ring"), (GasketForm.Bead, "bead"));

    /// <summary>Sealing sides.</summary>
    public static WordList<SealingSide> Sides { get; } = new(
        (SealingSide.Suction, "suction"), (SealingSide.Pressure, "pressure"), (SealingSide.Water, "water"));

    /// <summary>Kinds of sensor.</summary>
    public static WordList<SensorKind> Sensors { get; } = new(
        (SensorKind.VacuumSwitch, "vacuum-switch"), (SensorKind.PressureSensor, "pressure-sensor"), (SensorKind.ProofDisc, "proof-disc"),
        (SensorKind.Limit, "limit"), (SensorKind.FanDisc, "fan-disc"), (SensorKind.Thermocouple, "thermocouple"), (SensorKind.Probe, "probe"),
        (SensorKind.SpeedSensor, "speed-sensor"), (SensorKind.LidOrDoorSwitch, "lid-or-door-switch"));
}
