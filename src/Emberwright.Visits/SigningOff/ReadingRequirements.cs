using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;
using static Emberwright.Visits.SigningOff.Finding;

namespace Emberwright.Visits.SigningOff;

/// <summary>What concerns readings as found and as left, and the instruments they were read with.</summary>
internal static class ReadingRequirements
{
    // What wind of 4 m/s on a wall comes to, Cp·ρ·V²/2 with Cp 0.8; from memory.
    private const double WeatherPa = 8;

    // A field gauge's share of its reading; common practice, no source.
    private const double InstrumentShare = 0.03;

    /// <summary>Place of the pressure at which the vacuum switch opens, tried with a hand pump.</summary>
    public const string SwitchOpens = "switch-opens";

    // Gusts move a firebox by a few pascals; nearer than this to the switch's limit they stop the stove. Common practice, no source.
    private const double SwitchMarginPa = 5;

    public static Requirement AsFound { get; } = new("as-found", Section.AsFound, facts => Unless(
        facts.Visit.AsFound.Any(r => r.Body.Measure == Measure.Pressure), "Record at least one pressure as found, before any work."));

    public static Requirement AsLeft { get; } = new("as-left", Section.AsLeft, Left);

    public static Requirement FlueAsLeft { get; } = new("flue-as-left", Section.AsLeft, facts => Unless(
        facts.Visit.LeftWith.Any(r => r.Body.Measure is Measure.Oxygen or Measure.CarbonDioxide && r.Body.Condition.Fire == FireState.High),
        "Record the flue gas at high burn: it is this stove's baseline."));

    public static Requirement InBand { get; } = new("in-band", Section.AsLeft, facts =>
        facts.OutOfBand.SelectMany(found => Explained(facts, found.Reading, found.Comparison.Band.Low, found.Comparison.Band.High)));

    public static Requirement SwitchMargin { get; } = new("switch-margin", Section.AsLeft, Margin);

    public static Requirement InstrumentsInDate { get; } = new("instruments", Section.AsLeft, facts =>
        facts.Visit.LeftWith.Select(r => r.Body.Instrument).Distinct().SelectMany(name => InDate(facts, name)));

    private static IEnumerable<Finding> Left(SignOffFacts facts)
    {
        var left = facts.Visit.LeftWith.Where(r => r.Body is { Measure: Measure.Pressure } body && body.Condition == Condition.FanOnly).ToArray();
        if (left.Length == 0) return [Lacks("Record a pressure as left, fan only, cold.")];
        return Unless(
            left.Any(r => r.Epoch >= facts.LastWork(Area.CombustionBlower, Area.AshPassages, Area.Vent, Area.BurnPot, Area.Seals)),
            "Read a pressure as left again, fan only, cold: the air path was worked on since.");
    }

    private static IEnumerable<Finding> Explained(SignOffFacts facts, Reading reading, double low, double high)
    {
        var found = $"{SignOffFacts.Said(reading)}: {reading.Body.Written} where {Shown(low, reading.Body)} to {Shown(high, reading.Body)} is healthy";
        if (ExplanationOf(facts, reading) is not { } why)
            return [Lacks($"{found}. Cure it, or give a cause and a consequence from the list; other words explain nothing.")];
        return (Supported(facts, why) ?? Overstated(reading.Body, why, low, high)) is { } lack ? [Lacks($"{found}. {lack}")] : [Limits($"{found}: {Words(why.Cause!.Value)}; {Words(why.Consequence!.Value)}.")];
    }

    private static ExplanationBody? ExplanationOf(SignOffFacts facts, Reading reading) =>
        facts.Visit.Of<ExplanationBody>().Select(e => e.Body).LastOrDefault(e =>
            e is { Cause: not null, Consequence: not null } && (e.Entry == reading.Id || (e.Entry is null && e.Place == reading.Body.Place)));

    private static string? Supported(SignOffFacts facts, ExplanationBody why)
    {
        var returning = facts.Has<DueBody>(d => d.For == DueFor.Return);
        return why.Cause switch
        {
            Cause.WorkRefused when !facts.RefusedInWriting(null) => "Record the owner's written refusal of the work.",
            Cause.WorkRefused or Cause.PartOnOrder when !returning => "Set the date of return.",
            _ => null,
        };
    }

    // Wind and cold move a pressure by a few pascals and nothing else; an instrument hides no more than its last digits.
    private static string? Overstated(ReadingBody reading, ExplanationBody why, double low, double high)
    {
        var miss = Math.Max(low - reading.Si, reading.Si - high);
        var digit = Quantity.Of(1, reading.Measure).Unit == reading.Value.Unit ? reading.Step
            : Math.Abs(new Quantity(reading.Step, reading.Value.Unit).In(reading.Measure) - new Quantity(0, reading.Value.Unit).In(reading.Measure));
        return why.Cause switch
        {
            Cause.WeatherToday when reading.Measure != Measure.Pressure || miss > WeatherPa => "The day's weather cannot do that much.",
            Cause.InstrumentLimit when miss > Math.Max(2 * digit, InstrumentShare * Math.Abs(reading.Si)) => "It misses by more than the instrument's own limit.",
            _ => null,
        };
    }

    private static IEnumerable<Finding> Margin(SignOffFacts facts)
    {
        var opens = facts.Visit.Readings.LastOrDefault(r => r.Body is { Place: SwitchOpens, Measure: Measure.Pressure });
        var sensed = facts.LeftFanOnly(Places.SwitchHose) ?? facts.LeftFanOnly(Places.Firebox);
        if (opens is null || sensed is null) return [];
        var margin = Math.Abs(sensed.Body.Si) - Math.Abs(opens.Body.Si);
        if (margin >= SwitchMarginPa) return [];
        var words = $"The vacuum as left, {sensed.Body.Written}, is only {QuantityFormat.In(margin, Units.Pascal, 1)} above what opens the vacuum switch: a gust stops the stove";
        return ExplanationOf(facts, sensed) is { Consequence: Consequence.MarginReduced or Consequence.RestrictionRemains } why && Supported(facts, why) is null
            ? [Limits(words + ".")]
            : [Lacks(words + ". Find what weakens it.")];
    }

    private static IEnumerable<Finding> InDate(SignOffFacts facts, string? name)
    {
        if (string.IsNullOrWhiteSpace(name)) return [Lacks("Name the instrument of every reading as left.")];
        return facts.Instrument(name) switch
        {
            null or { CalibratedUntil: null } => [Lacks($"Record until when the calibration of '{name}' holds.")],
            { CalibratedUntil: { } until } when facts.Visit.Day is { } day && until < day => [Lacks($"The calibration of '{name}' ended on {until:yyyy-MM-dd}; read again with one in date.")],
            _ => [],
        };
    }

    // In the unit and to the digits of the reading beside it.
    private static string Shown(double value, ReadingBody like) =>
        QuantityFormat.In(Quantity.Of(value, like.Measure).In(like.Value.Unit), like.Value.Unit, like.Step);

    private static string Words(Cause cause) => cause switch
    {
        Cause.WorkRefused => "the owner refused the work in writing",
        Cause.NoAccess => "the place could not be reached safely",
        Cause.PartOnOrder => "a part is on order",
        Cause.WeatherToday => "the day's wind or temperature",
        Cause.InstrumentLimit => "the instrument cannot resolve it",
    };

    private static string Words(Consequence consequence) => consequence switch
    {
        Consequence.RestrictionRemains => "a passage or the vent stays restricted",
        Consequence.MarginReduced => "the stove stands nearer to a safety switch's limit than it should",
        Consequence.UseLimited => "the stove may be used only as written here",
        Consequence.ReadingUncertain => "the reading says little",
    };
}
