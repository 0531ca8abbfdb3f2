using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;

namespace Emberwright.Trials.Sampling;

/// <summary>A case made ready for inference, with its library of fits.</summary>
/// <param name="File">The case.</param>
/// <param name="Library">Its fits.</param>
/// <param name="Stove">The stove.</param>
internal sealed record OpenCase(CaseFile File, ModeLibrary Library, StoveCase Stove)
{
    /// <summary>Opens a case without a last visit.</summary>
    public static OpenCase Of(StoveCase stove, IReadOnlyList<Evidence> evidence)
    {
        var file = CaseFile.Of(stove, new VirtualStoveModel(new VirtualStove(stove.Pattern, stove.Card, stove.Site)), evidence, Catalogue.For(stove.Pattern.Id));
        var layout = Layout.Of(stove, file.Plan.Redrawn, file.Readings.Items.Select(r => (r.Observable.Measure, r.Observable.Place)), serviced: false);
        return new(file, new ModeLibrary(file, layout, Prior.Of(layout)), stove);
    }

    /// <summary>True when the virtual stove predicts an observable.</summary>
    public bool Knows(Observable observable) => Stove.Pattern.Levels.ContainsKey(observable.Condition.Fire)
        && File.Model.Solve(new double[Layout.Parameters], observable.Condition, null).Knows(observable.Measure, observable.Place);

    /// <summary>
    /// The explanations that the readings can tell apart: hypotheses that share a fit are one, its prior the sum of theirs.
    /// Heaviest first, without the cause that no catalogue lists.
    /// </summary>
    public IReadOnlyList<(string Name, Mode Mode, double LnPrior)> Explanations()
    {
        var search = new Search(File, Library);
        var hypotheses = Hypothesis.All(File.Discrete, File.Fouling, isService: false);
        foreach (var _ in search.Singles(hypotheses.Where(h => h.Kind != HypothesisKind.Pair))) { }
        foreach (var _ in search.Pairs(hypotheses.Where(h => h.Kind == HypothesisKind.Pair))) { }
        return
        [
            .. search.Candidates.Where(c => c is { Doubted: < 0, LnAdjustment: 0, IsUnlisted: false }).GroupBy(c => c.Mode, ReferenceEqualityComparer.Instance)
                .Select(g => (Name: Name(g.First().Hypothesis), g.First().Mode, LnPrior: Math.Log(g.Sum(c => Math.Exp(c.Hypothesis.LnPrior)))))
                .OrderByDescending(e => e.LnPrior + e.Mode.LnEvidence),
        ];
    }

    private string Name(Hypothesis hypothesis) => hypothesis.Kind switch
    {
        HypothesisKind.Nothing => Suspect.Nothing,
        _ => string.Join(" + ", hypothesis.Faults.Select(f => File.Discrete[f].Id)),
    };
}
