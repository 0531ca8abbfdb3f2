namespace Emberwright.Trials.Visits;

/// <summary>How one policy's visit ended.</summary>
/// <param name="Policy">Name of the policy.</param>
/// <param name="Cured">True when the stove runs, the complaint is gone and no safety stop stands.</param>
/// <param name="Stopped">True when it was left out of use by a safety stop.</param>
/// <param name="Comeback">True when it was cured of its complaint and left with another fault it had come with, about which somebody will call again.</param>
/// <param name="Cost">Cost of the visit, and of coming again where it was left uncured without a stop.</param>
/// <param name="GoodParts">Sound parts replaced.</param>
/// <param name="Checks">Checks done.</param>
/// <param name="AmongThree">True when a fault that was there is among the first three suspects at the end; null for a policy without beliefs.</param>
/// <param name="Path">What was done, in order.</param>
internal sealed record Outcome(
    string Policy, bool Cured, bool Stopped, bool Comeback, double Cost, int GoodParts, int Checks, bool? AmongThree, IReadOnlyList<string> Path);

/// <summary>All policies' visits to the same hidden stove; one line of a shard's file.</summary>
/// <param name="Pattern">Pattern id.</param>
/// <param name="Seed">Seed of the trial.</param>
/// <param name="Index">Number of the stove.</param>
/// <param name="Truth">Faults it had.</param>
/// <param name="Complaint">The complaint.</param>
/// <param name="Outcomes">How each policy fared.</param>
/// <param name="Seconds">CPU time of all of them.</param>
internal sealed record VisitRow(string Pattern, int Seed, int Index, IReadOnlyList<string> Truth, string Complaint, IReadOnlyList<Outcome> Outcomes, double Seconds);
