using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Rates;

/// <summary>
/// How often each fault of a pattern is met and how fast its passages foul, each with its origin. What a firm knows better
/// replaces what the catalogue says; what it does not name stays.
/// </summary>
/// <param name="Pattern">Pattern id.</param>
/// <param name="Faults">Share of breakdown calls of each fault, %.</param>
/// <param name="Fouling">Mean fouling per tonne of fuel burned since cleaning, −ln of the share left open.</param>
public sealed record PatternRates(string Pattern, IReadOnlyDictionary<string, Rate> Faults, IReadOnlyDictionary<Parameter, Rate> Fouling)
{
    /// <summary>Minutes that checks and actions take the firm, by id; the catalogue's where none is given.</summary>
    public IReadOnlyDictionary<string, Rate> Minutes { get; init; } = new Dictionary<string, Rate>();

    /// <summary>What catalogue and tables say.</summary>
    /// <param name="patternId">Pattern id.</param>
    public static PatternRates Of(string patternId) => new(
        patternId,
        Catalogue.For(patternId).Faults.ToDictionary(f => f.Id, f => new Rate(f.BaseRatePercent, f.Origin)),
        PriorTable.Fouling.ToDictionary(p => p, p => new Rate(PriorTable.PerTonne(p), PriorTable.FoulingOrigin)));

    /// <summary>These rates with others in place of the same.</summary>
    /// <param name="other">Rates that are known better.</param>
    /// <exception cref="ArgumentException">The other rates are of another pattern.</exception>
    public PatternRates With(PatternRates other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (other.Pattern != Pattern) throw new ArgumentException($"The rates are of pattern '{other.Pattern}', these of '{Pattern}'.", nameof(other));
        return this with { Faults = Merged(Faults, other.Faults), Fouling = Merged(Fouling, other.Fouling), Minutes = Merged(Minutes, other.Minutes) };
    }

    private static Dictionary<TKey, Rate> Merged<TKey>(IReadOnlyDictionary<TKey, Rate> mine, IReadOnlyDictionary<TKey, Rate> others) where TKey : notnull
    {
        var merged = mine.ToDictionary();
        foreach (var (key, rate) in others) merged[key] = rate;
        return merged;
    }
}
