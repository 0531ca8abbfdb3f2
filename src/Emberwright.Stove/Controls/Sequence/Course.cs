using System.Collections.Immutable;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>Gathers the course of a run and judges how it ended.</summary>
/// <param name="program">The board's sequence, for the words of its alarms.</param>
internal sealed class Course(BurnProgram program)
{
    private readonly ImmutableArray<BurnEvent>.Builder _events = ImmutableArray.CreateBuilder<BurnEvent>();
    private readonly ImmutableArray<BurnSample>.Builder _samples = ImmutableArray.CreateBuilder<BurnSample>();
    private BurnState? _state;
    private bool _burning, _lit, _proved, _fuseBlown, _started, _feeding;
    private bool _burningAtEnd;
    private double _fedS, _nextSampleS;

    internal void Add(
        double now, BoardMemory memory, in RunningLoads running, SequenceReadings stove, SwitchPositions positions,
        double stepS, double sampleS, bool fuseBlown)
    {
        if (memory.State != _state) Enter(now, memory);
        if (running.FeedShare > 0 != _feeding && memory.State is (BurnState.Igniting or BurnState.Proving or BurnState.Low or BurnState.High))
        {
            _feeding = running.FeedShare > 0;
            Say(now, memory, _feeding ? "Feed runs." : "Feed stands although the board calls for it.");
        }
        if (stove.Burning != _burning) Say(now, memory, stove.Burning ? "Fire lights." : "Fire is out.");
        if (fuseBlown && !_fuseBlown) Say(now, memory, "The fuse goes.");
        _fuseBlown |= fuseBlown;
        _burning = stove.Burning;
        _burningAtEnd = stove.Burning;
        _lit |= stove.Burning;
        _fedS += running.FeedShare * stepS;
        _started |= memory.State is not (BurnState.Standby or BurnState.NoPower);
        _proved |= memory.State is BurnState.Low or BurnState.High;
        if (now < _nextSampleS) return;
        _nextSampleS = now + sampleS;
        _samples.Add(new BurnSample(now, memory.State, running, stove, positions));
    }

    internal BurnRun End(BoardMemory memory, BurnScenario scenario, double durationS, double leastFedS, ImmutableArray<string> tripped)
    {
        var outcome = Judge(memory, scenario.WantedUntilS >= durationS, leastFedS);
        var alarm = memory.State is BurnState.LockedOut or BurnState.Shutdown ? memory.Alarm : null;
        return new BurnRun(outcome, memory.State, alarm, _lit, _proved, _fedS, _fuseBlown, _events.ToImmutable(), _samples.ToImmutable(), tripped);
    }

    private BurnOutcome Judge(BoardMemory memory, bool wantedAtEnd, double leastFedS)
    {
        if (memory.State == BurnState.NoPower) return BurnOutcome.Dead;
        if (!_started) return BurnOutcome.NeverStarts;
        if (_fedS < leastFedS) return BurnOutcome.NoFeed;
        if (!_lit) return BurnOutcome.NeverLights;
        if (!_proved) return wantedAtEnd && _burningAtEnd && memory.Alarm is null ? BurnOutcome.Runs : BurnOutcome.LightsThenStops;
        return wantedAtEnd && !_burningAtEnd || memory.Alarm is not null ? BurnOutcome.StopsLater : BurnOutcome.Runs;
    }

    private void Enter(double now, BoardMemory memory)
    {
        _state = memory.State;
        if (!_proved && memory.State is (BurnState.Low or BurnState.High)) Say(now, memory, "Fire proved.");
        Say(now, memory, memory.State switch
        {
            BurnState.NoPower => "The board has no supply.",
            BurnState.Standby => "Waiting for a call for heat.",
            BurnState.Start => "Combustion blower clears the firebox.",
            BurnState.Igniting => "Igniter and feed are called.",
            BurnState.Proving => "Igniter off; waiting for proof of fire.",
            BurnState.Low => "Lowest setting.",
            BurnState.High => "Highest setting.",
            BurnState.Shutdown => memory.Alarm is null ? "Heat no longer wanted; burning out." : $"Stops: {Words(memory.Alarm)}",
            BurnState.LockedOut => $"Locked out: {Words(memory.Alarm)}",
        });
    }

    private void Say(double now, BoardMemory memory, string words) => _events.Add(new BurnEvent(now, memory.State, words));

    private string Words(string? alarm) => program.Codes.FirstOrDefault(c => c.Id == alarm)?.Words ?? $"{alarm}.";
}
