using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Calling;

/// <summary>The site as typed in the form of a call: text until it is read.</summary>
public sealed class SiteFields
{
    /// <summary>Terminals as files name them, with their words.</summary>
    public static IReadOnlyList<(string Id, string Words)> Terminals { get; } = [("vertical-cap", T("SiteFields.cap-on-a-vertical-end")), ("horizontal-hood", T("SiteFields.hood-through-a-wall")), ("open", T("SiteFields.open-end"))];

    /// <summary>Linings as files name them, with their words.</summary>
    public static IReadOnlyList<(string Id, string Words)> Linings { get; } = [("rigid", T("SiteFields.rigid-pellet-vent")), ("flexible", T("SiteFields.flexible-liner")), ("masonry", T("SiteFields.masonry-flue"))];

    /// <summary>Height above sea, with its unit.</summary>
    public string Altitude { get; set; } = "";

    /// <summary>Outdoor temperature.</summary>
    public string Outdoor { get; set; } = "";

    /// <summary>Wind.</summary>
    public string Wind { get; set; } = "";

    /// <summary>The house in words.</summary>
    public string House { get; set; } = "";

    /// <summary>True when combustion air comes through an outside-air kit; null when not known.</summary>
    public bool? OutsideAir { get; set; }

    /// <summary>Inside diameter of the vent.</summary>
    public string Diameter { get; set; } = "";

    /// <summary>Rise of the vent.</summary>
    public string Rise { get; set; } = "";

    /// <summary>Horizontal length of the vent.</summary>
    public string Run { get; set; } = "";

    /// <summary>90° elbows.</summary>
    public string Elbows { get; set; } = "";

    /// <summary>45° elbows.</summary>
    public string HalfElbows { get; set; } = "";

    /// <summary>Tees.</summary>
    public string Tees { get; set; } = "";

    /// <summary>Terminal by its id; empty when not known.</summary>
    public string Terminal { get; set; } = "";

    /// <summary>Lining by its id; empty when not known.</summary>
    public string Lining { get; set; } = "";

    /// <summary>Reads the fields: the entry, null when nothing was typed; or what is wrong, with its field, and no entry.</summary>
    public (SiteBody? Site, string? Problem) Read()
    {
        string? problem = null;
        Quantity? Of(string text, Dimension dimension, string field)
        {
            if (text.Trim().Length == 0 || problem is not null) return null;
            if (Quantity.TryParse(Local.Typed(text), dimension, out var read, out var wrong)) return read;
            problem = $"{field}: {wrong!.Message} {wrong.Remedy}";
            return null;
        }
        int? Count(string text, string field)
        {
            if (text.Trim().Length == 0 || problem is not null) return null;
            if (int.TryParse(text, out var count) && count is >= 0 and <= 20) return count;
            problem = T("SiteFields.is-not-a-number-from-0", field, text);
            return null;
        }
        var vent = new VentBody(
            Of(Diameter, Dimension.Length, T("SiteFields.vents-inside-diameter")), Of(Run, Dimension.Length, T("common.horizontal-length")), Of(Rise, Dimension.Length, T("common.rise")),
            Count(Elbows, T("common.90deg-elbows")), Count(HalfElbows, T("common.45deg-elbows")), Count(Tees, T("common.tees")), Given(Terminal), Given(Lining));
        var site = new SiteBody(
            Of(Altitude, Dimension.Length, T("SiteFields.height-above-sea")), Of(Outdoor, Dimension.Temperature, T("common.outdoor-temperature")), null, Of(Wind, Dimension.Velocity, T("common.wind")),
            OutsideAir: OutsideAir, House: Given(House), Vent: vent == new VentBody(null, null, null) ? null : vent);
        return problem is not null ? (null, problem) : (site == new SiteBody() ? null : site, null);
    }

    private static string? Given(string text) => text.Trim() is { Length: > 0 } given ? given : null;
}
