using System.Collections.Immutable;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Profile;

/// <summary>A range with its most likely value, all Pa relative to the room at the port's height.</summary>
/// <param name="LowPa">Lower edge.</param>
/// <param name="MidPa">Most likely.</param>
/// <param name="HighPa">Upper edge.</param>
public readonly record struct PressureBand(double LowPa, double MidPa, double HighPa);

/// <summary>Whether readings are from before or after the work. Before is drawn hollow, after full.</summary>
public enum Moment
{
    /// <summary>As found.</summary>
    Found,
    /// <summary>As left.</summary>
    Left,
}

/// <summary>One port along the way of the air.</summary>
/// <param name="Id">Port id, e.g. <c>firebox</c>; what a tap on it reports.</param>
/// <param name="Name">Its name under the picture.</param>
/// <param name="Healthy">What a healthy stove would show here, today, in this condition.</param>
public sealed record ProfileStation(string Id, string Name, PressureBand Healthy)
{
    /// <summary>Name for the small form, e.g. "fire"; null takes <see cref="Name"/>.</summary>
    public string? ShortName { get; init; }

    /// <summary>Today's reading, Pa; null when none was taken.</summary>
    public double? ReadingPa { get; init; }

    /// <summary>The word for a reading out of band; null lets the picture say too weak, too strong, low or high.</summary>
    public string? Verdict { get; init; }

    /// <summary>The last visit's as-left reading, Pa.</summary>
    public double? LastPa { get; init; }

    /// <summary>What the leading suspect predicts here, Pa.</summary>
    public double? PredictedPa { get; init; }
}

/// <summary>A pressure at which something switches, at one port.</summary>
/// <param name="StationId">The port it feels.</param>
/// <param name="Pa">Where it switches, Pa.</param>
/// <param name="Name">What it is, e.g. "vacuum switch".</param>
/// <param name="Does">What it does there, and the picture adds the pressure in its own unit; null says that it opens.</param>
public sealed record ProfileThreshold(string StationId, double Pa, string Name, string? Does = null)
{
    /// <summary>What it does and where, e.g. "opens at −10 Pa".</summary>
    public string Text(PressureUnit unit) => Does is { } does ? $"{does} {unit.Value(Pa)}" : Say.Of("profile.opens-at", unit.Value(Pa));
}

/// <summary>
/// Everything the pressure profile shows: the ports from room to outdoors, the parts between them, what is
/// healthy, what was read.
/// </summary>
public sealed record ProfileInput
{
    /// <summary>Prefix of ids, unique on the page.</summary>
    public string Id { get; init; } = "profile";

    /// <summary>What the picture is, e.g. "Pressure profile, as found, fan only".</summary>
    public required string Title { get; init; }

    /// <summary>The ports in the order of the air; one or more.</summary>
    public required ImmutableArray<ProfileStation> Stations { get; init; }

    /// <summary>Names of the parts between room, ports and outdoors: one more than ports.</summary>
    public required ImmutableArray<string> Parts { get; init; }

    /// <summary>Outdoors against the room; nought when the house is at outdoor pressure.</summary>
    public PressureBand Outdoors { get; init; }

    /// <summary>Before or after the work.</summary>
    public Moment Moment { get; init; }

    /// <summary>Where switches act.</summary>
    public ImmutableArray<ProfileThreshold> Thresholds { get; init; } = [];

    /// <summary>Unit of the left axis, tags and ledger.</summary>
    public PressureUnit Unit { get; init; } = PressureUnit.Pascal;

    /// <summary>Unit of the right axis.</summary>
    public PressureUnit SecondUnit { get; init; } = PressureUnit.InchOfWater;

    /// <summary>Key to the hollow bars.</summary>
    public string LastCaption { get; init; } = Say.Of("profile.last-visit-as-left");

    /// <summary>Key to the dashed line, e.g. "if ash passages are half blocked"; null when nothing is predicted.</summary>
    public string? PredictionCaption { get; init; }

    /// <summary>Throws unless the record can be drawn.</summary>
    /// <exception cref="ArgumentException">Names the field, its value and what it must be.</exception>
    public void Check()
    {
        if (Stations.IsDefaultOrEmpty) throw new ArgumentException("Stations is empty; a pressure profile needs at least one port.");
        if (Parts.IsDefault || Parts.Length != Stations.Length + 1)
            throw new ArgumentException($"Parts has {(Parts.IsDefault ? 0 : Parts.Length)} names; with {Stations.Length} ports there are {Stations.Length + 1} parts, from the room to outdoors.");
        CheckBand("Outdoors", Outdoors);
        foreach (var s in Stations)
        {
            CheckBand($"Healthy of port '{s.Id}'", s.Healthy);
            CheckFinite($"ReadingPa of port '{s.Id}'", s.ReadingPa);
            CheckFinite($"LastPa of port '{s.Id}'", s.LastPa);
            CheckFinite($"PredictedPa of port '{s.Id}'", s.PredictedPa);
        }

        foreach (var t in Thresholds)
        {
            CheckFinite($"Pa of threshold '{t.Name}'", t.Pa);
            if (Stations.All(s => s.Id != t.StationId))
                throw new ArgumentException($"The threshold '{t.Name}' is at port '{t.StationId}', which is not among {string.Join(", ", Stations.Select(s => s.Id))}.");
        }
    }

    private static void CheckBand(string field, PressureBand band)
    {
        CheckFinite(field, band.LowPa);
        CheckFinite(field, band.HighPa);
        if (!(band.LowPa <= band.MidPa && band.MidPa <= band.HighPa))
            throw new ArgumentException($"{field} is {band.LowPa} … {band.MidPa} … {band.HighPa} Pa; it must rise from low to high.");
    }

    private static void CheckFinite(string field, double? pa)
    {
        if (pa is { } p && !(Math.Abs(p) <= 100_000))
            throw new ArgumentException($"{field} is {p} Pa; a stove's pressures lie between −100000 and 100000 Pa. Leave it out when it is not known.");
    }
}
