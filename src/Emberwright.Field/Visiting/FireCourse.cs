using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Visiting;

/// <summary>The test fire as recorded: when each of its moments came. A new start begins it again.</summary>
/// <param name="Moments">The last entry of each moment since the last start.</param>
public sealed record FireCourse(IReadOnlyDictionary<FireMoment, DateTimeOffset> Moments)
{
    /// <summary>Half an hour on high before CO in the room counts. Common practice, no source.</summary>
    public static readonly TimeSpan Enough = TimeSpan.FromMinutes(30);

    /// <summary>Reads it from a visit.</summary>
    public static FireCourse Of(Visit visit)
    {
        var moments = new Dictionary<FireMoment, DateTimeOffset>();
        foreach (var fact in visit.Of<FireBody>())
        {
            if (fact.Body.Moment == FireMoment.Called) moments.Clear();
            moments[fact.Body.Moment] = fact.At;
        }
        return new(moments);
    }

    /// <summary>When a moment came, or null.</summary>
    public DateTimeOffset? At(FireMoment moment) => Moments.TryGetValue(moment, out var at) ? at : null;

    /// <summary>How long it has burned on high, never negative; null when it was not set to high. It ends with the shutdown.</summary>
    public TimeSpan? OnHigh(DateTimeOffset now) => At(FireMoment.High) is { } high
        ? TimeSpan.FromTicks(Math.Max(0, ((At(FireMoment.Shutdown) ?? now) - high).Ticks))
        : null;

    /// <summary>The moments that may still come: those after the last recorded one.</summary>
    public IEnumerable<FireMoment> ToCome =>
        Enum.GetValues<FireMoment>().Where(moment => Moments.Count == 0 || moment > Moments.Keys.Max());
}
