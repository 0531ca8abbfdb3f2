namespace Emberwright.Stove.Controls.Sequence;

/// <summary>What the board remembers.</summary>
/// <param name="State">Where it stands.</param>
/// <param name="SinceS">When it came there, s.</param>
/// <param name="StartedS">When the present start began, s.</param>
/// <param name="Alarm">Alarm it will show or shows, or null.</param>
/// <param name="ProofMissingS">How long the proof of fire has been missing, s.</param>
/// <param name="DraftWeakS">How long the sensed vacuum has been too weak, s.</param>
/// <param name="SilentS">How long the combustion blower has given no speed pulses, s.</param>
/// <param name="OpenS">How long each watched contact has stood open, s.</param>
internal sealed record BoardMemory(
    BurnState State, double SinceS, double StartedS, string? Alarm, double ProofMissingS, double DraftWeakS, double SilentS, double[] OpenS)
{
    internal BoardMemory To(BurnState state, double now, string? alarm = null) =>
        this with { State = state, SinceS = now, Alarm = alarm ?? Alarm, ProofMissingS = 0, DraftWeakS = 0, SilentS = 0 };
}

/// <summary>What the board senses at one moment, through its own wires and sensors.</summary>
/// <param name="Wanted">True when it sees a call for heat.</param>
/// <param name="High">True when the highest setting is asked for.</param>
/// <param name="DiscConducts">True when the proof disc's contact passes current.</param>
/// <param name="Proof">The thermocouple's mV or the probe's °C as the board understands it.</param>
/// <param name="ExhaustC">Exhaust temperature the board acts on, °C.</param>
/// <param name="WaterC">Water temperature, °C.</param>
/// <param name="VacuumPa">Vacuum its pressure sensor reports, Pa (positive).</param>
/// <param name="Turns">True when the combustion blower's speed sensor gives pulses, or there is none.</param>
/// <param name="SensorBad">True when a sensor's signal is outside what it can be.</param>
/// <param name="WatchedOpen">Which watched contacts pass no current.</param>
internal readonly record struct BoardSenses(
    bool Wanted, bool High, bool DiscConducts, double Proof, double ExhaustC, double WaterC, double VacuumPa, bool Turns, bool SensorBad, bool[] WatchedOpen);

/// <summary>The board's decisions: a state machine fed only by what the board can sense.</summary>
/// <param name="program">Times and limits.</param>
internal sealed class BoardLogic(BurnProgram program)
{
    internal static BoardMemory Initial(BurnProgram program) =>
        new(BurnState.Standby, 0, 0, null, 0, 0, 0, new double[program.Watched.Length]);

    internal BoardMemory Next(BoardMemory m, in BoardSenses s, double now, double stepS)
    {
        if (m.State is BurnState.NoPower or BurnState.LockedOut) return m;
        if (m.State == BurnState.Standby)
            return s.Wanted ? m.To(BurnState.Start, now) with { StartedS = now, OpenS = new double[m.OpenS.Length] } : m;
        if (m.State == BurnState.Shutdown)
        {
            var cool = program.Proof.Kind == ProofKind.Disc ? !s.DiscConducts : s.ExhaustC <= program.CoolC;
            return !cool || now - m.SinceS < program.RunOnS ? m : m.To(m.Alarm is null ? BurnState.Standby : BurnState.LockedOut, now);
        }
        if (!s.Wanted) return m.To(BurnState.Shutdown, now);
        m = Watch(m, s, now, stepS);
        return m.State == BurnState.Shutdown ? m : Burn(m, s, now, stepS);
    }

    internal BoardCalls Calls(BoardMemory m, in BoardSenses s)
    {
        var warm = s.ExhaustC >= program.RoomAirFromC ? BoardCalls.RoomAirBlower : BoardCalls.None;
        if (program.PumpFromC is { } from && s.WaterC >= from) warm |= BoardCalls.Pump;
        return m.State switch
        {
            BurnState.NoPower => BoardCalls.None,
            BurnState.Standby or BurnState.LockedOut => warm & BoardCalls.Pump,
            BurnState.Start => BoardCalls.CombustionBlower,
            BurnState.Igniting => BoardCalls.CombustionBlower | BoardCalls.Igniter | BoardCalls.Feed | BoardCalls.Agitator | warm,
            BurnState.Proving or BurnState.Low or BurnState.High =>
                BoardCalls.CombustionBlower | BoardCalls.Feed | BoardCalls.Agitator | warm,
            BurnState.Shutdown => BoardCalls.CombustionBlower | warm,
        };
    }

    /// <summary>True once the blowers have come down to the lowest setting.</summary>
    internal bool IsSettledLow(BoardMemory m, double now) => m.State == BurnState.Low && now - m.SinceS >= program.SettleS;

    internal double FeedShare(BurnState state) => state switch
    {
        BurnState.Igniting or BurnState.Proving => program.StartFeedShare,
        BurnState.Low => program.LowFeedShare,
        BurnState.High => 1,
        BurnState.NoPower or BurnState.Standby or BurnState.Start or BurnState.Shutdown or BurnState.LockedOut => 0,
    };

    private BoardMemory Burn(BoardMemory m, in BoardSenses s, double now, double stepS)
    {
        var elapsed = now - m.StartedS;
        var proof = program.Proof;
        switch (m.State)
        {
            case BurnState.Start when elapsed >= program.PurgeS:
                return m.To(BurnState.Igniting, now);
            case BurnState.Igniting or BurnState.Proving:
                if (IsProved(s, elapsed)) return m.To(s.High ? BurnState.High : BurnState.Low, now);
                if (elapsed > proof.WithinS) return m.To(BurnState.Shutdown, now, Alarms.NoFire);
                return m.State == BurnState.Igniting && now - m.SinceS >= program.IgniterS ? m.To(BurnState.Proving, now) : m;
            case BurnState.Low or BurnState.High:
                var missing = IsLost(s) ? m.ProofMissingS + stepS : 0;
                if (missing > proof.LostAfterS) return m.To(BurnState.Shutdown, now, Alarms.NoFire);
                m = m with { ProofMissingS = missing };
                var wanted = s.High ? BurnState.High : BurnState.Low;
                return m.State == wanted ? m : m.To(wanted, now) with { ProofMissingS = missing };
            default:
                return m;
        }
    }

    private BoardMemory Watch(BoardMemory m, in BoardSenses s, double now, double stepS)
    {
        var elapsed = now - m.StartedS;
        if (program.ExhaustLimitC is { } limit && s.ExhaustC > limit) return m.To(BurnState.Shutdown, now, Alarms.OverTemperature);
        if (program.WaterLimitC is { } waterLimit && s.WaterC > waterLimit) return m.To(BurnState.Shutdown, now, Alarms.OverTemperature);
        if (s.SensorBad) return m.To(BurnState.Shutdown, now, Alarms.Sensor);
        var silent = s.Turns ? 0 : m.SilentS + stepS;
        if (silent > (program.SpeedMissingS ?? double.PositiveInfinity)) return m.To(BurnState.Shutdown, now, Alarms.BlowerSpeed);
        var open = new double[m.OpenS.Length];
        for (var i = 0; i < open.Length; i++)
        {
            var watched = program.Watched[i];
            open[i] = s.WatchedOpen[i] && elapsed > watched.IgnoredS ? m.OpenS[i] + stepS : 0;
            if (open[i] > watched.ToleratedS) return m.To(BurnState.Shutdown, now, watched.Alarm);
        }
        var weak = program.Draft is { } draft && elapsed > draft.IgnoredS && s.VacuumPa < draft.WeakestPa ? m.DraftWeakS + stepS : 0;
        return weak > (program.Draft?.ToleratedS ?? double.PositiveInfinity)
            ? m.To(BurnState.Shutdown, now, Alarms.LowDraught)
            : m with { OpenS = open, DraftWeakS = weak, SilentS = silent };
    }

    // A disc that the board bridges cannot be looked at until the bridge opens.
    private bool IsProved(in BoardSenses s, double elapsed) => program.Proof.Kind == ProofKind.Disc
        ? elapsed >= program.Proof.WithinS && s.DiscConducts
        : s.Proof >= program.Proof.ProvedAt;

    private bool IsLost(in BoardSenses s) => program.Proof.Kind == ProofKind.Disc ? !s.DiscConducts : s.Proof < program.Proof.LostAt;
}
