using Emberwright.Stove.Quantities;

namespace Emberwright.Field.Visiting;

/// <summary>Every figure the visit shows, by name and as written in SI, so that a signed report never changes with the engine.</summary>
public static class Figures
{
    /// <summary>The figures.</summary>
    public static IReadOnlyDictionary<string, string> Of(Reckoned? reckoned)
    {
        var figures = new Dictionary<string, string>();
        if (reckoned is null) return figures;
        foreach (var suspect in reckoned.Beliefs.Suspects)
            figures[$"probability {suspect.Fault}"] = QuantityFormat.Number(suspect.Probability, 0.001);
        foreach (var comparison in reckoned.Beliefs.Comparisons)
        {
            var measure = comparison.Band.Observable.Measure;
            figures[$"band {comparison.Evidence}"] = $"{QuantityFormat.Format(comparison.Band.Low, measure, UnitSystem.Si)} to {QuantityFormat.Format(comparison.Band.High, measure, UnitSystem.Si)}";
        }
        foreach (var area in reckoned.Beliefs.Areas)
        {
            figures[$"restriction found {area.Parameter}"] = QuantityFormat.Number(area.AsFound.Median, 0.01);
            figures[$"restriction now {area.Parameter}"] = QuantityFormat.Number(area.Now.Median, 0.01);
        }
        return figures;
    }
}
