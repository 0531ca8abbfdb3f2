namespace Emberwright.Stove.Controls;

/// <summary>Control states of a sound stove in each operation: what is called and where every switch then stands.</summary>
public static class Operations
{
    /// <summary>Share of the supply voltage given to the combustion blower at the lowest setting (common practice, no source).</summary>
    public const double LowCombustionShare = 0.75;

    /// <summary>Share of the supply voltage given to the room-air blower at the lowest setting (common practice, no source).</summary>
    public const double LowRoomAirShare = 0.6;

    /// <summary>Operation in which electrical readings of a condition are taken.</summary>
    /// <remarks>
    /// Cold with the blower on means: the board has been started and calls for feed, since volts on the feed's chain mean
    /// something only then. Cold with the blower off is plugged in and at rest.
    /// </remarks>
    /// <param name="condition">Condition of the reading.</param>
    public static Operation Of(Condition condition) => condition.Fire switch
    {
        FireState.Cold => condition.Blower == BlowerState.On ? Operation.Igniting : Operation.Off,
        FireState.Igniting => Operation.Igniting,
        FireState.Low => Operation.Low,
        FireState.High => Operation.High,
        FireState.Shutdown => Operation.Shutdown,
    };

    /// <summary>The control state of a sound stove in an operation.</summary>
    /// <param name="wiring">The circuit.</param>
    /// <param name="operation">What the controls are doing.</param>
    public static ControlState In(this Wiring wiring, Operation operation)
    {
        var low = operation == Operation.Low;
        return new ControlState(
            operation != Operation.Unplugged,
            Calls(operation) & wiring.Outputs,
            HealthyPositions(wiring, operation),
            operation == Operation.Igniting ? 60 : double.PositiveInfinity,
            low ? LowCombustionShare : 1,
            low ? LowRoomAirShare : 1,
            Signals: HealthySignals(wiring, operation));
    }

    private static SensorSignals HealthySignals(Wiring wiring, Operation operation)
    {
        var thermocouple = wiring.Components.OfType<Thermocouple>().FirstOrDefault();
        return new SensorSignals(operation switch
        {
            Operation.Low => thermocouple?.LowFireV ?? 0,
            Operation.High => thermocouple?.HighFireV ?? 0,
            Operation.Unplugged or Operation.Off or Operation.FanOnly or Operation.Igniting or Operation.Shutdown => 0,
        });
    }

    /// <summary>Where the switches of a sound stove stand in an operation.</summary>
    /// <param name="wiring">The circuit.</param>
    /// <param name="operation">What the controls are doing.</param>
    public static SwitchPositions HealthyPositions(Wiring wiring, Operation operation)
    {
        ulong open = 0;
        for (var i = 0; i < wiring.Components.Length; i++)
            if (wiring.Components[i] is Interlock contact && !Closed(contact.Kind, operation)) open |= 1UL << i;
        return new SwitchPositions(open);
    }

    private static bool Closed(ContactKind kind, Operation operation) => kind switch
    {
        ContactKind.VacuumSwitch => operation is not (Operation.Unplugged or Operation.Off),
        ContactKind.ProofDisc or ContactKind.FanDisc => operation is Operation.Low or Operation.High or Operation.Shutdown,
        ContactKind.Thermostat => operation is not Operation.Off,
        ContactKind.LimitDisc or ContactKind.LidSwitch or ContactKind.DoorSwitch or ContactKind.SafetyThermostat => true,
    };

    private static BoardCalls Calls(Operation operation) => operation switch
    {
        Operation.Unplugged or Operation.Off => BoardCalls.None,
        Operation.FanOnly => BoardCalls.CombustionBlower,
        Operation.Igniting => BoardCalls.Feed | BoardCalls.Igniter | BoardCalls.CombustionBlower | BoardCalls.Agitator,
        Operation.Low or Operation.High =>
            BoardCalls.Feed | BoardCalls.CombustionBlower | BoardCalls.RoomAirBlower | BoardCalls.Agitator | BoardCalls.Pump,
        Operation.Shutdown => BoardCalls.CombustionBlower | BoardCalls.RoomAirBlower | BoardCalls.Pump,
    };
}
