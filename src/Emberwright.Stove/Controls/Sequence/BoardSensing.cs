using Emberwright.Stove.Faults;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>Turns the stove's true state into what the board believes, through contacts, sensors and their faults.</summary>
internal sealed class BoardSensing(Wiring wiring, BurnProgram program, BurnScenario scenario, LoadCircuit circuit)
{
    private readonly string? _proofDisc = wiring.Components.OfType<Interlock>().FirstOrDefault(c => c.Kind == ContactKind.ProofDisc)?.Id;

    internal BoardSenses Of(SequenceReadings stove, SwitchPositions positions, bool wanted)
    {
        var called = wanted && (!scenario.Automatic || circuit.ThermostatCalls(positions));
        var watched = new bool[program.Watched.Length];
        for (var i = 0; i < watched.Length; i++) watched[i] = !circuit.Conducts(program.Watched[i].Contact, positions);
        return new BoardSenses(
            called, scenario.High, _proofDisc is not null && circuit.Conducts(_proofDisc, positions),
            double.NaN, stove.ExhaustC, stove.WaterC, double.NaN, watched);
    }
}
