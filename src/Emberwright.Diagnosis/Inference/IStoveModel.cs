using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// Whatever predicts a stove's state from its parameters, with sensitivities: the virtual stove, or in tests something
/// simple enough to be integrated exactly.
/// </summary>
internal interface IStoveModel
{
    /// <summary>Solves one condition.</summary>
    /// <param name="parameters">Values indexed by <see cref="Parameter"/>.</param>
    /// <param name="condition">State to solve for.</param>
    /// <param name="warmStart">A state to start from; it must not change the answer.</param>
    StoveState Solve(ReadOnlySpan<double> parameters, Condition condition, StoveState? warmStart);
}

/// <summary>
/// The virtual stove. Where no steady fire exists the fire is taken to be out. Solves start from the clean stove's state, so
/// that a state is the same to the last digit whatever was solved before it.
/// </summary>
internal sealed class VirtualStoveModel(VirtualStove stove) : IStoveModel
{
    private readonly Dictionary<Condition, StoveState> _clean = [];

    /// <inheritdoc />
    public StoveState Solve(ReadOnlySpan<double> parameters, Condition condition, StoveState? warmStart)
    {
        if (!_clean.TryGetValue(condition, out var clean))
        {
            clean = Solved(new double[parameters.Length], condition, null);
            _clean.Add(condition, clean);
        }
        return parameters.ContainsAnyExcept(0.0) ? Solved(parameters, condition, warmStart ?? clean) : clean;
    }

    private StoveState Solved(ReadOnlySpan<double> parameters, Condition condition, StoveState? warmStart)
    {
        var state = stove.Solve(parameters, condition, warmStart);
        if (condition.Fire == FireState.Cold || state.Status is SolveStatus.Converged or SolveStatus.FireStarved) return state;
        var cold = stove.Solve(parameters, condition with { Fire = FireState.Cold });
        return new FireOut(cold, condition, stove.Site.RoomC ?? 20);
    }

    /// <summary>A stove whose fire went out: its air is that of the cold stove, its flue gas is air at room temperature.</summary>
    private sealed class FireOut(StoveState cold, Condition condition, double roomC) : StoveState
    {
        public override Condition Condition => condition;

        public override SolveStatus Status => SolveStatus.NoSteadyFire;

        public override bool Knows(Measure measure, string place) =>
            cold.Knows(measure, place) || measure is Measure.Oxygen or Measure.CarbonDioxide or Measure.CarbonMonoxide or Measure.Temperature;

        public override double Value(Measure measure, string place) => cold.Knows(measure, place) ? cold.Value(measure, place) : measure switch
        {
            Measure.Oxygen => 20.9,
            Measure.CarbonDioxide => 0.04,
            Measure.CarbonMonoxide => 0,
            Measure.Temperature => roomC,
            _ => double.NaN,
        };

        public override void Sensitivity(Measure measure, string place, Span<double> gradient)
        {
            gradient.Clear();
            if (cold.Knows(measure, place)) cold.Sensitivity(measure, place, gradient);
        }
    }
}
