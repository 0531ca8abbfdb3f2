using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>
/// What may be offered at all, whatever it would save. Common practice, no source: nothing before its making-safe step, no
/// part replaced before it is measured or its place cleaned, no limit reset before its cause has been looked for, no second
/// asking, and on site nobody is asked what can be seen.
/// </summary>
internal static class Rules
{
    /// <summary>Signs that show why a limit opened; one of them must be known before a reset is offered.</summary>
    private static readonly IReadOnlyList<string> WhyHot =
        ["room-air-look", "room-blower-run", "exchanger-coat", "pump-feel", "return-pipe", "bleed", "feed-tube-look"];

    /// <summary>Seeing whether it now runs makes sense once something has been done.</summary>
    public const string TestRun = "test-run";

    private static readonly IReadOnlyList<string> Resets = ["reset-high-limit", ActionList.CureOf("high-limit-tripped"), ActionList.CureOf("safety-thermostat-tripped")];

    /// <summary>True when a check may be offered now.</summary>
    public static bool Allow(Check check, Catalogue catalogue, Situation now)
    {
        if (check.Action is { } action ? now.HasDone(action) : now.Knows(check)) return false;
        if (!now.OnSite) return check.Needs == CheckNeeds.None;
        if (check.Id == TestRun && now.Epoch == 0) return false;
        if (check.Kind == CheckKind.Ask && check.Signs.All(s => catalogue.Checks.Any(c => c.Kind == CheckKind.Look && c.Signs.Contains(s)))) return false;
        if (check.Needs.HasFlag(CheckNeeds.Burning) && !now.CanBurn) return false;
        return !Resets.Contains(check.Id) || CauseLookedFor(now);
    }

    /// <summary>True when the remedy of a fault may be offered now.</summary>
    public static bool AllowRemedy(Fault fault, Catalogue catalogue, Situation now)
    {
        if (!now.OnSite) return false;
        if (Resets.Contains(ActionList.CureOf(fault.Id)) && !CauseLookedFor(now)) return false;
        if (fault.Remedy.Kind != RemedyKind.Replace) return true;
        return fault.ProvedBy.Any(id => catalogue.Check(id) is { } check && now.HasDone(check));
    }

    private static bool CauseLookedFor(Situation now) => now.Evidence.Any(e => e switch
    {
        SignEvidence s => WhyHot.Contains(s.Sign),
        ActionEvidence a => a.Action is "clean-room-air-blower" or "clean-exchanger" or ActionList.FullService || a.Action.StartsWith("cure-", StringComparison.Ordinal),
        _ => false,
    });
}
