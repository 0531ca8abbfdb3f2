using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>Where the visit stands: what is known so far and which work is open now.</summary>
/// <param name="Evidence">All evidence so far, actions among it.</param>
/// <param name="Stops">Safety stops that stand.</param>
/// <param name="OnSite">False while only the telephone is at hand.</param>
/// <param name="MadeSafe">True once the stove is off, cold, unplugged and proved dead (it may be plugged in again for live readings).</param>
/// <param name="Concern">False on a routine service where nothing is complained of and nothing is out of band.</param>
public sealed record Situation(
    IReadOnlyList<Evidence> Evidence, IReadOnlyList<StandingStop> Stops, bool OnSite = true, bool MadeSafe = true, bool Concern = true)
{
    private static readonly IReadOnlyList<string> Fireless = [Complaints.Dead, Complaints.NoFeed, Complaints.NoLight, Complaints.AutomaticOnly];

    /// <summary>Epoch of now.</summary>
    public int Epoch => Evidence.Count == 0 ? 0 : Evidence.Max(e => e.Epoch);

    /// <summary>True when a fire can be had: the complaint does not exclude it, or something has been done since.</summary>
    public bool CanBurn => Epoch > 0 || !Evidence.OfType<SignEvidence>().Any(e => e.Sign == Complaints.Sign && Fireless.Contains(e.Outcome));

    /// <summary>True when something was done about the complaint and nothing since shows whether it helped.</summary>
    public bool IsUnproved { get; } = StandingConcern.IsUnproved(Evidence);

    /// <summary>The complaint, as an outcome of its sign, that stands because no run since the last deed shows it gone; null when none does.</summary>
    public string? Unanswered { get; } = Evidence.OfType<SignEvidence>().Where(e => e.Sign == Complaints.Sign && e.Outcome != Complaints.Due).Select(e => e.Outcome).LastOrDefault() is { } told
        && !RunsIn(Evidence) ? told : null;

    /// <summary>True when the stove is only due for its service, as far as anybody told.</summary>
    public bool IsDue { get; } = Evidence.OfType<SignEvidence>().Where(e => e.Sign == Complaints.Sign).Select(e => e.Outcome).Distinct().ToArray() is [Complaints.Due];

    /// <summary>True when it was started since the last deed and ran.</summary>
    public bool Runs => RunsIn(Evidence);

    /// <summary>True when something has been done and nothing has been seen or read since.</summary>
    public bool HasJustActed => Epoch > 0 && Evidence.All(e => e is ActionEvidence || e.Epoch < Epoch);

    private static bool RunsIn(IReadOnlyList<Evidence> evidence)
    {
        var now = evidence.Count == 0 ? 0 : evidence.Max(e => e.Epoch);
        // Before anything was done a run proves nothing: what comes and goes runs again by itself.
        return now > 0 && evidence.OfType<SignEvidence>().LastOrDefault(e => e.Sign == Rules.RunsNow && e.Epoch == now) is { Outcome: "runs" };
    }

    /// <summary>True when an action has been done on this visit.</summary>
    /// <param name="action">Id of the action.</param>
    public bool HasDone(string action) => Evidence.OfType<ActionEvidence>().Any(e => e.Action == action);

    /// <summary>True when a sign is known as of now: seen in this epoch.</summary>
    /// <param name="sign">Id of the sign.</param>
    public bool Sees(string sign) => Evidence.OfType<SignEvidence>().Any(e => e.Sign == sign && e.Epoch == Epoch);

    /// <summary>True when a sign is known as of now: seen since anything was done that could have changed it.</summary>
    /// <param name="sign">Id of the sign.</param>
    /// <param name="catalogue">Faults, signs and actions of the pattern.</param>
    public bool Sees(string sign, Catalogue catalogue) => Evidence.OfType<SignEvidence>().Any(e => e.Sign == sign && !Done(e.Epoch, catalogue).Any(a => Renewal.Changes(a, sign, catalogue)));

    /// <summary>True when everything a check would show is already known as of now.</summary>
    /// <param name="check">The check.</param>
    /// <param name="catalogue">Faults, signs and actions of the pattern.</param>
    public bool Knows(Check check, Catalogue catalogue)
    {
        var left = Untold(check, catalogue);
        return left.Signs.Count == 0 && left.Reads.Count == 0;
    }

    /// <summary>The check with only what it would show that is not known yet as of now; nothing is learned twice.</summary>
    /// <param name="check">The check.</param>
    /// <param name="catalogue">Faults, signs and actions of the pattern.</param>
    public Check Untold(Check check, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check with
        {
            Signs = [.. check.Signs.Where(s => !(check.Kind == CheckKind.Ask && Evidence.OfType<SignEvidence>().Any(e => e.Sign == s) || Sees(s, catalogue)))],
            Reads = [.. check.Reads.Where(r => !Has(r, catalogue))],
        };
    }

    /// <summary>True when a check has been done as of now: all its readings are known, or at least one of its signs when it reads nothing.</summary>
    /// <param name="check">The check.</param>
    /// <param name="catalogue">Faults, signs and actions of the pattern.</param>
    public bool HasDone(Check check, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Reads.Count > 0 ? check.Reads.All(r => Has(r, catalogue)) : check.Signs.Any(s => Sees(s, catalogue));
    }

    /// <summary>True when a check has been done at any time on this visit, whatever has been changed since.</summary>
    /// <param name="check">The check.</param>
    public bool HasEverDone(Check check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Reads.Count > 0
            ? check.Reads.All(r => Evidence.OfType<ReadingEvidence>().Any(e => IsOf(e, r)))
            : check.Signs.Any(s => Evidence.OfType<SignEvidence>().Any(e => e.Sign == s));
    }

    private bool Has(Stove.Observable wanted, Catalogue catalogue) =>
        Evidence.OfType<ReadingEvidence>().Any(e => IsOf(e, wanted) && !Done(e.Epoch, catalogue).Any(a => Renewal.ChangesReadings(a, catalogue)));

    // What was done after an epoch.
    private IEnumerable<WorkAction> Done(int epoch, Catalogue catalogue) =>
        Evidence.OfType<ActionEvidence>().Where(a => a.Epoch > epoch).Select(a => catalogue.Action(a.Action)).OfType<WorkAction>();

    // Ohms are read with the plug out, whatever the stove did before.
    private static bool IsOf(ReadingEvidence reading, Stove.Observable wanted) => reading.Observable == wanted
        || wanted.Measure == Stove.Measure.Resistance && reading.Observable with { Condition = wanted.Condition } == wanted;
}
