using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Why "nothing wrong" may not be concluded although no fault is found.</summary>
internal static class StandingConcern
{
    private const double RoomCoPpm = 5;
    private const double FlueCoPpm = 1500;

    /// <summary>Said while something was done about a complaint and nothing yet shows that it helped.</summary>
    public const string Unproved = "What was done may have cured it; nothing yet shows that the stove runs. Prove it before it is signed off.";

    /// <summary>
    /// True when something was done about a complaint and no run, no fire and no renewed answer since shows whether it helped.
    /// </summary>
    /// <param name="evidence">All evidence.</param>
    public static bool IsUnproved(IReadOnlyList<Evidence> evidence)
    {
        var complained = evidence.OfType<SignEvidence>().Where(e => e.Sign == Complaints.Sign && e.Outcome != Complaints.Due).Select(e => e.Epoch).DefaultIfEmpty(int.MaxValue).Max();
        return evidence.Any(e => e is ActionEvidence && e.Epoch > complained) && !evidence.Any(e => e.Epoch > complained && Shows(e));
    }

    /// <summary>What shows whether the stove does what it should.</summary>
    private static bool Shows(Evidence evidence) => evidence switch
    {
        SignEvidence { Sign: RunsNow or FeedPulse or Flame } => true,
        ReadingEvidence { Observable.Condition.Fire: not FireState.Cold } => true,
        _ => false,
    };

    private const string RunsNow = "runs-now";
    private const string FeedPulse = "feed-pulse";
    private const string Flame = "flame";

    /// <summary>The concern in words, or null when none stands.</summary>
    /// <param name="evidence">All evidence.</param>
    /// <param name="now">The present epoch; a complaint from before the last action may have been answered by it.</param>
    public static string? Of(IReadOnlyList<Evidence> evidence, int now)
    {
        foreach (var item in evidence.OrderBy(e => e.Id, StringComparer.Ordinal))
        {
            switch (item)
            {
                case ReadingEvidence { Observable: { Measure: Measure.CarbonMonoxide, Place: Places.Room or Places.WarmAir }, Value: >= RoomCoPpm } when !Cleared(evidence, item.Epoch):
                    return "Carbon monoxide was measured in the room: whatever else is found, it is not safe until measured again at nought.";
                case ReadingEvidence { Observable: { Measure: Measure.CarbonMonoxide, Place: Places.Flue }, Value: >= FlueCoPpm } when item.Epoch == now:
                    return "The flue gas carries much carbon monoxide: the fire is not right, whatever the other readings say.";
                case SignEvidence { Sign: Complaints.Sign, Outcome: not Complaints.Due } when item.Epoch == now:
                    return "The complaint stands: readings in their bands do not prove that nothing is wrong.";
                default:
                    break;
            }
        }
        return null;
    }

    /// <summary>A later reading in the room at nought clears an earlier one; a missing one never does.</summary>
    private static bool Cleared(IReadOnlyList<Evidence> evidence, int epoch) => evidence.OfType<ReadingEvidence>()
        .Any(r => r.Epoch > epoch && r.Observable is { Measure: Measure.CarbonMonoxide, Place: Places.Room } && r.Value < RoomCoPpm);
}
