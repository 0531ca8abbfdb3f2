using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>What every meter reading and graded sign says under any set of faults, worked out once for each set it can tell apart.</summary>
internal sealed class BoundTable
{
    private readonly CaseFile _file;
    private readonly Bound[] _plain;
    private readonly Bound[][] _single;
    private readonly bool[][] _concerns;

    /// <summary>Prepares the table.</summary>
    public BoundTable(CaseFile file)
    {
        _file = file;
        var conditionals = file.Conditionals;
        _plain = [.. conditionals.Select(c => c.Under([]))];
        _concerns = new bool[file.Discrete.Count][];
        _single = new Bound[file.Discrete.Count][];
        for (var f = 0; f < file.Discrete.Count; f++)
        {
            var fault = file.Discrete[f];
            var curedIn = file.CuredIn(f);
            _concerns[f] = [.. conditionals.Select(c => curedIn > c.Evidence.Epoch && c.Concerns(fault))];
            _single[f] = [.. conditionals.Select((c, k) => _concerns[f][k] ? c.Under([fault]) : _plain[k])];
        }
    }

    /// <summary>The bounds under a set of faults.</summary>
    public Bound[] Of(int[] faults)
    {
        if (faults.Length == 0) return _plain;
        var first = _single[faults[0]];
        Bound[]? mixed = null;
        for (var k = 0; k < _plain.Length; k++)
        {
            var concerned = 0;
            var only = -1;
            foreach (var f in faults)
            {
                if (!_concerns[f][k]) continue;
                concerned++;
                only = f;
            }
            if (concerned == 0 || concerned == 1 && only == faults[0]) continue;
            mixed ??= (Bound[])first.Clone();
            mixed[k] = concerned == 1 ? _single[only][k] : _file.Conditionals[k].Under([.. faults.Where(f => _concerns[f][k]).Select(f => _file.Discrete[f])]);
        }
        return mixed ?? first;
    }

    /// <summary>True when the same margins join the fit.</summary>
    public static bool SameMargins(Bound[] a, Bound[] b)
    {
        for (var k = 0; k < a.Length; k++)
        {
            if (ReferenceEquals(a[k], b[k])) continue;
            if (a[k].Margin is not null || b[k].Margin is not null)
                if (a[k].Key != b[k].Key) return false;
        }
        return true;
    }
}
