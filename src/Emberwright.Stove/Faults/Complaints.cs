namespace Emberwright.Stove.Faults;

/// <summary>
/// Ids of the sign "what does the customer complain of" and of its outcomes. A complaint is what is told on the
/// telephone, not what is wrong.
/// </summary>
public static class Complaints
{
    /// <summary>Id of the sign.</summary>
    public const string Sign = "complaint";
    /// <summary>Nothing lights, nothing runs.</summary>
    public const string Dead = "dead";
    /// <summary>Blowers run, no fuel falls.</summary>
    public const string NoFeed = "no-feed";
    /// <summary>Fuel falls, no fire.</summary>
    public const string NoLight = "no-light";
    /// <summary>Lights, then stops within the proving time.</summary>
    public const string StopsProving = "stops-proving";
    /// <summary>Runs for an hour or more, then stops.</summary>
    public const string StopsLater = "stops-later";
    /// <summary>Lazy orange flame, black glass.</summary>
    public const string LazyFlame = "lazy-flame";
    /// <summary>Flame too fierce, pellets pile up or overrun.</summary>
    public const string FierceFlame = "fierce-flame";
    /// <summary>Smoke or smell in the room.</summary>
    public const string SmokeOrSmell = "smoke-smell";
    /// <summary>Fire looks right, little heat.</summary>
    public const string LittleHeat = "little-heat";
    /// <summary>Overheats, trips its high limit.</summary>
    public const string TripsLimit = "trips-limit";
    /// <summary>Noise.</summary>
    public const string Noise = "noise";
    /// <summary>A CO alarm sounded or somebody felt ill.</summary>
    public const string CoAlarm = "co-alarm";
    /// <summary>Smoke in the room when the power failed.</summary>
    public const string PowerCutSmoke = "power-cut-smoke";
    /// <summary>Water boils, bangs, or the radiators stay cold.</summary>
    public const string Boils = "boils";
    /// <summary>Burns more fuel than it should.</summary>
    public const string EatsFuel = "eats-fuel";
    /// <summary>Starts by hand, never by its thermostat.</summary>
    public const string AutomaticOnly = "no-start-auto";
    /// <summary>Shows an alarm and stops or refuses.</summary>
    public const string AlarmShown = "alarm-shown";
    /// <summary>Smoke from the hopper.</summary>
    public const string HopperSmoke = "hopper-smoke";
    /// <summary>Feeds or burns on after it is switched off.</summary>
    public const string WillNotStop = "will-not-stop";
    /// <summary>Due for service, nothing wrong.</summary>
    public const string Due = "due";

    /// <summary>Stated probabilities of complaints under a fault; what they leave is shared among the others.</summary>
    internal static IEnumerable<Symptom> Says(params (string Outcome, double Probability)[] complaints) =>
        complaints.Select(c => new Symptom(Sign, c.Outcome, c.Probability));
}
