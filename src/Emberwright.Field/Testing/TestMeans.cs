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
        state == Condition.FanOnly ? FanOnly ? "Fan only at full speed, door and lid shut, as in use. Wait half a minute." : "Start the stove with the hopper lid’s feed stopped by its own switch or empty; read while the blower purges, door shut. Then press off."
        : state == Condition.DoorOpen ? "Fuel door wide open, blower running. The firebox then stands at room pressure: what is left is behind it."
        : state == Condition.IntakeStopped ? FanOnly ? "Door shut, the combustion-air inlet closed with the flat of a hand or tape." : "Start again, and close the combustion-air inlet while the blower purges."
        : "Blower off, everything shut. What is read now is wind, house and warm vent.";
}

/// <summary>How well the test will tell something, in a word.</summary>
public static class GainWords
{
    /// <summary>The unknown in the trade's words.</summary>
    public static string Of(Parameter parameter) => parameter switch
    {
        Parameter.Intake => "Air inlet",
        Parameter.BurnPot => "Burn pot",
        Parameter.Exchanger => "Exchanger passages",
        Parameter.AshPassages => "Ash passages",
        Parameter.Vent => "Vent",
        Parameter.Wheel => "Blower wheel",
        Parameter.DoorLeak => "Leak into the firebox",
        Parameter.ExhaustLeak => "Exhaust leak",
        Parameter.Wind => "Wind",
        Parameter.House => "House pressure",
        _ => parameter.ToString(),
    };

    /// <summary>"well", "somewhat", "hardly": how much narrower it is known afterwards (our own scale).</summary>
    public static string Told(TestGain gain) => (gain.SdAfter / gain.SdBefore) switch { < 0.6 => "well", < 0.85 => "somewhat", _ => "hardly" };
}
