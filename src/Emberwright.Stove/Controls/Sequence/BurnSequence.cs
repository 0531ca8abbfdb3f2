// What does the stove do from the press of the button: light, prove, burn, stop, lock out?
// Equation: each step (1) contacts move with what they sense, (2) the board decides by what it senses, (3) the circuit says which
//   loads really run, (4) the stove answers. No time of any event is given in advance.
// Symbols: step Δt (s).
// Validity: Δt well below the shortest lag (here 10 s against 60 s).
// Assumptions: feed is taken as its mean over pulses; a blown fuse stays blown.
// Source: common practice, no source.
// Worked value: none published; the parts are checked one by one (contacts, circuit, lags).

using System.Collections.Immutable;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>Runs the burn sequence of a pattern on a stove, sound or at fault.</summary>
public static class BurnSequence
{
    private const double StepS = 10;
    private const double SampleS = 30;
    private const double LeastFedS = 30;

    /// <summary>Runs from cold.</summary>
    /// <param name="wiring">The circuit.</param>
    /// <param name="program">The board's sequence.</param>
    /// <param name="drivers">How the stove answers.</param>
    /// <param name="scenario">What is wrong and what is wanted.</param>
    /// <param name="durationS">Length of the run, s; 10 … 86 400.</param>
    /// <exception cref="CircuitException">A component or setting is missing or unknown; the message names it.</exception>
    public static BurnRun Run(Wiring wiring, BurnProgram program, ISequenceDrivers drivers, BurnScenario scenario, double durationS)
    {
        InputException.Require(durationS, StepS, 86_400, "run", "s", "Give the length of the run to compute.");
        var contacts = new ContactPositions(wiring, program, scenario);
        var circuit = new LoadCircuit(wiring, program, scenario);
        var board = new BoardLogic(program);
        var course = new Course(program);
        var senses = new BoardSensing(wiring, program, scenario, circuit);

        var stove = drivers.Cold;
        var positions = contacts.Initial(stove);
        var memory = BoardLogic.Initial(program);
        if (!circuit.Powered) memory = memory with { State = BurnState.NoPower };
        var turning = false;
        for (var now = 0.0; now < durationS; now += StepS)
        {
            positions = contacts.Next(positions, stove, now < scenario.WantedUntilS);
            var sensed = senses.Of(stove, positions, now < scenario.WantedUntilS, turning);
            memory = board.Next(memory, sensed, now, StepS);
            var (running, fuseBlown) = circuit.Loads(
                State(memory, board.Calls(memory, sensed), positions, scenario, now, board.IsSettledLow(memory, now)), board.FeedShare(memory.State));
            if (fuseBlown) memory = memory with { State = BurnState.NoPower };
            turning = running.CombustionShare > 0;
            running = running with { FeedShare = running.FeedShare * scenario.FuelArrives };
            stove = drivers.Next(stove, running, StepS);
            course.Add(now, memory, running, stove, positions, StepS, SampleS, fuseBlown);
            // Locked out or dead, and the fire out: nothing more will happen.
            if (memory.State is (BurnState.LockedOut or BurnState.NoPower) && !stove.Burning) break;
        }
        return course.End(memory, scenario, durationS, LeastFedS, [.. contacts.Tripped(positions)]);
    }

    private static ControlState State(BoardMemory memory, BoardCalls calls, SwitchPositions positions, BurnScenario scenario, double now, bool low)
    {
        var starting = memory.State is BurnState.Start or BurnState.Igniting or BurnState.Proving or BurnState.Low or BurnState.High;
        var elapsed = starting ? now - memory.StartedS : double.PositiveInfinity;
        return new ControlState(
            memory.State != BurnState.NoPower, calls, positions, Bridged(elapsed),
            low ? Operations.LowCombustionShare : 1, low ? Operations.LowRoomAirShare : 1, scenario.SupplyV);

        // Only whole minutes matter to a bridge; rounding lets equal states share one solution.
        static double Bridged(double elapsed) => double.IsInfinity(elapsed) ? elapsed : Math.Floor(elapsed / 60) * 60;
    }
}
