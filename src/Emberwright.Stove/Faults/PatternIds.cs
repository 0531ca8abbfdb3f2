namespace Emberwright.Stove.Faults;

/// <summary>Ids of the patterns, and groups of them that share a way of construction, to which faults, signs and checks can be confined.</summary>
public static class PatternIds
{
    /// <summary>Damper-regulated top-feed insert proved by an exhaust disc.</summary>
    public const string Damper = "damper-insert";
    /// <summary>Thermocouple-proved top-feed freestanding stove.</summary>
    public const string Thermocouple = "thermocouple-freestanding";
    /// <summary>Underfed stove with swing-down exchanger panel and exhaust probe.</summary>
    public const string Underfed = "underfed";
    /// <summary>Sealed-combustion stove with pressure sensor and modulating blower.</summary>
    public const string Sealed = "sealed-combustion";
    /// <summary>Hydronic stove.</summary>
    public const string Hydronic = "hydronic";
    /// <summary>Multi-fuel stove with agitator.</summary>
    public const string MultiFuel = "multi-fuel-agitator";

    /// <summary>All patterns.</summary>
    public static IReadOnlyList<string> All { get; } = [Damper, Thermocouple, Underfed, Sealed, Hydronic, MultiFuel];

    /// <summary>Those whose combustion air is set by a damper.</summary>
    public static IReadOnlyList<string> AirDamper { get; } = [Damper, Thermocouple, MultiFuel];

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

    /// <summary>Those with a high-limit disc.</summary>
    public static IReadOnlyList<string> HighLimit { get; } = [Damper, Thermocouple, Underfed, Sealed, Hydronic];

    /// <summary>Those with a switch at the hopper lid.</summary>
    public static IReadOnlyList<string> LidSwitch { get; } = [Damper, Thermocouple, Underfed, Sealed];

    /// <summary>Those with a switch at the fuel door.</summary>
    public static IReadOnlyList<string> DoorSwitch { get; } = [Sealed, Hydronic, MultiFuel];

    /// <summary>Refuses an id that names no pattern.</summary>
    /// <param name="patternId">Id to test.</param>
    /// <exception cref="InputException">The id names no pattern; the message lists those there are.</exception>
    public static void Require(string patternId)
    {
        if (!All.Contains(patternId))
            throw new InputException("pattern", $"'{patternId}' names none", $"Give one of {string.Join(", ", All)}.");
    }
}
