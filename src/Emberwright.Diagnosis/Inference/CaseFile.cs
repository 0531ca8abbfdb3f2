using System.Collections.Immutable;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>One case made ready for inference: its faults, its evidence sorted by kind, its epochs.</summary>
internal sealed class CaseFile
{
    private readonly int[] _curedIn;
    private readonly int[] _first;
    private const double UnsettledPa = 3;

    private CaseFile(StoveCase stove, IStoveModel model, IReadOnlyList<SupposedFault> supposed, IReadOnlyList<Fault> faults, EpochPlan plan)
    {
        Stove = stove;
        Model = model;
        Discrete = [.. supposed.Select(s => s.Fault)];
        Fouling = [.. faults.Where(f => f.Fouling is { } fouling && PriorTable.PatternSd(fouling.Parameter, stove) is not null)];
        Faults = [.. Discrete, .. Fouling];
        Plan = plan;
        _curedIn = [.. supposed.Select(s => s.CuredIn)];
        _first = [.. Discrete.Select(f => Array.FindIndex([.. Discrete], d => d.Id == f.Id))];
    }

    /// <summary>The stove.</summary>
    public StoveCase Stove { get; }

    /// <summary>What predicts it.</summary>
    public IStoveModel Model { get; }

    /// <summary>Discrete faults, then fouling faults; sets are given by index into this list.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    /// <summary>Faults that are there or not.</summary>
    public IReadOnlyList<Fault> Discrete { get; }

    /// <summary>Faults that are there once a restriction has passed its limit.</summary>
    public IReadOnlyList<Fault> Fouling { get; }

    /// <summary>Epochs.</summary>
    public EpochPlan Plan { get; }

    /// <summary>Readings that the virtual stove predicts.</summary>
    public required ReadingSet Readings { get; init; }

    /// <summary>Meter readings and graded signs.</summary>
    public required IReadOnlyList<IConditional> Conditionals { get; init; }

    /// <summary>Signs with stated probabilities only.</summary>
    public required IReadOnlyList<StatedSign> Stated { get; init; }

    /// <summary>Evidence that nothing here can predict.</summary>
    public required IReadOnlyList<Evidence> Unused { get; init; }

    /// <summary>Index of a fouling fault's first position in <see cref="Faults"/>.</summary>
    public int FirstFouling => Discrete.Count;

    /// <summary>Sorts the evidence.</summary>
    /// <param name="stove">The stove.</param>
    /// <param name="model">What predicts it.</param>
    /// <param name="evidence">All evidence, in any order.</param>
    /// <param name="catalogue">Faults, signs and actions of the pattern.</param>
    public static CaseFile Of(StoveCase stove, IStoveModel model, IReadOnlyList<Evidence> evidence, Catalogue catalogue)
    {
        var plan = EpochPlan.Of(evidence, catalogue);
        var faults = Circumstances.Rated(catalogue.Faults, stove);
        var supposed = SupposedFault.Of(faults.Where(f => f.Fouling is null), plan);
        var file = new CaseFile(stove, model, supposed, faults, plan)
        {
            Readings = ReadingSet.Of([]),
            Conditionals = [],
            Stated = [],
            Unused = [],
        };
        var circuit = Circuit(stove);
        var readings = new List<ReadingEvidence>();
        var conditionals = new List<IConditional>();
        var stated = new List<StatedSign>();
        var unused = new List<Evidence>();
        var told = new HashSet<(int, string, string)>();
        foreach (var item in Sorted(evidence))
        {
            switch (item)
            {
                case ReadingEvidence reading when circuit is not null && circuit.Knows(reading.Observable.Measure, reading.Observable.Place):
                    conditionals.Add(new ElectricalReading(reading, circuit, Rules(circuit.Wiring, stove, model, reading.Observable.Condition), circuit.Wiring.Mains.NominalV));
                    break;
                case ReadingEvidence reading when Predicts(model, stove, reading.Observable):
                    readings.Add(reading);
                    break;
                case SignEvidence said when catalogue.Sign(said.Sign) is { } definition && definition.Outcomes.Any(o => o.Id == said.Outcome):
                    var sign = definition.TellsOfThePast ? said with { Epoch = 0 } : said;
                    // Told twice is not seen twice.
                    if (!told.Add((sign.Epoch, sign.Sign, sign.Outcome))) break;
                    var table = new SignTable(definition, file.Faults);
                    if (definition.Margin is { } margin && Reaches(model, stove, margin)) conditionals.Add(new GradedSign(sign, table, file.Faults));
                    else stated.Add(new StatedSign(sign, table, definition.IndexOf(sign.Outcome)));
                    break;
                case ActionEvidence action when catalogue.Action(action.Action) is not null:
                    break;
                default:
                    unused.Add(item);
                    break;
            }
        }
        return new CaseFile(stove, model, supposed, faults, plan)
        {
            Readings = Settled(ReadingSet.Of(readings), stove),
            Conditionals = conditionals,
            Stated = stated,
            Unused = unused,
        };
    }

    /// <summary>First epoch in which a discrete fault is gone; int.MaxValue when nothing cured it or it outlasted the cure.</summary>
    public int CuredIn(int fault) => _curedIn[fault];

    /// <summary>The first index of the same fault: one that outlasted its cure and one that did not are one fault.</summary>
    public int FirstOf(int fault) => _first[fault];

    /// <summary>The discrete faults of a hypothesis that are still there in an epoch.</summary>
    public IReadOnlyList<Fault> Present(int[] faults, int epoch) =>
        [.. faults.Where(f => _curedIn[f] > epoch).Select(f => Discrete[f])];

    private static IEnumerable<Evidence> Sorted(IReadOnlyList<Evidence> evidence) => evidence
        .OrderBy(e => e.Epoch)
        .ThenBy(e => e switch { ReadingEvidence => 0, SignEvidence => 1, _ => 2 })
        .ThenBy(e => e switch { ReadingEvidence r => $"{r.Observable.Measure} {r.Observable.Place} {r.Observable.Condition}", SignEvidence s => $"{s.Sign} {s.Outcome}", _ => "" }, StringComparer.Ordinal)
        .ThenBy(e => e is ReadingEvidence r ? r.Value : 0)
        .ThenBy(e => e.Id, StringComparer.Ordinal);

    // A controller that holds its pressure is never quite settled, and of another make it may hold something else.
    private static ReadingSet Settled(ReadingSet readings, StoveCase stove) => stove.Pattern.Control is null
        ? readings
        : readings.Widened(i => readings.Items[i].Observable is { Measure: Measure.Pressure, Condition.Fire: not FireState.Cold } ? UnsettledPa : 0);

    private static bool Predicts(IStoveModel model, StoveCase stove, Observable observable)
    {
        if (!stove.Pattern.Levels.ContainsKey(observable.Condition.Fire)) return false;
        var state = model.Solve(new double[Layout.Parameters], observable.Condition, null);
        return state.Knows(observable.Measure, observable.Place);
    }

    private static bool Reaches(IStoveModel model, StoveCase stove, PhysicalMargin margin) => margin.Quantity is { } observable
        ? Predicts(model, stove, observable)
        : margin.Parameter is { } parameter && PriorTable.PatternSd(parameter, stove) is not null;

    // A contact whose quantity the model does not know here stays where a sound stove's stands.
    internal static ImmutableArray<ContactRule> Rules(Wiring wiring, StoveCase stove, IStoveModel model, Condition condition) =>
        [.. ContactRule.Of(wiring, stove, condition).Where(r => Predicts(model, stove, r.Sensed))];

    /// <summary>The circuit of a stove with its meter; null where its pattern has none.</summary>
    internal static ElectricalReadings? Circuit(StoveCase stove) => WiringLibrary.All.Any(w => w.Pattern == stove.Pattern.Id)
        ? new ElectricalReadings(CardCircuit.Of(stove.Pattern, stove.Card), Meter.Ordinary)
        : null;
}

/// <summary>An observed outcome of a sign that has stated probabilities only.</summary>
/// <param name="Evidence">The evidence.</param>
/// <param name="Table">The sign's probabilities.</param>
/// <param name="Outcome">Index of the outcome.</param>
internal sealed record StatedSign(SignEvidence Evidence, SignTable Table, int Outcome);
