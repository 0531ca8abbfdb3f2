using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.SigningOff;

/// <summary>What the requirements look at: the visit, its bands and stops.</summary>
internal sealed class SignOffFacts(Visit visit, IReadOnlyList<Comparison> comparisons, IReadOnlyList<StandingStop> stops)
{
    public Visit Visit => visit;

    public IReadOnlyList<StandingStop> Stops => stops;

    /// <summary>The stop-use notice that stands, or null.</summary>
    public NoticeBody? Notice { get; } = visit.Of<NoticeBody>().LastOrDefault()?.Body is { Lifted: false } notice ? notice : null;

    /// <summary>Readings the stove was left with that lie outside their bands.</summary>
    public IEnumerable<(Reading Reading, Comparison Comparison)> OutOfBand =>
        from reading in visit.LeftWith
        from comparison in comparisons
        where comparison.Evidence == reading.Id && comparison.Verdict != Verdict.In
        select (reading, comparison);

    public bool Has<T>(Func<T, bool> match) where T : EntryBody => visit.Of<T>().Any(f => match(f.Body));

    public bool Has<T>() where T : EntryBody => visit.Of<T>().Any();

    /// <summary>Epoch of the last work done in any of these areas; 0 when none was. What proves that work comes in it or later.</summary>
    public int LastWork(params ReadOnlySpan<Area> areas)
    {
        var last = 0;
        foreach (var fact in visit.Of<ActionBody>())
            if (fact.Body is { Done: true, Area: { } area } && areas.Contains(area)) last = fact.Epoch;
        return last;
    }

    /// <summary>The last pressure the stove was left with at a place, fan only.</summary>
    public Reading? LeftFanOnly(string place) =>
        visit.LeftWith.LastOrDefault(r => r.Body.Observable == new Observable(Measure.Pressure, place, Condition.FanOnly));

    /// <summary>An instrument by the name readings use.</summary>
    public InstrumentBody? Instrument(string? name) =>
        visit.Of<InstrumentBody>().LastOrDefault(i => string.Equals(i.Body.Name, name, StringComparison.OrdinalIgnoreCase))?.Body;

    /// <summary>The refusal of work in an area, in writing.</summary>
    public bool RefusedInWriting(Area? area) =>
        Has<ConsentBody>(c => c is { Given: false, InWriting: true } && (c.Area is null || area is null || c.Area == area));

    public static string Said(Reading reading) => $"{reading.Body.Place}, {ConditionText.Format(reading.Body.Condition)}";
}
