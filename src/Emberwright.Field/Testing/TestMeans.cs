using Emberwright.Stove;
using Emberwright.Stove.Air;

namespace Emberwright.Field.Testing;

/// <summary>What a stove and a kit allow of the cold test: which ports can be reached, whether it runs its fan alone, whether an open door stops it.</summary>
/// <param name="Ports">Ids of the ports that can be reached; at least one.</param>
/// <param name="FanOnly">True when the combustion blower can run alone for as long as wanted.</param>
/// <param name="DoorStopsFan">True when opening the fuel door stops the blower.</param>
public sealed record TestMeans(IReadOnlyList<string> Ports, bool FanOnly, bool DoorStopsFan)
{
    /// <summary>
    /// The states to read in, in order. Without a fan-only mode the blower runs alone for the minutes of a start's purge, which
    /// is enough for two states; a door switch takes the open door away.
    /// </summary>
    public IReadOnlyList<Condition> States => (FanOnly, DoorStopsFan) switch
    {
        (true, false) => [Condition.FanOnly, Condition.DoorOpen, Condition.IntakeStopped, Condition.BlowerOff],
        _ => [Condition.FanOnly, Condition.IntakeStopped, Condition.BlowerOff],
    };

    /// <summary>What to do to the stove for a state. Common practice, no source.</summary>
    public string Doing(Condition state) =>
        state == Condition.FanOnly ? FanOnly ? T("TestMeans.fan-only-at-full-speed-door") : T("TestMeans.start-the-stove-with-the-hopper")
        : state == Condition.DoorOpen ? T("TestMeans.fuel-door-wide-open-blower-running")
        : state == Condition.IntakeStopped ? FanOnly ? T("TestMeans.door-shut-the-combustion-air-inlet") : T("TestMeans.start-again-and-close-the-combustion")
        : T("TestMeans.blower-off-everything-shut-what-is");
}

/// <summary>How well the test will tell something, in a word.</summary>
public static class GainWords
{
    /// <summary>The unknown in the trade's words.</summary>
    public static string Of(Parameter parameter) => parameter switch
    {
        Parameter.Intake => T("TestMeans.air-inlet"),
        Parameter.BurnPot => T("TestMeans.burn-pot"),
        Parameter.Exchanger => T("TestMeans.exchanger-passages"),
        Parameter.AshPassages => T("TestMeans.ash-passages"),
        Parameter.Vent => T("TestMeans.vent"),
        Parameter.Wheel => T("TestMeans.blower-wheel"),
        Parameter.DoorLeak => T("TestMeans.leak-into-the-firebox"),
        Parameter.ExhaustLeak => T("TestMeans.exhaust-leak"),
        Parameter.Wind => T("common.wind"),
        Parameter.House => T("TestMeans.house-pressure"),
        _ => parameter.ToString(),
    };

    /// <summary>"well", "somewhat", "hardly": how much narrower it is known afterwards (our own scale).</summary>
    public static string Told(TestGain gain) => (gain.SdAfter / gain.SdBefore) switch { < 0.6 => T("TestMeans.well"), < 0.85 => T("TestMeans.somewhat"), _ => T("TestMeans.hardly") };
}
