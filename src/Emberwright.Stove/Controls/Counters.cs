namespace Emberwright.Stove.Controls;

/// <summary>Counters that boards keep, by stable ids, and the other names they go by.</summary>
public static class Counters
{
    /// <summary>Hours with a fire.</summary>
    public const string Hours = "hours";
    /// <summary>Starts; each one calls the igniter.</summary>
    public const string Starts = "starts";
    /// <summary>Starts that proved no fire.</summary>
    public const string FailedStarts = "failed-starts";
    /// <summary>Hours with a fire since the service was last acknowledged on the board.</summary>
    public const string HoursSinceService = "hours-since-service";
    /// <summary>Starts since the service was last acknowledged on the board.</summary>
    public const string StartsSinceService = "starts-since-service";
    /// <summary>Failed starts since the service was last acknowledged on the board.</summary>
    public const string FailedSinceService = "failed-starts-since-service";

    private static readonly (string Id, string[] Names)[] Known =
    [
        (Hours, ["burn hours", "hours of operation", "operating hours", "run hours", "working hours", "total hours", "hour counter"]),
        (Starts, ["ignitions", "igniter starts", "number of starts", "start counter", "total starts"]),
        (FailedStarts, ["ignition failures", "failed ignitions", "missed ignitions", "no fire alarms", "start failures"]),
        (HoursSinceService, ["service hours", "hours since cleaning", "partial hours", "hours since last service"]),
        (StartsSinceService, ["partial starts", "starts since last service", "ignitions since service"]),
        (FailedSinceService, ["failed starts since last service", "ignition failures since service", "failed ignitions since service"]),
    ];

    /// <summary>Ids of all counters known, for messages.</summary>
    public static string Names { get; } = string.Join(", ", Known.Select(k => k.Id));

    /// <summary>The counter meant by a name, letter case and hyphens forgiven; null when it is none of these.</summary>
    /// <param name="name">Name as the board or the technician writes it.</param>
    public static string? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var plain = Plain(name);
        foreach (var (id, names) in Known)
            if (Plain(id) == plain || names.Contains(plain)) return id;
        return null;
    }

    private static string Plain(string name) =>
        string.Join(' ', name.ToLowerInvariant().Split([' ', '-', '_'], StringSplitOptions.RemoveEmptyEntries));
}
