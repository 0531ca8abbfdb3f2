using System.Collections.Immutable;
using System.Globalization;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// What follows from a stove and its catalogue alone, and what was worked out from earlier evidence about it. Everything in it
/// is a pure function of what it is kept under, so that a conclusion is the same with it and without.
/// </summary>
internal sealed class Groundwork
{
    private const int MostScenes = 3;

    private readonly Dictionary<string, Supposition> _suppositions = new(StringComparer.Ordinal);
    private readonly Dictionary<Condition, ImmutableArray<ContactRule>> _rules = [];
    private readonly List<(string Key, Scene Scene)> _scenes = [];
    private readonly Lazy<AsLeft?> _known;
    private readonly Lazy<HealthyBands> _bands;

    /// <summary>Begins with nothing worked out.</summary>
    public Groundwork(StoveCase stove, IStoveModel model, Catalogue catalogue)
    {
        Stove = stove;
        Model = model;
        Catalogue = catalogue;
        Faults = Circumstances.Rated(catalogue.Faults, stove);
        Circuit = CaseFile.Circuit(stove);
        _known = new(() => LastVisit.Of(stove, model));
        _bands = new(() =>
        {
            var healthy = Layout.Of(stove, [new HashSet<Parameter>()], Known?.Offsets ?? [], serviced: true);
            return new HealthyBands(
                new Problem(new SolveCache(model), healthy, Prior.Of(healthy, Known), ReadingSet.Of([]), []),
                Known is not null ? "last visit" : stove.Card is { Healthy.Count: > 0 } ? "card" : "pattern");
        });
    }

    /// <summary>The stove.</summary>
    public StoveCase Stove { get; }

    /// <summary>What predicts it.</summary>
    public IStoveModel Model { get; }

    /// <summary>Faults, signs and actions of its pattern.</summary>
    public Catalogue Catalogue { get; }

    /// <summary>The catalogue's faults with their rates on this stove.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    /// <summary>Its circuit with a meter, or null.</summary>
    public ElectricalReadings? Circuit { get; }

    /// <summary>What the last visit left known, or null.</summary>
    public AsLeft? Known => _known.Value;

    /// <summary>What it should read when healthy.</summary>
    public HealthyBands Bands => _bands.Value;

    /// <summary>Contacts that follow the model in a condition.</summary>
    public ImmutableArray<ContactRule> Rules(Condition condition)
    {
        if (_rules.TryGetValue(condition, out var rules)) return rules;
        rules = CaseFile.Rules(Circuit!.Wiring, Stove, Model, condition);
        _rules.Add(condition, rules);
        return rules;
    }

    /// <summary>What is supposed after what was done.</summary>
    public Supposition Supposing(EpochPlan plan)
    {
        if (_suppositions.TryGetValue(plan.Key, out var supposition)) return supposition;
        supposition = new Supposition(SupposedFault.Of(Faults.Where(f => f.Fouling is null), plan), Faults, Stove);
        _suppositions.Add(plan.Key, supposition);
        return supposition;
    }

    /// <summary>What the readings of a case give, fits included; the latest few are kept.</summary>
    public Scene Of(CaseFile file)
    {
        var key = string.Join(';', file.Readings.Items.Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Id}|{r.Epoch}|{r.Observable}|{r.Value:R}")).Prepend(file.Plan.Key));
        var at = _scenes.FindIndex(s => s.Key == key);
        if (at >= 0 && _scenes[at].Scene.IsFull) _scenes.RemoveAt(at);
        else if (at >= 0) return _scenes[at].Scene;
        if (_scenes.Count == MostScenes) _scenes.RemoveAt(0);
        var offsets = file.Readings.Items.Select(r => (r.Observable.Measure, r.Observable.Place)).Concat(Known?.Offsets ?? []).ToArray();
        var layout = Layout.Of(Stove, file.Plan.Redrawn, offsets, serviced: false);
        var scene = new Scene(Model, layout, Prior.Of(layout, Known), file.Readings);
        _scenes.Add((key, scene));
        return scene;
    }
}

/// <summary>The faults as they are supposed after what was done, with what evidence says under them.</summary>
internal sealed class Supposition
{
    private readonly Dictionary<string, IConditional> _conditionals = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SignTable> _tables = new(StringComparer.Ordinal);

    /// <summary>Sets up the faults.</summary>
    public Supposition(IReadOnlyList<SupposedFault> supposed, IReadOnlyList<Fault> faults, StoveCase stove)
    {
        Discrete = [.. supposed.Select(s => s.Fault)];
        Fouling = [.. faults.Where(f => f.Fouling is { } fouling && PriorTable.PatternSd(fouling.Parameter, stove) is not null)];
        Faults = [.. Discrete, .. Fouling];
        CuredIn = [.. supposed.Select(s => s.CuredIn)];
        First = [.. Discrete.Select(f => Array.FindIndex([.. Discrete], d => d.Id == f.Id))];
        Hypotheses = Hypothesis.All(Discrete, Fouling, stove.History.IsService);
    }

    /// <summary>Discrete faults.</summary>
    public IReadOnlyList<Fault> Discrete { get; }

    /// <summary>Fouling faults.</summary>
    public IReadOnlyList<Fault> Fouling { get; }

    /// <summary>Discrete faults, then fouling faults.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    /// <summary>First epoch in which each discrete fault is gone.</summary>
    public int[] CuredIn { get; }

    /// <summary>The first index of the same fault.</summary>
    public int[] First { get; }

    /// <summary>All hypotheses up to pairs.</summary>
    public IReadOnlyList<Hypothesis> Hypotheses { get; }

    /// <summary>Probabilities of a sign's outcomes.</summary>
    public SignTable TableOf(Signs.Sign sign)
    {
        if (_tables.TryGetValue(sign.Id, out var table)) return table;
        table = new SignTable(sign, Faults);
        _tables.Add(sign.Id, table);
        return table;
    }

    /// <summary>A meter reading or graded sign, made once.</summary>
    public IConditional Once(string key, Func<IConditional> make)
    {
        if (_conditionals.TryGetValue(key, out var conditional)) return conditional;
        conditional = make();
        _conditionals.Add(key, conditional);
        return conditional;
    }
}
