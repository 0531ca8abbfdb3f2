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

    private const double Probably = 0.3;

    /// <summary>Sign of a test run.</summary>
    public const string RunsNow = "runs-now";

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
        if (check.Kind == CheckKind.Look && check.Signs.Count > 2 && 2 * check.Signs.Count(now.Sees) > check.Signs.Count) return false;
        if (check.Needs.HasFlag(CheckNeeds.Burning) && !now.CanBurn) return false;
        return !Resets.Contains(check.Id) || CauseLookedFor(now);
    }

    /// <summary>True when the remedy of a fault may be offered now.</summary>
    public static bool AllowRemedy(Fault fault, Catalogue catalogue, Situation now)
    {
        if (!now.OnSite) return false;
        if (Resets.Contains(ActionList.CureOf(fault.Id)) && !CauseLookedFor(now)) return false;
        if (fault.ProvedBy.Any(id => catalogue.Check(id) is { } check && now.HasDone(check))) return true;
        if (fault.Remedy.Kind == RemedyKind.Replace) return false;
        var telling = Confirmation.Telling(fault, catalogue);
        return telling.Count == 0 && fault.ProvedBy.Count == 0 || telling.Any(now.Sees);
    }

    /// <summary>True when a limit has probably opened and nobody has looked yet for what made it hot.</summary>
    public static bool AwaitsItsCause(Board board, Situation now) => !CauseLookedFor(now)
        && board.Faults.Where((f, i) => board.Marginal[i] >= Probably && Resets.Contains(ActionList.CureOf(f.Id))).Any();

    /// <summary>True when a check looks for what made a limit open.</summary>
    public static bool LooksForCause(Check check) => check.Kind != CheckKind.Ask && check.Signs.Any(WhyHot.Contains);

    private static bool CauseLookedFor(Situation now) => now.Evidence.Any(e => e switch
    {
        SignEvidence s => WhyHot.Contains(s.Sign),
        ActionEvidence a => a.Action is "clean-room-air-blower" or "clean-exchanger" or ActionList.FullService || a.Action.StartsWith("cure-", StringComparison.Ordinal),
        _ => false,
    });
}
