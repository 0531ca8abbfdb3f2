using Emberwright.Reports.Wording;
using Emberwright.Stove.Patterns;
using Emberwright.Visits;

namespace Emberwright.Reports.FromVisit;

/// <summary>The stove and its site in one line.</summary>
public static class StoveWords
{
    /// <summary>"Brackenmoor Heron 2. Damper-regulated top-feed insert; 76 mm vent, 5.5 m up; 250 m above sea." with what is known.</summary>
    public static string Of(Visit visit)
    {
        var name = Label(visit);
        var facts = new List<string>();
        if (visit.Appliance is not null) facts.Add(Construction(visit));
        if (visit.Site?.Vent is { Diameter: { } diameter } vent) facts.Add(vent.Vertical is { } up ? Say.Of("site.vent-up", diameter, up) : Say.Of("site.vent-2", diameter));
        if (visit.Site?.Altitude is { } altitude) facts.Add(Say.Of("site.above-sea", altitude));
        var site = string.Join("; ", facts);
        return (name.Length > 0 ? name + ". " : "") + (site.Length > 0 ? site + "." : "");
    }

    /// <summary>"Brackenmoor Heron 2, damper-regulated top-feed insert": what is known of label and construction.</summary>
    public static string Name(Visit visit) => string.Join(", ", new[] { Label(visit), Construction(visit) }.Where(word => word.Length > 0));

    /// <summary>The stove card written into the visit; null when there is none or it cannot be read.</summary>
    public static StoveCard? Card(Visit visit) => visit.Appliance?.CardJson is { } json ? CardFile.Read(json, out _) : null;

    private static string Label(Visit visit) =>
        string.Join(' ', new[] { visit.Appliance?.Maker, visit.Appliance?.Model }.Where(word => !string.IsNullOrEmpty(word)));

    private static string Construction(Visit visit) =>
        visit.Appliance is { } appliance ? PatternLibrary.Find(appliance.Pattern) is { } known ? Say.Term(known.Name) : appliance.Pattern : "";
}
