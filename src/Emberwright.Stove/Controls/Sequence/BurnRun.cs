using System.Collections.Immutable;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>How a run of the sequence ended, as the customer would tell it.</summary>
public enum BurnOutcome
{
    /// <summary>The board is dead, from the start or since the fuse went.</summary>
    Dead,
    /// <summary>The board waits; it sees no call for heat.</summary>
    NeverStarts,
    /// <summary>It starts, but no fuel arrives.</summary>
    NoFeed,
    /// <summary>Fuel arrives but never lights.</summary>
    NeverLights,
    /// <summary>It lights, then stops before the fire is proved.</summary>
    LightsThenStops,
    /// <summary>The fire was proved, then stopped though heat was still wanted.</summary>
    StopsLater,
    /// <summary>It burns as asked, to the end of the run or until heat is no longer wanted.</summary>
    Runs,
}

/// <summary>One moment of a run.</summary>
/// <param name="TimeS">Time since the start of the run, s.</param>
/// <param name="State">Where the board stands.</param>
/// <param name="Running">What turns and glows.</param>
/// <param name="Readings">The stove.</param>
/// <param name="Positions">Where the switches stand.</param>
public sealed record BurnSample(
    double TimeS, BurnState State, RunningLoads Running, SequenceReadings Readings, SwitchPositions Positions);

/// <summary>A change worth a line on the timeline.</summary>
/// <param name="TimeS">Time since the start of the run, s.</param>
/// <param name="State">The board's state from then on.</param>
/// <param name="Words">What happened.</param>
public sealed record BurnEvent(double TimeS, BurnState State, string Words);

/// <summary>A whole run: computed, not scripted.</summary>
/// <param name="Outcome">How it ended.</param>
/// <param name="FinalState">Where the board stands at the end.</param>
/// <param name="Alarm">Id of the alarm that shows, or null.</param>
/// <param name="Lit">True when there was ever a fire.</param>
/// <param name="Proved">True when a fire was ever proved.</param>
/// <param name="FedS">Fuel fed, in seconds of the highest feed.</param>
/// <param name="FuseBlown">True when the fuse went.</param>
/// <param name="Events">What happened, in order.</param>
/// <param name="Samples">The course, for a picture.</param>
/// <param name="Tripped">Contacts that stand tripped at the end and need their button.</param>
public sealed record BurnRun(
    BurnOutcome Outcome, BurnState FinalState, string? Alarm, bool Lit, bool Proved, double FedS, bool FuseBlown,
    ImmutableArray<BurnEvent> Events, ImmutableArray<BurnSample> Samples, ImmutableArray<string> Tripped);
