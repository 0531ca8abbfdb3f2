using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Visits.Fouling;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>How far a visit is.</summary>
public enum VisitState
{
    /// <summary>A call, nothing done on site.</summary>
    Called,
    /// <summary>Work on site has begun.</summary>
    Begun,
    /// <summary>Closed by its seal.</summary>
    SignedOff,
}

/// <summary>A part that a visit names.</summary>
/// <param name="Part">What it is.</param>
/// <param name="Number">Its number.</param>
/// <param name="Use">fitted, removed, ordered, returned.</param>
/// <param name="Tag">Return or warranty tag.</param>
/// <param name="At">When it was written down.</param>
public sealed record PartUsed(string Part, string? Number, string? Use, string? Tag, DateTimeOffset At)
{
    /// <summary>True when it left the van.</summary>
    public bool IsFitted => Use is null || Use.Contains("fitted", StringComparison.OrdinalIgnoreCase);
}

/// <summary>A fault or its absence with its probability as found and now.</summary>
/// <param name="Fault">Fault id.</param>
/// <param name="AsFound">Probability as found.</param>
/// <param name="Now">Probability as left.</param>
public sealed record Concluded(string Fault, double AsFound, double Now);

/// <summary>
/// One visit in a line: what lists, search, plots and learning need, so that no list has to fold a journal. Derived
/// from the journal; kept beside it and made anew at any time.
/// </summary>
public sealed record VisitSummary
{
    /// <summary>Id of the visit.</summary>
    public required string Visit { get; init; }

    /// <summary>The stove's <see cref="StoveKey"/>.</summary>
    public required string Stove { get; init; }

    /// <summary>How far it is.</summary>
    public VisitState State { get; init; }

    /// <summary>The day.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>When it was booked for.</summary>
    public DateTimeOffset? Booked { get; init; }

    /// <summary>What it is for.</summary>
    public VisitKind? Kind { get; init; }

    /// <summary>Job it belongs to.</summary>
    public string? Job { get; init; }

    /// <summary>Customer's name.</summary>
    public string? Customer { get; init; }

    /// <summary>Address.</summary>
    public string? Address { get; init; }

    /// <summary>Telephone.</summary>
    public string? Phone { get; init; }

    /// <summary>Pattern id.</summary>
    public string? Pattern { get; init; }

    /// <summary>Maker.</summary>
    public string? Maker { get; init; }

    /// <summary>Model.</summary>
    public string? Model { get; init; }

    /// <summary>Serial number.</summary>
    public string? Serial { get; init; }

    /// <summary>Words of the label and what the stove is called.</summary>
    public string? Label { get; init; }

    /// <summary>The complaint in the customer's words.</summary>
    public string? Complaint { get; init; }

    /// <summary>True while a stop-use notice stands.</summary>
    public bool StopUse { get; init; }

    /// <summary>The date agreed last, and what for.</summary>
    public DueBody? Due { get; init; }

    /// <summary>Parts named.</summary>
    public IReadOnlyList<PartUsed> Parts { get; init; } = [];

    /// <summary>Alarm codes.</summary>
    public IReadOnlyList<string> Codes { get; init; } = [];

    /// <summary>What was done, by action id, with the minutes since the entry before; 0 when not known.</summary>
    public IReadOnlyList<(string Action, double Minutes)> Work { get; init; } = [];

    /// <summary>What was concluded of causes when it was closed; those of 5 % or more as found.</summary>
    public IReadOnlyList<Concluded> Causes { get; init; } = [];

    /// <summary>What it saw of the stove's fouling; null without a day.</summary>
    public AreasSeen? Seen { get; init; }

    /// <summary>Exhaust as left on high burn, °C.</summary>
    public double? ExhaustC { get; init; }

    /// <summary>O2 as left on high burn, %.</summary>
    public double? OxygenPercent { get; init; }

    /// <summary>CO in the flue as left on high burn, ppm.</summary>
    public double? CarbonMonoxidePpm { get; init; }

    /// <summary>Minutes from the first thing done on site to the last; null when nothing was.</summary>
    public double? MinutesOnSite { get; init; }

    /// <summary>Sums a visit up.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="beliefs">What was concluded when it was closed; null leaves areas and causes empty.</param>
    public static VisitSummary Of(Visit visit, Beliefs? beliefs)
    {
        ArgumentNullException.ThrowIfNull(visit);
        double? Left(Measure measure) => visit.LeftWith.LastOrDefault(r => r.Body.Measure == measure && r.Body.Condition.Fire == FireState.High && r.Body.Place != Places.Room)?.Body.Si;
        var onSite = visit.Facts.Where(f => IsOnSite(f.Body)).ToArray();
        return new VisitSummary
        {
            Visit = visit.Id,
            Stove = StoveKey.Of(visit),
            State = visit.Seal is not null ? VisitState.SignedOff : onSite.Length > 0 ? VisitState.Begun : VisitState.Called,
            Day = visit.Day,
            Booked = visit.Call?.Booked,
            Kind = visit.Call?.VisitKind,
            Job = visit.Call?.Job,
            Customer = Shown(visit.Customer?.Name),
            Address = Shown(visit.Customer?.Address),
            Phone = Shown(visit.Customer?.Phone),
            Pattern = visit.Appliance?.Pattern,
            Maker = visit.Appliance?.Maker,
            Model = visit.Appliance?.Model,
            Serial = visit.Appliance?.Serial,
            Label = string.Join(' ', new[] { visit.Appliance?.Name, visit.Appliance?.Label }.OfType<string>()) is { Length: > 0 } label ? label : null,
            Complaint = visit.Of<ComplaintBody>().FirstOrDefault()?.Body.Words,
            StopUse = visit.Of<NoticeBody>().LastOrDefault()?.Body is { Lifted: false },
            Due = visit.Of<DueBody>().LastOrDefault()?.Body,
            Parts = [.. visit.Of<PartBody>().Select(p => new PartUsed(p.Body.Part, p.Body.Number, p.Body.Use, p.Body.Tag, p.At))],
            Codes = [.. visit.Of<CodeBody>().Select(c => c.Body.Code).Distinct()],
            Work = [.. WorkOf(visit)],
            Causes = [.. (beliefs?.Suspects ?? []).Where(s => s.AsFound >= 0.05).Select(s => new Concluded(s.Fault, s.AsFound, s.Probability))],
            Seen = AreasSeen.Of(visit, beliefs?.Areas ?? []),
            ExhaustC = Left(Measure.Temperature),
            OxygenPercent = Left(Measure.Oxygen),
            CarbonMonoxidePpm = Left(Measure.CarbonMonoxide),
            MinutesOnSite = onSite.Length > 1 ? (onSite[^1].At - onSite[0].At).TotalMinutes : null,
        };
    }

    /// <summary>All words one may search by, in lower case.</summary>
    public string Text() => string.Join('\n',
        new[] { PersonalWords.Known(Customer), PersonalWords.Known(Address), PersonalWords.Known(Phone), Maker, Model, Serial, Label, Complaint, Job, Pattern?.Replace('-', ' ') }
            .Concat(Parts.SelectMany(p => new[] { p.Part, p.Number })).Concat(Codes).Where(w => !string.IsNullOrEmpty(w))).ToLowerInvariant();

    // Words kept apart and not here are not known; that some were erased is.
    private static string? Shown(string? words) => Blob.IsReference(words) ? null : words;

    // A call and its answers alone are not on site.
    private static bool IsOnSite(EntryBody body) => body is SafeBody or ReadingBody or ObservationBody or ActionBody or PhotoBody or ProofBody;

    // The time stated for a piece of work, else the time since the entry before it.
    private static IEnumerable<(string, double)> WorkOf(Visit visit)
    {
        var stated = visit.Labour.ToDictionary(l => l.Body.Work, l => l.Body.Minutes);
        for (var i = 0; i < visit.Facts.Count; i++)
            if (visit.Facts[i] is { Body: ActionBody { Done: true } action } fact)
                yield return (action.Action, stated.TryGetValue(action.Action, out var minutes) ? minutes : i > 0 ? (fact.At - visit.Facts[i - 1].At).TotalMinutes : 0);
        foreach (var timed in ChecksTimed.Of(visit)) yield return timed;
    }
}
