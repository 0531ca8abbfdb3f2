using Emberwright.Diagnosis.Planning;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Tests.Planning;

/// <summary>A posterior made by hand: given weights on single faults, stated signs, the wiring's readings, no pressures.</summary>
internal sealed class PlainPredictive : IPredictive
{
    private readonly Catalogue _catalogue;
    private readonly ElectricalReadings _readings;

    public PlainPredictive(Catalogue catalogue, params (string Fault, double Weight)[] weights)
    {
        _catalogue = catalogue;
        _readings = new ElectricalReadings(WiringLibrary.For(catalogue.PatternId), Meter.Ordinary);
        Explanations = [.. weights.OrderByDescending(w => w.Weight).Select(w => new Explanation(w.Weight, w.Fault.Length == 0 ? [] : [w.Fault]))];
    }

    public IReadOnlyList<Explanation> Explanations { get; }

    public void Predict(int explanation, IReadOnlyList<Observable> observables, Span<double> mean, Span<double> covariance)
    {
        covariance.Clear();
        CircuitChange[] changes = [.. Faults(explanation).SelectMany(f => f.Circuit)];
        for (var i = 0; i < observables.Count; i++)
        {
            var o = observables[i];
            mean[i] = _readings.Knows(o.Measure, o.Place) ? _readings.Predict(o, [], changes) : double.NaN;
            covariance[i * observables.Count + i] = (o.Measure == Measure.Capacitance ? 0 : 0.05) + 4e-4 * Math.Min(mean[i] * mean[i], 1e6);
        }
    }

    public void Predict(int explanation, string sign, Span<double> outcomes)
    {
        var definition = _catalogue.Sign(sign)!;
        for (var o = 0; o < outcomes.Length; o++) outcomes[o] = definition.Outcomes[o].Usual;
        foreach (var fault in Faults(explanation))
        {
            var stated = fault.Symptoms.Where(s => s.Sign == sign).ToDictionary(s => definition.IndexOf(s.Outcome), s => s.Probability);
            if (stated.Count == 0) continue;
            var left = 1 - stated.Values.Sum();
            var usual = 1 - stated.Keys.Sum(o => definition.Outcomes[o].Usual);
            for (var o = 0; o < outcomes.Length; o++) outcomes[o] = stated.TryGetValue(o, out var p) ? p : left * definition.Outcomes[o].Usual / usual;
        }
    }

    public double ServiceCures(int explanation, string complaint) => 0.5;

    private IEnumerable<Fault> Faults(int explanation) => Explanations[explanation].Faults.Select(id => _catalogue.Fault(id)!);
}
