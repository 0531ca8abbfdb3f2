using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Visits.Journal;
using static Emberwright.Visits.SigningOff.Finding;

namespace Emberwright.Visits.SigningOff;

/// <summary>What concerns the proofs of safety functions, the test fire and safety stops.</summary>
internal static class ProofRequirements
{
    // Half an hour on high, as the trade runs a test fire; common practice, no source.
    private const double TestFireS = 30 * 60;

    // Any rise of CO in the room while burning is a leak; below this a meter zeroed outdoors does not tell (from memory).
    private const double RisePpm = 2;

    public static Requirement Proofs { get; } = new("proofs", Section.AsLeft, facts => Proved(facts, Needed(facts)));

    public static Requirement TestFire { get; } = new("test-fire", Section.AsLeft, Fire);

    public static Requirement ShutdownCo { get; } = new("shutdown-co", Section.AsLeft, facts => Unless(
        !SmellOrCo(facts) || RoomCo(facts).Any(r => r.Body.Condition.Fire == FireState.Shutdown && r.Body.Si <= RisePpm),
        "Smoke, smell or CO was noted: measure CO in the room during shutdown too."));

    public static Requirement Stops { get; } = new("stops", Section.MakeSafe, facts =>
        facts.Stops.Select(s => Lacks($"A safety stop stands: {s.Words} Cure it, or issue a stop-use notice.")));

    public static Requirement NoticeServed { get; } = new("notice", Section.MakeSafe, Served);

    public static Requirement FaultPhoto { get; } = new("fault-photo", Section.SignOff, facts => Unless(
        facts.Has<PhotoBody>(), "Photograph the fault or the notice on the appliance."));

    private static Proof[] Needed(SignOffFacts facts)
    {
        var opened = facts.Has<ActionBody>(a => a.Done && a.Area is Area.CombustionBlower or Area.Vent);
        return opened
            ? [Proof.HoseOff, Proof.LidOpen, Proof.ShutdownRunOn, Proof.SmokePencil]
            : [Proof.HoseOff, Proof.LidOpen, Proof.ShutdownRunOn];
    }

    private static IEnumerable<Finding> Proved(SignOffFacts facts, Proof[] proofs)
    {
        foreach (var proof in proofs)
            switch (facts.Visit.Of<ProofBody>().LastOrDefault(p => p.Body.Proof == proof && p.Epoch >= Since(facts, proof))?.Body.Outcome)
            {
                case null when facts.Has<ProofBody>(p => p.Proof == proof): yield return Lacks($"Again, for work was done since: {Ask(proof)}"); break;
                case null: yield return Lacks(Ask(proof)); break;
                case ProofOutcome.Failed: yield return Lacks($"Failed: {Ask(proof)}"); break;
                case ProofOutcome.NotFitted when proof is Proof.SmokePencil or Proof.ShutdownRunOn: yield return Lacks($"Every stove has it: {Ask(proof)}"); break;
                case ProofOutcome.Passed or ProofOutcome.NotFitted: break;
            }
    }

    // A proof holds for the work before it, not for joints opened or switches touched afterwards.
    private static int Since(SignOffFacts facts, Proof proof) => proof switch
    {
        Proof.SmokePencil => facts.LastWork(Area.CombustionBlower, Area.Vent),
        Proof.HoseOff or Proof.LidOpen or Proof.DoorOpen => facts.LastWork(Area.Interlocks, Area.Electrical),
        Proof.ShutdownRunOn => facts.LastWork(Area.Electrical),
    };

    private static string Ask(Proof proof) => proof switch
    {
        Proof.HoseOff => "Prove that the feed stops with the sensing hose off.",
        Proof.LidOpen => "Prove that the feed stops with the hopper lid open.",
        Proof.ShutdownRunOn => "Watch a shutdown: the blowers run on and stop by themselves.",
        Proof.SmokePencil => "Go round every joint opened on the pressure side with a smoke pencil, combustion blower running.",
        Proof.DoorOpen => "Prove what the stove does with its door open.",
    };

    private static IEnumerable<Finding> Fire(SignOffFacts facts)
    {
        var read = RoomCo(facts).LastOrDefault(r => r.Body.Condition.Fire == FireState.High && r.Body.After?.Si >= TestFireS);
        if (read is null) return [Lacks("Measure CO in the room after at least 30 min on high.")];
        if (read.Epoch < facts.LastWork(Area.CombustionBlower, Area.Vent, Area.AshPassages, Area.Seals))
            return [Lacks("Measure CO in the room again after at least 30 min on high: joints were opened since.")];
        if (read.Body.Si > RisePpm) return [Lacks($"CO in the room rose to {read.Body.Written} while burning: exhaust leaks. Stop, ventilate, find the leak.")];
        return Unless(facts.Instrument(read.Body.Instrument) is { ZeroedOutdoors: true }, "Zero the CO meter outdoors and record it.");
    }

    private static IEnumerable<Reading> RoomCo(SignOffFacts facts) =>
        facts.Visit.AsLeft.Where(r => r.Body is { Place: Places.Room, Measure: Measure.CarbonMonoxide });

    private static bool SmellOrCo(SignOffFacts facts) =>
        facts.Has<ComplaintBody>(c => c.Outcome is Complaints.SmokeOrSmell or Complaints.CoAlarm)
        || facts.Visit.Readings.Any(r => r.Body is { Place: Places.Room or Places.WarmAir, Measure: Measure.CarbonMonoxide } && r.Body.Si > RisePpm);

    private static IEnumerable<Finding> Served(SignOffFacts facts)
    {
        var notice = facts.Notice!;
        if (string.IsNullOrWhiteSpace(notice.ReleasedBy)) yield return Lacks("Write on the stop-use notice who may release it.");
        if (notice.ReadTo is not null && notice.Signed) yield break;
        if (facts.Has<SignatureBody>(s => s is { Role: Role.Customer, Absent: true })) yield return Limits("The owner was absent; the stop-use notice was left on the appliance.");
        else yield return Lacks("Read the stop-use notice to the owner and have it signed, or record that the owner is absent.");
    }
}
