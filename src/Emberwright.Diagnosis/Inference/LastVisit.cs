using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>What the readings as left at the last visit say about this appliance.</summary>
internal static class LastVisit
{
    /// <summary>Fits the stove without faults, just serviced, to those readings; null when there are none.</summary>
    public static AsLeft? Of(StoveCase stove, IStoveModel model)
    {
        if (stove.History.LastAsLeft is not { Count: > 0 } readings) return null;
        var known = readings
            .Where(r => stove.Pattern.Levels.ContainsKey(r.Observable.Condition.Fire))
            .Where(r => model.Solve(new double[Layout.Parameters], r.Observable.Condition, null).Knows(r.Observable.Measure, r.Observable.Place))
            .Select(r => r with { Epoch = 0 })
            .ToArray();
        if (known.Length == 0) return null;
        var layout = Layout.Of(stove, [new HashSet<Parameter>()], known.Select(r => (r.Observable.Measure, r.Observable.Place)), serviced: true);
        var prior = Prior.Of(layout);
        var mode = Mode.From(new Problem(new SolveCache(model), layout, prior, ReadingSet.Of(known), []), prior.Mean);
        return mode is null ? null : new AsLeft(layout, mode.Mean, mode.Covariance);
    }
}
