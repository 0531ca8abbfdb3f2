using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>The explanations laid out for planning: faults as bits, steps with costs, and every option's expected total.</summary>
/// <remarks>
/// Where a fault that stops the stove stands beside dirt past its limit, the stove counts as running once the fault is
/// cured: dirt is cleaned on every visit and need not have stopped it.
/// </remarks>
internal sealed class Board : IBoard
{
    private const int MostFaults = 64;
    private const double Seen = 0.5;

    private readonly Catalogue _catalogue;
    private readonly Tariff _tariff;
    private readonly IPredictive _predictive;
    private readonly Situation _situation;
    private readonly RepairPlan _plan;
    private readonly ulong[] _stepCures;
    private readonly double[] _weights;
    private readonly ulong[] _faultsOf;
    private readonly ulong[] _needed;
    private readonly bool[] _known;
    private readonly string?[] _stepCheck;
    private readonly IReadOnlyList<WorkAction> _cleaning;
    private readonly HashSet<string> _washed;
    private readonly int _prepared;
    private readonly ulong _renewed;

    public Board(Catalogue catalogue, Tariff tariff, IPredictive predictive, Situation situation)
    {
        (_catalogue, _tariff, _predictive, _situation) = (catalogue, tariff, predictive, situation);
        var explanations = predictive.Explanations;
        _weights = [.. explanations.Select(e => e.Weight)];
        Faults = [.. explanations.SelectMany(e => e.Faults).Distinct().Select(catalogue.Fault).OfType<Fault>().Take(MostFaults)];
        _faultsOf = [.. explanations.Select(e => Mask(e.Faults))];
        _renewed = Mask(Faults.Where(f => f.Remedy.Kind == RemedyKind.Replace).Select(f => f.Id));
        var dirt = Mask(Faults.Where(f => f.Fouling is not null).Select(f => f.Id));
        _needed = [.. _faultsOf.Select(f => (f & ~dirt) != 0 ? f & ~dirt : f)];
        Marginal = [.. Faults.Select((_, f) => explanations.Select((e, k) => (_faultsOf[k] >> f & 1) != 0 ? e.Weight : 0).Sum())];
        Open = explanations.Select((e, k) => _faultsOf[k] != 0 || e.Unlisted ? e.Weight : 0).Sum();

        var dirty = catalogue.Actions.Where(a => a.Kind == RemedyKind.Clean && catalogue.Check(a.Id) is not null).ToList();
        _cleaning = [.. dirty.Where(a => Mask(a.Cures) != 0)];
        _stepCheck = [.. _cleaning.Select(a => a.Id), .. Faults.Select(f => Confirmation.Of(f, catalogue)?.Id)];
        _stepCures = [.. _cleaning.Select(a => Mask(a.Cures)), .. Faults.Select((_, f) => 1UL << f)];
        _washed = [.. dirty.SelectMany(a => a.Cures)];
        _prepared = (HasOpened() ? Bill.Opening : 0) + (Burned() ? Bill.Fire : 0);
        _known = [.. _stepCheck.Select(id => id is not null && catalogue.Check(id) is { } c && c.Kind != CheckKind.Clean && situation.HasDone(c))];
        _plan = new RepairPlan(
            _needed, [.. explanations.Select(e => e.Unlisted)],
            [.. Faults.Select(f => _washed.Contains(f.Id) && f.Fouling is not null ? 0 : tariff.Of(f.Remedy))],
            [.. _stepCheck.Select(Step)], tariff.Unsolved, Bill.OpenMinutes * tariff.PerMinute, Bill.WarmUpMinutes * tariff.PerMinute);
        Standing = _plan.ExpectedCost(_weights, 0, _known, _prepared);
    }

    /// <summary>The faults of all explanations, by bit.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    /// <summary>Probability of each fault.</summary>
    public IReadOnlyList<double> Marginal { get; }

    /// <summary>Probability that something is still wrong.</summary>
    public double Open { get; }

    /// <summary>Expected total from here when nothing more is asked.</summary>
    public double Standing { get; }

    /// <summary>Id of the check that would prove the likeliest fault, once that is more likely than not and not yet proved; else null.</summary>
    public string? Proof => Enumerable.Range(0, Faults.Count).Where(f => Marginal[f] >= Seen && !_known[_cleaning.Count + f])
        .OrderByDescending(f => Marginal[f]).Select(f => _stepCheck[_cleaning.Count + f]).FirstOrDefault();

    /// <summary>Id of the action that cures the likeliest fault, once that is more likely than not and proved; else null.</summary>
    public string? Cure => Enumerable.Range(0, Faults.Count).Where(f => Marginal[f] >= Seen && _known[_cleaning.Count + f])
        .OrderByDescending(f => Marginal[f]).Select(f => ActionList.CureOf(Faults[f].Id)).FirstOrDefault();

    /// <summary>Every option that the rules allow, with its expected total.</summary>
    public IEnumerable<Option> Options()
    {
        foreach (var check in _catalogue.Checks)
        {
            if (!Rules.Allow(check, _catalogue, _situation)) continue;
            var outcomes = _situation.Knows(check) ? OutcomeTable.Nothing(_weights.Length) : OutcomeTable.Of(_situation.Untold(check), _catalogue, _predictive);
            if (outcomes is null && IsProof(check.Id)) outcomes = OutcomeTable.Nothing(_weights.Length);
            if (outcomes is not null) yield return Of(check, outcomes);
        }

        foreach (var action in _catalogue.Actions.Where(a => (a.Kind != RemedyKind.Clean || _catalogue.Check(a.Id) is null) && Holding(Mask(a.Cures)) >= Seen))
        {
            if (Faults.Any(f => ActionList.CureOf(f.Id) == action.Id && Rules.AllowRemedy(f, _catalogue, _situation))) yield return Of(action);
        }
    }

    /// <summary>Weights of the explanations after a result.</summary>
    public double[] After(double[] likelihood, out double probability) => After(_weights, likelihood, out probability);

    private static double[] After(double[] weights, double[] likelihood, out double probability)
    {
        var w = new double[weights.Length];
        probability = 0;
        for (var k = 0; k < w.Length; k++) probability += w[k] = weights[k] * likelihood[k];
        for (var k = 0; k < w.Length; k++) w[k] /= Math.Max(probability, 1e-300);
        return w;
    }

    /// <summary>Probability of a fault under given weights.</summary>
    public double Of(int fault, double[] weights)
    {
        var p = 0.0;
        for (var k = 0; k < weights.Length; k++)
        {
            if ((_faultsOf[k] >> fault & 1) != 0) p += weights[k];
        }

        return p;
    }

    /// <summary>Mean likelihood of a result among the explanations that hold a fault.</summary>
    public double Given(int fault, double[] likelihood)
    {
        var (sum, p) = (0.0, 0.0);
        for (var k = 0; k < likelihood.Length; k++)
        {
            if ((_faultsOf[k] >> fault & 1) == 0) continue;
            sum += _weights[k] * likelihood[k];
            p += _weights[k];
        }

        return p > 0 ? sum / p : 0;
    }

    /// <summary>How things stand before anything more is done.</summary>
    public Stand Start => new(_weights, 0, _known, _prepared);

    /// <summary>Expected cost from a standing when nothing more is asked.</summary>
    public double Remaining(Stand stand) => _plan.ExpectedCost(stand.Weights, stand.Cured, stand.Known, stand.Prepared);

    /// <summary>What an option costs itself, with what is still to be prepared for it.</summary>
    public double CostOf(Option option, Stand stand) => option.Check is { } check
        ? Bill.Minutes(check, stand.Prepared) * _tariff.PerMinute + check.Cost + (check.Needs.HasFlag(CheckNeeds.Burning) ? _tariff.Harm * Hazard() : 0)
        : option.Cost;

    /// <summary>How things may stand after an option, each with its probability.</summary>
    public IEnumerable<(double Probability, Stand After, int Result)> Results(Option option, Stand stand)
    {
        var known = option.Settles is { } settles ? [.. stand.Known.Zip(settles, (k, s) => k || s)] : stand.Known;
        var (cured, prepared) = (stand.Cured | option.Cures, stand.Prepared | (option.Check is { } check ? Bill.Preparations(check) : 0));
        if (option.Outcomes is not { } outcomes)
        {
            yield return (1, new Stand(stand.Weights, cured, known, prepared), 0);
            yield break;
        }

        // A drawn result stands for its share of the first weights; under later ones it counts for more or less.
        var shares = new double[outcomes.Likelihood.Count];
        for (var r = 0; r < shares.Length; r++)
        {
            shares[r] = Sum(stand.Weights, outcomes.Likelihood[r]);
            if (outcomes.Drawn) shares[r] = stand.Weights == _weights ? 1 : shares[r] / Math.Max(Sum(_weights, outcomes.Likelihood[r]), 1e-300);
        }

        var total = outcomes.Drawn ? shares.Sum() : 1;
        for (var r = 0; r < shares.Length; r++)
        {
            if (shares[r] <= 1e-12) continue;
            yield return (shares[r] / total, new Stand(After(stand.Weights, outcomes.Likelihood[r], out _), cured, known, prepared), r);
        }
    }

    private Option Of(Check check, OutcomeTable outcomes)
    {
        var minutes = Bill.Minutes(check, _prepared);
        var cured = check.Action is null ? 0 : Mask(check.Cures);
        var option = new Option(
            check.Id, check.Name, 0, minutes, 0, check.Needs, check.Cautions, outcomes, null, check.Action, cured != 0 && Holding(cured & ~_renewed) >= Seen,
            check, cured, Known(check.Id));
        var cost = CostOf(option, Start);
        return option with { Cost = cost, Total = cost + Results(option, Start).Sum(r => r.Probability * Remaining(r.After)) };
    }

    private Option Of(WorkAction action)
    {
        var mask = Mask(action.Cures);
        var likely = Enumerable.Range(0, Faults.Count).Where(f => (mask >> f & 1) != 0).MaxBy(f => Marginal[f]);
        var cost = _tariff.Of(Faults[likely].Remedy);
        var total = cost + _plan.ExpectedCost(_weights, mask, _known, _prepared);
        return new Option(action.Id, Faults[likely].Remedy.Words, cost, action.Minutes, total, NeedsOf(action), action.Cautions, null, Faults[likely], action.Id, true, null, mask, null);
    }

    // Work whose caution is to make safe first is done on a stove that is.
    private static CheckNeeds NeedsOf(WorkAction action) => action.Cautions.Contains(Cautions.MakeSafe) ? Writing.Opened : CheckNeeds.OnSite;

    private static double Sum(double[] weights, double[] likelihood)
    {
        var sum = 0.0;
        for (var k = 0; k < weights.Length; k++) sum += weights[k] * likelihood[k];
        return sum;
    }

    // Where all explanations agree on a fault, its proof tells nothing new and must be had all the same.
    private bool IsProof(string check)
    {
        for (var s = _cleaning.Count; s < _stepCheck.Length; s++)
        {
            if (_stepCheck[s] == check && !_known[s] && Marginal[s - _cleaning.Count] >= Seen) return true;
        }

        return false;
    }

    private double Holding(ulong mask)
    {
        var p = 0.0;
        for (var k = 0; k < _weights.Length; k++)
        {
            if ((_faultsOf[k] & mask) != 0) p += _weights[k];
        }

        return p;
    }

    private bool[] Known(string check)
    {
        var known = (bool[])_known.Clone();
        var done = _catalogue.Check(check)!;
        for (var s = 0; s < known.Length; s++) known[s] |= _stepCheck[s] == check;
        for (var f = 0; f < Faults.Count; f++)
        {
            if (Confirmation.Shows(done, Faults[f], _catalogue)) known[^(Faults.Count - f)] = true;
        }

        return known;
    }

    private RepairStep Step(string? id, int step)
    {
        var check = id is null ? null : _catalogue.Check(id);
        var minutes = check is null ? Faults[step - _cleaning.Count].Remedy.Minutes : Bill.Minutes(check);
        var cost = minutes * _tariff.PerMinute + (step < _cleaning.Count ? _cleaning[step].PartCost : 0);
        return new RepairStep(cost, _stepCures[step], check is null ? 0 : Bill.Preparations(check));
    }

    private bool HasOpened() => _catalogue.Checks.Any(c => c.Needs.HasFlag(CheckNeeds.PanelsOff) && _situation.HasDone(c));

    private bool Burned() => _situation.Evidence.OfType<ReadingEvidence>()
        .Any(e => e.Epoch == _situation.Epoch && e.Observable.Condition.Fire is Stove.FireState.High or Stove.FireState.Low);

    private double Hazard()
    {
        var p = 0.0;
        for (var f = 0; f < Faults.Count; f++)
        {
            if (Faults[f].SafetyStop is not null) p += Marginal[f];
        }

        return Math.Min(p, 1);
    }

    private ulong Mask(IEnumerable<string> ids)
    {
        var mask = 0UL;
        foreach (var id in ids)
        {
            for (var f = 0; f < Faults.Count; f++)
            {
                if (Faults[f].Id == id) mask |= 1UL << f;
            }
        }

        return mask;
    }
}
