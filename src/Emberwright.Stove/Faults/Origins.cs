namespace Emberwright.Stove.Faults;

/// <summary>Where a number in the catalogue comes from.</summary>
internal static class Origins
{
    /// <summary>Known to the trade, not written down anywhere that could be cited.</summary>
    public const string Practice = "common practice, no source";

    /// <summary>An estimate remembered, not measured; closed visits are to replace it.</summary>
    public const string Memory = "from memory, no source";
}

/// <summary>Ids of the patterns, and groups of them that share a way of construction.</summary>
internal static class On
{
    public const string Damper = "damper-insert";
    public const string Thermocouple = "thermocouple-freestanding";
    public const string Underfed = "underfed";
    public const string Sealed = "sealed-combustion";
    public const string Hydronic = "hydronic";
    public const string MultiFuel = "multi-fuel-agitator";

    /// <summary>All patterns.</summary>
    public static IReadOnlyList<string> All { get; } = [Damper, Thermocouple, Underfed, Sealed, Hydronic, MultiFuel];

    /// <summary>Those with a vacuum switch on a hose.</summary>
    public static IReadOnlyList<string> VacuumSwitch { get; } = [Damper, Thermocouple, Underfed, Hydronic, MultiFuel];

    /// <summary>Those that prove fire by a disc on the exhaust.</summary>
    public static IReadOnlyList<string> ProofDisc { get; } = [Damper, MultiFuel];

    /// <summary>Those that measure the exhaust with a probe.</summary>
    public static IReadOnlyList<string> ExhaustProbe { get; } = [Underfed, Sealed, Hydronic];

    /// <summary>Those whose board regulates the combustion blower by its speed sensor.</summary>
    public static IReadOnlyList<string> SpeedSensor { get; } = [Underfed, Sealed, Hydronic];

    /// <summary>Those with a blower for room air.</summary>
    public static IReadOnlyList<string> RoomAirBlower { get; } = [Damper, Thermocouple, Underfed, Sealed, MultiFuel];
}
