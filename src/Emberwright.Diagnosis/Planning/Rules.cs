using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>
/// What may be offered at all, whatever it would save. Common practice, no source: nothing before its making-safe step, no
/// part replaced before it is measured or its place cleaned, no limit reset and no fuse renewed before the cause has been looked for, no second
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

    /// <summary>Where a fuse's short may sit: ohms to earth, or ohms of what it feeds, must be known before a new one goes in.</summary>
    private static readonly IReadOnlyList<string> Feeds = [ComponentIds.Igniter, ComponentIds.CombustionBlower, ComponentIds.FeedMotor, ComponentIds.RoomAirBlower];

    private static readonly IReadOnlyList<Precaution> Precautions =
    [
        new(["reset-high-limit", ActionList.CureOf("high-limit-tripped"), ActionList.CureOf("safety-thermostat-tripped")], null, WhyHot, []),
        new([ActionList.CureOf("fuse-blown")], "fuse", ["earth-ohms"], Feeds),
    ];

    /// <summary>True when a check may be offered now.</summary>
    public static bool Allow(Check check, Catalogue catalogue, Situation now)
    {
        if (check.Kind == CheckKind.Clean && now.HasDone(ActionList.FullService)) return false;
        if (check.Action is { } action ? now.HasDone(action) : now.Knows(check, catalogue)) return false;
        if (!now.OnSite) return check.Needs == CheckNeeds.None;
        if (check.Id == TestRun && now.Epoch == 0) return false;
        if (check.Kind == CheckKind.Ask && check.Signs.All(s => catalogue.Checks.Any(c => c.Kind == CheckKind.Look && c.Signs.Contains(s)))) return false;
        if (check.Kind == CheckKind.Look && check.Signs.Count > 2 && 2 * check.Signs.Count(s => now.Sees(s, catalogue)) > check.Signs.Count) return false;
        if (check.Needs.HasFlag(CheckNeeds.Burning) && !now.CanBurn) return false;
        return Precautions.All(p => !p.Deeds.Contains(check.Id) || p.IsMet(now));
    }

    /// <summary>True when the remedy of a fault may be offered now.</summary>
    public static bool AllowRemedy(Fault fault, Catalogue catalogue, Situation now)
    {
        if (!now.OnSite) return false;
        if (Precautions.Any(p => p.Deeds.Contains(ActionList.CureOf(fault.Id)) && !p.IsMet(now))) return false;
        var telling = Confirmation.Telling(fault, catalogue);
        // Done once it is not done again, unless what shows the fault has been seen anew since.
        if (now.HasDone(ActionList.CureOf(fault.Id)) && !telling.Any(s => now.Sees(s, catalogue)) && !fault.ProvedBy.Any(id => catalogue.Check(id) is { } check && now.HasDone(check, catalogue))) return false;
        if (fault.ProvedBy.Any(id => catalogue.Check(id) is { } check && now.HasDone(check, catalogue))) return true;
        if (fault.Remedy.Kind == RemedyKind.Replace) return false;
        return telling.Count == 0 && fault.ProvedBy.Count == 0 || telling.Any(s => now.Sees(s, catalogue));
    }

    /// <summary>True when a check looks for the cause of something that probably acted (a limit, a fuse) and whose cause nobody has looked for yet.</summary>
    public static bool LooksForAwaitedCause(Check check, Board board, Situation now) => Precautions.Any(p => !p.IsMet(now) && p.LooksFor(check)
        && (p.Shown is null || now.Sees(p.Shown))
        && board.Faults.Where((f, i) => board.Marginal[i] >= Probably && p.Deeds.Contains(ActionList.CureOf(f.Id))).Any());

    /// <summary>Deeds that wait until their cause has been looked for.</summary>
    /// <param name="Deeds">Ids of checks and actions that wait.</param>
    /// <param name="Shown">Sign that must have shown it first, or null.</param>
    /// <param name="Signs">Signs that look for the cause.</param>
    /// <param name="OhmsOf">Parts whose ohms look for the cause.</param>
    private sealed record Precaution(IReadOnlyList<string> Deeds, string? Shown, IReadOnlyList<string> Signs, IReadOnlyList<string> OhmsOf)
    {
        public bool LooksFor(Check check) => check.Kind != CheckKind.Ask
            && (check.Signs.Any(Signs.Contains) || check.Reads.Any(r => r.Measure == Stove.Measure.Resistance && OhmsOf.Contains(r.Place)));

        public bool IsMet(Situation now) => now.Evidence.Any(e => e switch
        {
            SignEvidence s => Signs.Contains(s.Sign),
            ReadingEvidence r => r.Observable.Measure == Stove.Measure.Resistance && OhmsOf.Contains(r.Observable.Place),
            ActionEvidence a => a.Action is "clean-room-air-blower" or "clean-exchanger" or ActionList.FullService || a.Action.StartsWith("cure-", StringComparison.Ordinal),
            _ => false,
        });
    }
}
