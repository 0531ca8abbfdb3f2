using System.Text.Json.Serialization;

namespace Emberwright.Trials.Calibration;

/// <summary>What diagnosis said of one hidden stove, rung by rung; one line of a shard's file.</summary>
/// <param name="Pattern">Pattern id.</param>
/// <param name="Seed">Seed of the trial.</param>
/// <param name="Index">Number of the stove.</param>
/// <param name="Mismatch">Mismatch of its construction: 1 ordinary, 2 doubled.</param>
/// <param name="Truth">Ids of the faults that were there; <c>unlisted</c> and <c>nothing</c> stand for themselves.</param>
/// <param name="Says">One statement for each rung.</param>
internal sealed record CalibrationRow(string Pattern, int Seed, int Index, double Mismatch, IReadOnlyList<string> Truth, IReadOnlyList<Statement> Says);

/// <summary>What was said on one rung.</summary>
/// <param name="Rung">How much was known.</param>
/// <param name="Probabilities">Marginal of each suspect named.</param>
/// <param name="Misfit">True when no listed cause was said to fit.</param>
/// <param name="CannotTell">True when nothing was singled out.</param>
/// <param name="Areas">Interval of each area beside the truth.</param>
/// <param name="Milliseconds">CPU time it took.</param>
internal sealed record Statement(
    Rung Rung, IReadOnlyDictionary<string, double> Probabilities, bool Misfit, bool CannotTell, IReadOnlyList<AreaStatement> Areas, double Milliseconds);

/// <summary>An area's 90 % interval beside the truth, as fractions of the passage shut.</summary>
/// <param name="Area">Parameter's name.</param>
/// <param name="Low">5 % quantile.</param>
/// <param name="High">95 % quantile.</param>
/// <param name="Truth">The truth.</param>
internal sealed record AreaStatement(string Area, double Low, double High, double Truth)
{
    /// <summary>True when the interval holds the truth.</summary>
    [JsonIgnore]
    public bool Holds => Truth >= Low - 1e-9 && Truth <= High + 1e-9;
}
