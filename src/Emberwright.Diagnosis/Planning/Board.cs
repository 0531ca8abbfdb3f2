using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>The explanations laid out for planning: faults as bits, steps with costs, and every option's expected total.</summary>
/// <remarks>
/// Where a fault stands beside dirt past its limit, the dirt must go as well in so many cases as it would be complained of in
/// the same way by itself: 1 − Π(1 − P(c | f)) over the dirt, as of causes each of which is enough (noisy or). And one time in
/// ten dirt past its limit stops the stove only together with dirt that is not (from memory, by simulated stoves).
/// </remarks>
internal sealed class Board : IBoard
{
    private const int MostFaults = 64;
    private const double Seen = 0.5;
    private const double Tried = 0.25;
    private const double Certain = 0.7;
    private const double LastTried = 0.5;
    private const double Together = 0.1;
    private const double WorthForecasting = 0.02;

    private readonly Catalogue _catalogue;
    private readonly Tariff _tariff;
    private readonly IPredictive _predictive;
    private readonly Situation _situation;
    private readonly RepairPlan _plan;
    private readonly ulong[] _stepCures;
    private readonly double[] _weights;
    private readonly ulong[] _faultsOf;
    private readonly int[] _explanationOf;
    private readonly double[] _shareOf;
    private readonly double[] _atoms;
    private readonly bool[] _known;
    private readonly string?[] _stepCheck;
    private readonly IReadOnlyList<WorkAction> _cleaning;
    private readonly HashSet<string> _washed;
    private readonly int _prepared;
    private readonly ulong _mild;
    private readonly ulong _renewed;

    public Board(Catalogue catalogue, Tariff tariff, IPredictive predictive, Situation situation)
    {
        (_catalogue, _tariff, _predictive, _situation) = (catalogue, tariff, predictive, situation);
        var explanations = predictive.Explanations;
        _weights = [.. explanations.Select(e => e.Weight)];
        Faults = [.. explanations.SelectMany(e => e.Faults).Distinct().Select(catalogue.Fault).OfType<Fault>().Take(MostFaults - 1)];
        // While a complaint stands, "nothing past its limit" does not solve it: a little dirt everywhere may, and else it is not listed.
        var complaint = situation.Unanswered;
        _mild = complaint is not null && !situation.HasDone(ActionList.FullService) ? 1UL << Faults.Count : 0;
        _faultsOf = [.. explanations.Select(e => Mask(e.Faults))];
        _renewed = Mask(Faults.Where(f => f.Remedy.Kind == RemedyKind.Replace).Select(f => f.Id));
        var dirt = Mask(Faults.Where(f => f.Fouling is not null).Select(f => f.Id));
        var (needed, hopeless, of, share) = (new List<ulong>(), new List<double>(), new List<int>(), new List<double>());
        void Atom(int explanation, double part, ulong needs, double lost)
        {
            if (part <= 0) return;
            needed.Add(needs);
            hopeless.Add(lost);
            of.Add(explanation);
            share.Add(part);
        }

        for (var k = 0; k < _weights.Length; k++)
        {
            var (all, listed) = (_faultsOf[k], _faultsOf[k] & ~dirt);
            if (explanations[k].Unlisted) Atom(k, 1, all, 1);
            else if (all == 0) Atom(k, 1, _mild, complaint is null ? 0 : _mild == 0 ? 1 : 1 - Mild(k, complaint));
            else if (listed == 0)
            {
                var together = _mild == 0 ? 0 : Together;
                Atom(k, 1 - together, all, 0);
                Atom(k, together, all | _mild, 0);
            }
            else
            {
                var too = all == listed || complaint is null ? 0 : ComplainedOf(all & dirt, complaint);
                Atom(k, 1 - too, listed, 0);
                Atom(k, too, all, 0);
            }
        }

        (_explanationOf, _shareOf, _atoms) = ([.. of], [.. share], new double[of.Count]);
        Marginal = [.. Faults.Select((_, f) => explanations.Select((e, k) => (_faultsOf[k] >> f & 1) != 0 ? e.Weight : 0).Sum())];
        Open = explanations.Select((e, k) => _faultsOf[k] != 0 || e.Unlisted || complaint is not null ? e.Weight : 0).Sum();

        Hazard = Math.Min(Faults.Select((f, i) => f.SafetyStop is null ? 0 : Marginal[i]).Sum(), 1);
        var dirty = catalogue.Actions.Where(a => a.Kind == RemedyKind.Clean && catalogue.Check(a.Id) is not null).ToList();
        _cleaning = [.. dirty.Where(a => CuredBy(a.Id, a.Cures) != 0)];
        _stepCheck = [.. _cleaning.Select(a => a.Id), .. Faults.Select(f => Confirmation.Of(f, catalogue)?.Id)];
        _stepCures = [.. _cleaning.Select(a => CuredBy(a.Id, a.Cures)), .. Faults.Select((_, f) => 1UL << f)];
        _washed = [.. dirty.SelectMany(a => a.Cures)];
        _prepared = (HasOpened() ? Bill.Opening : 0) + (Burned() ? Bill.Fire : 0);
        _known = [.. _stepCheck.Select(id => id is not null && catalogue.Check(id) is { } c && c.Kind != CheckKind.Clean && situation.HasDone(c, catalogue))];
        _plan = new RepairPlan(
            [.. needed], [.. hopeless],
            [.. Faults.Select(f => IsWashed(f) ? 0 : tariff.Of(f.Remedy)), 0],
            [.. _stepCheck.Select(Step)], tariff.Unsolved + tariff.SecondTrip, Bill.OpenMinutes * tariff.PerMinute, Bill.WarmUpMinutes * tariff.PerMinute);
        Standing = _plan.ExpectedCost(Atoms(_weights), 0, _known, _prepared);
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

    /// <summary>Probability, at most 1, of what puts exhaust or fire where people are.</summary>
    public double Hazard { get; }

    /// <summary>Ids of checks and deeds in the fixed order of repair, as long as they are worth their cost.</summary>
    public IEnumerable<string> Order => _plan.Order(Atoms(_weights), _known, _prepared)
        .Select(s => !_known[s] && _stepCheck[s] is { } check ? check : ActionList.CureOf(Faults[s - _cleaning.Count].Id));

    /// <summary>Every option that the rules allow, with its expected total.</summary>
    public IEnumerable<Option> Options()
    {
        foreach (var check in _catalogue.Checks)
        {
            if (!Rules.Allow(check, _catalogue, _situation)) continue;
            var outcomes = _situation.Knows(check, _catalogue) ? OutcomeTable.Nothing(_weights.Length) : OutcomeTable.Of(_situation.Untold(check, _catalogue), _catalogue, _predictive);
            if (outcomes is null && (IsProof(check.Id) || check.Action is { } action && CuredBy(action, check.Cures) != 0)) outcomes = OutcomeTable.Nothing(_weights.Length);
            if (outcomes is not null) yield return Of(check, outcomes);
        }

        foreach (var action in _catalogue.Actions.Where(a => (a.Kind != RemedyKind.Clean || _catalogue.Check(a.Id) is null) && Holding(Own(a)) >= (a.Kind == RemedyKind.Replace ? LastTried : Tried)))
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
    public double Remaining(Stand stand) => _plan.ExpectedCost(Atoms(stand.Weights), stand.Cured, stand.Known, stand.Prepared);

    /// <summary>What an option costs itself, with what is still to be prepared for it.</summary>
    public double CostOf(Option option, Stand stand) => option.Check is { } check
        ? Bill.Minutes(check, stand.Prepared) * _tariff.PerMinute + check.Cost + (check.Needs.HasFlag(CheckNeeds.Burning) ? _tariff.Harm * Hazard : 0)
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
        var cured = check.Action is null ? 0 : CuredBy(check.Action, check.Cures);
        var option = new Option(
            check.Id, check.Name, 0, minutes, 0, check.Needs, check.Cautions, outcomes, null, check.Action, cured != 0 && Holding(cured & ~_renewed) >= Seen,
            check, cured, Known(check.Id));
        var cost = CostOf(option, Start);
        return option with { Cost = cost, Total = cost + Results(option, Start).Sum(r => r.Probability * Remaining(r.After)) };
    }

    private Option Of(WorkAction action)
    {
        var mask = Mask(action.Cures);
        var own = Own(action);
        var likely = Enumerable.Range(0, Faults.Count).Where(f => (own >> f & 1) != 0).MaxBy(f => Marginal[f]);
        var cost = _tariff.Of(Faults[likely].Remedy);
        var total = cost + _plan.ExpectedCost(Atoms(_weights), mask, _known, _prepared);
        return new Option(action.Id, Faults[likely].Remedy.Words, cost, action.Minutes, total, NeedsOf(action), action.Cautions, null, Faults[likely], action.Id, LikelyCures(action, own), null, mask, null)
        { IsLastResort = action.Kind == RemedyKind.Replace && !LikelyCures(action, own) };
    }

    // What an action is the remedy of: a new blower has a clean wheel, yet nobody fits one for that.
    private ulong Own(WorkAction action) => Mask(action.Cures.Where(f => ActionList.CureOf(f) == action.Id));

    // A part is not on the way to anywhere else: once fitted it is paid for, needed or not.
    private bool LikelyCures(WorkAction action, ulong own) => Holding(own) >= (action.Kind == RemedyKind.Replace ? Certain : Seen);

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
        var fault = step < _cleaning.Count ? null : Faults[step - _cleaning.Count];
        // What is washed off is cured by cleaning alone; to have looked at it is no cure.
        var cures = fault is not null && IsWashed(fault) ? 0 : _stepCures[step];
        return new RepairStep(cost, cures, check is null ? 0 : Bill.Preparations(check), fault is null || check is null ? 0 : _tariff.Of(fault.Remedy));
    }

    private bool IsWashed(Fault fault) => fault.Fouling is not null && _washed.Contains(fault.Id);

    private bool HasOpened() => _catalogue.Checks.Any(c => c.Needs.HasFlag(CheckNeeds.PanelsOff) && _situation.HasEverDone(c));

    private bool Burned() => _situation.Evidence.OfType<ReadingEvidence>()
        .Any(e => e.Epoch == _situation.Epoch && e.Observable.Condition.Fire is Stove.FireState.High or Stove.FireState.Low);

    private double ComplainedOf(ulong dirt, string complaint)
    {
        var none = 1.0;
        for (var f = 0; f < Faults.Count; f++)
        {
            if ((dirt >> f & 1) != 0) none *= 1 - Faults[f].Symptoms.Where(s => s.Sign == Complaints.Sign && s.Outcome == complaint).Sum(s => s.Probability);
        }

        return 1 - none;
    }

    // What each explanation needs may be one of two things.
    private double[] Atoms(double[] weights)
    {
        for (var a = 0; a < _atoms.Length; a++) _atoms[a] = weights[_explanationOf[a]] * _shareOf[a];
        return _atoms;
    }

    private double Mild(int explanation, string complaint) =>
        _weights[explanation] < WorthForecasting ? 0.5 : _predictive.ServiceCures(explanation, complaint);

    private ulong CuredBy(string action, IEnumerable<string> cures) => Mask(cures) | (action == ActionList.FullService ? _mild : 0);

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
