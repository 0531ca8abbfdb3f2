using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>How things stand: what is believed, cured, found out and prepared.</summary>
/// <param name="Weights">Weights of the explanations.</param>
/// <param name="Cured">Faults cured, as bits.</param>
/// <param name="Known">Steps of the fixed order whose finding out is paid for.</param>
/// <param name="Prepared">What is prepared, as bits.</param>
internal readonly record struct Stand(double[] Weights, ulong Cured, bool[] Known, int Prepared);

/// <summary>What looking ahead needs: what an option costs, how things may stand after it, and what then remains.</summary>
internal interface IBoard
{
    /// <summary>How things stand now.</summary>
    Stand Start { get; }

    /// <summary>What an option costs itself.</summary>
    double CostOf(Option option, Stand stand);

    /// <summary>How things may stand after it, each with its probability and the number of the result.</summary>
    IEnumerable<(double Probability, Stand After, int Result)> Results(Option option, Stand stand);

    /// <summary>Expected cost when nothing more is asked.</summary>
    double Remaining(Stand stand);
}

/// <summary>A check or a remedy with what it costs in the end.</summary>
/// <param name="Id">Id of the check, or of the action for a remedy.</param>
/// <param name="Name">What to do.</param>
/// <param name="Cost">Its own cost.</param>
/// <param name="Minutes">Its minutes.</param>
/// <param name="Total">Expected total cost when starting with it.</param>
/// <param name="Needs">What must be so first.</param>
/// <param name="Cautions">Cautions.</param>
/// <param name="Outcomes">Its results, or null for a remedy.</param>
/// <param name="Remedies">The fault it cures, when it is a remedy.</param>
/// <param name="Action">The action it amounts to, or null.</param>
/// <param name="LikelyCures">True when it more likely than not cures something.</param>
/// <param name="Check">The check; null for a remedy.</param>
/// <param name="Cures">Faults it cures, as bits.</param>
/// <param name="Settles">Steps of the fixed order that it settles; null for none.</param>
internal sealed record Option(
    string Id, string Name, double Cost, double Minutes, double Total, CheckNeeds Needs, IReadOnlyList<string> Cautions, OutcomeTable? Outcomes,
    Fault? Remedies, string? Action, bool LikelyCures, Check? Check, ulong Cures, bool[]? Settles)
{
    /// <summary>What comes after it, as a sentence to be added to its reason; null one step ahead.</summary>
    public string? Then { get; init; }

    /// <summary>True when its total looks two steps ahead.</summary>
    public bool IsDeep { get; init; }

    /// <summary>True for a new part that is less likely than not to be the cure: tried only when there is nothing else left.</summary>
    public bool IsLastResort { get; init; }
}
