namespace Emberwright.Stove;

/// <summary>
/// Where on the appliance a fault or a piece of work belongs. The first four are the service areas,
/// which every service covers.
/// </summary>
public enum Area
{
    /// <summary>Combustion blower: wheel, housing, gasket.</summary>
    CombustionBlower,
    /// <summary>Room-air blower: wheel, inlet, grille.</summary>
    RoomAirBlower,
    /// <summary>Ash passages, the exchanger's gas passages among them.</summary>
    AshPassages,
    /// <summary>Vent run, tee and terminal.</summary>
    Vent,
    /// <summary>Intake, burn pot and firebox.</summary>
    BurnPot,
    /// <summary>Door, ash door, glass, lid and their gaskets.</summary>
    Seals,
    /// <summary>Hopper, auger, feed motor.</summary>
    Feed,
    /// <summary>Igniter and its passage.</summary>
    Ignition,
    /// <summary>Safety switches, sensors, their hoses.</summary>
    Interlocks,
    /// <summary>Board, wiring, supply, thermostat.</summary>
    Electrical,
    /// <summary>Pump, valves, expansion vessel, water jacket.</summary>
    Water,
    /// <summary>House, weather, fuel, settings.</summary>
    Site,
}
