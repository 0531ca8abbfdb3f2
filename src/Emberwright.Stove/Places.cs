namespace Emberwright.Stove;

/// <summary>Ids of the places that several patterns share. A pattern may have further ones of its own.</summary>
public static class Places
{
    /// <summary>Port in the firebox, above the burn pot.</summary>
    public const string Firebox = "firebox";
    /// <summary>Port just before the combustion blower.</summary>
    public const string BlowerInlet = "blower-inlet";
    /// <summary>Port where the vent leaves the appliance.</summary>
    public const string Collar = "collar";
    /// <summary>Sampling place for flue gas.</summary>
    public const string Flue = "flue";
    /// <summary>The room in which the stove stands.</summary>
    public const string Room = "room";
    /// <summary>Warm air at the grille.</summary>
    public const string WarmAir = "warm-air";
    /// <summary>The house against outdoors.</summary>
    public const string House = "house";
    /// <summary>The mains socket.</summary>
    public const string Supply = "supply";
    /// <summary>The place where the vacuum switch's hose ends at the switch.</summary>
    public const string SwitchHose = "switch-hose";
    /// <summary>The vent's outlet, under its terminal.</summary>
    public const string VentOutlet = "vent-outlet";
    /// <summary>The combustion-air intake.</summary>
    public const string Intake = "intake";
    /// <summary>The burn pot.</summary>
    public const string BurnPot = "burn-pot";
    /// <summary>The building's panel, ahead of the stove's own circuit.</summary>
    public const string Panel = "panel";
    /// <summary>Beside the joint of the combustion blower, outside the stove.</summary>
    public const string BlowerFlange = "blower-flange";
    /// <summary>The heating circuit, at its gauge.</summary>
    public const string Water = "water";
    /// <summary>Pipe that takes hot water from the stove.</summary>
    public const string FlowPipe = "flow-pipe";
    /// <summary>Pipe that brings water back to the stove.</summary>
    public const string ReturnPipe = "return-pipe";
    /// <summary>The fuel feed.</summary>
    public const string Feed = "feed";
}
