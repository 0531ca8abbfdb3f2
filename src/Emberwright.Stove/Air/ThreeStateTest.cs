// What does the cold three-state test tell about the restrictions of this stove, with the ports and states it allows?
//   H = Λ⁻¹ + Jᵀ·R⁻¹·J,   Σ = H⁻¹
// J slopes of the readings by the unknown restrictions, leaks, wind and house; Λ what is known before; R noise of a reading:
// gauge 1 Pa, model 0.4 Pa + 4 % of the reading; Σ what is known after. Linear around the clean stove.
// Assumes independent readings and normal spreads. Two unknowns count as not separated where their errors after the test
// are correlated by more than 0.8, or where the test narrows one by less than a fifth.
// Source: linear Gaussian estimation (any text on inverse problems); the noise from memory, no source.
// Worked value: no reading → Σ = Λ.
using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Air;

/// <summary>One reading of the test.</summary>
/// <param name="Observable">What is read, where, in which state.</param>
/// <param name="ExpectedPa">What the clean stove reads, Pa.</param>
public sealed record TestReading(Observable Observable, double ExpectedPa);

/// <summary>What the test makes of one unknown.</summary>
/// <param name="Parameter">The unknown.</param>
/// <param name="SdBefore">Standard deviation before, in the parameter's unit.</param>
/// <param name="SdAfter">Standard deviation after.</param>
/// <param name="Best">The state that alone narrows it most; null when none does by a twentieth.</param>
public sealed record TestGain(Parameter Parameter, double SdBefore, double SdAfter, Condition? Best);

/// <summary>The cold three-state test for one stove: closed, door open, intake stopped, and the blower off.</summary>
/// <param name="Readings">What to read, in order, with the clean stove's values.</param>
/// <param name="Gains">What each unknown is known to afterwards.</param>
/// <param name="NotSeparated">Pairs the test cannot tell apart on this stove.</param>
public sealed record ThreeStateTest(
    IReadOnlyList<TestReading> Readings, IReadOnlyList<TestGain> Gains, IReadOnlyList<(Parameter A, Parameter B)> NotSeparated)
{
    private static readonly Condition[] AllStates = [Condition.FanOnly, Condition.DoorOpen, Condition.IntakeStopped, Condition.BlowerOff];

    private static readonly (Parameter Parameter, double Sd)[] Unknowns =
    [
        (Parameter.Intake, 0.3), (Parameter.BurnPot, 0.4), (Parameter.Exchanger, 0.3), (Parameter.AshPassages, 0.5),
        (Parameter.Vent, 0.4), (Parameter.Wheel, 0.12), (Parameter.DoorLeak, 0.7), (Parameter.ExhaustLeak, 0.7),
        (Parameter.Wind, 2), (Parameter.House, 1.5),
    ];

    /// <summary>Plans the test.</summary>
    /// <param name="stove">The stove at its site.</param>
    /// <param name="ports">Ports that can be reached; empty means all of the pattern.</param>
    /// <param name="states">States it allows: without fan-only mode or with a door switch some fall away; empty means all four.</param>
    public static ThreeStateTest Plan(VirtualStove stove, IReadOnlyList<string> ports, IReadOnlyList<Condition> states)
    {
        var at = ports.Count > 0 ? ports : [.. stove.Pattern.Ports.Select(p => p.Id)];
        var among = states.Count > 0 ? states : AllStates;
        var readings = new List<TestReading>();
        var slopes = new List<double[]>();
        var nominal = new double[ParameterSlopes.Parameters];
        foreach (var state in among)
        {
            var solved = stove.Solve(nominal, state);
            foreach (var port in at)
            {
                if (!solved.Knows(Measure.Pressure, port))
                {
                    throw new InputException("port", $"\"{port}\" is not one of pattern {stove.Pattern.Id}", "Choose ports of the pattern.");
                }

                var row = new double[nominal.Length];
                solved.Sensitivity(Measure.Pressure, port, row);
                readings.Add(new TestReading(new Observable(Measure.Pressure, port, state), solved.Value(Measure.Pressure, port)));
                slopes.Add(row);
            }
        }

        var after = Covariance(readings, slopes, _ => true);
        var alone = among.Select(s => (State: s, After: Covariance(readings, slopes, r => r.Observable.Condition == s))).ToArray();
        var n = Unknowns.Length;
        var gains = new TestGain[n];
        for (var k = 0; k < n; k++)
        {
            var best = alone.MinBy(a => a.After[(k * n) + k]);
            var narrows = Math.Sqrt(best.After[(k * n) + k]) < 0.95 * Unknowns[k].Sd;
            gains[k] = new TestGain(Unknowns[k].Parameter, Unknowns[k].Sd, Math.Sqrt(after[(k * n) + k]), narrows ? best.State : null);
        }

        var pairs = new List<(Parameter, Parameter)>();
        for (var i = 0; i < n; i++)
        {
            for (var k = i + 1; k < n; k++)
            {
                var correlation = after[(i * n) + k] / Math.Sqrt(after[(i * n) + i] * after[(k * n) + k]);
                if (Math.Abs(correlation) > 0.8)
                {
                    pairs.Add((Unknowns[i].Parameter, Unknowns[k].Parameter));
                }
            }
        }

        return new ThreeStateTest(readings, gains, pairs);
    }

    private static double[] Covariance(List<TestReading> readings, List<double[]> slopes, Func<TestReading, bool> used)
    {
        var n = Unknowns.Length;
        var information = new double[n * n];
        for (var k = 0; k < n; k++)
        {
            information[(k * n) + k] = 1 / (Unknowns[k].Sd * Unknowns[k].Sd);
        }

        for (var r = 0; r < readings.Count; r++)
        {
            if (!used(readings[r]))
            {
                continue;
            }

            var model = 0.4 + (0.04 * Math.Abs(readings[r].ExpectedPa));
            var weight = 1 / (1 + (model * model));
            for (var i = 0; i < n; i++)
            {
                for (var k = 0; k < n; k++)
                {
                    information[(i * n) + k] += weight * slopes[r][(int)Unknowns[i].Parameter] * slopes[r][(int)Unknowns[k].Parameter];
                }
            }
        }

        var pivots = new int[n];
        DenseLu.Factor(information, pivots, n);
        var covariance = new double[n * n];
        var column = new double[n];
        for (var k = 0; k < n; k++)
        {
            Array.Clear(column);
            column[k] = 1;
            DenseLu.Solve(information, pivots, n, column);
            for (var i = 0; i < n; i++)
            {
                covariance[(i * n) + k] = column[i];
            }
        }

        return covariance;
    }
}
