using Emberwright.Stove.Faults;
using static Emberwright.Diagnosis.Checks.Writing;

namespace Emberwright.Diagnosis.Checks;

/// <summary>Questions that can be asked before leaving, and what the customer can look at without opening anything.</summary>
internal static class AskChecks
{
    public static IReadOnlyList<Check> Checks { get; } =
    [
        Ask("ask-onset", "Ask how it began", 1, "onset"),
        Ask("ask-when", "Ask when it happens", 1, "happens"),
        Ask("ask-hopper-lid", "Ask: hopper filled, lid and doors shut?", 1, "hopper-filled", "lid-shut"),
        Ask("ask-bridge", "Have them look straight down into the hopper", 1, "bridge", "hopper-filled"),
        Ask("ask-calling", "Ask: switched on and calling? Does it run in manual?", 1, "calling", "manual-works", "thermostat-battery"),
        Ask("ask-socket", "Ask what else is on the socket, and whether lights dim", 1, "own-socket", "light-dims"),
        Ask("ask-breaker", "Have them look at breaker and residual-current device, and try a lamp in the socket", 2, "breaker", "socket-lamp"),
        Ask("ask-power", "Ask about power cuts, thunderstorms, backup", 1, "power", "backup"),
        Ask("ask-lid-history", "Ask whether anything fell or was put on the lid", 1, "lid-history") with { Patterns = PatternIds.LidSwitch },
        Ask("ask-warm-air", "Ask how the warm air changed, and about pets", 1, "warm-air-change", "pets"),
        Ask("ask-fuel", "Ask which fuel, its lot, and where it is stored", 1, "fuel"),
        Ask("ask-vent-route", "Ask where the pipe goes", 1, "vent-route"),
        Ask("ask-work-done", "Ask who worked on stove, vent or heating lately", 1, "work-done"),
        Ask("ask-house", "Ask about kitchen hood, fans, new windows; does an open window help?", 1, "extractor", "window-open"),
        Ask("ask-glass-flame", "Ask how glass, flame and ash look", 1, "glass", "flame", "ash-kind"),
        Ask("ask-code", "Ask what lamps and display show", 1, "code", "lamps"),
        Ask("ask-noise", "Ask what it sounds like", 1, "noise"),
        Ask("ask-smell", "Ask what it smells of and when", 1, "smell", "smell-when"),
        Ask("ask-ill", "Ask first: anyone unwell, alarm sounding, everyone out?", 1, "ill", "co-alarm-date"),
        Ask("ask-pot", "Ask what lies in the burn pot, and how it sits", 1, "pot-content", "pot-seat"),
        Ask("ask-lit-by-hand", "Ask whether it burns on when lit by hand", 1, "lit-by-hand"),
        Ask("ask-feed-seen", "Ask whether the auger turns and pellets fall", 1, "feed-pulse", "feed-drop"),
        Ask("ask-blowers-heard", "Ask which blowers can be heard and felt", 1, "combustion-blower-run", "room-blower-run"),
        Ask("ask-shutdown", "Ask whether it stops by itself when switched off", 1, "run-on") with { Patterns = PatternIds.ProofDisc },
    ];
}
