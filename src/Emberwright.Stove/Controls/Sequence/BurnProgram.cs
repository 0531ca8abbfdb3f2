using System.Collections.Immutable;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>At what value a contact moves, with its differential.</summary>
/// <param name="Contact">Id of the interlock.</param>
/// <param name="ActsAt">
/// A vacuum switch closes at this vacuum (Pa, positive); a proof disc closes, a limit disc or safety thermostat opens at this
/// temperature (°C).
/// </param>
/// <param name="ReleasesAt">Value at which it goes back, weaker or cooler than <paramref name="ActsAt"/>.</param>
public sealed record ContactSetting(string Contact, double ActsAt, double ReleasesAt);

/// <summary>What the board itself watches, beyond what the feed's chain does by its wires alone.</summary>
/// <param name="Contact">Id of the interlock it watches.</param>
/// <param name="IgnoredS">Time after the start during which it is not looked at, s.</param>
/// <param name="ToleratedS">Time it may stand open before the alarm, s.</param>
/// <param name="Alarm">Id of the alarm.</param>
public sealed record WatchedContact(string Contact, double IgnoredS, double ToleratedS, string Alarm);

/// <summary>By what a fire is proved.</summary>
public enum ProofKind
{
    /// <summary>A disc's contact on the exhaust.</summary>
    Disc,
    /// <summary>A thermocouple's voltage at the board, mV.</summary>
    Thermocouple,
    /// <summary>The exhaust temperature by a resistance probe, °C.</summary>
    ExhaustProbe,
}

/// <summary>How the board decides that there is a fire.</summary>
/// <param name="Kind">Disc, thermocouple or probe.</param>
/// <param name="WithinS">Time after the start within which it must be proved, s.</param>
/// <param name="ProvedAt">Signal that proves it (mV or °C); unused for a disc.</param>
/// <param name="LostAt">Signal below which it counts as gone; unused for a disc.</param>
/// <param name="LostAfterS">Time it may be below before the board gives up, s.</param>
public sealed record ProofOfFire(ProofKind Kind, double WithinS, double ProvedAt, double LostAt, double LostAfterS);

/// <summary>A watched pressure sensor: how weak the vacuum may get, and for how long.</summary>
/// <param name="WeakestPa">Weakest vacuum allowed, Pa (positive).</param>
/// <param name="IgnoredS">Time after the start during which it is not looked at, s.</param>
/// <param name="ToleratedS">Time it may be weaker, s.</param>
public sealed record DraftWatch(double WeakestPa, double IgnoredS, double ToleratedS);

/// <summary>The board's sequence as data: times, limits, alarms. It is not a timeline; when things happen follows from the stove.</summary>
public sealed record BurnProgram
{
    /// <summary>Id of the pattern.</summary>
    public required string Pattern { get; init; }

    /// <summary>Combustion blower alone before the first pellets, s.</summary>
    public required double PurgeS { get; init; }

    /// <summary>Longest time the igniter stays on, s.</summary>
    public required double IgniterS { get; init; }

    /// <summary>Feed while igniting, as a share of the highest feed.</summary>
    public required double StartFeedShare { get; init; }

    /// <summary>Feed at the lowest setting, as a share of the highest feed.</summary>
    public required double LowFeedShare { get; init; }

    /// <summary>Time at the lowest setting before the blowers come down to it, s: the bed burns down first.</summary>
    public double SettleS { get; init; } = 300;

    /// <summary>How a fire is proved.</summary>
    public required ProofOfFire Proof { get; init; }

    /// <summary>Values at which the contacts move.</summary>
    public required ImmutableArray<ContactSetting> Settings { get; init; }

    /// <summary>Contacts the board watches by itself.</summary>
    public ImmutableArray<WatchedContact> Watched { get; init; } = [];

    /// <summary>The pressure sensor's watch, or null where there is none.</summary>
    public DraftWatch? Draft { get; init; }

    /// <summary>Time a called combustion blower may give no speed pulses, s; null without a speed sensor.</summary>
    public double? SpeedMissingS { get; init; }

    /// <summary>Highest water temperature before the board shuts down, °C; null without water.</summary>
    public double? WaterLimitC { get; init; }

    /// <summary>Exhaust temperature below which the blowers may stop after a shutdown, °C; a proof disc opens at its own.</summary>
    public required double CoolC { get; init; }

    /// <summary>Least time the blowers run on, s.</summary>
    public required double RunOnS { get; init; }

    /// <summary>Exhaust temperature at which the room-air blower starts, °C.</summary>
    public required double RoomAirFromC { get; init; }

    /// <summary>Water temperature at which the circulating pump starts, °C; null without water.</summary>
    public double? PumpFromC { get; init; }

    /// <summary>Highest exhaust temperature before the board shuts down, °C; null where the board does not watch it.</summary>
    public double? ExhaustLimitC { get; init; }

    /// <summary>Share of the voltage at which the board stops working.</summary>
    public double DropOutShare { get; init; } = 0.7;

    /// <summary>How each alarm is shown.</summary>
    public required ImmutableArray<AlarmCode> Codes { get; init; }

    /// <summary>The setting of a contact, or null when it moves by hand only.</summary>
    public ContactSetting? Setting(string contact) => Settings.FirstOrDefault(s => s.Contact == contact);
}
