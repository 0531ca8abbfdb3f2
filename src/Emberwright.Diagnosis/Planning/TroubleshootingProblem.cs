using Emberwright.Stove;

namespace Emberwright.Diagnosis.Planning;

/// <summary>One way of trying to cure: it costs the same whether it helps or not, and it always cures what it can cure.</summary>
/// <param name="Cost">Cost, above 0.</param>
/// <param name="Cures">Faults it cures, as bits.</param>
/// <param name="Behind">Index of the cover that must be open first, or −1.</param>
public readonly record struct Attempt(double Cost, ulong Cures, int Behind = -1);

/// <summary>
/// A small troubleshooting problem: exactly one of several faults is present, attempts are made one after another until
/// the device works. It knows no questions.
/// </summary>
public sealed class TroubleshootingProblem
{
    /// <summary>Sets up the problem.</summary>
    /// <param name="probabilities">Probability of each fault, each 0…1, summing to at most 1.</param>
    /// <param name="attempts">The attempts; together they must cure every fault that has a probability.</param>
    /// <param name="openingCosts">Cost of opening each cover, at least 0; spent once.</param>
    /// <exception cref="InputException">A probability, cost or cover is out of its range, or a fault has no attempt.</exception>
    public TroubleshootingProblem(
        IReadOnlyList<double> probabilities, IReadOnlyList<Attempt> attempts, IReadOnlyList<double>? openingCosts = null)
    {
        Probabilities = [.. probabilities];
        Attempts = [.. attempts];
        OpeningCosts = [.. openingCosts ?? []];
        foreach (var p in Probabilities) InputException.Require(p, 0, 1, "probability", "", "Give a share between 0 and 1.");
        InputException.Require(Probabilities.Sum(), 0, 1 + 1e-9, "sum of probabilities", "", "Only one fault is present: scale them to sum to 1.");
        foreach (var a in Attempts)
        {
            InputException.Require(a.Cost, double.Epsilon, 1e9, "cost of an attempt", "", "Give a cost above 0.");
            InputException.Require(a.Behind, -1, OpeningCosts.Count - 1, "cover", "", "Name a cover that has an opening cost, or −1.");
        }

        for (var f = 0; f < Probabilities.Count; f++)
        {
            if (Probabilities[f] > 0 && !Attempts.Any(a => (a.Cures >> f & 1) != 0))
                throw new InputException("attempts", $"none cures fault {f}", "Add an attempt that does, or give the fault probability 0.");
        }
    }

    /// <summary>Probability of each fault.</summary>
    public IReadOnlyList<double> Probabilities { get; }

    /// <summary>The attempts.</summary>
    public IReadOnlyList<Attempt> Attempts { get; }

    /// <summary>Cost of opening each cover.</summary>
    public IReadOnlyList<double> OpeningCosts { get; }

    /// <summary>A problem in which attempt i cures fault i alone.</summary>
    /// <param name="probabilities">Probability of each fault.</param>
    /// <param name="costs">Cost of each attempt.</param>
    /// <exception cref="InputException">The lists differ in length or a value is out of its range.</exception>
    public static TroubleshootingProblem OneToOne(IReadOnlyList<double> probabilities, IReadOnlyList<double> costs)
    {
        if (probabilities.Count != costs.Count)
            throw new InputException("costs", $"{costs.Count} given for {probabilities.Count} faults", "Give one cost for each fault.");
        return new(probabilities, [.. costs.Select((c, i) => new Attempt(c, 1UL << i))]);
    }

    /// <summary>Probability that the device is still broken after these faults are cured.</summary>
    /// <param name="cured">Faults cured, as bits.</param>
    public double Broken(ulong cured)
    {
        var p = 0.0;
        for (var f = 0; f < Probabilities.Count; f++)
        {
            if ((cured >> f & 1) == 0) p += Probabilities[f];
        }

        return p;
    }
}
