using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// What the actions of a visit changed, epoch by epoch: which faults each cured, and which parameters are new since.
/// Everything an action does not name stays as it was.
/// </summary>
internal sealed class EpochPlan
{
    private readonly Dictionary<string, int> _curedIn;

    private EpochPlan(IReadOnlyList<IReadOnlySet<Parameter>> redrawn, Dictionary<string, int> curedIn)
    {
        Redrawn = redrawn;
        _curedIn = curedIn;
    }

    /// <summary>Parameters drawn anew at the start of each epoch; the first draws none.</summary>
    public IReadOnlyList<IReadOnlySet<Parameter>> Redrawn { get; }

    /// <summary>Number of epochs.</summary>
    public int Count => Redrawn.Count;

    /// <summary>The last epoch: now.</summary>
    public int Now => Count - 1;

    /// <summary>First epoch in which a fault is gone; int.MaxValue when nothing cured it.</summary>
    public int CuredIn(string fault) => _curedIn.GetValueOrDefault(fault, int.MaxValue);

    /// <summary>Sets up the plan.</summary>
    /// <param name="evidence">All evidence; its actions begin epochs.</param>
    /// <param name="faults">All faults of the pattern.</param>
    /// <param name="cures">Ids of the faults that an action cures.</param>
    public static EpochPlan Of(IReadOnlyList<Evidence> evidence, IReadOnlyList<Fault> faults, Func<string, IReadOnlyCollection<string>> cures)
    {
        var count = 1 + evidence.Select(e => e.Epoch).DefaultIfEmpty(0).Max();
        var redrawn = Enumerable.Range(0, count).Select(_ => new HashSet<Parameter>()).ToArray();
        var curedIn = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var action in evidence.OfType<ActionEvidence>())
        {
            if (action.Epoch < 1)
                throw new ArgumentException($"Action '{action.Action}' ({action.Id}) is in epoch {action.Epoch}; an action begins epoch 1 or later.", nameof(evidence));
            foreach (var id in cures(action.Action))
            {
                if (faults.FirstOrDefault(f => f.Id == id) is not { } fault) continue;
                curedIn[id] = Math.Min(curedIn.GetValueOrDefault(id, int.MaxValue), action.Epoch);
                if (fault.Fouling is { } fouling) redrawn[action.Epoch].Add(fouling.Parameter);
                foreach (var shift in fault.Shifts)
                    if (IsPart(shift.Parameter)) redrawn[action.Epoch].Add(shift.Parameter);
            }
        }
        return new EpochPlan(redrawn, curedIn);
    }

    /// <summary>True for a parameter that belongs to a part or seal which its remedy renews or sets anew.</summary>
    private static bool IsPart(Parameter parameter) => parameter is Parameter.DoorLeak or Parameter.AshDoorLeak or Parameter.LidLeak
        or Parameter.ExhaustLeak or Parameter.BlowerGasketLeak or Parameter.VentLeak or Parameter.Feed or Parameter.Moisture
        or Parameter.SwitchThreshold or Parameter.SensorZero or Parameter.ProofSensor or Parameter.SensedPressure or Parameter.BlowerSpeed;
}
