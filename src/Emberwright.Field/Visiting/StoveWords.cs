using Emberwright.Stove.Patterns;
using Emberwright.Visits;

namespace Emberwright.Field.Visiting;

/// <summary>The stove and its site in one line.</summary>
public static class StoveWords
{
    /// <summary>"Brackenmoor Heron 2. Damper-regulated top-feed insert; 76 mm vent, 5.5 m up; 250 m above sea." with what is known.</summary>
    public static string Of(Visit visit)
    {
        var name = string.Join(' ', new[] { visit.Appliance?.Maker, visit.Appliance?.Model }.Where(word => !string.IsNullOrEmpty(word)));
        var facts = new List<string>();
        if (visit.Appliance is { } appliance) facts.Add(PatternLibrary.Find(appliance.Pattern)?.Name ?? appliance.Pattern);
        if (visit.Site?.Vent is { Diameter: { } diameter } vent) facts.Add($"{diameter} vent{(vent.Vertical is { } up ? $", {up} up" : "")}");
        if (visit.Site?.Altitude is { } altitude) facts.Add($"{altitude} above sea");
        var site = string.Join("; ", facts);
        return (name.Length > 0 ? name + ". " : "") + (site.Length > 0 ? site + "." : "");
    }
}
