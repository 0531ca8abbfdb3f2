namespace Emberwright.Stove.Patterns;

/// <summary>
/// How well a clean stove of a pattern is known: sheet metal 15 % from the pattern, 5 % with a card, wheel 6 %, leaks
/// within a factor of two, UA 20 %, feed 12 %. From memory, no source.
/// </summary>
internal static class Baselines
{
    /// <summary>Parameters of a stove with one fuel door, an ash door, a hopper lid and a room-air blower.</summary>
    public static IReadOnlyList<Baseline> Usual { get; } =
    [
        new(Parameter.Intake, 0.15, 0.05),
        new(Parameter.BurnPot, 0.15, 0.05),
        new(Parameter.Exchanger, 0.15, 0.05),
        new(Parameter.AshPassages, 0.15, 0.05),
        new(Parameter.Vent, 0.15, 0.05),
        new(Parameter.Wheel, 0.06, 0.03),
        new(Parameter.BlowerSpeed, 0.04, 0.02),
        new(Parameter.DoorLeak, 0.7, 0.5),
        new(Parameter.AshDoorLeak, 0.7, 0.5),
        new(Parameter.LidLeak, 0.7, 0.5),
        new(Parameter.ExhaustLeak, 0.7, 0.5),
        new(Parameter.BlowerGasketLeak, 0.7, 0.5),
        new(Parameter.VentLeak, 0.7, 0.5),
        new(Parameter.Insulation, 0.2, 0.1),
        new(Parameter.Feed, 0.12, 0.08),
        new(Parameter.RoomAir, 0.15, 0.1),
        new(Parameter.Moisture, 0.015, 0.015),
        new(Parameter.Wind, 2, 2),
        new(Parameter.House, 1.5, 1.5),
        new(Parameter.Supply, 0.03, 0.03),
    ];

    /// <summary>The same without an ash door.</summary>
    public static IReadOnlyList<Baseline> WithoutAshDoor { get; } = [.. Usual.Where(b => b.Parameter != Parameter.AshDoorLeak)];

    /// <summary>The same with water in place of room air.</summary>
    public static IReadOnlyList<Baseline> Hydronic { get; } = Usual;
}
