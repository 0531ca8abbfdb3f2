using System.Collections.Immutable;
using System.Globalization;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>One case made ready for inference: its faults, its evidence sorted by kind, its epochs.</summary>
internal sealed class CaseFile
{
    private const double UnsettledPa = 3;

    private readonly Supposition _supposed;

    private CaseFile(Groundwork ground, Supposition supposed, EpochPlan plan)
    {
        Ground = ground;
        _supposed = supposed;
        Plan = plan;
    }

    /// <summary>What follows from the stove alone.</summary>
    public Groundwork Ground { get; }

    /// <summary>All hypotheses up to pairs.</summary>
    public IReadOnlyList<Hypothesis> Hypotheses => _supposed.Hypotheses;

    /// <summary>The stove.</summary>
    public StoveCase Stove => Ground.Stove;

    /// <summary>What predicts it.</summary>
    public IStoveModel Model => Ground.Model;

    /// <summary>Discrete faults, then fouling faults; sets are given by index into this list.</summary>
    public IReadOnlyList<Fault> Faults => _supposed.Faults;

    /// <summary>Faults that are there or not.</summary>
    public IReadOnlyList<Fault> Discrete => _supposed.Discrete;

    /// <summary>Faults that are there once a restriction has passed its limit.</summary>
    public IReadOnlyList<Fault> Fouling => _supposed.Fouling;

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
    public static CaseFile Of(StoveCase stove, IStoveModel model, IReadOnlyList<Evidence> evidence, Catalogue catalogue) =>
        Of(new Groundwork(stove, model, catalogue), evidence);

    /// <summary>Sorts the evidence.</summary>
    /// <param name="ground">What follows from the stove alone.</param>
    /// <param name="evidence">All evidence, in any order.</param>
    public static CaseFile Of(Groundwork ground, IReadOnlyList<Evidence> evidence)
    {
        var (stove, model, catalogue, circuit) = (ground.Stove, ground.Model, ground.Catalogue, ground.Circuit);
        var plan = EpochPlan.Of(evidence, catalogue);
        var supposed = ground.Supposing(plan);
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
                    conditionals.Add(supposed.Once(
                        string.Create(CultureInfo.InvariantCulture, $"{reading.Id}|{reading.Epoch}|{reading.Observable}|{reading.Value:R}"),
                        () => new ElectricalReading(reading, circuit, ground.Rules(reading.Observable.Condition), circuit.Wiring.Mains.NominalV)));
                    break;
                case ReadingEvidence reading when Predicts(model, stove, reading.Observable):
                    readings.Add(reading);
                    break;
                case SignEvidence said when catalogue.Sign(said.Sign) is { } definition && definition.Outcomes.Any(o => o.Id == said.Outcome):
                    var sign = definition.TellsOfThePast ? said with { Epoch = 0 } : said;
                    // Told twice is not seen twice.
                    if (!told.Add((sign.Epoch, sign.Sign, sign.Outcome))) break;
                    var table = supposed.TableOf(definition);
                    if (definition.Margin is { } margin && Reaches(model, stove, margin))
                        conditionals.Add(supposed.Once($"{sign.Id}|{sign.Epoch}|{sign.Sign}|{sign.Outcome}", () => new GradedSign(sign, table, supposed.Faults)));
                    else stated.Add(new StatedSign(sign, table, definition.IndexOf(sign.Outcome)));
                    break;
                case ActionEvidence action when catalogue.Action(action.Action) is not null:
                    break;
                default:
                    unused.Add(item);
                    break;
            }
        }
        return new CaseFile(ground, supposed, plan)
        {
            Readings = Settled(ReadingSet.Of(readings), stove),
            Conditionals = conditionals,
            Stated = stated,
            Unused = unused,
        };
    }

    /// <summary>First epoch in which a discrete fault is gone; int.MaxValue when nothing cured it or it outlasted the cure.</summary>
    public int CuredIn(int fault) => _supposed.CuredIn[fault];

    /// <summary>The first index of the same fault: one that outlasted its cure and one that did not are one fault.</summary>
    public int FirstOf(int fault) => _supposed.First[fault];

    /// <summary>The discrete faults of a hypothesis that are still there in an epoch.</summary>
    public IReadOnlyList<Fault> Present(int[] faults, int epoch) =>
        [.. faults.Where(f => CuredIn(f) > epoch).Select(f => Discrete[f])];

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
