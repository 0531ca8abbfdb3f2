using Emberwright.Stove;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Entering;

/// <summary>The instruments a technician reads with, as the visits on this phone name them.</summary>
public static class Instruments
{
    /// <summary>Every instrument known, by name; of one named in several visits, the latest entry.</summary>
    public static IReadOnlyList<InstrumentBody> Known(IEnumerable<Visit> visits) =>
    [
        .. visits
            .SelectMany(visit => visit.Of<InstrumentBody>())
            .GroupBy(fact => fact.Body.Name, StringComparer.OrdinalIgnoreCase)
            .Select(same => same.MaxBy(fact => fact.At)!.Body)
            .OrderBy(instrument => instrument.Name, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>The instrument that readings of a measure were last taken with, in this visit or else in any.</summary>
    public static string? LastFor(Measure measure, Visit visit, IEnumerable<Visit> others) =>
        With(measure, visit) ?? others.OrderByDescending(other => other.Began).Select(other => With(measure, other)).FirstOrDefault(name => name is not null);

    /// <summary>The entry to write when an instrument known from elsewhere is first used in this visit; null when the visit names it already.</summary>
    public static InstrumentBody? ToIntroduce(string name, Visit visit, IEnumerable<Visit> others)
    {
        if (visit.Of<InstrumentBody>().Any(fact => fact.Body.Name.Equals(name, StringComparison.OrdinalIgnoreCase))) return null;
        var known = Known(others).FirstOrDefault(instrument => instrument.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
        // Zeroing outdoors belongs to the day and is never carried over.
        return new InstrumentBody(known?.Name ?? name, known?.CalibratedUntil);
    }

    private static string? With(Measure measure, Visit visit) =>
        visit.Readings.LastOrDefault(reading => reading.Body.Measure == measure && reading.Body.Instrument is not null)?.Body.Instrument;
}
