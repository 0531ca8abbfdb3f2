namespace Emberwright.Stove.Patterns;

/// <summary>Areas as files write them: lower case with hyphens.</summary>
internal static class AreaNames
{
    public static string All { get; } = string.Join(", ", Enum.GetValues<Area>().Select(Of));

    public static string Of(Area area) => area switch
    {
        Area.CombustionBlower => "combustion-blower",
        Area.RoomAirBlower => "room-air-blower",
        Area.AshPassages => "ash-passages",
        Area.Vent => "vent",
        Area.BurnPot => "burn-pot",
        Area.Seals => "seals",
        Area.Feed => "feed",
        Area.Ignition => "ignition",
        Area.Interlocks => "interlocks",
        Area.Electrical => "electrical",
        Area.Water => "water",
        Area.Site => "site",
    };

    public static bool TryParse(string words, out Area area)
    {
        foreach (var candidate in Enum.GetValues<Area>())
        {
            if (Of(candidate) == words)
            {
                area = candidate;
                return true;
            }
        }

        area = default;
        return false;
    }
}
