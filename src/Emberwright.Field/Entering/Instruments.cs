using Emberwright.Field.Store;
using Emberwright.Stove;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Entering;

/// <summary>The instruments a technician reads with: those that travel with this phone, and those its visits name.</summary>
/// <param name="own">Those that travel with this phone.</param>
/// <param name="visits">The visits on this phone.</param>
public sealed class Instruments(IReadOnlyList<OwnInstrument> own, IEnumerable<Visit> visits)
{
    /// <summary>Every instrument known, by name; own ones first, of one named in several visits the latest entry.</summary>
    public IReadOnlyList<InstrumentBody> Known { get; } =
    [
        .. own.Select(one => new InstrumentBody(one.Name, one.Until))
            .Concat(visits
                .SelectMany(visit => visit.Of<InstrumentBody>())
                .GroupBy(fact => fact.Body.Name, StringComparer.OrdinalIgnoreCase)
                .Select(same => same.MaxBy(fact => fact.At)!.Body)
                .OrderBy(instrument => instrument.Name, StringComparer.OrdinalIgnoreCase))
            .DistinctBy(instrument => instrument.Name, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>The instrument for a reading: the one this visit last read the like with, else the phone's own, else the one any visit did.</summary>
    public string? For(Observable what, Visit visit) =>
        With(what, visit)
        ?? own.LastOrDefault(one => one.Tool == OwnInstrument.For(what))?.Name
        ?? visits.OrderByDescending(other => other.Began).Select(other => With(what, other)).FirstOrDefault(name => name is not null);

    /// <summary>
    /// The entries of one reading: the instrument, when this visit does not name it yet, and the reading.
    /// </summary>
    /// <param name="visit">The visit.</param>
    /// <param name="reading">The reading, its instrument named or null.</param>
    /// <param name="zeroedOutdoors">True when the person says that the instrument was zeroed outdoors today.</param>
    public IReadOnlyList<EntryBody> Entries(Visit visit, ReadingBody reading, bool zeroedOutdoors = false)
    {
        if (reading.Instrument is not { } name) return [reading];
        var named = visit.Of<InstrumentBody>().LastOrDefault(fact => Same(fact.Body.Name, name))?.Body;
        if (named is not null && (named.ZeroedOutdoors || !zeroedOutdoors)) return [reading];
        // Zeroing outdoors belongs to the day and is never carried over from another visit.
        var instrument = named ?? Known.FirstOrDefault(one => Same(one.Name, name)) ?? new InstrumentBody(name);
        return [instrument with { ZeroedOutdoors = zeroedOutdoors }, reading];
    }

    private static string? With(Observable what, Visit visit) =>
        visit.Readings.LastOrDefault(reading => reading.Body.Instrument is not null && Alike(reading.Body.Observable, what))?.Body.Instrument;

    private static bool Alike(Observable one, Observable other) =>
        one.Measure == other.Measure && OwnInstrument.For(one) == OwnInstrument.For(other);

    private static bool Same(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
}
