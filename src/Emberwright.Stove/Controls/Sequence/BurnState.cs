namespace Emberwright.Stove.Controls.Sequence;

/// <summary>Where the board stands in its sequence.</summary>
public enum BurnState
{
    /// <summary>The board has no supply.</summary>
    NoPower,
    /// <summary>Waiting for a call for heat.</summary>
    Standby,
    /// <summary>Combustion blower alone, clearing the firebox.</summary>
    Start,
    /// <summary>Igniter and feed on.</summary>
    Igniting,
    /// <summary>Igniter off again, waiting for the fire to be proved.</summary>
    Proving,
    /// <summary>Proved, at the lowest setting.</summary>
    Low,
    /// <summary>Proved, at the highest setting.</summary>
    High,
    /// <summary>Feed stopped, blowers running on until the stove is cool.</summary>
    Shutdown,
    /// <summary>Stopped with an alarm until someone resets it.</summary>
    LockedOut,
}

/// <summary>An alarm as the board shows it.</summary>
/// <param name="Id">Stable id, lower case with hyphens; the outcome of the alarm's sign.</param>
/// <param name="Shown">What is shown: a code, a blink count, a lamp.</param>
/// <param name="Words">What it means, in words.</param>
public sealed record AlarmCode(string Id, string Shown, string Words);

/// <summary>Ids of the alarms that several boards share; they are the outcomes of the sign <c>code</c>.</summary>
public static class Alarms
{
    /// <summary>No fire was proved in time, or a proved fire went out.</summary>
    public const string NoFire = "no-fire";
    /// <summary>Too little vacuum.</summary>
    public const string LowDraught = "low-draught";
    /// <summary>Something got too hot.</summary>
    public const string OverTemperature = "over-temperature";
    /// <summary>Lid or door open.</summary>
    public const string Door = "door";
    /// <summary>A sensor's value is impossible.</summary>
    public const string Sensor = "sensor";
    /// <summary>The combustion blower does not reach its speed.</summary>
    public const string BlowerSpeed = "blower-speed";
    /// <summary>Too little or too much water pressure.</summary>
    public const string WaterPressure = "water-pressure";
    /// <summary>The mains failed while it burned.</summary>
    public const string Power = "power";

    /// <summary>Every alarm's id.</summary>
    public static IReadOnlyList<string> All { get; } = [NoFire, LowDraught, OverTemperature, Door, Sensor, BlowerSpeed, WaterPressure, Power];
}
