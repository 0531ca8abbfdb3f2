using Emberwright.Diagnosis.Signs;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// A graded look or judgement of a quantity of the model. A fault that states its own probabilities for the sign
/// overrides the model.
/// </summary>
internal sealed class GradedSign : IConditional
{
    private readonly SignTable _table;
    private readonly IReadOnlyList<Fault> _faults;
    private readonly int _outcome;
    private readonly Bound _byModel;

    /// <summary>Binds one observed outcome of a sign that has a margin.</summary>
    public GradedSign(SignEvidence evidence, SignTable table, IReadOnlyList<Fault> faults)
    {
        Evidence = evidence;
        _table = table;
        _faults = faults;
        var sign = table.Sign;
        var margin = sign.Margin!;
        _outcome = sign.IndexOf(evidence.Outcome);
        var quantity = margin.Quantity is { } observable
            ? Quantity.Of(evidence.Epoch, observable)
            : Quantity.Of(evidence.Epoch, margin.Parameter!.Value);
        _byModel = new Bound(
            "",
            new OrderedProbit(
                quantity,
                _outcome == 0 ? double.NegativeInfinity : margin.Cuts[_outcome - 1],
                _outcome == margin.Cuts.Count ? double.PositiveInfinity : margin.Cuts[_outcome],
                margin.Blur),
            0);
        Lapse = margin.Lapse;
        LnIfLapse = -Math.Log(sign.Outcomes.Count);
    }

    /// <inheritdoc />
    public Evidence Evidence { get; }

    /// <inheritdoc />
    public double LnIfLapse { get; }

    /// <inheritdoc />
    public double Lapse { get; }

    /// <inheritdoc />
    public bool Concerns(Fault fault) => fault.Symptoms.Any(s => s.Sign == _table.Sign.Id);

    /// <inheritdoc />
    public Bound Under(IReadOnlyList<Fault> present)
    {
        var stating = new List<int>();
        foreach (var fault in present)
            if (Concerns(fault)) stating.Add(IndexOf(fault));
        return stating.Count == 0
            ? _byModel
            : new Bound(string.Join('+', stating), null, Math.Log(_table.Probability(_outcome, stating.ToArray())));
    }

    private int IndexOf(Fault fault)
    {
        for (var i = 0; i < _faults.Count; i++)
            if (ReferenceEquals(_faults[i], fault)) return i;
        return -1;
    }
}
