using System.Globalization;
using Emberwright.Diagnosis.Checks;
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// What the actions of a visit changed, epoch by epoch: which faults each cured, and which parameters are new since.
/// Everything an action does not name stays as it was.
/// </summary>
internal sealed class EpochPlan
{
    private readonly Dictionary<string, int> _curedIn;
    private readonly Dictionary<string, double> _missed;

    private EpochPlan(string key, IReadOnlyList<IReadOnlySet<Parameter>> redrawn, Dictionary<string, int> curedIn, Dictionary<string, double> missed)
    {
        Key = key;
        _missed = missed;
        Redrawn = redrawn;
        _curedIn = curedIn;
    }

    /// <summary>What was done when; plans with the same key are the same.</summary>
    public string Key { get; }

    /// <summary>Parameters drawn anew at the start of each epoch; the first draws none.</summary>
    public IReadOnlyList<IReadOnlySet<Parameter>> Redrawn { get; }

    /// <summary>Number of epochs.</summary>
    public int Count => Redrawn.Count;

    /// <summary>The last epoch: now.</summary>
    public int Now => Count - 1;

    /// <summary>First epoch in which a fault is gone; int.MaxValue when nothing cured it.</summary>
    public int CuredIn(string fault) => _curedIn.GetValueOrDefault(fault, int.MaxValue);

    /// <summary>Share of what was done against a fault that leaves it there; 0 when nothing was done against it.</summary>
    public double Missed(string fault) => _missed.GetValueOrDefault(fault);

    /// <summary>Sets up the plan.</summary>
    /// <param name="evidence">All evidence; its actions begin epochs.</param>
    /// <param name="catalogue">What each action cures and draws anew.</param>
    /// <exception cref="ArgumentException">An action does not begin an epoch.</exception>
    public static EpochPlan Of(IReadOnlyList<Evidence> evidence, Catalogue catalogue)
    {
        var count = 1 + evidence.Select(e => e.Epoch).DefaultIfEmpty(0).Max();
        var redrawn = Enumerable.Range(0, count).Select(_ => new HashSet<Parameter>()).ToArray();
        var curedIn = new Dictionary<string, int>(StringComparer.Ordinal);
        var missed = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var done in evidence.OfType<ActionEvidence>())
        {
            if (done.Epoch < 1)
                throw new ArgumentException($"Action '{done.Action}' ({done.Id}) is in epoch {done.Epoch}; an action begins epoch 1 or later.", nameof(evidence));
            if (catalogue.Action(done.Action) is not { } action) continue;
            var share = SupposedFault.Missed(action.Kind, action.Id == ActionList.FullService);
            foreach (var id in action.Cures)
            {
                curedIn[id] = Math.Min(curedIn.GetValueOrDefault(id, int.MaxValue), done.Epoch);
                missed[id] = missed.GetValueOrDefault(id, 1) * share;
            }
            foreach (var redraw in action.Redraws) redrawn[done.Epoch].Add(redraw.Parameter);
        }
        var key = string.Join(',', evidence.OfType<ActionEvidence>().Select(a => string.Create(CultureInfo.InvariantCulture, $"{a.Epoch}:{a.Action}")).Order(StringComparer.Ordinal).Prepend(count.ToString(CultureInfo.InvariantCulture)));
        return new EpochPlan(key, redrawn, curedIn, missed);
    }
}
