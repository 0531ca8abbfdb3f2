// Question: what do an analyser's readings say about this fire?
// Equations: those of Stoichiometry, AirRatio, HeatingValue, FlueLoss, IndirectMethod, CarbonMonoxide, Saturation.
// Uncertainty: first order, u² = Σ (½(f(xᵢ + uᵢ) − f(xᵢ − uᵢ)))² over readings xᵢ with standard uncertainty uᵢ, taken as
//   independent (JCGM 100:2008, 5.1.2). Where moving a reading one way leaves its range, the difference on the other side counts whole.
// Validity: as the parts state; every range is checked before anything is computed.
// Worked value: see the parts.

namespace Emberwright.Stove.Fire;

/// <summary>
/// Combustion arithmetic of one measurement: every figure with its uncertainty, equation and source, and what stands out.
/// It judges the fire, not the stove: which fault lies behind is the diagnosis' matter.
/// </summary>
/// <param name="Options">What it was computed from.</param>
/// <param name="Figures">All figures in the order to print them.</param>
/// <param name="Notes">What stands out, in sentences, most urgent first.</param>
public sealed record FlueReport(FlueOptions Options, IReadOnlyList<Figure> Figures, IReadOnlyList<string> Notes)
{
    /// <summary>Works out everything the readings tell.</summary>
    /// <exception cref="InputException">A reading is missing or outside its range; the message names field, value, range and remedy.</exception>
    public static FlueReport Compute(FlueOptions options)
    {
        FlueChecks.Require(options);
        var figures = FlueFigures.Of(options);
        var variances = new double[figures.Count];
        foreach (var move in FlueMoves.Of(options))
        {
            var high = Near(move, +1);
            var low = Near(move, -1);
            var step = high is null || low is null ? 1.0 : 0.5;
            for (var i = 0; i < figures.Count; i++)
            {
                var change = step * ((high ?? figures)[i].Value - (low ?? figures)[i].Value);
                variances[i] += change * change;
            }
        }
        var sure = figures.Select((figure, i) => figure with { StandardUncertainty = Math.Sqrt(variances[i]) }).ToArray();
        return new FlueReport(options, sure, FlueNotes.Of(options, sure));
    }

    // Null where the moved reading would leave its range.
    private static IReadOnlyList<Figure>? Near(Func<int, FlueOptions> move, int sign)
    {
        try
        {
            var options = move(sign);
            FlueChecks.Require(options);
            return FlueFigures.Of(options);
        }
        catch (InputException)
        {
            return null;
        }
    }

    /// <summary>The figure of an id.</summary>
    /// <exception cref="KeyNotFoundException">This report has no such figure, for example because CO was not measured.</exception>
    public Figure this[string id] => Find(id) ?? throw new KeyNotFoundException($"This report has no figure \"{id}\".");

    /// <summary>The figure of an id, or null.</summary>
    public Figure? Find(string id) => Figures.FirstOrDefault(figure => figure.Id == id);

    /// <summary>A figure with everything it was computed from, itself first, each once.</summary>
    /// <exception cref="KeyNotFoundException">This report has no such figure.</exception>
    public IReadOnlyList<Figure> Open(string id)
    {
        var opened = new List<Figure> { this[id] };
        for (var i = 0; i < opened.Count; i++)
            foreach (var input in opened[i].Inputs)
                if (opened.TrueForAll(figure => figure.Id != input)) opened.Add(this[input]);
        return opened;
    }
}
