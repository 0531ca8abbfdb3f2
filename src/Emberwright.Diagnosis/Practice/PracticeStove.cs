// What is really the matter with a stove hidden for practice?
// Equations: faults by their rates; dirt past its limit x = −limit + 0.25 + Exp(0.3), other dirt x = τ·share·Exp(1) kept within its
//            limit; parameter = tolerance − x + Σ N(mean, sd) of the faults' shifts; ln UA also − 0.6·x of the exchanger.
// Symbols: x −ln of the share left open; τ mean restriction in use.
// Validity: the patterns of the library.
// Assumptions: the stove is built as its pattern; a practice stove differs from the model only by tolerance, dirt and faults.
// Source: rates and shifts are the catalogue's; the rest from memory, no source.
// Worked: no tolerance, ash passages with limit −0.51 hidden: between 40 % and about 80 % shut.
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;

namespace Emberwright.Diagnosis.Practice;

/// <summary>A stove with something hidden in it. What is done to it changes it; what is asked does not.</summary>
internal sealed class PracticeStove
{
    private const int Attempts = 60;
    private const double RunS = 2 * 3600;

    private readonly string _key;
    private readonly double[] _tolerance;
    private readonly Dictionary<Parameter, double> _dirt;
    private readonly Dictionary<(string Fault, Parameter Parameter), double> _severity = [];
    private readonly List<Fault> _discrete;
    private readonly VirtualStove _stove;
    private BurnRun? _course;

    private PracticeStove(string key, StoveCase stove, Catalogue catalogue, PracticeLevel level, double[] tolerance, Dictionary<Parameter, double> dirt, List<Fault> discrete)
    {
        (_key, Case, Catalogue, Level, _tolerance, _dirt, _discrete) = (key, stove, catalogue, level, tolerance, dirt, discrete);
        _stove = new VirtualStove(stove.Pattern, stove.Card, stove.Site);
    }

    /// <summary>What is known before the call.</summary>
    public StoveCase Case { get; }

    /// <summary>Catalogue of its pattern.</summary>
    public Catalogue Catalogue { get; }

    /// <summary>How hard it is.</summary>
    public PracticeLevel Level { get; }

    /// <summary>Number of things done to it.</summary>
    public int Epoch { get; private set; }

    /// <summary>Discrete faults that are there now.</summary>
    public IReadOnlyList<Fault> Discrete => _discrete;

    /// <summary>Everything that is wrong now, dirt past its limit among it.</summary>
    public IReadOnlyList<Fault> Faults => [.. _discrete, .. Catalogue.Faults.Where(f => f.Fouling is { } limit && Seen(limit.Parameter) <= limit.Limit)];

    /// <summary>Components at fault.</summary>
    public CircuitChange[] Changes => [.. _discrete.SelectMany(f => f.Circuit).Where(c => Case.Pattern.Wiring.HasComponent(c.Component)).DistinctBy(c => c.Component)];

    /// <summary>How the next start ends, by its own burn sequence.</summary>
    public BurnOutcome Course => (_course ??= BurnForecast.Run(_stove, Parameters(), new BurnScenario { Changes = [.. Changes] }, RunS)).Outcome;

    /// <summary>Hides a fault, or two.</summary>
    /// <param name="pattern">Pattern of the stove.</param>
    /// <param name="seed">The same seed hides the same stove.</param>
    /// <param name="level">How hard.</param>
    public static PracticeStove Hide(Pattern pattern, int seed, PracticeLevel level)
    {
        var catalogue = Catalogue.For(pattern.Id);
        for (var attempt = 0; ; attempt++)
        {
            var stove = Draw(pattern, catalogue, $"practice/{pattern.Id}/{level}/{seed}/{attempt}", level);
            if (attempt == Attempts || stove.Faults.Count == level.Faults() && new PracticeAnswers(stove).Complaint() is not null) return stove;
        }
    }

    /// <summary>The same stove, to be treated in another way.</summary>
    public PracticeStove Copy()
    {
        var copy = new PracticeStove(_key, Case, Catalogue, Level, _tolerance, new(_dirt), [.. _discrete]) { Epoch = Epoch, _course = _course };
        foreach (var (key, value) in _severity) copy._severity.Add(key, value);
        return copy;
    }

    /// <summary>What is seen of a parameter: of a passage its dirt alone, of anything else its value.</summary>
    public double Seen(Parameter parameter) => parameter == Parameter.Insulation
        ? -PriorTable.InsulationPerRestriction * _dirt.GetValueOrDefault(Parameter.Exchanger)
        : _dirt.TryGetValue(parameter, out var x) ? -x : Parameters()[(int)parameter];

    /// <summary>The state in a condition, without instruments.</summary>
    public StoveSolution State(Condition condition) => _stove.Solve(Parameters(), condition);

    /// <summary>Values of the virtual stove's parameters.</summary>
    public double[] Parameters()
    {
        var p = (double[])_tolerance.Clone();
        foreach (var (parameter, x) in _dirt) p[(int)parameter] -= x;
        p[(int)Parameter.Insulation] -= PriorTable.InsulationPerRestriction * _dirt.GetValueOrDefault(Parameter.Exchanger);
        foreach (var ((_, parameter), value) in _severity) p[(int)parameter] += value;
        return p;
    }

    /// <summary>Random numbers of this stove as it stands now, for one purpose.</summary>
    public Chance Now(string purpose) => Chance.Of($"{_key}/{Epoch}/{purpose}");

    /// <summary>Does a piece of work: what it cures is gone, what it renews is drawn anew.</summary>
    /// <returns>The faults that went.</returns>
    public IReadOnlyList<Fault> Do(WorkAction action)
    {
        var before = Faults;
        Epoch++;
        _course = null;
        var chance = Now("renewed");
        foreach (var fault in _discrete.Where(f => action.Cures.Contains(f.Id)).ToArray())
        {
            _discrete.Remove(fault);
            foreach (var key in _severity.Keys.Where(k => k.Fault == fault.Id).ToArray()) _severity.Remove(key);
        }

        foreach (var (parameter, tau) in action.Redraws)
        {
            if (tau is { } mean && _dirt.TryGetValue(parameter, out var x)) _dirt[parameter] = Math.Min(x, chance.Exponential(mean));
        }

        return [.. before.Except(Faults)];
    }

    private static PracticeStove Draw(Pattern pattern, Catalogue catalogue, string key, PracticeLevel level)
    {
        var call = Chance.Of(key + "/call");
        var tonnes = Math.Clamp(Math.Exp(call.Normal(0, 0.5)), 0.2, 3);
        var stove = new StoveCase(
            pattern, null,
            new Site(AltitudeM: Math.Round(call.Between(0, 900)), OutdoorC: Math.Round(call.Normal(2, 5)), RoomC: 20),
            new History(AgeYears: Math.Round(call.Between(2, 18)), TonnesSinceCleaning: Math.Round(tonnes, 1)));
        var chosen = Chosen(catalogue, level, Chance.Of(key + "/faults"));
        var tolerance = new double[Layout.Parameters];
        var chance = Chance.Of(key + "/tolerance");
        foreach (var parameter in PriorTable.Fouling.Concat(PriorTable.Free))
        {
            if (PriorTable.PatternSd(parameter, stove) is { } sd) tolerance[(int)parameter] = chance.Normal(PriorTable.Mean(parameter, stove.Site), 0.5 * sd);
        }

        var hidden = new PracticeStove(key, stove, catalogue, level, tolerance, Dirt(stove, catalogue, level, chosen, Chance.Of(key + "/dirt")), [.. chosen.Where(f => f.Fouling is null)]);
        var severity = Chance.Of(key + "/severity");
        foreach (var fault in hidden._discrete)
        {
            foreach (var shift in fault.Shifts) hidden._severity[(fault.Id, shift.Parameter)] = severity.Normal(shift.Mean, 0.7 * shift.Sd);
        }

        return hidden;
    }

    private static List<Fault> Chosen(Catalogue catalogue, PracticeLevel level, Chance chance)
    {
        var chosen = new List<Fault>();
        while (chosen.Count < level.Faults())
        {
            var dirt = chance.Happens(PracticeLevels.Dirt);
            var among = catalogue.Faults.Where(f => f.Fouling is not null == dirt && level.Allows(f) && !chosen.Any(c => Same(c, f))).ToList();
            chosen.Add(among[chance.Pick([.. among.Select(f => f.BaseRatePercent)])]);
        }

        return chosen;
    }

    // The exchanger's two faults come from one deposit; two faults of one component are one repair.
    private static bool Same(Fault a, Fault b) => a == b || a.Fouling is not null && b.Fouling is not null || a.Circuit.Any(c => b.Circuit.Any(d => d.Component == c.Component));

    private static Dictionary<Parameter, double> Dirt(StoveCase stove, Catalogue catalogue, PracticeLevel level, List<Fault> chosen, Chance chance)
    {
        var dirt = new Dictionary<Parameter, double>();
        foreach (var parameter in PriorTable.Fouling)
        {
            if (PriorTable.PatternSd(parameter, stove) is null) continue;
            var most = catalogue.Faults.Where(f => f.Fouling is not null).Select(f => Limit(f, parameter)).Where(l => l is not null).DefaultIfEmpty(4).Min()!.Value;
            var least = chosen.Where(f => f.Fouling is not null).Select(f => Limit(f, parameter)).FirstOrDefault(l => l is not null);
            dirt[parameter] = least is { } limit
                ? limit + 0.25 + chance.Exponential(0.3)
                : Math.Min(level.Background() * chance.Exponential(PriorTable.InUse(parameter, stove.History)), 0.8 * most);
        }

        return dirt;
    }

    // Restriction of a passage at which a fault is past its limit; an insulating deposit counts in the exchanger.
    private static double? Limit(Fault fault, Parameter parameter) => fault.Fouling switch
    {
        { } f when f.Parameter == parameter => -f.Limit,
        { Parameter: Parameter.Insulation } f when parameter == Parameter.Exchanger => -f.Limit / PriorTable.InsulationPerRestriction,
        _ => null,
    };
}
