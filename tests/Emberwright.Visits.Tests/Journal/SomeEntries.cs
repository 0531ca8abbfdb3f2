using CsCheck;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Tests.Journal;

/// <summary>Makes journals as several devices would: each writes with its own clock, and some see each other's entries.</summary>
internal static class SomeEntries
{
    public static readonly DateTimeOffset Start = new(2026, 1, 14, 9, 30, 0, TimeSpan.FromHours(-5));

    public static readonly Gen<EntryBody> Body = Gen.OneOf<EntryBody>(
        Gen.Int[0, 99].Select(n => (EntryBody)new NoteBody($"note {n}")),
        Gen.Int[-90, 20].Select(n => (EntryBody)Reading(n)),
        Gen.Int[0, 3000].Select(n => (EntryBody)new SiteBody(Altitude: new Quantity(n, Units.Metre))),
        Gen.Int[0, 2].Select(n => (EntryBody)new ActionBody($"action-{n}", Area.Vent)));

    /// <summary>One step of one of three devices; a step may first take in what another has.</summary>
    public static readonly Gen<(int Device, int Seen, EntryBody Body, int ClockError)[]> Story =
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 4], Body, Gen.Int[-90, 90]).Array[0, 14];

    public static ReadingBody Reading(double pa) =>
        new("firebox", false, Measure.Pressure, Condition.FanOnly, new Quantity(pa, Units.Pascal), new Quantity(pa, Units.Pascal).ToString());

    public static VisitJournal[] Play((int Device, int Seen, EntryBody Body, int ClockError)[] story)
    {
        var journals = Enumerable.Range(0, 3).Select(_ => VisitJournal.Begin("visit-1")).ToArray();
        for (var step = 0; step < story.Length; step++)
        {
            var (device, seen, body, error) = story[step];
            if (seen < 3) journals[device] = journals[device].Merge(journals[seen]);
            journals[device] = Device(device, Start.AddMinutes(step + error), step).Append(journals[device], body);
        }

        return journals;
    }

    public static EntryFactory Device(int number, DateTimeOffset now, int step) =>
        new($"device-{number}", $"author {number}", new StandingClock(now), at => Id(at, number, step));

    public static Guid Id(DateTimeOffset at, int device, int step)
    {
        var bytes = Guid.CreateVersion7(at).ToByteArray(bigEndian: true);
        Array.Clear(bytes, 8, 8);
        (bytes[6], bytes[7], bytes[8], bytes[14], bytes[15]) = (0x70, 0, 0x80, (byte)device, (byte)step);
        return new Guid(bytes, bigEndian: true);
    }

    private sealed class StandingClock(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now.ToUniversalTime();

        public override TimeZoneInfo LocalTimeZone { get; } = TimeZoneInfo.CreateCustomTimeZone("here", now.Offset, "here", "here");
    }
}
