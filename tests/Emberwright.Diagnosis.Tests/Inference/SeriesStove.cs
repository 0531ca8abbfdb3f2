using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Tests.Inference;

/// <summary>
/// A stove simple enough to be solved by hand and sampled by the hundred thousand: intake, pot, exchanger, ash passages and
/// vent in series with losses q²/G², a blower of constant head, wind behind the vent.
/// </summary>
internal sealed class SeriesStove : IStoveModel
{
    private static readonly (Parameter Parameter, double Loss)[] Path =
        [(Parameter.Intake, 8), (Parameter.BurnPot, 20), (Parameter.Exchanger, 18), (Parameter.AshPassages, 20), (Parameter.Vent, 14)];

    public StoveState Solve(ReadOnlySpan<double> parameters, Condition condition, StoveState? warmStart) => new State(parameters, condition);

    /// <summary>Pressures at firebox, blower inlet and collar.</summary>
    public static (double Firebox, double Inlet, double Collar) Pressures(ReadOnlySpan<double> parameters, Condition condition)
    {
        var state = new State(parameters, condition);
        return (state.Value(Measure.Pressure, Places.Firebox), state.Value(Measure.Pressure, Places.BlowerInlet), state.Value(Measure.Pressure, Places.Collar));
    }

    private sealed class State : StoveState
    {
        private readonly Dictionary<string, (double Value, double[] Slopes)> _ports = [];

        public State(ReadOnlySpan<double> parameters, Condition condition)
        {
            Condition = condition;
            var n = parameters.Length;
            var loss = new double[Path.Length];
            var total = 0.0;
            for (var k = 0; k < loss.Length; k++)
            {
                loss[k] = Path[k].Loss * Math.Exp(-2 * parameters[(int)Path[k].Parameter]);
                if (k < 2 && condition.Opening == OpeningState.DoorOpen) loss[k] = 0;
                if (k == 0 && condition.Opening == OpeningState.IntakeStopped) loss[k] *= 1e3;
                total += loss[k];
            }
            var wind = parameters[(int)Parameter.Wind];
            var head = condition.Blower == BlowerState.On ? 80 * Math.Exp(parameters[(int)Parameter.Wheel] + 2 * parameters[(int)Parameter.BlowerSpeed]) : 0;
            var drive = head - wind + 4;
            var q2 = drive / total;
            (double, double[]) Port(int links, double sign, double constant)
            {
                var value = constant;
                var slopes = new double[n];
                var share = links > 0 ? loss[..links].Sum() : loss[^1];
                value += sign * share * q2;
                slopes[(int)Parameter.Wheel] += sign * share * head / total;
                slopes[(int)Parameter.BlowerSpeed] += 2 * sign * share * head / total;
                slopes[(int)Parameter.Wind] += -sign * share / total + (links == 0 ? 1 : 0);
                for (var k = 0; k < loss.Length; k++)
                {
                    var counted = links > 0 ? k < links : k == loss.Length - 1;
                    slopes[(int)Path[k].Parameter] += sign * q2 * (-2 * loss[k]) * ((counted ? 1 : 0) - share / total);
                }
                return (value, slopes);
            }
            _ports[Places.Firebox] = Port(2, -1, 0);
            _ports[Places.BlowerInlet] = Port(4, -1, 0);
            _ports[Places.Collar] = Port(0, 1, wind - 4);
            _ports[Places.SwitchHose] = _ports[Places.Firebox];
        }

        public override Condition Condition { get; }

        public override SolveStatus Status => SolveStatus.Converged;

        public override bool Knows(Measure measure, string place) => measure == Measure.Pressure && _ports.ContainsKey(place);

        public override double Value(Measure measure, string place) => Knows(measure, place) ? _ports[place].Value : double.NaN;

        public override void Sensitivity(Measure measure, string place, Span<double> gradient) => _ports[place].Slopes.CopyTo(gradient);
    }
}
