using Emberwright.Stove;

namespace Emberwright.Reports.FromVisit;

/// <summary>Names of areas on screens.</summary>
public static class AreaName
{
    /// <summary>The name.</summary>
    public static string Of(Area area) => area switch
    {
        Area.CombustionBlower => "Combustion blower",
        Area.RoomAirBlower => "Room-air blower",
        Area.AshPassages => "Ash passages",
        Area.Vent => "Vent",
        Area.BurnPot => "Burn pot and intake",
        Area.Seals => "Seals",
        Area.Feed => "Feed",
        Area.Ignition => "Ignition",
        Area.Interlocks => "Switches and hoses",
        Area.Electrical => "Wiring",
        Area.Water => "Water",
        Area.Site => "House and fuel",
    };
}

/// <summary>The four areas that every service covers.</summary>
public static class ServiceAreas
{
    /// <summary>In the order of work. Common practice, no source.</summary>
    public static IReadOnlyList<Area> InOrder { get; } = [Area.AshPassages, Area.CombustionBlower, Area.Vent, Area.RoomAirBlower];
}
