using Emberwright.Diagnosis;
using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.FromVisit;

/// <summary>Every figure the visit shows, by name and as written in SI, so that a signed report never changes with the engine.</summary>
public static class SealedFigures
{
    /// <summary>The figures.</summary>
    public static IReadOnlyDictionary<string, string> Of(Beliefs? beliefs)
    {
        var figures = new Dictionary<string, string>();
        if (beliefs is null) return figures;
        foreach (var suspect in beliefs.Suspects)
            figures[$"probability {suspect.Fault}"] = QuantityFormat.Number(suspect.Probability, 0.001);
        foreach (var comparison in beliefs.Comparisons)
        {
            var measure = comparison.Band.Observable.Measure;
            figures[$"band {comparison.Evidence}"] = $"{QuantityFormat.Format(comparison.Band.Low, measure, UnitSystem.Si)} to {QuantityFormat.Format(comparison.Band.High, measure, UnitSystem.Si)}";
        }
        foreach (var area in beliefs.Areas)
        {
            figures[$"restriction found {area.Parameter}"] = QuantityFormat.Number(area.AsFound.Median, 0.01);
            figures[$"restriction now {area.Parameter}"] = QuantityFormat.Number(area.Now.Median, 0.01);
        }
        return figures;
    }
}
