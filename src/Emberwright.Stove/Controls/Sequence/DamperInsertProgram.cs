using static Emberwright.Stove.Controls.ComponentIds;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>
/// The damper-regulated insert's board: it bridges the proof-of-fire disc for 22 minutes, then looks at it. It does not watch the
/// vacuum switch; that stops the feed by its wires alone. All values are common practice, no source.
/// </summary>
public static class DamperInsertProgram
{
    /// <summary>Builds the program.</summary>
    public static BurnProgram Create() => new()
    {
        Pattern = "damper-insert",
        PurgeS = 60,
        IgniterS = 15 * 60,
        StartFeedShare = 0.5,
        LowFeedShare = 0.53,
        Proof = new ProofOfFire(ProofKind.Disc, Wirings.DamperInsertWiring.ProofTimeS, double.NaN, double.NaN, 60),
        Settings =
        [
            new ContactSetting(VacuumSwitch, 12.5, 8.7),
            new ContactSetting(ProofDisc, 49, 38),
            new ContactSetting(HighLimitDisc, 93, 80),
            new ContactSetting(RoomAirDisc, 49, 38),
        ],
        CoolC = 40,
        RunOnS = 10 * 60,
        RoomAirFromC = 0,
        Codes = [new AlarmCode(Alarms.NoFire, "lamp blinks", "No fire proved.")],
    };
}
