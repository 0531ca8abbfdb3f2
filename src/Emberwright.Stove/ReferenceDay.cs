namespace Emberwright.Stove;

/// <summary>The day taken where the site does not say: a cool, calm one. Origin: our choice, no source.</summary>
public static class ReferenceDay
{
    /// <summary>Outdoor air temperature, °C.</summary>
    public const double OutdoorC = 5;

    /// <summary>Room air temperature, °C.</summary>
    public const double RoomC = 20;
}
