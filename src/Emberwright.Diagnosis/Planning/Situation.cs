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

    /// <summary>True when something has been done and nothing has been seen or read since.</summary>
    public bool HasJustActed => Epoch > 0 && Evidence.All(e => e is ActionEvidence || e.Epoch < Epoch);

    /// <summary>True when an action has been done on this visit.</summary>
    /// <param name="action">Id of the action.</param>
    public bool HasDone(string action) => Evidence.OfType<ActionEvidence>().Any(e => e.Action == action);

    /// <summary>True when a sign is known as of now.</summary>
    /// <param name="sign">Id of the sign.</param>
    public bool Sees(string sign) => Evidence.OfType<SignEvidence>().Any(e => e.Sign == sign && e.Epoch == Epoch);

    /// <summary>True when everything a check would show is already known as of now.</summary>
    /// <param name="check">The check.</param>
    public bool Knows(Check check)
    {
        var left = Untold(check);
        return left.Signs.Count == 0 && left.Reads.Count == 0;
    }

    /// <summary>The check with only what it would show that is not known yet as of now; nothing is learned twice.</summary>
    /// <param name="check">The check.</param>
    public Check Untold(Check check)
    {
        var now = Epoch;
        return check with
        {
            Signs = [.. check.Signs.Where(s => !Evidence.OfType<SignEvidence>().Any(e => e.Sign == s && (e.Epoch == now || check.Kind == CheckKind.Ask)))],
            Reads = [.. check.Reads.Where(r => !Evidence.OfType<ReadingEvidence>().Any(e => IsOf(e, r) && e.Epoch == now))],
        };
    }

    /// <summary>True when a check has been done as of now: all its readings are known, or at least one of its signs when it reads nothing.</summary>
    /// <param name="check">The check.</param>
    public bool HasDone(Check check)
    {
        var now = Epoch;
        return check.Reads.Count > 0
            ? check.Reads.All(r => Evidence.OfType<ReadingEvidence>().Any(e => IsOf(e, r) && e.Epoch == now))
            : check.Signs.Any(s => Evidence.OfType<SignEvidence>().Any(e => e.Sign == s && e.Epoch == now));
    }

    // Ohms are read with the plug out, whatever the stove did before.
    private static bool IsOf(ReadingEvidence reading, Stove.Observable wanted) => reading.Observable == wanted
        || wanted.Measure == Stove.Measure.Resistance && reading.Observable with { Condition = wanted.Condition } == wanted;
}
