using Emberwright.Visits.Journal;

namespace Emberwright.Visits;

/// <summary>Whether what a reading was taken with was in calibration on the day.</summary>
public static class Calibration
{
    /// <summary>True when the visit names the instrument and says that its calibration had run out; one that is not known has not.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="reading">The reading.</param>
    public static bool HadRunOut(this Visit visit, ReadingBody reading)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Instrument is { } name && visit.Day is { } day
            && visit.Of<InstrumentBody>().LastOrDefault(i => string.Equals(i.Body.Name, name, StringComparison.OrdinalIgnoreCase))?.Body.CalibratedUntil < day;
    }
}
