namespace Emberwright.Diagnosis.Planning;

/// <summary>
/// What a customer may safely try for themselves while they wait, by the fault it may cure. Nothing here opens the stove,
/// resets a limit or touches a wire. Common practice, no source.
/// </summary>
internal static class PhoneFixes
{
    private const string Out = "Stove off, fire out and cold first. ";

    private static readonly Dictionary<string, string> ByFault = new(StringComparer.Ordinal)
    {
        ["hopper-empty"] = "Fill the hopper and start it again; the first pellets take some minutes to come.",
        ["hopper-bridging"] = Out + "Break the hollow in the pellets with a wooden stick, never a hand, then shut the lid and start it again.",
        ["lid-switch-open"] = "Take everything off the lid, lift it and let it down squarely, press it shut, and start it again.",
        ["door-switch-open"] = "Open the door when the stove is cold, shut it firmly until the latch is home, and start it again.",
        ["no-demand"] = "Set the thermostat five degrees above the room, or switch to manual, and see whether it starts.",
        ["thermostat-open"] = "Put new batteries into the thermostat; see whether it starts in manual.",
        ["supply-dead"] = "Try a lamp in the stove's socket; look at breaker and residual-current device. Switch a tripped one on once; if it trips again, leave it off.",
        ["low-supply"] = "Plug the stove straight into its own wall socket, without an extension lead, and try with other heaters off.",
        ["pot-misseated"] = Out + "Lift the burn pot out, clear the ledge, set it down flat; start it again.",
        ["pot-turned"] = Out + "Look whether the burn pot stands the right way round: its igniter hole towards the igniter.",
        ["pot-clogged"] = Out + "Empty the burn pot and scrape its holes open; ash into a lidded metal can outdoors.",
        ["pellets-wet"] = "Try a dry, unopened bag of good pellets when the hopper has run down.",
        ["pellets-poor"] = "Try another brand of pellets when the hopper has run down; keep the empty bag and its lot for us.",
        ["house-depressurised"] = "Do not use the stove with kitchen hood or fans on until it has been measured.",
        ["terminal-snowed-in"] = "With the stove off: look from the ground whether snow or ice covers the pipe's end, and clear it only if you can do so standing safely.",
    };

    /// <summary>What to say for a fault, or null.</summary>
    public static string? For(string fault) => ByFault.GetValueOrDefault(fault);
}
