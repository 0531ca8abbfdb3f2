using System.Runtime.InteropServices;
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// Solved states by condition and parameters, so that epochs and hypotheses which do not differ in the air share one
/// solve. What is solved depends on the parameters alone, never on what was solved before.
/// </summary>
internal sealed class SolveCache(IStoveModel model)
{
    private readonly Dictionary<Key, StoveState> _states = [];

    /// <summary>Solves that could not be taken from the cache.</summary>
    public int Solves { get; private set; }

    /// <summary>The state for these parameters.</summary>
    public StoveState Solve(ReadOnlySpan<double> parameters, Condition condition)
    {
        var key = new Key(condition, parameters.ToArray());
        if (_states.TryGetValue(key, out var state)) return state;
        state = model.Solve(parameters, condition, null);
        Solves++;
        _states.Add(key, state);
        return state;
    }

    private readonly struct Key(Condition condition, double[] parameters) : IEquatable<Key>
    {
        private readonly Condition _condition = condition;
        private readonly double[] _parameters = parameters;

        public bool Equals(Key other) => _condition == other._condition && _parameters.AsSpan().SequenceEqual(other._parameters);

        public override bool Equals(object? obj) => obj is Key other && Equals(other);

        public override int GetHashCode()
        {
            var hash = new HashCode();
            hash.Add(_condition);
            hash.AddBytes(MemoryMarshal.AsBytes(_parameters.AsSpan()));
            return hash.ToHashCode();
        }
    }
}
