namespace Emberwright.Stove.Faults;

/// <summary>Cautions as they are printed at a step. All are common practice, no source; local code and the appliance's manual take precedence.</summary>
public static class Cautions
{
    /// <summary>Before any panel is opened.</summary>
    public const string MakeSafe = "Press off, let it burn out, wait until the blower stops by itself, unplug, prove dead.";
    /// <summary>Live work.</summary>
    public const string Live = "Mains is live here: one hand, insulated probes, fused leads, nobody else within reach.";
    /// <summary>Charged capacitor.</summary>
    public const string Discharge = "A run capacitor stays charged with the plug out: discharge it through a 20 kΩ, 5 W resistor and read 0 V before it is touched.";
    /// <summary>A part on its own supply.</summary>
    public const string TestLead = "Isolate the part from the board; fused test lead on a residual-current device; its own voltage.";
    /// <summary>Igniter on its own supply.</summary>
    public const string IgniterLead = "At most 90 seconds on the test lead; it glows hot enough to burn and to light dust.";
    /// <summary>Live ash.</summary>
    public const string Ash = "Embers live in ash for days: lidded metal can, ash-rated vacuum, dust mask.";
    /// <summary>Old fibre.</summary>
    public const string Fibre = "Old white gaskets may be asbestos or ceramic fibre: wet them, mask, no dry brushing.";
    /// <summary>Roof.</summary>
    public const string Ladder = "Ladder tied and on firm ground; not alone on a roof, not in wind or ice.";
    /// <summary>Hot surfaces.</summary>
    public const string Hot = "Glass, door and vent burn the skin.";
    /// <summary>CO.</summary>
    public const string Monoxide = "Carbon monoxide: instrument zeroed outdoors, worn while the stove burns; out at 70 ppm.";
    /// <summary>Never bridge.</summary>
    public const string NoBridge = "Never leave a safety switch bridged, and never run the stove with one.";
    /// <summary>Moving parts.</summary>
    public const string Auger = "The auger shears fingers: unplugged before a hand goes near it.";
    /// <summary>Sensing hose.</summary>
    public const string HoseOff = "Clear the hose only when it is off the switch: its diaphragm is easily ruined.";
    /// <summary>Pressurised hot water.</summary>
    public const string Water = "Let the water cool below 40 °C first: opened hot it scalds and flashes to steam.";
    /// <summary>Sealant.</summary>
    public const string Sealant = "A thin smear rated to 260 °C is a stop-gap; too much squeezes inward and stops the wheel. The repair is a new gasket.";
    /// <summary>Another trade.</summary>
    public const string Licensed = "Work on the building's wiring, water or structure belongs to its licensed trade.";
    /// <summary>A pair that should be low voltage.</summary>
    public const string LowVoltagePair = "Read volts at the pair before it is touched: some thermostats switch mains.";
    /// <summary>A stove that is asked to run.</summary>
    public const string StartsItself = "It may light by itself once it is asked to: doors and hopper lid shut, nothing leaning on it.";
    /// <summary>Do not reset and leave.</summary>
    public const string FindWhy = "It opened for a reason: find why it got hot before it is reset and the stove left.";
}
