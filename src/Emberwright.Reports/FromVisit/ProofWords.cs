using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>Proofs and their outcomes in words.</summary>
public static class ProofWords
{
    /// <summary>What is tried.</summary>
    public static string Of(Proof proof) => proof switch
    {
        Proof.HoseOff => "Sensing hose off: the feed stops",
        Proof.LidOpen => "Hopper lid open: the feed stops",
        Proof.ShutdownRunOn => "Shutdown: blowers run on, then stop by themselves",
        Proof.SmokePencil => "Smoke pencil round every joint opened on the pressure side",
        Proof.DoorOpen => "Fuel door open: the stove does what its controls should",
    };

    /// <summary>How it ended.</summary>
    public static string Of(ProofOutcome outcome) => outcome switch
    {
        ProofOutcome.Passed => "as it should",
        ProofOutcome.Failed => "failed",
        ProofOutcome.NotFitted => "has none",
    };
}
