using Emberwright.Reports.Wording;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>The steps of making safe, as they are said and cautioned. Common practice, no source.</summary>
public static class SafeWords
{
    /// <summary>The step when it is done.</summary>
    public static string Done(SafeStep step) => step switch
    {
        SafeStep.SwitchedOff => Say.Of("safe.switched-off-at-its-own-control"),
        SafeStep.BurntOut => Say.Of("safe.burnt-out-blower-stopped-by-itself"),
        SafeStep.Cool => Say.Of("safe.cool-enough-to-work-on"),
        SafeStep.Unplugged => Say.Of("safe.unplugged-plug-in-sight"),
        SafeStep.ProvedDead => Say.Of("safe.proved-dead-with-a-meter"),
        SafeStep.Ventilated => Say.Of("safe.room-ventilated"),
        SafeStep.EveryoneOut => Say.Of("safe.everyone-out"),
        SafeStep.EmbersInMetalCan => Say.Of("safe.embers-in-a-lidded-metal-can-outdoors"),
        SafeStep.FibrePrecautions => Say.Of("safe.old-white-gaskets-wetted-mask-on"),
    };

    /// <summary>What can hurt at this step, imperative.</summary>
    public static string Caution(SafeStep step) => step switch
    {
        SafeStep.SwitchedOff => Say.Of("safe.press-off-and-let-it-burn-out"),
        SafeStep.BurntOut => Say.Of("safe.wait-until-the-blower-stops-by-itself"),
        SafeStep.Cool => Say.Of("safe.metal-and-glass-stay-hot-long-after"),
        SafeStep.Unplugged => Say.Of("safe.mains-voltage-stands-behind-every-panel-while"),
        SafeStep.ProvedDead => Say.Of("safe.prove-the-meter-on-a-live-socket"),
        SafeStep.Ventilated => Say.Of("safe.open-windows-before-anything-else-when-carbon"),
        SafeStep.EveryoneOut => Say.Of("safe.everyone-leaves-then-call-the-emergency-number"),
        SafeStep.EmbersInMetalCan => Say.Of("safe.ash-can-glow-for-a-day-metal"),
        SafeStep.FibrePrecautions => Say.Of("safe.old-white-gaskets-may-be-asbestos-or"),
    };
}
