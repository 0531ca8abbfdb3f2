// Question: in which order did entries of several devices come, when their clocks differ?
// Equation: at a local event l' = max(l, now), c' = l' = l ? c + 1 : 0; on seeing a remote (lm, cm) first take the
//   greater of the two pairs, then the same rule.
// Symbols: l physical part, ms since 1970-01-01T00:00Z; c counter.
// Validity: any clocks; an entry written after another was seen always sorts after it. Entries of devices that had not
//   seen each other sort by their clocks, which may be wrong by as much as the clocks are.
// Source: Kulkarni, Demirbas, Madappa, Avva, Leone, "Logical Physical Clocks" (OPODIS 2014), figure 5.
// Worked value: last (10, 2), now 9 → (10, 3); last (10, 2), now 12 → (12, 0).
using System.Globalization;

namespace Emberwright.Visits.Journal;

/// <summary>
/// A hybrid logical clock reading. It orders entries; it is not the time to show (that is <see cref="Entry.At"/>).
/// </summary>
/// <param name="Milliseconds">Physical part, ms since 1970-01-01T00:00Z.</param>
/// <param name="Counter">Order among readings with the same physical part, from 0.</param>
public readonly record struct HybridClock(long Milliseconds, int Counter) : IComparable<HybridClock>
{
    /// <summary>The next reading after this one at a local time; always greater than this one.</summary>
    public HybridClock Next(DateTimeOffset now)
    {
        var ms = now.ToUnixTimeMilliseconds();
        return ms > Milliseconds ? new(ms, 0) : new(Milliseconds, Counter + 1);
    }

    /// <inheritdoc/>
    public int CompareTo(HybridClock other) =>
        Milliseconds != other.Milliseconds ? Milliseconds.CompareTo(other.Milliseconds) : Counter.CompareTo(other.Counter);

    /// <summary>Reads <c>milliseconds:counter</c>.</summary>
    public static bool TryParse(string? text, out HybridClock clock)
    {
        clock = default;
        var parts = (text ?? "").Split(':');
        if (parts.Length != 2
            || !long.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var ms)
            || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var counter)) return false;
        clock = new(ms, counter);
        return true;
    }

    /// <summary>The form in files, <c>milliseconds:counter</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Milliseconds}:{Counter}");

    /// <summary>Earlier than.</summary>
    public static bool operator <(HybridClock left, HybridClock right) => left.CompareTo(right) < 0;
    /// <summary>Later than.</summary>
    public static bool operator >(HybridClock left, HybridClock right) => left.CompareTo(right) > 0;
    /// <summary>Not later than.</summary>
    public static bool operator <=(HybridClock left, HybridClock right) => left.CompareTo(right) <= 0;
    /// <summary>Not earlier than.</summary>
    public static bool operator >=(HybridClock left, HybridClock right) => left.CompareTo(right) >= 0;
}
