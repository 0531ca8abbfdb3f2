using Emberwright.Diagnosis;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.SigningOff;

/// <summary>How a visit may be closed.</summary>
public enum Decision
{
    /// <summary>Everything required is there.</summary>
    Permitted,
    /// <summary>It may be closed; the limitations are printed on the report.</summary>
    PermittedWithLimitations,
    /// <summary>The appliance is closed out of service under a stop-use notice.</summary>
    OutOfService,
    /// <summary>Something required is missing.</summary>
    Refused,
}

/// <summary>The part of a visit's page where something is entered.</summary>
public enum Section
{
    /// <summary>The call.</summary>
    Call,
    /// <summary>Making safe.</summary>
    MakeSafe,
    /// <summary>As found.</summary>
    AsFound,
    /// <summary>The areas.</summary>
    Areas,
    /// <summary>Suspects.</summary>
    Suspects,
    /// <summary>As left.</summary>
    AsLeft,
    /// <summary>Sign-off.</summary>
    SignOff,
}

/// <summary>Something required that is not there.</summary>
/// <param name="Id">Id of the requirement.</param>
/// <param name="Words">What to do, in words.</param>
/// <param name="Go">Where to do it.</param>
public sealed record Missing(string Id, string Words, Section Go);

/// <summary>What sign-off comes to.</summary>
/// <param name="Decision">How the visit may be closed.</param>
/// <param name="Missing">What stands in the way; empty unless refused.</param>
/// <param name="Limitations">What the report must say plainly.</param>
public sealed record SignOffReview(Decision Decision, IReadOnlyList<Missing> Missing, IReadOnlyList<string> Limitations);

/// <summary>
/// Decides whether a visit may be closed. It demands what its kind requires and nothing more: a tool that always finds
/// one more thing to ask for is switched off. The lists are common practice, no source.
/// </summary>
public static class SignOff
{
    /// <summary>Reviews a visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="kind">What it is closed as.</param>
    /// <param name="comparisons">Readings against their healthy bands; null when there are no bands.</param>
    /// <param name="stops">Safety stops that stand.</param>
    public static SignOffReview Review(
        Visit visit, VisitKind kind, IReadOnlyList<Comparison>? comparisons = null, IReadOnlyList<StandingStop>? stops = null)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var facts = new SignOffFacts(visit, comparisons ?? [], stops ?? []);
        var required = facts.Notice is null ? Requirements.Of(kind) : Requirements.OutOfService;
        var findings = required.SelectMany(r => r.Check(facts).Select(f => (Requirement: r, Finding: f))).ToArray();
        var missing = findings.Where(f => f.Finding.IsMissing).Select(f => new Missing(f.Requirement.Id, f.Finding.Words, f.Requirement.Go)).ToArray();
        var limitations = findings.Where(f => !f.Finding.IsMissing).Select(f => f.Finding.Words).Distinct().ToArray();
        var decision = missing.Length > 0 ? Decision.Refused
            : facts.Notice is not null ? Decision.OutOfService
            : limitations.Length > 0 ? Decision.PermittedWithLimitations
            : Decision.Permitted;
        return new SignOffReview(decision, missing, limitations);
    }
}
