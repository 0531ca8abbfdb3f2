namespace Emberwright.Stove.Controls;

/// <summary>Ids of components that several wirings share; a reading's place may be any of them.</summary>
public static class ComponentIds
{
    /// <summary>The mains at the socket; its voltage is what the socket gives.</summary>
    public const string Supply = Places.Supply;
    /// <summary>Protective conductor from the appliance's metal to the building's earth.</summary>
    public const string EarthConductor = "earth-conductor";
    /// <summary>Fuse on the board or at the inlet.</summary>
    public const string Fuse = "fuse";
    /// <summary>The board's own supply rail, from which all its outputs are fed.</summary>
    public const string Board = "board";
    /// <summary>Disc that opens when the feed tube or the firebox shell gets too hot.</summary>
    public const string HighLimitDisc = "high-limit-disc";
    /// <summary>Switch closed by the hopper lid.</summary>
    public const string LidSwitch = "lid-switch";
    /// <summary>Switch closed by the fuel door.</summary>
    public const string DoorSwitch = "door-switch";
    /// <summary>Switch closed by vacuum.</summary>
    public const string VacuumSwitch = "vacuum-switch";
    /// <summary>Disc on the exhaust that closes once a fire warms it.</summary>
    public const string ProofDisc = "proof-disc";
    /// <summary>Disc that lets the room-air blower run once the shell is warm.</summary>
    public const string RoomAirDisc = "room-air-disc";
    /// <summary>The board's contact around the proof-of-fire disc while a fire is being lit.</summary>
    public const string ProofBypass = "proof-bypass";
    /// <summary>Board output for the feed motor.</summary>
    public const string FeedOutput = "feed-output";
    /// <summary>Board output for the igniter.</summary>
    public const string IgniterOutput = "igniter-output";
    /// <summary>Board output for the combustion blower.</summary>
    public const string CombustionOutput = "combustion-output";
    /// <summary>Board output for the room-air blower.</summary>
    public const string RoomAirOutput = "room-air-output";
    /// <summary>Board output for the agitator motor.</summary>
    public const string AgitatorOutput = "agitator-output";
    /// <summary>Board output for the circulating pump.</summary>
    public const string PumpOutput = "pump-output";
    /// <summary>Plug between feed output and feed chain.</summary>
    public const string FeedConnector = "feed-connector";
    /// <summary>Plug of the igniter.</summary>
    public const string IgniterConnector = "igniter-connector";
    /// <summary>Plug of the combustion blower.</summary>
    public const string CombustionConnector = "combustion-connector";
    /// <summary>Plug of the room-air blower.</summary>
    public const string RoomAirConnector = "room-air-connector";
    /// <summary>Motor that turns the auger.</summary>
    public const string FeedMotor = "feed-motor";
    /// <summary>Igniter.</summary>
    public const string Igniter = "igniter";
    /// <summary>Combustion blower's motor.</summary>
    public const string CombustionBlower = "combustion-blower";
    /// <summary>Room-air blower's motor.</summary>
    public const string RoomAirBlower = "room-air-blower";
    /// <summary>Motor of the agitator in the burn pot.</summary>
    public const string AgitatorMotor = "agitator-motor";
    /// <summary>Circulating pump.</summary>
    public const string CirculatingPump = "circulating-pump";
    /// <summary>Low-voltage supply of the thermostat loop.</summary>
    public const string ThermostatSupply = "thermostat-supply";
    /// <summary>Room thermostat's contact.</summary>
    public const string Thermostat = "thermostat";
    /// <summary>Cable to the room thermostat.</summary>
    public const string ThermostatCable = "thermostat-cable";
    /// <summary>Thermocouple that proves the fire.</summary>
    public const string Thermocouple = "thermocouple";
    /// <summary>Resistance probe in the exhaust.</summary>
    public const string ExhaustProbe = "exhaust-probe";
    /// <summary>Resistance probe in the room.</summary>
    public const string RoomProbe = "room-probe";
    /// <summary>Resistance probe in the water jacket.</summary>
    public const string WaterProbe = "water-probe";
    /// <summary>Combustion blower's speed sensor.</summary>
    public const string SpeedSensor = "speed-sensor";
    /// <summary>Run capacitor of the combustion blower's auxiliary winding.</summary>
    public const string RunCapacitor = "run-capacitor";
    /// <summary>Auxiliary winding of a combustion blower with a run capacitor.</summary>
    public const string CombustionAuxiliary = "combustion-auxiliary";
    /// <summary>Plug of the circulating pump.</summary>
    public const string PumpConnector = "pump-connector";
    /// <summary>Plug of the agitator motor.</summary>
    public const string AgitatorConnector = "agitator-connector";
    /// <summary>Pressure sensor's output.</summary>
    public const string PressureSensor = "pressure-sensor";
    /// <summary>5 V supply of sensors.</summary>
    public const string SensorSupply = "sensor-supply";
    /// <summary>Safety thermostat of the water jacket.</summary>
    public const string SafetyThermostat = "safety-thermostat";
}
