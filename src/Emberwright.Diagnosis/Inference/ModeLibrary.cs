using System.Globalization;
using System.Text;
using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// Fits of one case, one for each way the faults can act on air, fire, heat and margins. Hypotheses that differ only in
/// what these do not see share a fit.
/// </summary>
internal sealed class ModeLibrary
{
    private const double Strained = 5;
    private const string CapLook = "cap-look";

    private readonly CaseFile _file;
    private readonly Scene _scene;
    private readonly SolveCache _cache;
    private readonly Layout _layout;
    private readonly Prior _prior;
    private readonly BoundTable _bounds;
    private readonly List<FaultShift>[] _shifts;
    private readonly Dictionary<string, Mode?> _modes = new(StringComparer.Ordinal);
    private readonly Dictionary<Candidate, Mode> _full = new(ReferenceEqualityComparer.Instance);
    private readonly HashSet<Parameter> _seen = [];

    /// <summary>Prepares the library.</summary>
    /// <param name="file">The case.</param>
    /// <param name="layout">Its unknowns without faults.</param>
    /// <param name="prior">Their prior.</param>
    public ModeLibrary(CaseFile file, Layout layout, Prior prior)
        : this(file, new Scene(file.Model, layout, prior, file.Readings))
    {
    }

    /// <summary>Prepares the library on what its readings have given so far.</summary>
    /// <param name="file">The case.</param>
    /// <param name="scene">What its readings give.</param>
    public ModeLibrary(CaseFile file, Scene scene)
    {
        _file = file;
        _scene = scene;
        var layout = scene.Layout;
        (_cache, _layout, _prior) = (scene.Cache, layout, scene.Prior);
        _bounds = new BoundTable(file);
        _shifts =
        [
            .. file.Discrete.Select((fault, f) => fault.Shifts
                .Where(s => layout.Carrier(s.Parameter, 0) >= 0)
                .Select(s => new FaultShift(s.Parameter, s.Mean, s.Sd, file.CuredIn(f), s.Parameter == Parameter.Vent && IsAtCap(fault) ? Places.VentOutlet : null))
                .ToList()),
        ];
    }

    /// <summary>Solves of the virtual stove so far.</summary>
    public int Solves => _cache.Solves;

    /// <summary>The fit without any fault, from which all others start.</summary>
    public Mode Nothing { get; private set; } = null!;

    /// <summary>Fits the stove without faults.</summary>
    /// <exception cref="InvalidOperationException">Not even the healthy stove can be solved in the conditions read.</exception>
    public Mode FitNothing()
    {
        Nothing = _scene.Fit($"nothing{Key([], Bounds([]))}", null, () => Fitted([], _scene.Readings, null, _prior.Mean))
            ?? throw new InvalidOperationException("The virtual stove has no solution in one of the conditions read; check pattern, vent and site.");
        foreach (var parameter in Enum.GetValues<Parameter>())
            if (IsSeen(parameter)) _seen.Add(parameter);
        return Nothing;
    }

    /// <summary>How much an unlisted cause throws readings off, over what is usual for one: hardly, plainly, or past all use.</summary>
    public static double[] SizesOfUnlisted { get; } = [0.25, 1, 4];

    /// <summary>The fit under an unlisted cause: everything may be further off, and only looks at the dirt itself join the readings.</summary>
    /// <param name="size">How much further, over what a gross one throws readings off.</param>
    public Mode? FitUnlisted(double size) => _scene.Fit(
        FormattableString.Invariant($"unlisted {size}{Key([], [.. Bounds([]).Where(b => b.Margin is { } m && ShowsDirt(m))])}"), Nothing, () => Mode.From(new Problem(_cache, _layout, _prior, Widened(size), [.. Bounds([]).Select(b => b.Margin).OfType<IMargin>().Where(ShowsDirt)]), Nothing.Mean));

    /// <summary>True for evidence that shows a parameter itself, whatever else may be wrong with the stove.</summary>
    public static bool ShowsDirt(IMargin margin) => margin.Quantities.All(q => q.Parameter is not null);

    /// <summary>The fit under a set of faults; null when the stove has no solution there.</summary>
    public Mode? Fit(int[] faults, Mode start)
    {
        var key = Key(Shifts(faults), Bounds(faults));
        if (_modes.TryGetValue(key, out var mode)) return mode;
        mode = _scene.Fit(key, start, () => FromBetterStart(faults, start));
        _modes.Add(key, mode);
        return mode;
    }

    /// <summary>
    /// A fit that had to go far to explain the evidence without these faults is a poor place to start from; then the prior's
    /// means are tried too, and the better start is taken, and the other one where it leads nowhere.
    /// </summary>
    private Mode? FromBetterStart(int[] faults, Mode start)
    {
        var problem = Problem(faults, _scene.Readings, null, start);
        var near = Start(faults, start);
        if (start.Strain() < Strained) return Mode.From(problem, near);
        var plain = Problem(faults, _scene.Readings, null);
        var afresh = _prior.With(plain.Layout).Mean;
        var (a, b) = (problem.At(near), plain.At(afresh));
        var nearer = !b.Solved || a.Solved && a.Misfit <= b.Misfit;
        var mode = nearer ? Mode.From(problem, near) : Mode.From(plain, afresh);
        if (mode is { Reliable: true }) return mode;
        var other = nearer ? Mode.From(plain, afresh) : Mode.From(problem, near);
        return mode is null || other is not null && other.LnEvidence > mode.LnEvidence ? other : mode;
    }

    /// <summary>The linear answer under two faults at the better single's fit with the other's mean severity.</summary>
    public Mode? Extrapolate(int[] faults, Mode start) => _scene.Fit($"linear{Key(Shifts(faults), Bounds(faults))}", start, () =>
    {
        var problem = Problem(faults, _scene.Readings, null, start);
        return Mode.Linear(problem, problem.At(Start(faults, start)));
    });

    /// <summary>The fit with one reading taken as grossly wrong.</summary>
    public Mode? WithoutReading(int[] faults, int reading, Mode start) => _scene.Fit(
        FormattableString.Invariant($"without {reading}{Key(Shifts(faults), Bounds(faults))}"), start,
        () => Fitted(faults, _scene.Readings.Widened(i => i == reading ? Noise.Gross(_scene.Readings.Items[i].Observable.Measure, _scene.Readings.Items[i].Value) : 0), null, Start(faults, start)));

    /// <summary>The fit with one meter reading or graded sign left out.</summary>
    public Mode? WithoutConditional(int[] faults, IConditional conditional, Mode start) => _scene.Fit(
        $"less{Key(Shifts(faults), [.. Bounds(faults).Where((_, i) => !ReferenceEquals(_file.Conditionals[i], conditional))])}", start,
        () => Fitted(faults, _scene.Readings, conditional, Start(faults, start)));

    /// <summary>Joint fouling under a mode.</summary>
    public FoulingStates States(Mode mode) => _scene.States(mode, _file.Fouling);

    /// <summary>What one more fault's shifts would do to a mode.</summary>
    public Border Border(Mode mode, IReadOnlyList<FaultShift> shifts) => _scene.Border(mode, Key(shifts, []), shifts);

    /// <summary>How seldom readings that a mode explains misfit it as these do.</summary>
    public double MisfitShare(Mode mode) => _scene.MisfitShare(mode);

    /// <summary>What each meter reading and graded sign says under a set of faults.</summary>
    public Bound[] Bounds(int[] faults) => _bounds.Of(faults);

    /// <summary>
    /// The shifts of a set of faults that some evidence can see. A shift that none can see leaves the fit alone, so that
    /// hypotheses which differ only in such shifts share a fit.
    /// </summary>
    public IReadOnlyList<FaultShift> Shifts(int[] faults) => [.. faults.SelectMany(f => _shifts[f]).Where(s => _seen.Contains(s.Parameter))];

    /// <summary>A component's fit with all its shifts, also those that no evidence sees, for predicting what would.</summary>
    public Mode Full(Candidate candidate)
    {
        FaultShift[] shifts = [.. candidate.Hypothesis.Faults.SelectMany(f => _shifts[f])];
        var mode = candidate.Mode;
        if (mode.Problem.Layout.Count - _layout.Count == shifts.Length) return mode;
        if (_full.TryGetValue(candidate, out var full)) return full;
        var layout = _layout.With(shifts);
        full = mode.Padded(new Problem(_cache, layout, _prior.With(layout).StandingInAs(mode.Problem.Prior, _layout), mode.Problem.Readings, mode.Problem.Margins), _layout.Count);
        _full.Add(candidate, full);
        return full;
    }

    /// <summary>True for what is seen at the terminal from outside.</summary>
    private static bool IsAtCap(Fault fault) => fault.Symptoms.Any(s => s.Sign == CapLook);

    private bool IsSeen(Parameter parameter)
    {
        var n = _layout.Count;
        for (var epoch = 0; epoch < _layout.Epochs; epoch++)
        {
            if (_layout.Carrier(parameter, epoch) is not (>= 0 and var k)) continue;
            for (var i = k; i < Nothing.At.Jacobian.Length; i += n)
                if (Nothing.At.Jacobian[i] != 0) return true;
            for (var i = k; i < Nothing.At.MarginJacobian.Length; i += n)
                if (Nothing.At.MarginJacobian[i] != 0) return true;
        }
        return false;
    }

    private string Key(IReadOnlyList<FaultShift> shifts, Bound[] bounds)
    {
        var key = new StringBuilder();
        foreach (var s in shifts) key.Append(CultureInfo.InvariantCulture, $"{(int)s.Parameter},{s.Mean:R},{s.Sd:R},{s.CuredIn},{s.Place};");
        foreach (var bound in bounds)
            if (bound.Margin is not null) key.Append(CultureInfo.InvariantCulture, $"|{_scene.Number(bound)}");
        return key.ToString();
    }

    /// <param name="faults">Faults supposed.</param>
    /// <param name="readings">The readings.</param>
    /// <param name="leftOut">Evidence that does not join the fit.</param>
    /// <param name="near">A fit nearby whose stand-ins for exponential priors serve here too.</param>
    private Problem Problem(int[] faults, ReadingSet readings, IConditional? leftOut, Mode? near = null)
    {
        var layout = _layout.With(Shifts(faults));
        var bounds = Bounds(faults);
        IMargin[] margins = [.. bounds.Where((b, i) => b.Margin is not null && !ReferenceEquals(_file.Conditionals[i], leftOut)).Select(b => b.Margin!)];
        var prior = _prior.With(layout);
        return new Problem(_cache, layout, near is null ? prior : prior.StandingInAs(near.Problem.Prior, _layout), readings, margins);
    }

    private ReadingSet Widened(double size) =>
        _scene.Readings.Widened(i => size * Noise.Unlisted(_scene.Readings.Items[i].Observable.Measure, _scene.Readings.Items[i].Value));

    private Mode? Fitted(int[] faults, ReadingSet readings, IConditional? leftOut, double[] start) =>
        Mode.From(Problem(faults, readings, leftOut), start);

    /// <summary>The start's common unknowns, its own shifts where they are the same, the mean severity of the others.</summary>
    private double[] Start(int[] faults, Mode start)
    {
        var layout = _layout.With(Shifts(faults));
        var point = new double[layout.Count];
        start.Mean.AsSpan(0, _layout.Count).CopyTo(point);
        var before = start.Problem.Layout.Unknowns;
        for (var k = _layout.Count; k < layout.Count; k++)
        {
            var own = -1;
            for (var b = _layout.Count; b < before.Count; b++)
                if (before[b] == layout.Unknowns[k]) own = b;
            point[k] = own >= 0 ? start.Mean[own] : layout.Unknowns[k].Mean;
        }
        return point;
    }
}
