using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Calling;

/// <summary>The site as typed in the form of a call: text until it is read.</summary>
public sealed class SiteFields
{
    /// <summary>Terminals as files name them, with their words.</summary>
    public static IReadOnlyList<(string Id, string Words)> Terminals { get; } = [("vertical-cap", "Cap on a vertical end"), ("horizontal-hood", "Hood through a wall"), ("open", "Open end")];

    /// <summary>Linings as files name them, with their words.</summary>
    public static IReadOnlyList<(string Id, string Words)> Linings { get; } = [("rigid", "Rigid pellet vent"), ("flexible", "Flexible liner"), ("masonry", "Masonry flue")];

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
            if (Quantity.TryParse(text, dimension, out var read, out var wrong)) return read;
            problem = $"{field}: {wrong!.Message} {wrong.Remedy}";
            return null;
        }
        int? Count(string text, string field)
        {
            if (text.Trim().Length == 0 || problem is not null) return null;
            if (int.TryParse(text, out var count) && count is >= 0 and <= 20) return count;
            problem = $"{field}: {text} is not a number from 0 to 20.";
            return null;
        }
        var vent = new VentBody(
            Of(Diameter, Dimension.Length, "Vent’s inside diameter"), Of(Run, Dimension.Length, "Horizontal length"), Of(Rise, Dimension.Length, "Rise"),
            Count(Elbows, "90° elbows"), Count(HalfElbows, "45° elbows"), Count(Tees, "Tees"), Given(Terminal), Given(Lining));
        var site = new SiteBody(
            Of(Altitude, Dimension.Length, "Height above sea"), Of(Outdoor, Dimension.Temperature, "Outdoor temperature"), null, Of(Wind, Dimension.Velocity, "Wind"),
            OutsideAir: OutsideAir, House: Given(House), Vent: vent == new VentBody(null, null, null) ? null : vent);
        return problem is not null ? (null, problem) : (site == new SiteBody() ? null : site, null);
    }

    private static string? Given(string text) => text.Trim() is { Length: > 0 } given ? given : null;
}
