using Emberwright.Reports.Wording;
using Emberwright.Stove;

namespace Emberwright.Reports.FromVisit;

/// <summary>Names of areas on screens.</summary>
public static class AreaName
{
    /// <summary>The name.</summary>
    public static string Of(Area area) => area switch
    {
        Area.CombustionBlower => Say.Of("area.combustion-blower"),
        Area.RoomAirBlower => Say.Of("area.room-air-blower"),
        Area.AshPassages => Say.Of("area.ash-passages"),
        Area.Vent => Say.Of("area.vent"),
        Area.BurnPot => Say.Of("area.burn-pot-and-intake"),
        Area.Seals => Say.Of("area.seals"),
        Area.Feed => Say.Of("area.feed"),
        Area.Ignition => Say.Of("area.ignition"),
        Area.Interlocks => Say.Of("area.switches-and-hoses"),
        Area.Electrical => Say.Of("area.wiring"),
        Area.Water => Say.Of("area.water"),
        Area.Site => Say.Of("area.house-and-fuel"),
    };
}

/// <summary>The four areas that every service covers.</summary>
public static class ServiceAreas
{
    /// <summary>In the order of work. Common practice, no source.</summary>
    public static IReadOnlyList<Area> InOrder { get; } = [Area.AshPassages, Area.CombustionBlower, Area.Vent, Area.RoomAirBlower];
}
