using Emberwright.Stove;

namespace Emberwright.Visits.Fouling;

/// <summary>What fouls, in the trade's words.</summary>
public static class PassageWords
{
    /// <summary>"Ash passages", "Blower wheel", …</summary>
    public static string Of(Parameter passage) => passage switch
    {
        Parameter.AshPassages => "Ash passages",
        Parameter.Exchanger => "Exchanger",
        Parameter.Vent => "Vent",
        Parameter.BurnPot => "Burn pot",
        Parameter.Wheel => "Blower wheel",
        Parameter.RoomAir => "Room-air blower",
        _ => Journal.EnumWords.Of(passage).Replace('-', ' '),
    };

    /// <summary>What a belief in growth rests on: seasons of this stove, or only what is usual.</summary>
    public static string RestsOn(Growth growth)
    {
        ArgumentNullException.ThrowIfNull(growth);
        return growth.Seasons.Count switch
        {
            0 => "what is usual, no season of this stove measured",
            1 => "one season of this stove",
            var many => $"{many} seasons of this stove",
        };
    }
}
