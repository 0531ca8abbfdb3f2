using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;

namespace Emberwright.Trials.Generator;

/// <summary>
/// A stove that nobody has looked into: built a little differently from its pattern, fouled everywhere, with faults drawn
/// from the catalogue's rates. It answers what is read, seen and told; what is done to it changes it.
/// </summary>
internal sealed class HiddenStove
{
    private readonly string _key;
    private readonly double _mismatch;
    private readonly VirtualStove _real;
    private readonly Dictionary<Parameter, double> _tolerance;
    private readonly Dictionary<Parameter, double> _restriction;
    private readonly Dictionary<(string Fault, Parameter Parameter), double> _severity;
    private readonly List<Fault> _discrete;
    private BurnRun? _course;

    private HiddenStove(
        string key, double mismatch, StoveCase stove, Catalogue catalogue, VirtualStove real, bool unlisted,
        Dictionary<Parameter, double> tolerance, Dictionary<Parameter, double> restriction,
        Dictionary<(string, Parameter), double> severity, List<Fault> discrete)
    {
        (_key, _mismatch, Case, Catalogue, _real, Unlisted) = (key, mismatch, stove, catalogue, real, unlisted);
        (_tolerance, _restriction, _severity, _discrete) = (tolerance, restriction, severity, discrete);
        Instruments = new Instruments(key, mismatch);
    }

    /// <summary>What the technician knows of the stove before the call.</summary>
    public StoveCase Case { get; }

    /// <summary>Catalogue of its pattern.</summary>
    public Catalogue Catalogue { get; }

    /// <summary>True when its cause is one that no catalogue lists.</summary>
    public bool Unlisted { get; private set; }

    /// <summary>Number of things done to it.</summary>
    public int Epoch { get; private set; }

    /// <summary>The instruments of this visit.</summary>
    public Instruments Instruments { get; }

    /// <summary>Discrete faults that are there now.</summary>
    public IReadOnlyList<Fault> Discrete => _discrete;

    /// <summary>Fouling that is past its limit now.</summary>
    public IEnumerable<Fault> Fouled => Catalogue.Faults.Where(f => f.Fouling is { } limit && Has(limit.Parameter) && FaultDraw.IsPast(limit, Seen(limit.Parameter)));

    /// <summary>All faults that are there now.</summary>
    public IReadOnlyList<Fault> Faults => [.. _discrete, .. Fouled];

    /// <summary>How the next start ends, by its own burn sequence.</summary>
    public BurnRun Course => _course ??= BurnForecast.Run(_real, Parameters(forSequence: true), new BurnScenario
    {
        Changes = [.. Changes],
        Automatic = Changes.Any(c => c.Component.StartsWith("thermostat", StringComparison.Ordinal)),
    }, 2 * 3600);

    /// <summary>Components at fault.</summary>
    public CircuitChange[] Changes => [.. _discrete.SelectMany(f => f.Circuit).Where(c => Case.Pattern.Wiring.HasComponent(c.Component)).DistinctBy(c => c.Component)];

    /// <summary>Draws one stove.</summary>
    /// <param name="pattern">Its pattern.</param>
    /// <param name="seed">Seed of the trial.</param>
    /// <param name="index">Number of the stove.</param>
    /// <param name="mismatch">How far its construction leaves the model: 0 not at all, 1 ordinarily, 2 twice that.</param>
    /// <param name="attempt">Draws again with another number where a trial wants only certain stoves.</param>
    public static HiddenStove Draw(Pattern pattern, int seed, int index, double mismatch, int attempt = 0)
    {
        var key = $"{pattern.Id}/{seed}/{index}/{attempt}";
        var stove = Call(pattern, Chance.Of(key, "call"));
        var catalogue = Catalogue.For(pattern.Id);
        var faults = FaultDraw.Of(stove, catalogue, Chance.Of(key, "faults"), mismatch);
        var real = new VirtualStove(StrangePattern.Of(pattern, Chance.Of(key, "construction"), mismatch, faults.Unlisted), null, stove.Site);
        var severities = Chance.Of(key, "severity");
        var severity = faults.Discrete
            .SelectMany(f => f.Shifts.Select(s => ((f.Id, s.Parameter), severities.Normal(s.Mean, s.Sd))))
            .GroupBy(s => s.Item1).ToDictionary(g => g.Key, g => g.Sum(s => s.Item2));
        return new HiddenStove(key, mismatch, stove, catalogue, real, faults.Unlisted, Sound(stove, real, Chance.Of(key, "tolerance")),
            new Dictionary<Parameter, double>(faults.Restriction), severity, [.. faults.Discrete]);
    }

    /// <summary>The same stove, to be treated in another way.</summary>
    public HiddenStove Copy() => new(_key, _mismatch, Case, Catalogue, _real, Unlisted, new(_tolerance), new(_restriction), new(_severity), [.. _discrete]) { Epoch = Epoch, _course = _course };

    /// <summary>True when a parameter acts on this pattern.</summary>
    public bool Has(Parameter parameter) => _tolerance.ContainsKey(parameter);

    /// <summary>True values of the model's parameters now.</summary>
    public double[] Parameters(bool forSequence = false)
    {
        var p = new double[Layout.Parameters];
        foreach (var (parameter, value) in _tolerance) p[(int)parameter] += value;
        foreach (var (parameter, x) in _restriction) p[(int)parameter] -= x;
        if (_restriction.TryGetValue(Parameter.Exchanger, out var deposit)) p[(int)Parameter.Insulation] -= PriorTable.InsulationPerRestriction * deposit;
        foreach (var ((fault, parameter), value) in _severity)
            if (!forSequence || !InCircuit(fault, parameter)) p[(int)parameter] += value;
        return p;
    }

    /// <summary>What is seen of a parameter: of a passage its dirt alone, of anything else its value.</summary>
    public double Seen(Parameter parameter) =>
        parameter == Parameter.Insulation ? Parameters()[(int)parameter] - _severity.Where(s => s.Key.Parameter == parameter).Sum(s => s.Value)
        : _restriction.TryGetValue(parameter, out var x) ? -x
        : Parameters()[(int)parameter];

    /// <summary>ln of what is left of a passage by dirt and faults, without the construction's own tolerance.</summary>
    public double Left(Parameter parameter) => -_restriction.GetValueOrDefault(parameter) + _severity.Where(s => s.Key.Parameter == parameter).Sum(s => s.Value);

    /// <summary>The state of the real stove, without instruments.</summary>
    public StoveSolution State(Condition condition) => _real.Solve(Parameters(), condition);

    /// <summary>Random numbers that belong to this stove as it stands now, for one purpose.</summary>
    public Chance Now(string purpose) => Chance.Of(_key, Epoch, purpose);

    /// <summary>Random numbers that belong to this stove whatever is done to it.</summary>
    public Chance Always(string purpose) => Chance.Of(_key, purpose);

    /// <summary>Mismatch it was drawn with.</summary>
    public double Mismatch => _mismatch;

    /// <summary>Cures faults and draws anew what the work renews.</summary>
    /// <param name="cures">Ids of faults that are gone afterwards.</param>
    /// <param name="redraws">Parameters renewed.</param>
    public void Change(IReadOnlyList<string> cures, IReadOnlyList<Diagnosis.Checks.Redraw> redraws)
    {
        Epoch++;
        _course = null;
        var chance = Now("renewed");
        foreach (var gone in _discrete.Where(f => cures.Contains(f.Id)).ToArray())
        {
            _discrete.Remove(gone);
            foreach (var key in _severity.Keys.Where(k => k.Fault == gone.Id).ToArray()) _severity.Remove(key);
        }

        foreach (var (parameter, tau) in redraws)
            if (tau is { } mean && _restriction.TryGetValue(parameter, out var before)) _restriction[parameter] = Math.Min(before, chance.Exponential(mean));
    }

    private bool InCircuit(string fault, Parameter parameter)
    {
        var parts = Catalogue.Fault(fault)!.Circuit.Select(c => c.Component).ToArray();
        return parameter switch
        {
            Parameter.RoomAir => parts.Any(p => p.StartsWith("room-air", StringComparison.Ordinal)),
            Parameter.Feed => parts.Any(p => p.StartsWith("feed", StringComparison.Ordinal)),
            Parameter.ProofSensor => parts.Any(p => p is ComponentIds.ExhaustProbe or ComponentIds.Thermocouple),
            Parameter.BlowerSpeed => parts.Any(p => p is ComponentIds.RunCapacitor or ComponentIds.CombustionBlower),
            _ => false,
        };
    }

    private static StoveCase Call(Pattern pattern, Chance chance)
    {
        var site = new Site(
            AltitudeM: chance.Happens(0.7) ? 0 : chance.Between(0, 1500),
            OutdoorC: Math.Clamp(chance.Normal(3, 7), -25, 25),
            RoomC: chance.Between(16, 23),
            Vent: chance.Happens(0.5) ? null : pattern.Vent with { VerticalM = pattern.Vent.VerticalM * chance.Between(0.8, 1.3) });
        var tonnes = Math.Clamp(Math.Exp(chance.Normal(0.1, 0.6)), 0.1, 6);
        return new StoveCase(pattern, null, site, new History(
            AgeYears: chance.Between(1, 20),
            TonnesSinceCleaning: chance.Happens(0.6) ? tonnes : null));
    }

    // One that does not run when clean was never sold.
    private static Dictionary<Parameter, double> Sound(StoveCase stove, VirtualStove real, Chance chance)
    {
        const int attempts = 6;
        var acting = PriorTable.Fouling.Concat(PriorTable.Free).Where(p => PriorTable.PatternSd(p, stove) is not null).ToArray();
        for (var attempt = 1; ; attempt++)
        {
            var drawn = acting.ToDictionary(p => p, p => chance.Normal(PriorTable.Mean(p, stove.Site), PriorTable.PatternSd(p, stove)!.Value));
            if (attempt == attempts) return drawn;
            var parameters = new double[Layout.Parameters];
            foreach (var (parameter, value) in drawn) parameters[(int)parameter] = value;
            if (BurnForecast.Run(real, parameters, new BurnScenario(), 2 * 3600).Outcome == BurnOutcome.Runs) return drawn;
        }
    }
}
