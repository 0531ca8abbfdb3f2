using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>The steps of making safe, as they are said and cautioned. Common practice, no source.</summary>
public static class SafeWords
{
    /// <summary>The step when it is done.</summary>
    public static string Done(SafeStep step) => step switch
    {
        SafeStep.SwitchedOff => "Switched off at its own control",
        SafeStep.BurntOut => "Burnt out, blower stopped by itself",
        SafeStep.Cool => "Cool enough to work on",
        SafeStep.Unplugged => "Unplugged, plug in sight",
        SafeStep.ProvedDead => "Proved dead with a meter",
        SafeStep.Ventilated => "Room ventilated",
        SafeStep.EveryoneOut => "Everyone out",
        SafeStep.EmbersInMetalCan => "Embers in a lidded metal can, outdoors",
        SafeStep.FibrePrecautions => "Old white gaskets wetted, mask on",
    };

    /// <summary>What can hurt at this step, imperative.</summary>
    public static string Caution(SafeStep step) => step switch
    {
        SafeStep.SwitchedOff => "Press off and let it burn out. Pulling the plug on a live fire fills the room with smoke.",
        SafeStep.BurntOut => "Wait until the blower stops by itself.",
        SafeStep.Cool => "Metal and glass stay hot long after the flame. Exhaust below 40 °C before a port is opened.",
        SafeStep.Unplugged => "Mains voltage stands behind every panel while the plug is in.",
        SafeStep.ProvedDead => "Prove the meter on a live socket, then the stove, then the meter again.",
        SafeStep.Ventilated => "Open windows before anything else when carbon monoxide is suspected.",
        SafeStep.EveryoneOut => "Everyone leaves, then call the emergency number. Do not pull the plug first.",
        SafeStep.EmbersInMetalCan => "Ash can glow for a day. Metal can, lid on, outdoors, on stone; never an ordinary vacuum.",
        SafeStep.FibrePrecautions => "Old white gaskets may be asbestos or ceramic fibre. Wet them, mask on, no dry brushing.",
    };
}
