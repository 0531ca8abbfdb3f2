namespace Emberwright.Stove;

/// <summary>
/// The continuous quantities of one stove and day that can differ from the clean, nominal stove.
/// A value of 0 is the nominal stove. Those marked ln are natural logarithms of a ratio to nominal
/// (a passage half shut has ln 0.5 = −0.693); the others are offsets in the stated unit.
/// </summary>
public enum Parameter
{
    /// <summary>ln of the flow conductance of the combustion-air intake.</summary>
    Intake,
    /// <summary>ln of the flow conductance of the burn-pot holes.</summary>
    BurnPot,
    /// <summary>ln of the flow conductance of the exchanger's gas passages.</summary>
    Exchanger,
    /// <summary>ln of the flow conductance of the ash passages.</summary>
    AshPassages,
    /// <summary>ln of the flow conductance of the vent run and its terminal.</summary>
    Vent,
    /// <summary>ln of the head factor of the combustion blower's wheel.</summary>
    Wheel,
    /// <summary>ln of the speed ratio of the combustion blower.</summary>
    BlowerSpeed,
    /// <summary>ln of the leakage coefficient of the fuel door and its glass.</summary>
    DoorLeak,
    /// <summary>ln of the leakage coefficient of the ash door.</summary>
    AshDoorLeak,
    /// <summary>ln of the leakage coefficient of the hopper lid and feed tube.</summary>
    LidLeak,
    /// <summary>ln of the leakage coefficient into the exhaust between firebox and combustion blower (exchanger cracks, covers).</summary>
    ExhaustLeak,
    /// <summary>ln of the leakage coefficient of the blower gasket, on the pressure side.</summary>
    BlowerGasketLeak,
    /// <summary>ln of the leakage coefficient of the vent's joints, on the pressure side.</summary>
    VentLeak,
    /// <summary>ln of the heat conductance UA of the exchanger (insulating deposit lowers it).</summary>
    Insulation,
    /// <summary>ln of the fuel feed rate.</summary>
    Feed,
    /// <summary>ln of the room-air blower's flow.</summary>
    RoomAir,
    /// <summary>Fuel moisture above nominal, fraction of wet mass.</summary>
    Moisture,
    /// <summary>Wind pressure at the terminal, Pa; positive pushes back down the vent.</summary>
    Wind,
    /// <summary>House pressure against outdoors, Pa; negative is a depressurised house.</summary>
    House,
    /// <summary>ln of the supply voltage ratio.</summary>
    Supply,
    /// <summary>ln of the share of the port's pressure that reaches the vacuum switch or pressure sensor (hose off or plugged: far below 0).</summary>
    SensedPressure,
    /// <summary>ln of the vacuum switch's closing and opening pressure against its rating.</summary>
    SwitchThreshold,
    /// <summary>Offset of the pressure sensor's zero, Pa; positive reads too high.</summary>
    SensorZero,
    /// <summary>Offset of the exhaust disc's, probe's or thermocouple's indication, K; negative reads too cold.</summary>
    ProofSensor,
}
