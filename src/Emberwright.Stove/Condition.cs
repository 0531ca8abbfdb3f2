namespace Emberwright.Stove;

/// <summary>What the fire is doing while a reading is taken.</summary>
public enum FireState
{
    /// <summary>No fire, appliance at room temperature.</summary>
    Cold,
    /// <summary>From the first pellets to a proved fire.</summary>
    Igniting,
    /// <summary>Steady burn at the lowest setting.</summary>
    Low,
    /// <summary>Steady burn at the highest setting.</summary>
    High,
    /// <summary>Feed stopped, fire burning out, blowers running on.</summary>
    Shutdown,
}

/// <summary>Whether the combustion blower runs.</summary>
public enum BlowerState
{
    /// <summary>Standing still.</summary>
    Off,
    /// <summary>Running at the speed of the condition.</summary>
    On,
}

/// <summary>What is open or stopped up while a reading is taken.</summary>
public enum OpeningState
{
    /// <summary>Everything shut as in use.</summary>
    Closed,
    /// <summary>Fuel door open.</summary>
    DoorOpen,
    /// <summary>Air intake stopped up for a test.</summary>
    IntakeStopped,
}

/// <summary>
/// The state a reading is taken in: fire, combustion blower, opening.
/// It is not the state of repair; a choked stove and a clean one share the condition "fan only".
/// </summary>
/// <param name="Fire">What the fire is doing.</param>
/// <param name="Blower">Whether the combustion blower runs.</param>
/// <param name="Opening">Closed as in use, fuel door open, or air intake stopped.</param>
public readonly record struct Condition(FireState Fire, BlowerState Blower, OpeningState Opening)
{
    /// <summary>Cold, combustion blower on, everything closed as in use.</summary>
    public static Condition FanOnly { get; } = new(FireState.Cold, BlowerState.On, OpeningState.Closed);

    /// <summary>Cold, combustion blower off, closed: only wind, buoyancy and the house act.</summary>
    public static Condition BlowerOff { get; } = new(FireState.Cold, BlowerState.Off, OpeningState.Closed);

    /// <summary>Fan only with the fuel door open.</summary>
    public static Condition DoorOpen { get; } = new(FireState.Cold, BlowerState.On, OpeningState.DoorOpen);

    /// <summary>Fan only with the air intake stopped.</summary>
    public static Condition IntakeStopped { get; } = new(FireState.Cold, BlowerState.On, OpeningState.IntakeStopped);

    /// <summary>Steady burn at the highest setting.</summary>
    public static Condition HighBurn { get; } = new(FireState.High, BlowerState.On, OpeningState.Closed);

    /// <summary>Steady burn at the lowest setting.</summary>
    public static Condition LowBurn { get; } = new(FireState.Low, BlowerState.On, OpeningState.Closed);
}
