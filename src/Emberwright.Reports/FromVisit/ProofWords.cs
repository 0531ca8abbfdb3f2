using Emberwright.Reports.Wording;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>Proofs and their outcomes in words.</summary>
public static class ProofWords
{
    /// <summary>What is tried.</summary>
    public static string Of(Proof proof) => proof switch
    {
        Proof.HoseOff => Say.Of("proof.sensing-hose-off-the-feed-stops"),
        Proof.LidOpen => Say.Of("proof.hopper-lid-open-the-feed-stops"),
        Proof.ShutdownRunOn => Say.Of("proof.shutdown-blowers-run-on-then-stop-by"),
        Proof.SmokePencil => Say.Of("proof.smoke-pencil-round-every-joint-opened-on"),
        Proof.DoorOpen => Say.Of("proof.fuel-door-open-the-stove-does-what"),
    };

    /// <summary>How it ended.</summary>
    public static string Of(ProofOutcome outcome) => outcome switch
    {
        ProofOutcome.Passed => Say.Of("proof.as-it-should"),
        ProofOutcome.Failed => Say.Of("common.failed"),
        ProofOutcome.NotFitted => Say.Of("proof.has-none"),
    };
}
