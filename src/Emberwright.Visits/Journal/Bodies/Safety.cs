using Emberwright.Stove.Quantities;

namespace Emberwright.Visits.Journal;

/// <summary>A step of making an appliance safe.</summary>
public enum SafeStep
{
    /// <summary>Switched off at its own control.</summary>
    SwitchedOff,
    /// <summary>Burnt out, the blower stopped by itself.</summary>
    BurntOut,
    /// <summary>Cool enough to work on.</summary>
    Cool,
    /// <summary>Unplugged.</summary>
    Unplugged,
    /// <summary>Proved dead with a meter.</summary>
    ProvedDead,
    /// <summary>Room ventilated.</summary>
    Ventilated,
    /// <summary>Everyone out of the building.</summary>
    EveryoneOut,
    /// <summary>Embers in a lidded metal can, outdoors.</summary>
    EmbersInMetalCan,
    /// <summary>Old white gaskets wetted, mask worn, no dry brushing.</summary>
    FibrePrecautions,
}

/// <summary>One step of making safe, done.</summary>
/// <param name="Step">The step.</param>
/// <param name="Words">Further words.</param>
public sealed record SafeBody(SafeStep Step, string? Words = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "safe";

    internal static SafeBody Read(BodyReader r) => new(r.RequiredChoice<SafeStep>("step"), r.Text("words"));

    internal override void Write(BodyWriter w)
    {
        w.Choice<SafeStep>("step", Step);
        w.Text("words", Words);
    }
}

/// <summary>A test that a safety function works, or that a joint is tight.</summary>
public enum Proof
{
    /// <summary>With the sensing hose off, the feed stops.</summary>
    HoseOff,
    /// <summary>With the hopper lid open, the feed stops.</summary>
    LidOpen,
    /// <summary>At shutdown the blowers run on and stop by themselves.</summary>
    ShutdownRunOn,
    /// <summary>Smoke pencil round every joint opened on the pressure side, combustion blower running.</summary>
    SmokePencil,
    /// <summary>With the fuel door open, the stove does what its controls should.</summary>
    DoorOpen,
}

/// <summary>How a proof ended.</summary>
public enum ProofOutcome
{
    /// <summary>As it should be.</summary>
    Passed,
    /// <summary>Not as it should be.</summary>
    Failed,
    /// <summary>The appliance has no such function.</summary>
    NotFitted,
}

/// <summary>One proof made.</summary>
/// <param name="Proof">Which.</param>
/// <param name="Outcome">How it ended.</param>
/// <param name="Took">How long it took.</param>
/// <param name="Words">Further words.</param>
public sealed record ProofBody(Proof Proof, ProofOutcome Outcome, Quantity? Took = null, string? Words = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "proof";

    internal static ProofBody Read(BodyReader r) => new(
        r.RequiredChoice<Proof>("proof"), r.RequiredChoice<ProofOutcome>("outcome"), r.Quantity("took", Dimension.Duration), r.Text("words"));

    internal override void Write(BodyWriter w)
    {
        w.Choice<Proof>("proof", Proof);
        w.Choice<ProofOutcome>("outcome", Outcome);
        w.Quantity("took", Took);
        w.Text("words", Words);
    }
}

/// <summary>The written instruction not to operate the appliance, or its release.</summary>
/// <param name="Reason">Why.</param>
/// <param name="ReleasedBy">Who may release it.</param>
/// <param name="ReadTo">To whom it was read; null when nobody was there.</param>
/// <param name="Signed">True when that person signed it.</param>
/// <param name="Lifted">True for the release of an earlier notice.</param>
public sealed record NoticeBody(string Reason, string? ReleasedBy = null, string? ReadTo = null, bool Signed = false, bool Lifted = false) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "notice";

    internal static NoticeBody Read(BodyReader r) => new(
        r.Required("reason", "Write why the appliance must not be operated."), r.Text("releasedBy"), r.Text("readTo"),
        r.Flag("signed") ?? false, r.Flag("lifted") ?? false);

    internal override EntryBody WithPersonal(Func<string, string> each) => this with { ReadTo = Each(ReadTo, each) };

    internal override void Write(BodyWriter w)
    {
        w.Text("reason", Reason);
        w.Text("releasedBy", ReleasedBy);
        w.Text("readTo", ReadTo);
        w.Flag("signed", Signed);
        w.Flag("lifted", Lifted ? true : null);
    }
}
