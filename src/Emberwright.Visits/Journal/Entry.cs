using System.Security.Cryptography;
using System.Text;

namespace Emberwright.Visits.Journal;

/// <summary>
/// One fact of a visit, exactly as first written. It is never edited: a correction is another entry. Only a person's
/// words may leave it, on request; see <see cref="Redaction"/>.
/// Two entries are equal when their id, line and place in the order are; the body follows from the line.
/// </summary>
public sealed class Entry : IComparable<Entry>, IEquatable<Entry>
{
    /// <summary>Device name of lines that name none, such as those written by hand.</summary>
    public const string ByHand = "by-hand";

    /// <summary>Id: UUID version 7 when the app wrote it, derived from the line when the line has none.</summary>
    public required string Id { get; init; }

    /// <summary>The device that wrote it. A restored device takes a new one.</summary>
    public required string Device { get; init; }

    /// <summary>Counts the device's entries in this visit from 1; never reused.</summary>
    public required long Seq { get; init; }

    /// <summary>Who says so.</summary>
    public required string Author { get; init; }

    /// <summary>When, by the device's clock and with its offset from UTC.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Its place in the order of all devices' entries.</summary>
    public required HybridClock Clock { get; init; }

    /// <summary>What it says.</summary>
    public required EntryBody Body { get; init; }

    /// <summary>The line as first written, without its line end.</summary>
    public required string Line { get; init; }

    /// <summary>Hash of the line as first written, where words were erased from it since; null for a line that stands as written.</summary>
    public string? Was { get; init; }

    /// <summary>SHA-256 of the UTF-8 bytes of the line as first written, lower-case hexadecimal.</summary>
    public string LineHash() => Was ?? Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Line)));

    /// <summary>Order of the journal: clock, device, seq, then id and line so that the order is total.</summary>
    public int CompareTo(Entry? other)
    {
        if (other is null) return 1;
        var order = Clock.CompareTo(other.Clock);
        if (order == 0) order = string.CompareOrdinal(Device, other.Device);
        if (order == 0) order = Seq.CompareTo(other.Seq);
        if (order == 0) order = string.CompareOrdinal(Id, other.Id);
        return order != 0 ? order : string.CompareOrdinal(Line, other.Line);
    }

    /// <inheritdoc/>
    public bool Equals(Entry? other) => other is not null && CompareTo(other) == 0;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Entry);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Line);

    /// <summary>Whether both are the same entry.</summary>
    public static bool operator ==(Entry? left, Entry? right) => left is null ? right is null : left.Equals(right);
    /// <summary>Whether they differ.</summary>
    public static bool operator !=(Entry? left, Entry? right) => !(left == right);
    /// <summary>Before.</summary>
    public static bool operator <(Entry left, Entry right) => left.CompareTo(right) < 0;
    /// <summary>After.</summary>
    public static bool operator >(Entry left, Entry right) => left.CompareTo(right) > 0;
    /// <summary>Not after.</summary>
    public static bool operator <=(Entry left, Entry right) => left.CompareTo(right) <= 0;
    /// <summary>Not before.</summary>
    public static bool operator >=(Entry left, Entry right) => left.CompareTo(right) >= 0;
}
